import type { Formula } from '../../chemistry/formula.ts';
import { massOf } from '../../chemistry/massOf.ts';
import type { Moles } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const gramsEntry = {
  name: 'GRAMS',
  group: 'Substances and amounts',
  summary: 'Mass of an amount of a substance.',
  arguments: [
    { name: 'formula', kind: 'formula', unit: '', about: 'formula of the substance' },
    { name: 'moles', kind: 'amount', unit: 'mol', about: 'its amount' },
  ],
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
      says: 'Expected 0 mol or more for moles, received -0.2 mol. Look at the sign, and at the cell it comes from.',
    },
  ],
  call: cellByCell,
  compute: (formula: Formula, amount: Moles) => withMolarMass(formula, (molarMass) => massOf({ molarMass, amount })),
} as const satisfies FunctionEntry;
