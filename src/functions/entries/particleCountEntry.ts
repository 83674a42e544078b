import { particleCount } from '../../chemistry/particleCount.ts';
import type { Moles } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const particleCountEntry = {
  name: 'PARTICLECOUNT',
  arguments: [{ name: 'moles', kind: 'amount' }],
  call: cellByCell,
  compute: (amount: Moles) => particleCount(amount),
} as const satisfies FunctionEntry;

export const particleCountHelp = {
  group: 'Substances and amounts',
  summary: 'Number of particles in an amount of substance.',
  about: { moles: 'the amount' },
  returns: 'a pure number',
  source: 'Avogadro constant, 6.02214076 × 10^23 per mol, exact since the SI of 2019',
  notes: [],
  examples: [{ call: [0.25], gives: 1.50553519e23 }],
  refuses: [
    {
      call: ['five'],
      says: '“five” can’t be used for the amount. Give an amount such as 0.25 mol.',
    },
  ],
} as const satisfies EntryHelp;
