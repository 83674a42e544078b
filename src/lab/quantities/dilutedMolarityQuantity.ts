import { dilutedMolarity } from '../../chemistry/dilutedMolarity.ts';
import { millilitres, molesPerLitre } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const dilutedMolarityQuantity: QuantityEntry = quantity({
  name: 'diluted molarity',
  takes: [
    { name: 'stock molarity', kind: 'concentration', unit: 'mol/L' },
    { name: 'stock volume', kind: 'volume', unit: 'mL' },
    { name: 'final volume', kind: 'volume', unit: 'mL' },
  ],
  entryKind: 'concentration',
  unit: 'mol/L',
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) =>
    dilutedMolarity({
      stock: molesPerLitre(n['stock molarity']),
      stockVolume: millilitres(n['stock volume']),
      finalVolume: millilitres(n['final volume']),
    }),
  relation: (n) => (n['stock molarity'] * n['stock volume']) / n['final volume'],
  slips: [
    { id: 'ratio-inverted', value: (n) => (n['stock molarity'] * n['final volume']) / n['stock volume'] },
    {
      id: 'solvent-added-to-final',
      value: (n) => (n['stock molarity'] * n['stock volume']) / (n['stock volume'] + n['final volume']),
    },
    {
      id: 'water-as-final',
      value: (n) => (n['stock molarity'] * n['stock volume']) / (n['final volume'] - n['stock volume']),
    },
    { id: 'molarity-unchanged', value: (n) => n['stock molarity'] },
  ],
});
