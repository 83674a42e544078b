import { readQuantity } from '../../measurement/readQuantity.ts';
import type { MeasuredStep } from '../lesson/activity.ts';
import { badGiven } from '../texts/feedback.ts';
import { expectedValue } from './expectedValue.ts';
import type { Surroundings } from './judgedRow.ts';
import { teamStep } from './teamStep.ts';
import { unitKind } from './unitKind.ts';
import { spanOver } from './worked.ts';

interface ExpectedReading {
  /** What to say of a given or a setting that cannot be used; empty where all can. */
  readonly bad: string;
  /** In the unit of the row; undefined where something bad stands in the way. */
  readonly expected: number | undefined;
  /** What to say of the row that it waits for; empty where it waits for none. */
  readonly waitsFor: string;
}

/** What a reading is compared with. */
export function expectedReading({ id, expects, unit }: MeasuredStep, around: Surroundings): ExpectedReading {
  const { givens, settings } = around;
  if (typeof expects !== 'string' && 'expected' in expects) {
    const worked = expectedValue(expects, { givens, decimalMark: settings.decimalMark });
    return worked.ok
      ? { bad: '', expected: worked.value, waitsFor: '' }
      : { bad: badGiven(worked.error.argument), expected: undefined, waitsFor: '' };
  }
  if (typeof expects !== 'string') {
    const read = readQuantity(givens[expects.given], unitKind(unit), expects.given, settings);
    return read.ok
      ? { bad: '', expected: read.value.value, waitsFor: '' }
      : { bad: badGiven(expects.given), expected: undefined, waitsFor: '' };
  }
  const row = around.stepOf(expects);
  if (row?.kind !== 'calculated') throw new Error(`the step “${id}” expects no calculated step`);
  const { bad, ready, waitsFor } = teamStep(row, around);
  return { bad, expected: ready && spanOver(ready, ready.quantity.relation).middle, waitsFor };
}
