import { soluteMass } from '../../chemistry/soluteMass.ts';
import { gramsPerMole, millilitres, molesPerLitre, percent } from '../../measurement/quantity.ts';
import { formulaSlips } from './formulaSlips.ts';
import { molesOfSolute } from './molesOfSolute.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const massOfSolute: QuantityEntry = quantity({
  name: 'mass of solute',
  takes: [
    { name: 'formula', kind: 'formula', unit: '' },
    { name: 'molarity', kind: 'concentration', unit: 'mol/L' },
    { name: 'volume', kind: 'volume', unit: 'mL' },
    { name: 'purity', kind: 'percent', unit: '%', optional: true, leftOut: 100 },
  ],
  entryKind: 'mass',
  unit: 'g',
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: 'molar mass' }, { name: 'moles of solute', relation: molesOfSolute.relation }],
  chemistry: (n) =>
    soluteMass({
      molarMass: gramsPerMole(n['molar mass']),
      molarity: molesPerLitre(n.molarity),
      volume: millilitres(n.volume),
      purity: percent(n.purity),
    }),
  relation: (n) => (n['moles of solute'] * n['molar mass']) / (n.purity / 100),
  slips: [
    { id: 'volume-in-mL', value: (n) => (n.molarity * n.volume * n['molar mass']) / (n.purity / 100) },
    { id: 'volume-ignored', value: (n) => (n.molarity * n['molar mass']) / (n.purity / 100) },
    { id: 'moles-reported', value: (n) => n['moles of solute'] },
    { id: 'ratio-inverted', value: (n) => n['moles of solute'] / n['molar mass'] / (n.purity / 100) },
    {
      id: 'volumes-multiplied',
      value: (n) => ((n.molarity / (n.volume / 1000)) * n['molar mass']) / (n.purity / 100),
    },
    { id: 'upside-down', value: (n) => n['molar mass'] / n['moles of solute'] / (n.purity / 100) },
    { id: 'molar-mass-reported', value: (n) => n['molar mass'] },
    ...formulaSlips,
    { id: 'purity-ignored', value: (n) => n['moles of solute'] * n['molar mass'] },
    { id: 'purity-inverted', value: (n) => n['moles of solute'] * n['molar mass'] * (n.purity / 100) },
  ],
});
