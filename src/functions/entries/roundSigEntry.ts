import type { TypedNumber } from '../../measurement/readNumber.ts';
import { roundToFigures } from '../../measurement/roundToFigures.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const roundSigEntry = {
  name: 'ROUNDSIG',
  arguments: [
    { name: 'value', kind: 'digits' },
    { name: 'figures', kind: 'whole number' },
    {
      name: 'ties',
      kind: 'text',
      optional: true,
      oneOf: ['even', 'up'],
    },
  ],
  call: cellByCell,
  compute: (value: TypedNumber, figures: number, ties: 'even' | 'up' | undefined) =>
    roundToFigures(value, { figures, ties }),
} as const satisfies FunctionEntry;

export const roundSigHelp = {
  group: 'Measuring and comparing',
  summary: 'A number rounded to a given number of significant figures, as text that keeps its zeros.',
  about: {
    value: 'the number',
    figures: 'how many significant figures',
    ties: 'half-way cases: even takes the even digit, up goes away from zero; even if left out, but schools differ',
  },
  returns: 'text with exactly that many significant figures; plain digits where they are clear, otherwise 1.2 × 10^3',
  source: 'rounding half to even: ASTM E29 and ISO 80000-1 Annex B',
  notes: [
    'Schools differ on ties: half to even is used unless you ask for "up". Ties are judged on the decimal that was typed.',
  ],
  examples: [
    { call: ['2.675', 3], gives: '2.68' },
    { call: [0.125, 2], gives: '0.12' },
    { call: [0.125, 2, 'up'], gives: '0.13' },
    { call: [1250, 2], gives: '1.2 × 10^3' },
  ],
  refuses: [
    {
      call: ['2.675', 3, 'down'],
      says: '“down” can’t be used for the rounding of ties: type even or up.',
    },
  ],
} as const satisfies EntryHelp;
