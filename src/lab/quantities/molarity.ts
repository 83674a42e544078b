import { molarity as molarityOf } from '../../chemistry/molarity.ts';
import { grams, gramsPerMole, millilitres, percent } from '../../measurement/quantity.ts';
import { formulaSlips } from './formulaSlips.ts';
import { quantity } from './quantity.ts';
import type { NumbersOf, QuantityEntry } from './quantityEntry.ts';

/** Grams of the pure solute. */
const pure = (n: NumbersOf<'mass' | 'purity'>) => n.mass * (n.purity / 100);

export const molarity: QuantityEntry = quantity({
  name: 'molarity',
  takes: [
    { name: 'formula', kind: 'formula', unit: '' },
    { name: 'mass', kind: 'mass', unit: 'g' },
    { name: 'volume', kind: 'volume', unit: 'mL' },
    { name: 'purity', kind: 'percent', unit: '%', optional: true, leftOut: 100 },
  ],
  entryKind: 'concentration',
  unit: 'mol/L',
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: 'molar mass' }],
  chemistry: (n) =>
    molarityOf({
      molarMass: gramsPerMole(n['molar mass']),
      mass: grams(n.mass),
      volume: millilitres(n.volume),
      purity: percent(n.purity),
    }),
  relation: (n) => pure(n) / n['molar mass'] / (n.volume / 1000),
  slips: [
    { id: 'volume-in-mL', value: (n) => pure(n) / n['molar mass'] / n.volume },
    // Grams over litres, whether or not the purity was seen to.
    { id: 'molar-mass-ignored', value: (n) => [n.mass / (n.volume / 1000), pure(n) / (n.volume / 1000)] },
    { id: 'ratio-inverted', value: (n) => (pure(n) * n['molar mass']) / (n.volume / 1000) },
    { id: 'volumes-multiplied', value: (n) => (pure(n) / n['molar mass']) * (n.volume / 1000) },
    { id: 'amount-as-molarity', value: (n) => pure(n) / n['molar mass'] },
    { id: 'volume-over-amount', value: (n) => n.volume / 1000 / (pure(n) / n['molar mass']) },
    ...formulaSlips,
    { id: 'purity-ignored', value: (n) => n.mass / n['molar mass'] / (n.volume / 1000) },
    { id: 'purity-inverted', value: (n) => n.mass / (n.purity / 100) / n['molar mass'] / (n.volume / 1000) },
  ],
});
