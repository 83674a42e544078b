import { success } from '../../errors/result.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const ionMolarityQuantity: QuantityEntry = quantity({
  name: 'ion molarity',
  takes: [
    { name: 'formula', kind: 'formula', unit: '' },
    { name: 'molarity', kind: 'concentration', unit: 'mol/L' },
    { name: 'ion', kind: 'ion', unit: '' },
  ],
  entryKind: 'concentration',
  unit: 'mol/L',
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) => success(n.molarity * n.ionCount),
  relation: (n) => n.molarity * n.ionCount,
  slips: [
    { id: 'ratio-inverted', value: (n) => n.molarity / n.ionCount },
    { id: 'ion-count-ignored', value: (n) => n.molarity },
    {
      id: 'all-ions-counted',
      value: (n) => n.molarity * n.otherIonCounts.reduce((all, count) => all + count, n.ionCount),
    },
    // One of another ion looks the same as no count at all, which is the plainer reading.
    {
      id: "other-ion's-count",
      value: (n) => n.otherIonCounts.filter((count) => count !== 1).map((count) => n.molarity * count),
    },
    // A charge of one looks the same as no count at all too.
    { id: 'charge-for-count', value: (n) => (n.ionCharge === 1 ? [] : n.molarity * n.ionCharge) },
  ],
});
