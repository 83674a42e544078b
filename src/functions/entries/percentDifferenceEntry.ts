import { comparedValues } from '../../measurement/comparedValues.ts';
import { percentDifference } from '../../measurement/percentDifference.ts';
import type { Measure } from '../../measurement/readMeasure.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const percentDifferenceEntry = {
  name: 'PERCENTDIFFERENCE',
  arguments: [
    { name: 'first', kind: 'measure' },
    {
      name: 'second',
      kind: 'measure',
    },
  ],
  call: cellByCell,
  compute(first: Measure, second: Measure) {
    const values = comparedValues({ name: 'first', measure: first }, { name: 'second', measure: second });
    return values.ok ? percentDifference({ first: values.value.one, second: values.value.other }) : values;
  },
} as const satisfies FunctionEntry;

export const percentDifferenceHelp = {
  group: 'Measuring and comparing',
  summary: 'Difference of two values, as a percentage of their mean.',
  about: {
    first: 'one value, with or without a unit',
    second: 'the other value; without a unit, in that of the first',
  },
  returns: '%, not rounded',
  source: 'common practice in teaching laboratories, no source',
  notes: [
    'Both may carry units of one kind, which are converted; a value without a unit is read in that of the other.',
    'Where one of the two is accepted as right, use PERCENTERROR.',
  ],
  examples: [
    { call: [0.19, 0.21], gives: 10 },
    { call: ['190 mL', '0.21 L'], gives: 10 },
  ],
  refuses: [
    {
      call: [1, -1],
      says: 'The mean of 1 and -1 is 0, so there is no percent difference. Compare the plain difference instead.',
    },
  ],
} as const satisfies EntryHelp;
