import type { Formula } from '../../chemistry/formula.ts';
import { massOf } from '../../chemistry/massOf.ts';
import type { Moles } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const gramsEntry = {
  name: 'GRAMS',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'moles', kind: 'amount' },
  ],
  call: cellByCell,
  compute: (formula: Formula, amount: Moles) => withMolarMass(formula, (molarMass) => massOf({ molarMass, amount })),
} as const satisfies FunctionEntry;

export const gramsHelp = {
  group: 'Substances and amounts',
  summary: 'Mass of an amount of a substance.',
  about: { formula: 'formula of the substance', moles: 'its amount' },
  returns: 'g, not rounded',
  source: 'definition of amount of substance and molar mass, IUPAC Gold Book',
  notes: [],
  examples: [
    { call: ['KBr', 0.2], gives: 23.80046 },
    { call: ['KBr', '5 mmol'], gives: 0.5950115 },
  ],
  refuses: [
    {
      call: ['KBr', -0.2],
      says: '-0.2 mol can’t be used for the amount: it must be 0 mol or more. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
