import type { Result } from '../../errors/result.ts';
import { hintForQuantity } from '../../lab/hints/hintForQuantity.ts';
import { readQuantityName } from '../../lab/judging/judgeQuantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry, Grid } from '../entry.ts';

export const hintStepEntry = {
  name: 'HINTSTEP',
  arguments: [
    { name: 'quantity', kind: 'text', about: 'what is asked for, such as mass of solute' },
    { name: 'given', kind: 'table', about: 'given numbers in two columns, name and value' },
    {
      name: 'level',
      kind: 'whole number',
    },
  ],
  call: cellByCell,
  compute(quantity: string, given: Grid, level: number): Result<string> {
    const name = readQuantityName(quantity);
    return name.ok ? hintForQuantity(name.value, given, level) : name;
  },
} as const satisfies FunctionEntry;

export const hintStepHelp = {
  group: 'Checking',
  summary: 'A hint for a step, at one of three levels, without the answer.',
  about: { level: '1 the idea, 2 the relation, 3 the set-up with these numbers' },
  returns: 'text',
  source: 'definition of amount concentration, IUPAC Gold Book',
  notes: ['Level 3 has the numbers in place, but never the answer.'],
  examples: [
    {
      call: [
        'stock volume',
        [
          ['stock molarity', '2.00'],
          ['target molarity', '0.500'],
          ['target volume', '100'],
        ],
        2,
      ],
      gives: 'stock molarity × stock volume = target molarity × target volume',
    },
    {
      call: [
        'stock volume',
        [
          ['stock molarity', '2.00'],
          ['target molarity', '0.500'],
          ['target volume', '100'],
        ],
        3,
      ],
      gives: '0.500 mol/L × 100 mL ÷ 2.00 mol/L = ?',
    },
  ],
  refuses: [
    {
      call: [
        'stock volume',
        [
          ['stock molarity', '2.00'],
          ['target molarity', '0.500'],
          ['target volume', '100'],
        ],
        4,
      ],
      says: '4 is not a level of help. Type 1 for the idea, 2 for the relation or 3 for the set-up with your numbers.',
    },
  ],
} as const satisfies EntryHelp;
