import { success } from '../../errors/result.ts';
import type { TypedNumber } from '../../measurement/readNumber.ts';
import { significantFigures } from '../../measurement/significantFigures.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const sigFigsEntry = {
  name: 'SIGFIGS',
  arguments: [
    {
      name: 'number_as_text',
      kind: 'figures',
    },
  ],
  call: cellByCell,
  compute: (number: TypedNumber) => success(significantFigures(number)),
} as const satisfies FunctionEntry;

export const sigFigsHelp = {
  group: 'Measuring and comparing',
  summary: 'Number of significant figures in a number as typed.',
  about: { number_as_text: 'the number as text such as "0.0750"; a number cell has lost its trailing zeros' },
  returns: 'the count',
  source: 'rules for significant figures, OpenStax Chemistry 2e, section 1.5',
  notes: [
    'A cell that holds a number has lost its trailing zeros, so format the cell as plain text or type the number in quotes.',
    'A unit after the number does not count.',
    'Trailing zeros of a whole number without a decimal point are not counted.',
  ],
  examples: [
    { call: ['0.0750'], gives: 3 },
    { call: ['2.05 × 10^8'], gives: 3 },
    { call: ['86,002'], gives: 5 },
    { call: ['25.00 mL'], gives: 4 },
    { call: ['2.54 cm'], gives: 3 },
  ],
  refuses: [
    {
      call: ['1,200'],
      says: '“1,200” for the number could be 1200 or 1.200. Type the one you mean.',
    },
  ],
} as const satisfies EntryHelp;
