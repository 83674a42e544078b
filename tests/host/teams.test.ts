import { beforeEach, describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSetup, call, finish as finishOn, open, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const own = { ...setup, ownNumbers: true };
const saved = savedWith(own);

let host: StandIn;
beforeEach(() => {
  host = open({ saved, clock: () => new Date('2026-03-02T10:00:00Z') });
});

const finish = (first: Outcome<BuildState>): BuildState => finishOn(host, first);

/** Every cell that people and the trigger write, of every block of a sheet, by team and step. */
function entered(name: string): readonly string[] {
  const { rows } = sheetState(host, name);
  const at = (row: number, column: number) => valueAt(host, { sheet: name, row, column });
  const found: string[] = [];
  for (let row = 2; row <= rows; row += 1) {
    if (at(row, 13) === '') continue;
    found.push(
      `${row} ${at(row, 12)} ${at(row, 13)}: ${[3, 8, 9, 10, 11, 14].map((column) => at(row, column)).join(' | ')}`,
    );
  }
  return found;
}
const steps = (key: string, inSheet = sheet): readonly number[] =>
  Array.from({ length: sheetState(host, inSheet).rows }, (_, index) => index + 1).filter(
    (row) =>
      valueAt(host, { sheet: inSheet, row, column: 12 }) === key &&
      valueAt(host, { sheet: inSheet, row, column: 13 }) !== '',
  );
function fillIn(): void {
  for (const [name, key] of [
    [sheet, 'c1-t1'],
    [sheet, 'c1-t2'],
    ['Moss class', 'c2-t1'],
  ] as const) {
    for (const row of steps(key, name))
      typeIn(host, {
        sheet: name,
        cells: [
          [row, 3, `${row}.50`],
          [row, 8, '1'],
          [row, 9, 'calculates'],
        ],
      });
  }
}
const numbers = () =>
  answerOf(call(host, 'draftTeams', answerOf(call(host, 'readLesson')).setup)).teams.map(({ key, givens }) => ({
    key,
    givens,
  }));

describe('addTeam', () => {
  it('gives a late team a block and numbers of its own and changes nobody’s entries or numbers', () => {
    fillIn();
    const before = [entered(sheet), entered('Moss class')];
    const planned = numbers();
    finish(call(host, 'addTeam', sheet, 'Late team'));
    expect(entered(sheet).slice(0, before[0]?.length)).toEqual(before[0]);
    expect(entered('Moss class')).toEqual(before[1]);
    expect(numbers().filter(({ key }) => planned.some((one) => one.key === key))).toEqual(planned);
    const late = answerOf(call(host, 'readTeams')).classes[0]?.teams[2];
    expect(late).toMatchObject({ team: 'Late team', absent: false });
    const row = stepRow(host, { sheet, key: late?.key ?? '', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, 3, '119.00']] });
    expect(valueAt(host, { sheet, row, column: 5 })).toBe('on target');
    expect(host.book.sheets.some(({ name }) => name.includes('kept'))).toBe(false);
  });
  it('takes in two more, one after the other', () => {
    fillIn();
    const before = entered(sheet);
    finish(call(host, 'addTeam', sheet, 'Late one'));
    finish(call(host, 'addTeam', sheet, 'Late two'));
    expect(entered(sheet).slice(0, before.length)).toEqual(before);
    expect(answerOf(call(host, 'readClass', sheet)).teams.map(({ team }) => team)).toEqual([
      'Otter',
      'Heron',
      'Late one',
      'Late two',
    ]);
  });
  it.each([
    ['Nobody’s class', 'Late'],
    [sheet, ''],
    [sheet, 'Otter'],
  ])('refuses %s, “%s”, with what to do, and changes nothing', (className, team) => {
    const before = host.save();
    const outcome = call(host, 'addTeam', className, team);
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
    expect(host.save()).toBe(before);
  });
});

describe('addClass', () => {
  it('adds a class with a sheet of its own and changes nobody’s entries', () => {
    fillIn();
    const before = [entered(sheet), entered('Moss class')];
    finish(call(host, 'addClass', 'Reed class', ['Pike', 'Carp']));
    expect([entered(sheet), entered('Moss class')]).toEqual(before);
    expect(answerOf(call(host, 'readClass', 'Reed class')).teams.map(({ team }) => team)).toEqual(['Pike', 'Carp']);
  });
  it('refuses a class that is there already, or one without teams', () => {
    expect(call(host, 'addClass', sheet, ['Pike'])).toMatchObject({ ok: false });
    expect(call(host, 'addClass', 'Reed class', [])).toMatchObject({ ok: false });
  });
});

/** Row of the Plan that begins with these words. */
const rowWith = (first: string): number =>
  Array.from({ length: sheetState(host, 'Plan').rows }, (_, index) => index + 1).find(
    (row) => valueAt(host, { sheet: 'Plan', row, column: 1 }) === first,
  ) ?? 0;

describe('a class and a team that come later', () => {
  const progress = () => {
    const { rows, columns } = sheetState(host, 'Progress');
    return Array.from({ length: rows }, (_, index) =>
      Array.from({ length: columns }, (__, column) =>
        valueAt(host, { sheet: 'Progress', row: index + 1, column: column + 1 }),
      ),
    );
  };
  beforeEach(() => {
    finish(call(host, 'addClass', 'Reed class', ['Pike', 'Carp']));
    finish(call(host, 'addTeam', sheet, 'Late team'));
  });
  it('are in the lesson, in Class now and in Teams', () => {
    expect(answerOf(call(host, 'readLesson')).classes).toEqual(['Fern class', 'Moss class', 'Reed class']);
    expect(answerOf(call(host, 'readClass', 'Reed class')).teams.map(({ team }) => team)).toEqual(['Pike', 'Carp']);
    expect(answerOf(call(host, 'readTeams')).classes.map(({ name, teams }) => [name, teams.length])).toEqual([
      [sheet, 3],
      ['Moss class', 1],
      ['Reed class', 2],
    ]);
  });
  it('have their lines in Progress, which follow what they type', () => {
    const lineOf = (team: string) => progress().find(([name]) => name === team);
    for (const [team, name, key] of [
      ['Pike', 'Reed class', answerOf(call(host, 'readClass', 'Reed class')).teams[0]?.key],
      ['Late team', sheet, answerOf(call(host, 'readClass', sheet)).teams[2]?.key],
    ] as const) {
      expect(lineOf(team)?.[2]).toMatch(/^0 of/);
      typeIn(host, {
        sheet: name,
        cells: [[stepRow(host, { sheet: name, key: key ?? '', step: 'molar mass' }), 3, '119.00']],
      });
      expect(lineOf(team)?.[2]).toMatch(/^1 of/);
    }
    expect(host.book.sheets.filter(({ name }) => name.startsWith('Progress'))).toHaveLength(1);
  });
  it('are counted in what to prepare, and the sheet says that its list is older until it is written again', () => {
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('out of date');
    answerOf(call(host, 'writePrepareSheet', true));
    const view = answerOf(call(host, 'readPreparation'));
    expect(view.sheet).toBe('up to date');
    // Six teams: the day’s label and two for each of them.
    expect(view.labels).toHaveLength(1 + 6 * 2);
    expect(view.labels.filter(({ whose }) => whose.startsWith('Reed class'))).toHaveLength(4);
  });
  it('are in the record of the day, and its reminder', () => {
    const key = answerOf(call(host, 'readClass', 'Reed class')).teams[0]?.key ?? '';
    typeIn(host, {
      sheet: 'Reed class',
      cells: [[stepRow(host, { sheet: 'Reed class', key, step: 'molar mass' }), 3, '119.00']],
    });
    const reed = answerOf(call(host, 'readRecord')).classes.find(({ proposal }) => proposal.className === 'Reed class');
    expect(reed?.proposal.present).toBe('2 of 2 teams');
    const later = open({ saved: host.save(), clock: () => new Date('2026-03-02T10:20:00Z') });
    expect(answerOf(call(later, 'recordDue')).due).toEqual(['Reed class']);
  });
  it('can go on coming after the lines that Progress had kept are used up', () => {
    for (const name of ['Late two', 'Late three', 'Late four']) finish(call(host, 'addTeam', sheet, name));
    const teams = progress()
      .map(([name = '', , count = '']) => (/of \d+$/.test(count) ? name : ''))
      .filter((name) => name !== '');
    expect(teams).toEqual([
      'Otter',
      'Heron',
      'Late team',
      'Late two',
      'Late three',
      'Late four',
      'Newt',
      'Pike',
      'Carp',
    ]);
  });
});

describe('setAbsent', () => {
  const heron = () => answerOf(call(host, 'readTeams')).classes[0]?.teams[1]?.absent;
  it('marks a team for the day, and takes the mark away again', () => {
    fillIn();
    const before = entered(sheet);
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    expect(heron()).toBe(true);
    expect(answerOf(call(host, 'readClass', sheet)).teams[1]?.absent).toBe(true);
    answerOf(call(host, 'setAbsent', 'c1-t2', false));
    expect(heron()).toBe(false);
    expect(entered(sheet)).toEqual(before);
  });
  it('leaves an absent team out of whom to talk to first, and out of those present in the record', () => {
    const row = stepRow(host, { sheet, key: 'c1-t2', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, 8, '2']] });
    const talk = () => answerOf(call(host, 'readClass', sheet)).talkFirst.map(({ team }) => team);
    expect(talk()).toContain('Heron');
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    expect(talk()).not.toContain('Heron');
    const fern = answerOf(call(host, 'readRecord')).classes[0];
    expect(fern?.proposal.present).toBe('1 of 2 teams, 1 team absent');
    expect(fern?.names.absent).toEqual(['Heron']);
  });
  it('counts no more on another day', () => {
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    host = open({ saved: host.save(), clock: () => new Date('2026-03-03T10:00:00Z') });
    expect(heron()).toBe(false);
  });
  it('shows in Progress in neutral words, and ends by itself the next day', () => {
    const line = (team: string) => {
      const rows = Array.from({ length: sheetState(host, 'Progress').rows }, (_, index) => index + 1);
      const row = rows.find((one) => valueAt(host, { sheet: 'Progress', row: one, column: 1 }) === team) ?? 0;
      return [2, 3, 4].map((column) => valueAt(host, { sheet: 'Progress', row, column }));
    };
    const [before] = [line('Heron')];
    expect(before[1]).toMatch(/^0 of \d+$/);
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    expect(line('Heron')).toEqual(['not here today', '', '· to come']);
    expect(line('Otter')[1]).toMatch(/^0 of \d+$/);
    host = open({ saved: host.save(), clock: () => new Date('2026-03-03T10:00:00Z') });
    host.tick();
    expect(line('Heron')).toEqual(before);
    // Typed by hand without a day it holds until it is cleared.
    const heading = rowWith('key');
    const heron = rowWith('c1-t2');
    expect(valueAt(host, { sheet: 'Plan', row: heading, column: 11 })).toBe('today');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[heron, 11, 'absent']] });
    expect(line('Heron')[0]).toBe('not here today');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[heron, 11, '']] });
    expect(line('Heron')).toEqual(before);
  });
  it('leaves no mark of a day gone by in the Plan once another is made', () => {
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    host = open({ saved: host.save(), clock: () => new Date('2026-03-03T10:00:00Z') });
    answerOf(call(host, 'setAbsent', 'c2-t1', true));
    const mark = (key: string) => valueAt(host, { sheet: 'Plan', row: rowWith(key), column: 11 });
    expect([mark('c1-t2'), mark('c2-t1')]).toEqual(['', 'absent 2026-03-03']);
  });
  it('stays when the lesson is built again and when a late team comes', () => {
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    buildSetup(host, own);
    finish(call(host, 'addTeam', sheet, 'Late team'));
    expect(heron()).toBe(true);
  });
  it('works in a Plan without the column, and reads no given out of it', () => {
    const headings = () => answerOf(call(host, 'readLesson')).setup.givens;
    const before = headings();
    const heading = Array.from({ length: sheetState(host, 'Plan').rows }, (_, index) => index + 1).find(
      (row) => valueAt(host, { sheet: 'Plan', row, column: 1 }) === 'key',
    );
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[heading ?? 0, 11, '']] });
    answerOf(call(host, 'setAbsent', 'c1-t1', true));
    expect(answerOf(call(host, 'readTeams')).classes[0]?.teams[0]?.absent).toBe(true);
    expect(headings()).toEqual(before);
  });
  it('refuses a team that is not in the Plan', () => {
    expect(call(host, 'setAbsent', 'nobody', true)).toMatchObject({ ok: false });
  });
});
