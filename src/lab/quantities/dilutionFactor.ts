import { dilutionFactor as factorOf } from '../../chemistry/dilutionFactor.ts';
import { molesPerLitre } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const dilutionFactor: QuantityEntry = quantity({
  name: 'dilution factor',
  takes: [
    { name: 'stock molarity', kind: 'concentration', unit: 'mol/L' },
    { name: 'target molarity', kind: 'concentration', unit: 'mol/L' },
  ],
  entryKind: 'ratio',
  unit: '',
  figures: 3,
  wideClose: false,
  buildsOn: [],
  chemistry: (n) =>
    factorOf({ stock: molesPerLitre(n['stock molarity']), target: molesPerLitre(n['target molarity']) }),
  relation: (n) => n['stock molarity'] / n['target molarity'],
  slips: [
    { id: 'ratio-inverted', value: (n) => n['target molarity'] / n['stock molarity'] },
    { id: 'factor-less-one', value: (n) => n['stock molarity'] / n['target molarity'] - 1 },
    { id: 'total-counted-twice', value: (n) => n['stock molarity'] / n['target molarity'] + 1 },
    { id: 'total-over-water', value: (n) => n['stock molarity'] / (n['stock molarity'] - n['target molarity']) },
    { id: 'difference-for-ratio', value: (n) => n['stock molarity'] - n['target molarity'] },
  ],
});
