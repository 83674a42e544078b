import { failure, type Result, success } from '../../errors/result.ts';
import { judgeNumber } from '../../lab/judging/judgeNumber.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import type { Percent } from '../../measurement/quantity.ts';
import { type Measure, unitNotKnown } from '../../measurement/readMeasure.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { rowByRow } from '../rowByRow.ts';
import { withinLimits } from '../withinLimits.ts';

export const checkEntryEntry = {
  name: 'CHECKENTRY',
  arguments: [
    { name: 'entry', kind: 'entry' },
    { name: 'target', kind: 'measure' },
    { name: 'tolerance_percent', kind: 'percentage points', optional: true },
    { name: 'figures', kind: 'whole number', optional: true },
  ],
  columns: ['status', 'feedback'],
  call: rowByRow,
  compute(
    entry: CellValue,
    measured: Measure,
    tolerancePercent: Percent | undefined,
    figures: number | undefined,
  ): Result<Filled[]> {
    if (measured.unitTyped !== '' && measured.unit === undefined) return unitNotKnown(measured, 'target');
    const target = measured.number.value;
    if (target === 0 && tolerancePercent === undefined) {
      return failure({
        code: 'target-zero',
        argument: 'tolerance_percent',
        expected: 'a tolerance',
        advice: 'Type one, such as 5.',
      });
    }
    if (tolerancePercent !== undefined && tolerancePercent < 0) {
      return failure({
        code: 'out-of-limits',
        argument: 'tolerance_percent',
        expected: '0 or more',
        received: `${tolerancePercent} %`,
        advice: 'Leave out the minus sign.',
      });
    }
    const asked = withinLimits(figures, { argument: 'figures', least: 1, most: 15 });
    if (!asked.ok) return asked;
    const { status, lookAt } = judgeNumber(entry, { target, tolerancePercent, figures, unit: measured.unit });
    return success([status, lookAt]);
  },
} as const satisfies FunctionEntry;

export const checkEntryHelp = {
  group: 'Checking',
  summary: 'Checks an entry against a target.',
  about: {
    entry: 'what was typed, with or without a unit',
    target: 'the right value, with or without a unit',
    tolerance_percent: 'how far off may count as on target, in percent; honest rounding decides if left out',
    figures: 'significant figures asked for, 1 to 15; 3 if left out',
  },
  returns: 'a row: status, feedback',
  source: 'common practice, no source',
  notes: [
    'The status is one of on target, close, not yet, blank, unreadable.',
    'If the target has a unit, the entry is converted to it; an entry without a unit is read in that unit.',
    'Words such as about, and a remark after the number and its unit, are ignored.',
    'Columns are worked through row by row. An entry never gives an error; a target of 0 needs a tolerance.',
  ],
  examples: [
    { call: ['7.14', 7.140138], gives: [['on target', 'Yes, this fits your numbers.']] },
    { call: ['about 7140 mg KBr', '7.14 g'], gives: [['on target', 'Yes, this fits your numbers.']] },
    { call: ['', 7.140138], gives: [['blank', '']] },
    {
      call: [[['0.31'], ['0.25'], ['']], 0.3, 5],
      gives: [
        ['on target', 'Yes, this fits your numbers.'],
        ['not yet', 'Not yet. Check each number that goes in, and its unit. Does the size make sense?'],
        ['blank', ''],
      ],
    },
  ],
  refuses: [
    {
      call: ['7.14', '7.14 apples'],
      says: '“7.14 apples”: “apples” is not a unit known here. Type the number alone, or with a unit such as g, mL or mol/L.',
    },
    {
      call: ['0', 0],
      says: 'A target of 0 needs a tolerance. Type one, such as 5.',
    },
  ],
} as const satisfies EntryHelp;
