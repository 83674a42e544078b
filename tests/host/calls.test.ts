import { beforeEach, describe, expect, it } from 'vitest';
import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { type BookReading, callNames, type Outcome } from '../../src/host/calls.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSetup, call, finish, open, run, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { saveAtChanges } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const saved = (() => {
  const host = open({ clock });
  buildSetup(host, setup);
  return host.save();
})();
let host: StandIn;
/** A page that stays open, with what it has read. */
let page: File;
beforeEach(() => {
  host = open({ saved, clock });
  page = { book: undefined };
});
const ask = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): DeskAnswer<Name> =>
  run(host, workFor(page, name, about));
const calls = () => Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
const readEverything = () => answerOf(ask('readLesson'));
const planRow = (key: string) =>
  Array.from({ length: sheetState(host, 'Plan').rows }, (_, index) => index + 1).find(
    (row) => valueAt(host, { sheet: 'Plan', row, column: 1 }) === key,
  ) ?? 0;

describe('the nine calls', () => {
  it('are all that a page can call', () => {
    expect(callNames).toHaveLength(9);
    expect(() => host.run('teacher', 'startBuild', [setup])).toThrow('not found');
  });
  it.each(callNames)('%s tells a page of another version to open the sidebar again, and does nothing', (name) => {
    const before = host.save();
    const outcome = host.run('teacher', name, [layoutVersion + 1, {}]) as Outcome<unknown>;
    expect(outcome).toMatchObject({ ok: false, problem: { reason: 'older' } });
    expect(outcome.ok ? '' : outcome.problem.message).toContain('open it again from the menu');
    expect(host.save()).toBe(before);
  });
  it.each(callNames.filter((name) => name !== 'checkAgain'))(
    '%s refuses odd wishes in words and changes nothing',
    (name) => {
      const before = workbookText(host);
      const seen: never[] = [];
      const read = { kinds: [] };
      const odd = [null, 7, 'x', [], {}, { seen, read }, { seen, read, cells: [{}], plan: { role: {} }, keptName: '' }];
      for (const wish of odd.filter((one) => name !== 'writeCells' || JSON.stringify(one) !== '{}')) {
        const outcome = host.run('teacher', name, [layoutVersion, wish]) as Outcome<unknown>;
        expect(outcome.ok, `${name} ${JSON.stringify(wish)}`).toBe(false);
        expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
      }
      expect(workbookText(host)).toBe(before);
    },
  );
  it('reads of the file as a whole only where that is asked, and then names only what is its own', () => {
    host.book.addSheet('Roster', 0);
    const reading = (brief: boolean) => {
      const outcome = host.run('teacher', 'readBook', [layoutVersion, { kinds: ['plan'], brief }]);
      return (outcome as { readonly value: BookReading }).value;
    };
    const [whole, brief] = [reading(false), reading(true)];
    expect(Object.keys(whole).filter((key) => !(key in brief))).toEqual([
      'fileName',
      'decimalMark',
      'timeZone',
      'today',
      'clock',
      'activeSheet',
      'emptySheet',
    ]);
    expect(brief.read).toEqual(whole.read);
    expect(brief.sheets).toEqual(whole.sheets.map((one) => (one.tag === null ? { ...one, name: '' } : one)));
    expect(brief.sheets.map(({ name }) => name)).toContain('Fern class');
  });
  it('writes no formula into a cell, and only into sheets that were built here', () => {
    const { id } = sheetState(host, 'Plan');
    const own = host.book.addSheet('Roster', 0);
    const write = (sheetId: number) =>
      host.run('teacher', 'writeCells', [
        layoutVersion,
        { seen: [], read: { kinds: [] }, cells: [{ sheetId, row: 2, column: 7, was: '', now: '=1+1' }] },
      ]);
    expect(write(own.id)).toMatchObject({ ok: false });
    expect(write(id)).toMatchObject({ ok: true });
    expect(valueAt(host, { sheet: 'Plan', row: 2, column: 7 })).toBe('=1+1');
  });
  it('writes numbers and moments as what they are, and makes rows as high as it is asked', () => {
    const { id } = sheetState(host, 'Fern class');
    const row = stepRow(host, { sheet: 'Fern class', key: 'c1-t2', step: 'in your words' });
    const date = Date.parse('2026-03-02T10:15:00Z');
    const cell = (column: number, was: unknown, now: unknown) => ({ sheetId: id, row, column, was, now });
    const write = (cells: readonly unknown[], heights: readonly unknown[] = []) =>
      host.run('teacher', 'writeCells', [layoutVersion, { seen: [], read: { kinds: [] }, cells, heights }]);
    const [tries, time, who] = [10, 11, 9];
    const height = { sheetId: id, row, height: 55 };
    const first = write(
      [cell(who, '', '2'), cell(tries, '', 2), cell(time, '', { date })],
      [height, { sheetId: id, row: 'x' }],
    );
    expect(first).toMatchObject({ ok: true });
    // What is written next is compared with what stands there: the same number, the same moment, the same text.
    expect(write([cell(who, '2', ''), cell(tries, 2, 3), cell(time, { date }, '')])).toMatchObject({ ok: true });
    expect(write([cell(tries, 2, 4)])).toMatchObject({ ok: false, problem: { reason: 'changed' } });
    expect(sheetState(host, 'Fern class').rowHeights.get(row)).toBe(55);
    for (const odd of [true, null, { date: 'x' }, []]) {
      expect(write([cell(tries, 3, odd)])).toMatchObject({ ok: false });
    }
  });
});

describe('a page that has read the file once', () => {
  it('shows every view without another call', () => {
    readEverything();
    host.resetCounts();
    for (const name of [
      'readLesson',
      'readNumbers',
      'readTeams',
      'readPreparation',
      'readKey',
      'readPaper',
      'readPoll',
      'readRecord',
      'recordDue',
      'readShare',
    ] as const)
      answerOf<unknown>(ask(name));
    answerOf(ask('readClass', sheet));
    answerOf(ask('draftTeams', setup));
    expect(calls()).toBe(0);
  });
  it('reads no sheet that was kept', () => {
    readEverything();
    host.resetCounts();
    answerOf(run(host, workFor(page, 'readLesson', [], { afresh: true })));
    const before = host.counts.host['Range.getValues'];
    buildSetup(host, { ...setup, classes: setup.classes.slice(0, 1) });
    expect(host.book.sheets.some(({ name }) => name.startsWith('Moss class, kept'))).toBe(true);
    host.resetCounts();
    answerOf(run(host, workFor(page, 'readLesson', [], { afresh: true })));
    expect(host.counts.host['Range.getValues']).toBe((before ?? 0) - 1);
  });
  it('works again from what stands there where somebody changed it meanwhile', () => {
    readEverything();
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[planRow('c1-t1'), 5, '0.317']] });
    answerOf(ask('setAbsent', 'c1-t2', true));
    expect(answerOf(ask('readTeams')).classes[0]?.teams[1]?.absent).toBe(true);
    expect(answerOf(ask('readNumbers')).teams[0]?.givens['stock molarity']).toBe('0.317');
    // Somebody else writes who is in a team while the page still shows it empty.
    const heading = stepRow(host, { sheet, key: 'c1-t1', step: 'cautions read' }) - 1;
    typeIn(host, { sheet, cells: [[heading, 9, 'Dov']] });
    const outcome = ask('setMembers', sheet, 'c1-t1', { names: 'Ana', absent: [], base: '' });
    expect(outcome).toMatchObject({ ok: false, problem: { field: 'names' } });
    expect(valueAt(host, { sheet, row: heading, column: 9 })).toBe('Dov');
    expect(answerOf(ask('readTeams')).classes[0]?.teams[0]?.members?.who).toBe('Dov');
  });
  it('lets two teachers add a team each, and loses neither', () => {
    readEverything();
    const other: File = { book: undefined };
    answerOf(run(host, workFor(other, 'readLesson', [])));
    answerOf(ask('addTeam', sheet, 'Wren'));
    let state = answerOf(run(host, workFor(other, 'addTeam', [sheet, 'Pike'])));
    while (!state.finished) state = answerOf(run(host, workFor(other, 'continueBuild', [])));
    expect(answerOf(call(host, 'readClass', sheet)).teams.map(({ team }) => team)).toEqual([
      'Otter',
      'Heron',
      'Wren',
      'Pike',
    ]);
  });
  it('keeps a late team of another teacher where a plan is built that was begun before, and asks nothing', () => {
    const { keys } = readEverything();
    finish(host, call(host, 'addTeam', sheet, 'Wren'));
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t3', step: 'molar mass' }), 3, '119.00']] });
    finish(host, ask('startBuild', { ...setup, givens: { ...setup.givens, purity: '' } }, {}, keys));
    expect(answerOf(call(host, 'readClass', sheet)).teams.map(({ team, done }) => [team, done])).toEqual([
      ['Otter', 0],
      ['Heron', 0],
      ['Wren', 1],
    ]);
    expect(host.book.sheets.filter(({ name }) => name.startsWith(`${sheet}, kept`))).toEqual([]);
  });
  it('builds nothing from the Plan of a moment ago', () => {
    const state = answerOf(ask('startBuild', setup));
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[planRow('c1-t1'), 3, 'Beaver']] });
    let now = state;
    while (!now.finished) now = answerOf(ask('continueBuild'));
    expect(answerOf(call(host, 'readClass', sheet)).teams[0]?.team).toBe('Beaver');
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('up to date');
  });
});

describe('a Plan that cannot be read', () => {
  beforeEach(() => {
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[5, 1, '']] });
  });
  it('is told apart from none, by every view and every press, and nothing is written over it', () => {
    const before = workbookText(host);
    const outcomes = [
      ask('readLesson'),
      ask('readNumbers'),
      ask('readTeams'),
      ask('readPreparation'),
      ask('readClass', sheet),
      ask('readRecord'),
      ask('startBuild', setup),
      ask('startSample'),
      ask('addTeam', sheet, 'Wren'),
      ask('addClass', 'Reed class', ['Carp']),
      ask('setAbsent', 'c1-t1', true),
      ask('writePrepareSheet'),
      ask('writeKeySheet', true),
      ask('emptyCopy', { fileName: 'Workbook', keepHints: false, removeOthers: false }),
    ];
    for (const outcome of outcomes) {
      expect(outcome.ok).toBe(false);
      expect(outcome.ok ? '' : outcome.problem.message).toContain('Undo the change to the headings');
    }
    expect(workbookText(host)).toBe(before);
  });
});

describe('checkAgain', () => {
  const check = (key: string) => ({ sheet, row: stepRow(host, { sheet, key, step: 'cautions read' }) - 1, column: 5 });
  it('puts back a check that is gone from its cell', () => {
    const cell = check('c1-t1');
    typeIn(host, { sheet, seat: 'teacher', cells: [[cell.row, cell.column, '']] });
    expect(answerOf(ask('readClass', sheet)).notYetKnown).toBe(15);
    expect(answerOf(ask('checkAgain'))).toEqual({ renewed: 1 });
    expect(answerOf(call(host, 'readClass', sheet)).notYetKnown).toBe(0);
    expect(answerOf(ask('checkAgain'))).toEqual({ renewed: 0 });
  });
  it('loses no check where it is stopped, wherever that is: the next press puts it back', () => {
    host.failCalls('CHECKTEAM', 1);
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), 3, '119.00']] });
    const failed = host.save();
    const changes = saveAtChanges(host);
    answerOf(ask('checkAgain'));
    expect(changes.length).toBeGreaterThan(3);
    for (const { saved: stopped, name } of [...changes, { saved: failed, name: 'nothing' }]) {
      host = open({ saved: stopped, clock });
      answerOf(call(host, 'checkAgain'));
      const { notYetKnown, teams } = answerOf(call(host, 'readClass', sheet));
      expect([name, notYetKnown, teams[0]?.done]).toEqual([name, 0, 1]);
    }
  });
});

describe('a late team', () => {
  it('touches the sheet of its own class and no other class, and asks nothing about others', () => {
    // A team that is gone from the Plan of the other class has its cells there still.
    typeIn(host, {
      sheet: 'Moss class',
      cells: [[stepRow(host, { sheet: 'Moss class', key: 'c2-t1', step: 'molar mass' }), 3, '1']],
    });
    typeIn(host, {
      sheet: 'Plan',
      seat: 'teacher',
      cells: [1, 2, 3].map((column) => [planRow('c2-t1'), column, column === 1 ? 'c9-t9' : 'Newt']),
    });
    const other = () =>
      workbookText(host)
        .split('\n\n')
        .find((text) => text.includes('"name":"Moss class"'));
    const before = other();
    finish(host, call(host, 'addTeam', sheet, 'Wren'));
    expect(other()).toBe(before);
    expect(answerOf(call(host, 'readClass', sheet)).teams.map(({ team }) => team)).toEqual(['Otter', 'Heron', 'Wren']);
  });
});

describe('a build that another page began', () => {
  it('is gone on with from wherever somebody presses', () => {
    const fresh = open({ clock });
    answerOf(call(fresh, 'startBuild', setup));
    expect(answerOf(call(fresh, 'readLesson')).building).toMatchObject({ done: 1, finished: false });
    expect(finish(fresh, call(fresh, 'continueBuild')).finished).toBe(true);
    expect(answerOf(call(fresh, 'readLesson')).building).toBeUndefined();
    const built = fresh.save();
    expect(answerOf(call(fresh, 'continueBuild')).finished).toBe(true);
    expect(fresh.save()).toBe(built);
  });
});
