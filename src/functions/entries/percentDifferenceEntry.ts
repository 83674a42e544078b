import { percentDifference } from '../../measurement/percentDifference.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const percentDifferenceEntry = {
  name: 'PERCENTDIFFERENCE',
  arguments: [
    { name: 'first', kind: 'number', unit: '', about: 'one value' },
    { name: 'second', kind: 'number', unit: '', about: 'the other value, in the same unit' },
  ],
  call: cellByCell,
  compute: (first: number, second: number) => percentDifference({ first, second }),
} as const satisfies FunctionEntry;

export const percentDifferenceHelp = {
  group: 'Measuring and comparing',
  summary: 'How far two values of equal standing lie apart, in percent of their mean.',
  returns: '%, not rounded',
  source: 'common practice in teaching laboratories, no source',
  notes: ['Where one of the two is accepted as right, use PERCENTERROR.'],
  examples: [{ call: [0.19, 0.21], gives: 10 }],
  refuses: [
    {
      call: [1, -1],
      says: 'Expected two values whose mean is not 0 for second, received 1 and -1. A share of nothing does not exist: compare the plain difference instead.',
    },
  ],
} as const satisfies EntryHelp;
