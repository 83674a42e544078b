import { success } from '../../errors/result.ts';
import { significantFigures } from '../../measurement/significantFigures.ts';
import { cellByCell } from '../cellByCell.ts';
import type { FunctionEntry } from '../entry.ts';

export const sigFigsEntry = {
  name: 'SIGFIGS',
  group: 'Measuring and comparing',
  summary: 'How many significant figures a number is typed with.',
  arguments: [
    { name: 'number_as_text', kind: 'digits', unit: '', about: 'the number, typed as text such as "0.0750"' },
  ],
  returns: 'the count',
  source: 'rules for significant figures, OpenStax Chemistry 2e, section 1.5',
  notes: [
    'A cell that holds a number has lost its trailing zeros, so format the cell as plain text or type the number in quotes.',
    'Trailing zeros of a whole number without a decimal point are not counted.',
  ],
  examples: [
    { call: ['0.0750'], gives: 3 },
    { call: ['2.05 × 10^8'], gives: 3 },
    { call: ['86,002'], gives: 5 },
  ],
  refuses: [],
  call: cellByCell,
  compute: (number) => success(significantFigures(number)),
} as const satisfies FunctionEntry;
