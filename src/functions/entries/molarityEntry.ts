import type { Formula } from '../../chemistry/formula.ts';
import { molarity } from '../../chemistry/molarity.ts';
import type { Grams, Millilitres, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const molarityEntry = {
  name: 'MOLARITY',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'grams', kind: 'mass' },
    { name: 'volume', kind: 'volume' },
    { name: 'purity_percent', kind: 'percent', optional: true },
  ],
  call: cellByCell,
  compute: (formula: Formula, mass: Grams, volume: Millilitres, purity: Percent | undefined) =>
    withMolarMass(formula, (molarMass) => molarity({ molarMass, mass, volume, purity })),
} as const satisfies FunctionEntry;

export const molarityHelp = {
  group: 'Making a solution',
  summary: 'Concentration of a solution made from a weighed solid.',
  about: {
    formula: 'formula of the solid, hydrate included',
    grams: 'mass of solid weighed',
    volume: 'volume of the solution',
    purity_percent: 'purity of the solid by mass; 100 % if left out',
  },
  returns: 'mol/L, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book',
  notes: ['A cell formatted as a percentage hands over a fraction, so a bare purity of 1 or less is refused.'],
  examples: [{ call: ['KBr', 7.140138, 200], gives: 0.3 }],
  refuses: [
    {
      call: ['KBr', 7.14, 0],
      says: '0 mL can’t be used for the volume: it must be above 0 mL. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
