import { comparedValues } from '../../measurement/comparedValues.ts';
import { percentError } from '../../measurement/percentError.ts';
import type { Measure } from '../../measurement/readMeasure.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const percentErrorEntry = {
  name: 'PERCENTERROR',
  arguments: [
    { name: 'measured', kind: 'measure' },
    {
      name: 'accepted',
      kind: 'measure',
    },
    { name: 'signed', kind: 'yes or no', optional: true },
  ],
  call: cellByCell,
  compute(measured: Measure, accepted: Measure, signed: boolean | undefined) {
    const values = comparedValues({ name: 'measured', measure: measured }, { name: 'accepted', measure: accepted });
    if (!values.ok) return values;
    return percentError({ measured: values.value.one, accepted: values.value.other, signed });
  },
} as const satisfies FunctionEntry;

export const percentErrorHelp = {
  group: 'Measuring and comparing',
  summary: 'Difference of a measured value from the accepted one, as a percentage of the accepted one.',
  about: {
    measured: 'the measured value, with or without a unit',
    accepted: 'the accepted value; without a unit, in that of the measured one',
    signed: 'TRUE keeps the sign of measured − accepted; without sign if left out',
  },
  returns: '%, not rounded, absolute unless signed is TRUE',
  source: 'common practice in teaching laboratories, no source',
  notes: [
    'Both may carry units of one kind, which are converted; a value without a unit is read in that of the other.',
  ],
  examples: [
    { call: [0.291, 0.3], gives: 3 },
    { call: ['0.291', '0.300', true], gives: -3 },
    { call: ['95 mmol/L', '0.100 mol/L'], gives: 5 },
  ],
  refuses: [
    {
      call: [0.3, 0],
      says: 'With an accepted value of 0 there is no percent error. Compare the plain difference instead.',
    },
    {
      call: ['5.1 g', '5.0 mL'],
      says: '“5.0 mL”, a volume, can’t be used for the accepted value. Give a mass, like the measured value.',
    },
    {
      call: ['1,234', 1.25],
      says: '“1,234” for the measured value could be 1234 or 1.234. Type the one you mean.',
    },
  ],
} as const satisfies EntryHelp;
