import { soluteMass } from '../../chemistry/soluteMass.ts';
import { gramsPerMole, millilitres, molesPerLitre } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const molesOfSolute: QuantityEntry = quantity({
  name: 'moles of solute',
  takes: [
    { name: 'molarity', kind: 'concentration', unit: 'mol/L' },
    { name: 'volume', kind: 'volume', unit: 'mL' },
  ],
  entryKind: 'amount',
  unit: 'mol',
  figures: 3,
  wideClose: true,
  buildsOn: [],
  // As many grams as moles, where a mole has one gram.
  chemistry: (n) =>
    soluteMass({
      molarMass: gramsPerMole(1),
      molarity: molesPerLitre(n.molarity),
      volume: millilitres(n.volume),
    }),
  relation: (n) => (n.molarity * n.volume) / 1000,
  slips: [
    { id: 'volume-in-mL', value: (n) => n.molarity * n.volume },
    { id: 'volume-ignored', value: (n) => n.molarity },
    { id: 'upside-down', value: (n) => [n.volume / n.molarity, n.volume / 1000 / n.molarity] },
    { id: 'volumes-multiplied', value: (n) => n.molarity / (n.volume / 1000) },
  ],
});
