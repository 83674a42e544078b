import { beforeEach, describe, expect, it } from 'vitest';
import type { EmptyWish } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cases } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSetup, call, finish, open, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { actAtEveryCall, failBehind, saveAtChanges } from './hostFailure.ts';
import { setup } from './setup.ts';

/** Stands in every text that a person put somewhere: it must be nowhere afterwards. */
const mark = 'Zyx';
const named: Setup = {
  ...setup,
  classes: [
    { name: `${mark} first`, teams: [`${mark} one`, 'Heron'] },
    { name: `${mark} second`, teams: [`${mark} three`] },
  ],
};
const first = `${mark} first`;
const name = 'Bench copy';
const clock = () => new Date('2026-03-02T10:00:00Z');
const saved = (() => {
  const host = open({ name, clock });
  buildSetup(host, named);
  return host.save();
})();
let host: StandIn;
beforeEach(() => {
  host = open({ saved, name, clock });
});

const wish: EmptyWish = { fileName: name, keepHints: false, removeOthers: false };
function empty(given: Partial<EmptyWish> = {}): void {
  finish(host, call(host, 'emptyCopy', { ...wish, ...given }));
}
const rowsOf = (sheet: string, column: number, wanted: (value: string) => boolean): readonly number[] =>
  Array.from({ length: sheetState(host, sheet).rows }, (_, index) => index + 1).filter((row) =>
    wanted(valueAt(host, { sheet, row, column })),
  );
const sheetNames = () => host.book.sheets.map((sheet) => sheet.name);
const stepRows = (sheet: string) => rowsOf(sheet, 13, (step) => step !== '' && !/^\d+$/.test(step));

/** Writes the mark wherever a person can: cells, notes, names of sheets and ranges, protections, properties. */
function markEverything(): void {
  const cells = stepRows(first).flatMap((row) => [
    [row, 3, `${mark} entry`] as const,
    [row, 8, `${mark} help`] as const,
    [row, 9, `${mark} who`] as const,
  ]);
  const blockHeading = (stepRows(first)[0] ?? 0) - 1;
  expect(valueAt(host, { sheet: first, row: blockHeading, column: 9 })).toBe('Your names');
  typeIn(host, { sheet: first, cells: [...cells, [blockHeading, 9, `${mark} person: calculates`]] });
  typeIn(host, {
    sheet: first,
    seat: 'teacher',
    cells: [
      [2, 20, `${mark} beside`],
      [1, 1, `${mark} title`],
    ],
  });
  const { proposal } = answerOf(call(host, 'readRecord')).classes[0] ?? { proposal: undefined };
  if (proposal === undefined) throw new Error('Expected a class.');
  answerOf(call(host, 'saveRecord', [{ entry: { ...proposal, notes: 'Calm.' }, base: null }]));
  typeIn(host, {
    sheet: 'Record',
    seat: 'teacher',
    cells: [
      [9, 3, `${mark} record`],
      [5, 11, `${mark} own words`],
    ],
  });
  const hints = rowsOf('Help', 1, (value) => value === 'molar mass');
  const lastHelp = Math.max(...rowsOf('Help', 1, (value) => value !== ''));
  typeIn(host, {
    sheet: 'Help',
    seat: 'teacher',
    cells: [
      [hints[0] ?? 0, 3, `${mark} hint`],
      [hints[0] ?? 0, 4, `https://example.org/${mark}`],
      [lastHelp + 1, 1, `${mark} step`],
      [lastHelp + 1, 2, '1'],
      [lastHelp + 1, 3, `${mark} added`],
    ],
  });
  for (const sheet of ['Poll', 'Prepare', 'Progress']) {
    const cells = [8, 12, 20].flatMap((row) =>
      [2, 3, 4].map((column) => [row, column, `${mark} in ${sheet}`] as const),
    );
    typeIn(host, { sheet, seat: 'teacher', cells });
  }
  const line = rowsOf('Plan', 1, (value) => value === 'c1-t1')[0] ?? 0;
  const heading = rowsOf('Plan', 1, (value) => value === 'key')[0] ?? 0;
  const seed = rowsOf('Plan', 1, (value) => value === 'seed')[0] ?? 0;
  answerOf(call(host, 'setAbsent', 'c1-t1', true));
  typeIn(host, {
    sheet: 'Plan',
    seat: 'teacher',
    cells: [
      [line, 1, `${mark}-key`],
      [heading, 15, `${mark} heading`],
      [line, 15, `${mark} remark`],
      [seed, 2, `${mark} seed`],
      [2, 6, `${mark} in a free cell`],
    ],
  });
  buildAgain();
  for (const sheet of host.book.sheets) {
    host.book.decorate(sheet, 7, 2, (cell) => ({ ...cell, note: `${mark} note` }));
    for (const protection of sheet.protections) protection.description = `${mark} protection`;
    sheet.metadata.push({
      id: 9000 + sheet.id,
      key: 'labrow-extra',
      value: `${mark} sheet metadata`,
      visibility: 'DOCUMENT',
    });
  }
  host.book.metadata.push({ id: 9999, key: 'labrow-file', value: `${mark} file metadata`, visibility: 'DOCUMENT' });
  host.book.setNamed(`${mark}_range`, sheetState(host, first), { row: 3, column: 1, rows: 1, columns: 1 });
  const state = JSON.parse(host.save());
  state.properties.document.push(['labrow.other', `${mark} property`]);
  host = open({ saved: JSON.stringify(state), name, clock });
}

/** With another activity the earlier sheets are kept under dated names: they are full of names too. */
function buildAgain(): void {
  const twice = host.save();
  expect(twice).toContain(mark);
  buildSetup(host, { ...named, classes: [...named.classes.slice(0, 1)] });
}

/** Everything that would be kept in the file, but for its own name. */
const marksIn = (): readonly string[] => host.save().match(new RegExp(`.{0,60}${mark}.{0,60}`, 'g')) ?? [];

describe('emptyCopy', () => {
  it('leaves no sheet more where it stopped behind the first that it put in, and is pressed again', () => {
    const whole = open({ saved, name, clock });
    for (const one of [host, whole]) one.book.addSheet('Seats');
    answerOf(call(whole, 'emptyCopy', wish));
    failBehind(host, 'Spreadsheet.insertSheet');
    expect(call(host, 'emptyCopy', wish).ok).toBe(false);
    answerOf(call(host, 'emptyCopy', wish));
    expect(sheetNames()).toEqual(whole.book.sheets.map((sheet) => sheet.name));
  });
  it('leaves nothing personal anywhere in the file', () => {
    markEverything();
    expect(marksIn().length).toBeGreaterThan(60);
    empty({ fileName: name, removeOthers: true });
    expect(marksIn()).toEqual([]);
  });

  it('leaves the plan: numbers, settings and working checks, with counted names', () => {
    const before = answerOf(call(host, 'readLesson')).setup;
    empty();
    const after = answerOf(call(host, 'readLesson'));
    expect(after).toMatchObject({ built: true, problems: [] });
    expect(after.setup).toEqual({
      ...before,
      classes: [
        { name: 'Class 1', teams: ['Team 1', 'Team 2'] },
        { name: 'Class 2', teams: ['Team 1'] },
      ],
    });
    expect(sheetNames()).toEqual(expect.arrayContaining(['Plan', 'Class 1', 'Class 2', 'Progress', 'Help']));
    expect(sheetNames().filter((one) => /kept|Plan .|Class . ./.test(one))).toEqual([]);
    const row = rowsOf('Class 1', 13, (step) => step === 'molar mass')[0] ?? 0;
    typeIn(host, { sheet: 'Class 1', cells: [[row, 3, '119.00']] });
    expect(valueAt(host, { sheet: 'Class 1', row, column: 5 })).toBe('on target');
  });

  it('keeps the own wording and links of Help where that was asked, lines added by hand included', () => {
    const hint = rowsOf('Help', 1, (value) => value === 'molar mass')[0] ?? 0;
    const last = Math.max(...rowsOf('Help', 1, (value) => value !== ''));
    const cells = [
      [hint, 3, 'Look at the table.'],
      [hint, 4, 'https://example.org/table'],
      [last + 1, 1, 'another step'],
      [last + 1, 2, '2'],
      [last + 1, 3, 'Think of volumes.'],
    ] as const;
    typeIn(host, { sheet: 'Help', seat: 'teacher', cells });
    host.book.decorate(sheetState(host, 'Help'), hint, 3, (cell) => ({ ...cell, note: `${mark} note` }));
    empty({ keepHints: true });
    for (const [row, column, words] of cells) expect(valueAt(host, { sheet: 'Help', row, column })).toBe(words);
    expect(marksIn()).toEqual([]);
    expect(host.book.sheets.filter((sheet) => sheet.name.startsWith('Help'))).toHaveLength(1);
  });

  it('is refused unless the name of the file is typed, and says what stands in it of today', () => {
    typeIn(host, { sheet: first, cells: [[stepRows(first)[0] ?? 0, 3, '1']] });
    expect(answerOf(call(host, 'readShare'))).toMatchObject({ fileName: name, entriesToday: 1 });
    const before = host.save();
    for (const fileName of ['', 'bench', `${name} 2`]) {
      const outcome = call(host, 'emptyCopy', { ...wish, fileName });
      expect(outcome).toMatchObject({ ok: false, problem: { field: 'fileName' } });
      expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
    }
    expect(host.save()).toBe(before);
    empty({ fileName: ` ${name} ` });
    expect(marksIn()).toEqual([]);
  });

  it('asks for the name whatever day the entries are of, and in a file without any', () => {
    for (const day of ['2026-03-02', '2026-03-03']) {
      host = open({ saved: host.save(), name, clock: () => new Date(`${day}T10:00:00Z`) });
      const before = host.save();
      expect(call(host, 'emptyCopy', { ...wish, fileName: '' })).toMatchObject({
        ok: false,
        problem: { field: 'fileName' },
      });
      expect(host.save()).toBe(before);
      typeIn(host, { sheet: first, cells: [[stepRows(first)[0] ?? 0, 3, day]] });
    }
    expect(answerOf(call(host, 'readShare')).entriesToday).toBe(1);
    empty();
    expect(marksIn()).toEqual([]);
  });

  it('takes a key that was written to a sheet out of the file, and says what is left', () => {
    const { name: key } = answerOf(call(host, 'writeKeySheet', true));
    host.book.addSheet('Roster', host.book.sheets.length);
    const { left } = answerOf(call(host, 'emptyCopy', wish));
    expect(left).toEqual(expect.arrayContaining(['Plan', 'Roster']));
    expect(left).not.toContain(key);
    expect(marksIn()).toEqual([]);
  });

  it('leaves sheets that are not ours and says which, unless they are to go too', () => {
    const rosters = host.book.addSheet('Roster', host.book.sheets.length);
    typeIn(host, { sheet: rosters.name, seat: 'teacher', cells: [[1, 1, 'mine']] });
    expect(answerOf(call(host, 'readShare')).otherSheets).toEqual(['Roster']);
    empty();
    expect(valueAt(host, { sheet: 'Roster', row: 1, column: 1 })).toBe('mine');
    empty({ removeOthers: true });
    expect(host.book.sheets.map((sheet) => sheet.name)).not.toContain('Roster');
  });

  it('can be pressed again after it stopped, and is the same after twice', () => {
    answerOf(call(host, 'emptyCopy', wish));
    empty();
    expect(marksIn()).toEqual([]);
    expect(sheetNames()).toEqual(expect.arrayContaining(['Plan', 'Class 1', 'Class 2', 'Progress', 'Help']));
    expect(sheetNames().filter((one) => /kept|Plan .|Class . ./.test(one))).toEqual([]);
  });

  it('keeps the own wording of Help wherever it was stopped and pressed again', () => {
    const hint = rowsOf('Help', 1, (value) => value === 'molar mass')[0] ?? 0;
    const last = Math.max(...rowsOf('Help', 1, (value) => value !== ''));
    const cells = [
      [hint, 3, 'Look at the table.'],
      [last + 1, 1, 'another step'],
      [last + 1, 2, '2'],
      [last + 1, 3, 'Think of volumes.'],
    ] as const;
    typeIn(host, { sheet: 'Help', seat: 'teacher', cells });
    const each = cases({ short: 10, deep: 1 });
    const changes = saveAtChanges(host, each);
    empty({ keepHints: true });
    const emptying = changes.filter(({ saved: stopped }) => stopped.includes(mark));
    expect(emptying.length).toBeGreaterThan(20 / each);
    const some = cases({ short: 4, deep: 1 });
    for (const { saved: stopped } of emptying.filter((_, index) => index % some === 1 % some)) {
      host = open({ saved: stopped, name, clock });
      empty({ keepHints: true });
      for (const [row, column, words] of cells) expect(valueAt(host, { sheet: 'Help', row, column })).toBe(words);
      expect(marksIn()).toEqual([]);
    }
  }, 300_000);

  it('says what to do in a file without a lesson', () => {
    const outcome = call(open({ name }), 'emptyCopy', wish);
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(/^There is nothing to empty: this file has no Plan\./);
  });
});

describe('emptyCopy, stopped before it has removed anything', () => {
  const before = open({ saved, name, clock });
  /** Which class is in front tells what is in view. */
  const lessonIn = (at: StandIn) => ({ ...answerOf(call(at, 'readLesson')), inFront: '' });
  const lesson = lessonIn(before);
  const ids = before.book.sheets.map(({ id }) => id);
  const isWhole = (at: StandIn) => ids.every((id) => at.book.sheets.some((sheet) => sheet.id === id));
  /** The file wherever it may be left, as long as every sheet of it is there. */
  const stops = (() => {
    const whole = open({ saved, name, clock });
    const changes = saveAtChanges(whole, cases({ short: 8, deep: 1 }));
    answerOf(call(whole, 'emptyCopy', { ...wish, keepHints: true }));
    return changes.map((change) => change.saved).filter((one) => isWhole(open({ saved: one, name, clock })));
  })();
  /** All that is to stay stands, beside the lesson in use. */
  const last = stops[stops.length - 1] ?? '';
  const givenUp = () => open({ saved: last, name, clock });

  it('leaves the lesson in use with nothing to go on with, and two sheets more at most', () => {
    expect(stops.length).toBeGreaterThan(3);
    for (const stop of stops) {
      host = open({ saved: stop, name, clock });
      expect(lessonIn(host)).toEqual(lesson);
      const left = host.save();
      expect(answerOf(call(host, 'continueBuild')).finished).toBe(true);
      expect(host.save()).toBe(left);
      expect(host.book.sheets.length).toBeLessThanOrEqual(ids.length + 2);
    }
    expect(host.book.sheets).toHaveLength(ids.length + 2);
  });

  it('can be given up: a team joins, a next lesson begins, and an emptying later on leaves none of their names', () => {
    host = givenUp();
    finish(host, call(host, 'addTeam', first, `${mark} late`));
    expect(answerOf(call(host, 'readLesson')).setup.classes).toEqual([
      { name: first, teams: [`${mark} one`, 'Heron', `${mark} late`] },
      named.classes[1],
    ]);
    const next: Setup = { ...named, settings: { ...named.settings, seed: '77' } };
    finish(host, call(host, 'nextLesson', next, {}, { sameDay: true }));
    expect(answerOf(call(host, 'readLesson'))).toMatchObject({ setup: next, built: true, problems: [] });
    empty({ removeOthers: true });
    expect(marksIn()).toEqual([]);
    expect(sheetNames().filter((one) => /^(Plan|Help)/.test(one))).toEqual(['Plan', 'Help']);
    expect(answerOf(call(host, 'readLesson')).setup.settings.seed).toBe('77');
  });

  it('makes what the next press wants, and nothing is left that somebody typed there meanwhile', () => {
    host = givenUp();
    const note = 'Qwv note';
    for (const sheet of ['Plan 2', 'Help 2']) {
      host.book.decorate(sheetState(host, sheet), 3, 2, (cell) => ({ ...cell, note }));
      typeIn(host, { sheet, seat: 'teacher', cells: [[40, 6, note]] });
    }
    empty({ keepTeams: true });
    expect(answerOf(call(host, 'readLesson')).setup.classes).toEqual(named.classes);
    expect(host.save()).not.toContain(note);
    expect(sheetNames().filter((one) => /^(Plan|Help)/.test(one))).toEqual(['Plan', 'Help']);
  });
});

it.each([
  { what: 'remove the last ones', refused: 'Spreadsheet.deleteSheet' },
  { what: 'say that the new ones are in use', refused: 'DeveloperMetadata.setValue' },
])('makes no sheet more with each press of emptying while the host refuses to $what', ({ refused }) => {
  const isLeft = () => host.book.sheets.every((sheet) => /^(Plan|Help)/.test(sheet.name));
  const counts = [1, 2, 3, 4].map(() => {
    const refusing = actAtEveryCall(host, (called) => {
      if (called === refused && isLeft()) throw new Error('Service Spreadsheets failed.');
    });
    const outcome = call(host, 'emptyCopy', { ...wish, keepHints: true });
    refusing.stop();
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
    return host.book.sheets.length;
  });
  expect(counts).toEqual([4, 4, 4, 4]);
  empty({ keepHints: true });
  expect(marksIn()).toEqual([]);
  expect(sheetNames().filter((one) => /^(Plan|Help)/.test(one))).toEqual(['Plan', 'Help']);
});
