import { type Result, success } from '../../errors/result.ts';
import { judgeFilledQuantity, readFilledQuantity } from '../../lab/judging/judgeQuantity.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import type { EntryHelp, Filled, FunctionEntry, Grid } from '../entry.ts';
import { rowByRow } from '../rowByRow.ts';
import { withinLimits } from '../withinLimits.ts';

export const checkStepEntry = {
  name: 'CHECKSTEP',
  arguments: [
    { name: 'quantity', kind: 'text', about: 'what is asked for, such as mass of solute' },
    { name: 'given', kind: 'table', about: 'given numbers in two columns, name and value' },
    { name: 'entry', kind: 'entry' },
    { name: 'figures', kind: 'whole number', optional: true },
    { name: 'atomic_weight_decimals', kind: 'whole number', optional: true },
  ],
  columns: ['status', 'feedback', 'slip'],
  call: rowByRow,
  compute(
    quantity: string,
    given: Grid,
    entry: CellValue,
    figures: number | undefined,
    decimals: number | undefined,
  ): Result<Filled[]> {
    const asked = withinLimits(figures, { argument: 'figures', least: 1, most: 15 });
    if (!asked.ok) return asked;
    const rounded = withinLimits(decimals, { argument: 'atomic_weight_decimals', least: 0, most: 10 });
    if (!rounded.ok) return rounded;
    const step = readFilledQuantity(quantity, given, { figures, decimals });
    if (!step.ok) return step;
    const { status, feedback, slip } = judgeFilledQuantity(step.value, entry);
    return success([status, feedback, slip]);
  },
} as const satisfies FunctionEntry;

export const checkStepHelp = {
  group: 'Checking',
  summary: 'Checks the entry of a step and, where it is not right, names the likely slip.',
  about: {
    entry: 'what was typed, with or without a unit',
    figures: 'significant figures asked for; the usual number for the quantity if left out',
    atomic_weight_decimals: 'decimals that atomic weights may be rounded to; 2 if left out',
  },
  returns: 'a row: status, feedback, slip',
  source:
    "definition of amount concentration, IUPAC Gold Book; slips from published studies of learners' errors and common practice",
  notes: [
    'Quantities: molar mass, moles of solute, mass of solute, molarity, stock volume, water volume, dilution factor, diluted molarity, ion molarity, percent error, reagent molarity, density, mass percent.',
    'A slip says what the value matches, never what anybody did. It is a hint, not a proof.',
    'Columns are worked through row by row with the same table of given numbers. An entry never gives an error.',
  ],
  examples: [
    {
      call: [
        'mass of solute',
        [
          ['formula', 'KBr'],
          ['molarity', '0.300'],
          ['volume', '200'],
        ],
        '7.14 g',
      ],
      gives: [['on target', 'Yes, this fits your numbers.', '']],
    },
    {
      call: [
        'mass of solute',
        [
          ['formula', 'KBr'],
          ['molarity', '0.300'],
          ['volume', '200'],
        ],
        '7140',
      ],
      gives: [
        [
          'not yet',
          'Your value matches a result with the volume left in mL. Which unit of volume goes with mol/L?',
          'volume-in-mL',
        ],
      ],
    },
  ],
  refuses: [],
} as const satisfies EntryHelp;
