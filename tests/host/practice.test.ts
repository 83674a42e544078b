import { expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { lessonActivity } from '../../src/lab/lesson/lessonActivity.ts';
import { freshPracticeKey } from '../../src/lab/lesson/practice.ts';
import { extensionGiven } from '../../src/lab/lesson/teamColumns.ts';
import { rightEntries } from '../lab/rightEntries.ts';
import { answerOf, buildSetup, call, finish, open, run, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const lesson = { ...setup, ownNumbers: true, settings: { ...setup.settings, 'exit questions': '1' } };

const saved = (() => {
  const host = open({ clock });
  buildSetup(host, lesson);
  return host.save();
})();

/** Sheets whose text is another than before. */
function touched(before: readonly string[], after: readonly string[]): readonly (string | undefined)[] {
  return after.filter((text, index) => text !== before[index]).map((text) => /"name":"([^"]+)"/.exec(text)?.[1]);
}

it('gives practice a block in few calls that touch its class and the Plan, and nothing that was typed', () => {
  const host = open({ saved, clock });
  const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
  typeIn(host, { sheet, cells: [[row, 3, '119.00']] });
  const before = workbookText(host).split('\n\n');
  const page: File = { book: undefined };
  host.resetCounts();
  let state = answerOf(run(host, workFor(page, 'addPractice', [sheet])));
  const runs = { all: 1, sheets: state.total };
  while (!state.finished) {
    state = answerOf(run(host, workFor(page, 'continueBuild', [])));
    runs.all += 1;
  }
  expect(runs).toEqual({ all: 2, sheets: 2 });
  expect([...touched(before, workbookText(host).split('\n\n'))].sort()).toEqual([sheet, 'Plan']);
  const made = Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
  console.log(`asked of the host for practice: ${made}`);
  const key = freshPracticeKey([]);
  expect(valueAt(host, { sheet, row, column: 3 })).toBe('119.00');
  const own = stepRow(host, { sheet, key, step: 'molar mass' });
  typeIn(host, { sheet, cells: [[own, 3, '119.00']] });
  expect(valueAt(host, { sheet, row: own, column: 5 })).toBe('on target');
  expect(valueAt(host, { sheet, row: stepRow(host, { sheet, key, step: '' }), column: 1 })).toBe('Practice 1');
});

it('keeps exit answers until a class sees them, caps a team’s hints, and shows its task when all is right', () => {
  const host = open({ saved, clock });
  const activity = lessonActivity(lesson.settings);
  if (activity === undefined) throw new Error('Expected an activity.');
  const at = (step: string, column: number) =>
    valueAt(host, { sheet, row: stepRow(host, { sheet, key: 'c1-t1', step }), column });
  const type = (step: string, column: number, text: string) =>
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step }), column, text]] });
  const team = answerOf(call(host, 'readNumbers')).teams.find(({ key }) => key === 'c1-t1');
  const right = answerOf(call(host, 'readKey')).teams[0]?.lines.find(({ title }) => title.startsWith('Exit'));

  expect(at('exit 1', 2)).toMatch(/^Volume of 0\.\d+ mol\/L solution for \d+ mL of 0\.\d+ mol\/L\. 3.figures\.$/);
  expect(at('exit 1', 2)).toContain(`${team?.givens['exit 1 volume']} mL of ${team?.givens['exit 1 molarity']} mol/L`);
  type('exit 1', 3, right?.answer ?? '');
  expect([at('exit 1', 5), at('exit 1', 7)]).toEqual(['kept', '']);
  answerOf(call(host, 'showExitChecks', sheet, true));
  expect(at('exit 1', 5)).toBe('on target');
  expect(answerOf(call(host, 'readClass', sheet)).exit).toMatchObject({ answered: 1, right: 1, shown: 'class' });
  // What is typed as a calculation stays text, is no number, and does not count as right.
  type('exit 1', 3, `=${right?.answer}*1`);
  expect(at('exit 1', 5)).toBe('unreadable');
  expect(answerOf(call(host, 'readClass', sheet)).exit).toMatchObject({ answered: 1, right: 0 });

  type('molar mass', 8, '3');
  const whole = at('molar mass', 7);
  answerOf(call(host, 'setOwnHelp', 'c1-t1', { level: '1' }));
  expect(at('molar mass', 7)).not.toBe(whole);
  answerOf(call(host, 'setOwnHelp', 'c1-t1', { level: '' }));
  expect(at('molar mass', 7)).toBe(whole);

  const closing = stepRow(host, { sheet, key: 'c1-t1', step: 'exit 1' }) + 1;
  const task = () => valueAt(host, { sheet, row: closing, column: 2 });
  answerOf(call(host, 'setOwnHelp', 'c1-t1', { extension: '=1+1 or not?' }));
  expect(task()).toBe('');
  const entries = rightEntries(activity, team?.givens ?? {});
  const key = answerOf(call(host, 'readKey')).teams[0]?.lines ?? [];
  for (const step of activity.steps) {
    const letters = key.find(({ title }) => title === step.title);
    const isLettered = step.kind === 'ordered' || step.kind === 'chosen';
    type(step.id, 3, isLettered ? (letters?.answer ?? '') : (entries[step.id] ?? ''));
  }
  const notRight = activity.steps.map(({ id }) => [id, at(id, 5)]).filter(([, check]) => check !== 'on target');
  expect(notRight).toEqual([['in your words', '']]);
  expect(task()).toBe('To go on: =1+1 or not?');
  type('molar mass', 3, '7');
  expect(task()).toBe('');

  // Built again, everything stands as it was, and the row is as high as the task needs.
  type('molar mass', 3, entries['molar mass'] ?? '');
  finish(host, call(host, 'startBuild', lesson));
  expect(task()).toBe('To go on: =1+1 or not?');
  expect(answerOf(call(host, 'readNumbers')).teams[0]?.givens[extensionGiven]).toBe('=1+1 or not?');
  expect(sheetState(host, sheet).rows).toBeGreaterThan(closing);
});
