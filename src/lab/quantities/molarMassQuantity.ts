import { success } from '../../errors/result.ts';
import { formulaSlips } from './formulaSlips.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

/** To whole numbers, or to one decimal (common practice, no source); where a lesson asks for no more, it is the target. */
const shortenings = [
  { decimals: 0, way: 'halfUp' },
  { decimals: 1, way: 'halfUp' },
  { decimals: 1, way: 'halfEven' },
  { decimals: 1, way: 'cutOff' },
] as const;

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
  slips: [
    ...formulaSlips,
    { id: 'weights-rounded-early', molarMasses: ({ atoms }) => shortenings.map((shortened) => ({ atoms, shortened })) },
  ],
});
