import { massPercentOfDensity } from '../../chemistry/massPercentOfDensity.ts';
import { gramsPerMillilitre, percent } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { NumbersOf, QuantityEntry } from './quantityEntry.ts';

type Numbers = NumbersOf<'density' | 'lighter percent' | 'lighter density' | 'heavier percent' | 'heavier density'>;

/** How far the density is on its way from the lighter line to the heavier. */
const share = (n: Numbers) => (n.density - n['lighter density']) / (n['heavier density'] - n['lighter density']);
const step = (n: Numbers) => n['heavier percent'] - n['lighter percent'];

/** A straight line between two lines of a table of densities. */
export const massPercentQuantity: QuantityEntry = quantity({
  name: 'mass percent',
  takes: [
    { name: 'density', kind: 'density', unit: 'g/mL' },
    { name: 'lighter percent', kind: 'percent', unit: '%' },
    { name: 'lighter density', kind: 'density', unit: 'g/mL' },
    { name: 'heavier percent', kind: 'percent', unit: '%' },
    { name: 'heavier density', kind: 'density', unit: 'g/mL' },
  ],
  entryKind: 'percent',
  unit: '%',
  figures: 3,
  wideClose: true,
  buildsOn: [],
  chemistry: (n) =>
    massPercentOfDensity({
      density: gramsPerMillilitre(n.density),
      lighterPercent: percent(n['lighter percent']),
      lighterDensity: gramsPerMillilitre(n['lighter density']),
      heavierPercent: percent(n['heavier percent']),
      heavierDensity: gramsPerMillilitre(n['heavier density']),
    }),
  relation: (n) => n['lighter percent'] + share(n) * step(n),
  slips: [
    { id: 'table-line-taken', value: (n) => [n['lighter percent'], n['heavier percent']] },
    { id: 'middle-of-lines', value: (n) => (n['lighter percent'] + n['heavier percent']) / 2 },
    { id: 'share-mirrored', value: (n) => n['heavier percent'] - share(n) * step(n) },
    // From a line of 0 % it is the bare share, which has a slip of its own.
    { id: 'step-unscaled', value: (n) => (n['lighter percent'] === 0 ? [] : n['lighter percent'] + share(n)) },
    { id: 'line-not-added', value: (n) => share(n) * step(n) },
    { id: 'share-reported', value: share },
    { id: 'ratio-inverted', value: (n) => n['lighter percent'] + step(n) / share(n) },
  ],
});
