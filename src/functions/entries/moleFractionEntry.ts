import type { Formula } from '../../chemistry/formula.ts';
import { moleFraction } from '../../chemistry/moleFraction.ts';
import type { Grams } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const moleFractionEntry = {
  name: 'MOLEFRACTION',
  arguments: [
    { name: 'formula_1', kind: 'formula' },
    { name: 'grams_1', kind: 'mass' },
    { name: 'formula_2', kind: 'formula' },
    { name: 'grams_2', kind: 'mass' },
  ],
  call: cellByCell,
  compute: (first: Formula, firstMass: Grams, second: Formula, secondMass: Grams) =>
    withMolarMass(first, (firstMolarMass) =>
      withMolarMass(second, (secondMolarMass) =>
        moleFraction({
          first: { molarMass: firstMolarMass, mass: firstMass },
          second: { molarMass: secondMolarMass, mass: secondMass },
        }),
      ),
    ),
} as const satisfies FunctionEntry;

export const moleFractionHelp = {
  group: 'Converting',
  summary: 'Mole fraction of the first of two substances from their masses.',
  about: {
    formula_1: 'formula of the first substance',
    grams_1: 'its mass',
    formula_2: 'formula of the second substance',
    grams_2: 'its mass',
  },
  returns: 'a fraction from 0 to 1, not rounded',
  source: 'definition of amount fraction, IUPAC Gold Book',
  notes: ['Each substance counts as it is written, undissociated.'],
  examples: [{ call: ['KBr', 119.0023, 'H2O', 54.045], gives: 0.25 }],
  refuses: [
    {
      call: ['KBr', 0, 'H2O', 0],
      says: '0 g can’t be used for the first mass: it must be above 0 g. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
