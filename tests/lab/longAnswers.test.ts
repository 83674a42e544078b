import { describe, expect, it } from 'vitest';
import { longestAnswer } from '../../src/lab/judging/judgeStep.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { remarks } from '../../src/lab/texts/feedback.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const activity = activityById('stock and dilution') as Activity;
const givens = { ...startingGivens(activity), formula: 'KBr' };
const judged = (kind: string, entry: CellValue) => {
  const ids = activity.steps.map(({ id }) => id);
  const at = activity.steps.findIndex((step) => step.kind === kind);
  return judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [
      ['activity', activity.id],
      ['layout', String(layoutVersion)],
    ],
    steps: ids,
    // Nothing at the bench is looked at before the cautions are ticked.
    entries: ids.map((id, index) => (index === at ? entry : id === 'cautions read' ? 'yes, KBr' : '')),
  })[at];
};

describe('an answer in words', () => {
  it.each(['ticked', 'ordered', 'chosen'])('is looked through to a thousand characters and no further: %s', (kind) => {
    const words = 'yes, KBr, ';
    const fill = (length: number) => words.repeat(Math.ceil(length / words.length)).slice(0, length);
    expect(judged(kind, fill(longestAnswer))?.lookAt).not.toBe(remarks.tooLong);
    expect(judged(kind, fill(longestAnswer + 1))).toMatchObject({ status: 'unreadable', lookAt: remarks.tooLong });
  });
  it.each(['ticked', 'ordered', 'chosen'])('is blank where it is blanks alone, however many: %s', (kind) => {
    expect(judged(kind, ' '.repeat(longestAnswer + 1))).toMatchObject({ status: 'blank' });
  });
  it('may be a number or a tick, which has no length', () => {
    for (const kind of ['ticked', 'ordered', 'chosen'])
      for (const entry of [5, true]) expect(judged(kind, entry)?.lookAt).not.toBe(remarks.tooLong);
  });
  it('is never too long where it is only told', () => {
    expect(judged('told', 'x'.repeat(longestAnswer + 1))).toMatchObject({ status: '', lookAt: '' });
  });
});
