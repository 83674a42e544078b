import { expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { percentErrors } from '../../src/workbook/percentErrors.ts';
import type { ClassReading, StepReading } from '../../src/workbook/readClassSheet.ts';

const row = (entry: string, check: string, step = 'percent error'): StepReading => ({
  row: 1,
  key: 'k',
  step,
  entry,
  check,
  lookAt: '',
  hint: '',
  helpWanted: 0,
  who: '',
  tries: 1,
  lastEntry: undefined,
});
const reading = (...rows: StepReading[]): ClassReading => ({
  linkRows: 1,
  blocks: rows.map((step, index) => ({
    key: `k${index}`,
    team: `Team ${index}`,
    who: '',
    whoColumn: 9,
    checkColumn: 5,
    headingRow: 1,
    closingRow: 3,
    known: true,
    steps: [step],
  })),
});
const found = (decimalMark: 'point' | 'comma', ...rows: StepReading[]) =>
  percentErrors(reading(...rows), { steps: activityById('bench reading')?.steps ?? [], decimalMark });

it('takes what stands in a sound row, whatever its sign and unit', () => {
  expect(
    found(
      'point',
      row('6.2', 'on target'),
      row('-1.5 %', 'close'),
      row('0.4', 'on target'),
      row('150', 'not yet'),
      row('3', 'follows'),
      row('', 'blank'),
      row('7', 'on target', 'molarity read'),
    ),
  ).toEqual([0.4, 1.5, 6.2]);
  expect(found('comma', row('2,5', 'on target'))).toEqual([2.5]);
});

it('is left out where no percent error is asked', () => {
  const steps = activityById('dilution')?.steps ?? [];
  expect(percentErrors(reading(row('3', 'on target')), { steps, decimalMark: 'point' })).toBeUndefined();
});
