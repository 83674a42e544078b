import type { Formula } from '../../chemistry/formula.ts';
import { solutionVolume } from '../../chemistry/solutionVolume.ts';
import type { Grams, MolesPerLitre, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const solutionVolumeEntry = {
  name: 'SOLUTIONVOLUME',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'grams', kind: 'mass' },
    { name: 'molarity', kind: 'concentration' },
    { name: 'purity_percent', kind: 'percent', optional: true },
  ],
  call: cellByCell,
  compute: (formula: Formula, mass: Grams, molarity: MolesPerLitre, purity: Percent | undefined) =>
    withMolarMass(formula, (molarMass) => solutionVolume({ molarMass, mass, molarity, purity })),
} as const satisfies FunctionEntry;

export const solutionVolumeHelp = {
  group: 'Making a solution',
  summary: 'Volume of solution that a weighed solid is enough for.',
  about: {
    formula: 'formula of the solid, hydrate included',
    grams: 'mass of solid weighed',
    molarity: 'concentration wanted',
    purity_percent: 'purity of the solid by mass; 100 % if left out',
  },
  returns: 'mL, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book',
  notes: ['A cell formatted as a percentage hands over a fraction, so a bare purity of 1 or less is refused.'],
  examples: [{ call: ['KBr', 7.140138, 0.3], gives: 200 }],
  refuses: [
    {
      call: ['KBr', 7.14, 0],
      says: '0 mol/L can’t be used for the molarity: it must be above 0 mol/L. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
