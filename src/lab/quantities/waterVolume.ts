import { diluentVolume } from '../../chemistry/diluentVolume.ts';
import { millilitres, molesPerLitre } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { NumbersOf, QuantityEntry } from './quantityEntry.ts';
import { dilutionTakes } from './stockVolumeQuantity.ts';

const stockVolume = (n: NumbersOf<'stock molarity' | 'target molarity' | 'target volume'>) =>
  (n['target molarity'] / n['stock molarity']) * n['target volume'];

export const waterVolume: QuantityEntry = quantity({
  name: 'water volume',
  takes: dilutionTakes,
  entryKind: 'volume',
  unit: 'mL',
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: 'stock volume', relation: stockVolume }],
  chemistry: (n) =>
    diluentVolume({
      stock: molesPerLitre(n['stock molarity']),
      target: molesPerLitre(n['target molarity']),
      finalVolume: millilitres(n['target volume']),
    }),
  relation: (n) => n['target volume'] - n['stock volume'],
  // A difference is no finer than what was taken away.
  neverFinerThan: (n) => n['stock volume'],
  slips: [
    { id: 'litres-reported', value: (n) => (n['target volume'] - n['stock volume']) / 1000 },
    { id: 'stock-for-water', value: (n) => n['stock volume'] },
    { id: 'final-volume-for-water', value: (n) => n['target volume'] },
    { id: 'volumes-added', value: (n) => n['target volume'] + n['stock volume'] },
    { id: 'sign-reversed', value: (n) => n['stock volume'] - n['target volume'] },
  ],
});
