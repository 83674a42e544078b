import { percentError } from '../../measurement/percentError.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const percentErrorEntry = {
  name: 'PERCENTERROR',
  arguments: [
    { name: 'measured', kind: 'number', unit: '', about: 'the measured value' },
    { name: 'accepted', kind: 'number', unit: '', about: 'the accepted value, in the same unit' },
    {
      name: 'signed',
      kind: 'yes or no',
      unit: '',
      about: 'TRUE keeps the sign of measured − accepted; without sign if left out',
      optional: true,
    },
  ],
  call: cellByCell,
  compute: (measured: number, accepted: number, signed: boolean | undefined) =>
    percentError({ measured, accepted, signed }),
} as const satisfies FunctionEntry;

export const percentErrorHelp = {
  group: 'Measuring and comparing',
  summary: 'How far a measured value lies from an accepted one, in percent of the accepted one.',
  returns: '%, not rounded, absolute unless signed is TRUE',
  source: 'common practice in teaching laboratories, no source',
  notes: [],
  examples: [
    { call: [0.291, 0.3], gives: 3 },
    { call: ['0.291', '0.300', true], gives: -3 },
  ],
  refuses: [
    {
      call: [0.3, 0],
      says: 'Expected a value other than 0 for accepted, received 0. A share of nothing does not exist: compare the plain difference instead.',
    },
    {
      call: ['1,234', 1.25],
      says: 'Expected one reading of measured, received “1,234”, which could be 1234 or 1.234. Type it one of those two ways.',
    },
  ],
} as const satisfies EntryHelp;
