import { stockVolume } from '../../chemistry/stockVolume.ts';
import { millilitres, molesPerLitre } from '../../measurement/quantity.ts';
import { dilutionFactor } from './dilutionFactor.ts';
import { quantity } from './quantity.ts';
import type { QuantityArgument, QuantityEntry } from './quantityEntry.ts';

/** What a dilution is worked from. */
export const dilutionTakes = [
  { name: 'stock molarity', kind: 'concentration', unit: 'mol/L' },
  { name: 'target molarity', kind: 'concentration', unit: 'mol/L' },
  { name: 'target volume', kind: 'volume', unit: 'mL' },
] as const satisfies readonly QuantityArgument[];

export const stockVolumeQuantity: QuantityEntry = quantity({
  name: 'stock volume',
  takes: dilutionTakes,
  entryKind: 'volume',
  unit: 'mL',
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: 'dilution factor', relation: dilutionFactor.relation }],
  chemistry: (n) =>
    stockVolume({
      stock: molesPerLitre(n['stock molarity']),
      target: molesPerLitre(n['target molarity']),
      finalVolume: millilitres(n['target volume']),
    }),
  relation: (n) => n['target volume'] / n['dilution factor'],
  slips: [
    { id: 'litres-reported', value: (n) => n['target volume'] / n['dilution factor'] / 1000 },
    { id: 'ratio-inverted', value: (n) => n['target volume'] * n['dilution factor'] },
    { id: 'water-for-stock', value: (n) => n['target volume'] - n['target volume'] / n['dilution factor'] },
    { id: 'volume-left-out', value: (n) => n['target molarity'] / n['stock molarity'] },
    {
      id: 'amount-for-volume',
      value: (n) => [n['target molarity'] * n['target volume'], (n['target molarity'] * n['target volume']) / 1000],
    },
    {
      id: 'parts-miscounted',
      value: (n) => [n['target volume'] / (n['dilution factor'] - 1), n['target volume'] / (n['dilution factor'] + 1)],
    },
  ],
});
