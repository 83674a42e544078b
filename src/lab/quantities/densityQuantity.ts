import { density } from '../../chemistry/density.ts';
import { grams, millilitres } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

/** As many figures as tables of densities have, since a share of small differences is worked from it. */
export const densityQuantity: QuantityEntry = quantity({
  name: 'density',
  takes: [
    { name: 'mass', kind: 'mass', unit: 'g' },
    { name: 'volume', kind: 'volume', unit: 'mL' },
  ],
  entryKind: 'density',
  unit: 'g/mL',
  figures: 5,
  ownFigures: true,
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => density({ mass: grams(n.mass), volume: millilitres(n.volume) }),
  relation: (n) => n.mass / n.volume,
  slips: [
    { id: 'ratio-inverted', value: (n) => n.volume / n.mass },
    { id: 'volume-in-litres', value: (n) => n.mass / (n.volume / 1000) },
    { id: 'mass-reported', value: (n) => n.mass },
    { id: 'volumes-multiplied', value: (n) => n.mass * n.volume },
  ],
});
