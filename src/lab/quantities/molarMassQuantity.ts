import { success } from '../../errors/result.ts';
import { formulaSlips } from './formulaSlips.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';
import { saltTimesWater } from './wrongAtoms.ts';

export const molarMassQuantity: QuantityEntry = quantity({
  name: 'molar mass',
  takes: [{ name: 'formula', kind: 'formula', unit: '' }],
  entryKind: 'molar mass',
  unit: 'g/mol',
  figures: 'decimals',
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => success(n['molar mass']),
  relation: (n) => n['molar mass'],
  slips: [...formulaSlips, { id: 'dot-as-times', molarMasses: saltTimesWater }],
});
