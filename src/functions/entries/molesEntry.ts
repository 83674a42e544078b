import { amountOf } from '../../chemistry/amountOf.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { Grams } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const molesEntry = {
  name: 'MOLES',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'grams', kind: 'mass' },
  ],
  call: cellByCell,
  compute: (formula: Formula, mass: Grams) => withMolarMass(formula, (molarMass) => amountOf({ molarMass, mass })),
} as const satisfies FunctionEntry;

export const molesHelp = {
  group: 'Substances and amounts',
  summary: 'Amount of a substance from its mass.',
  about: { formula: 'formula of the substance', grams: 'its mass' },
  returns: 'mol, not rounded',
  source: 'definition of amount of substance and molar mass, IUPAC Gold Book',
  notes: [],
  examples: [{ call: ['KBr', '23.80046 g'], gives: 0.2 }],
  refuses: [
    {
      call: ['KBr', '250 mL'],
      says: '“250 mL”, a volume, can’t be used for the mass. Give a mass such as 2.5 g.',
    },
  ],
} as const satisfies EntryHelp;
