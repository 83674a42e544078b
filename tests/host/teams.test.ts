import { beforeEach, describe, expect, it } from 'vitest';
import type { StandIn } from '../../scripts/preview/standin/openStandIn.ts';
import type { BuildState, Outcome } from '../../src/host/calls.ts';
import { answerOf, buildSetup, call, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const own = { ...setup, ownNumbers: true };
const saved = (() => {
  const host = open();
  buildSetup(host, own);
  return host.save();
})();

let host: StandIn;
beforeEach(() => {
  host = open({ saved, clock: () => new Date('2026-03-02T10:00:00Z') });
});

function finish(first: Outcome<BuildState>): void {
  let state = answerOf(first);
  while (!state.finished) state = answerOf(call(host, 'continueBuild'));
}

/** Every cell that people and the trigger write, of every block of a sheet, by team and step. */
function entered(name: string): readonly string[] {
  const { rows } = sheetState(host, name);
  const at = (row: number, column: number) => valueAt(host, { sheet: name, row, column });
  const found: string[] = [];
  for (let row = 2; row <= rows; row += 1) {
    if (at(row, 12) === '') continue;
    found.push(
      `${row} ${at(row, 11)} ${at(row, 12)}: ${[2, 7, 8, 9, 10, 13].map((column) => at(row, column)).join(' | ')}`,
    );
  }
  return found;
}
const steps = (key: string, inSheet = sheet): readonly number[] =>
  Array.from({ length: sheetState(host, inSheet).rows }, (_, index) => index + 1).filter(
    (row) =>
      valueAt(host, { sheet: inSheet, row, column: 11 }) === key &&
      valueAt(host, { sheet: inSheet, row, column: 12 }) !== '',
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
          [row, 2, `${row}.50`],
          [row, 7, '1'],
          [row, 8, 'calculates'],
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
    typeIn(host, { sheet, cells: [[row, 2, '119.00']] });
    expect(valueAt(host, { sheet, row, column: 4 })).toBe('on target');
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
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(/^Expected .+ for .+, received .+\. /);
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
    typeIn(host, { sheet, cells: [[row, 7, '2']] });
    const talk = () => answerOf(call(host, 'readClass', sheet)).talkFirst.map(({ team }) => team);
    expect(talk()).toContain('Heron');
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    expect(talk()).not.toContain('Heron');
    const fern = answerOf(call(host, 'readRecord')).classes[0];
    expect(fern?.proposal.present).toBe('0 of 2 teams, 1 team absent');
    expect(fern?.names.absent).toEqual(['Heron']);
  });
  it('counts no more on another day', () => {
    answerOf(call(host, 'setAbsent', 'c1-t2', true));
    host = open({ saved: host.save(), clock: () => new Date('2026-03-03T10:00:00Z') });
    expect(heron()).toBe(false);
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
