import { percentError } from '../../measurement/percentError.ts';
import { quantity } from './quantity.ts';
import type { NumbersOf, QuantityEntry } from './quantityEntry.ts';

const gap = (n: NumbersOf<'measured' | 'accepted'>) => Math.abs(n.measured - n.accepted);

export const percentErrorQuantity: QuantityEntry = quantity({
  name: 'percent error',
  takes: [
    { name: 'measured', kind: 'number', unit: '' },
    { name: 'accepted', kind: 'number', unit: '' },
  ],
  entryKind: 'percent',
  unit: '%',
  figures: 2,
  ownFigures: true,
  wideClose: false,
  buildsOn: [],
  chemistry: (n) => percentError({ measured: n.measured, accepted: n.accepted }),
  relation: (n) => (100 * gap(n)) / Math.abs(n.accepted),
  slips: [
    { id: 'divided-by-measured', value: (n) => (100 * gap(n)) / Math.abs(n.measured) },
    { id: 'ratio-reported', value: (n) => (100 * n.measured) / n.accepted },
    { id: 'fraction-reported', value: (n) => gap(n) / Math.abs(n.accepted) },
    { id: 'mean-as-base', value: (n) => (200 * gap(n)) / Math.abs(n.measured + n.accepted) },
    { id: 'difference-reported', value: (n) => gap(n) },
  ],
});
