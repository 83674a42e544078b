import { beforeEach, describe, expect, it } from 'vitest';
import type { BuildAnswers } from '../../src/desk/building/buildNote.ts';
import type { ClassSetup, Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { answerOf, buildSetup, call, finish, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const saved = (() => {
  const host = open({ clock });
  buildSetup(host, setup);
  const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
  typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
  typeIn(host, { sheet, cells: [[row - 2, at.who, 'Ana, Ben']] });
  return host.save();
})();
let host: StandIn;
beforeEach(() => {
  host = open({ saved, clock });
});

const names = () => host.book.sheets.map(({ name }) => name);
const entry = (inSheet: string, key = 'c1-t1') =>
  valueAt(host, { sheet: inSheet, row: stepRow(host, { sheet: inSheet, key, step: 'molar mass' }), column: at.entry });
const withFern = (fern: Partial<ClassSetup>): Setup => ({
  ...setup,
  classes: setup.classes.map((one, index) => (index === 0 ? { ...one, ...fern } : one)),
});
const build = (wanted: Setup, answers: BuildAnswers = {}) => {
  const first = call(host, 'startBuild', wanted, answers);
  if (first.ok) finish(host, first);
  return first;
};
const questionOf = (outcome: ReturnType<typeof build>) => (outcome.ok ? undefined : outcome.problem.question);
/** Gives a class another name in the Plan, by hand. */
const renameByHand = (from: string, to: string) => {
  const rows = Array.from({ length: sheetState(host, 'Plan').rows }, (_, index) => index + 1).filter(
    (row) => valueAt(host, { sheet: 'Plan', row, column: 2 }) === from,
  );
  typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: rows.map((row) => [row, 2, to] as const) });
};

describe('a class whose name is changed in the Plan by hand', () => {
  beforeEach(() => renameByHand(sheet, 'Third period'));
  it('has that name everywhere at once, and keeps its sheet', () => {
    expect(answerOf(call(host, 'readLesson')).classes).toEqual(['Third period', 'Moss class']);
    expect(answerOf(call(host, 'readClass', 'Third period')).teams.map(({ team }) => team)).toEqual(['Otter', 'Heron']);
    expect(answerOf(call(host, 'readTeams')).classes[0]).toMatchObject({
      name: 'Third period',
      teams: [{ team: 'Otter', members: { members: [{ name: 'Ana' }, { name: 'Ben' }] } }, { team: 'Heron' }],
    });
    const later = open({ saved: host.save(), clock: () => new Date(clock().getTime() + 20 * 60_000) });
    expect(answerOf(call(later, 'recordDue')).due).toEqual(['Third period']);
    expect(call(host, 'readClass', sheet)).toMatchObject({ ok: false });
  });
  it('is reminded of until its record is kept, and no longer', () => {
    const [found] = answerOf(call(host, 'readRecord')).classes;
    if (found === undefined) throw new Error('Expected the class.');
    expect(found.proposal.className).toBe('Third period');
    answerOf(call(host, 'saveRecord', [{ entry: found.proposal, base: null }]));
    expect(answerOf(call(host, 'recordDue')).due).toEqual([]);
  });
  it('keeps sheet, rows, entries and people when it is built again, and its tab follows', () => {
    const { id } = sheetState(host, sheet);
    const { setup: there } = answerOf(call(host, 'readLesson'));
    expect(build(there)).toMatchObject({ ok: true });
    expect(sheetState(host, 'Third period').id).toBe(id);
    expect(entry('Third period')).toBe('119.00');
    expect(valueAt(host, { sheet: 'Third period', row: 2, column: 1 })).toBe('Third period');
    expect(names().filter((name) => name.includes('kept'))).toEqual([]);
    const before = workbookText(host);
    build(there);
    expect(workbookText(host)).toBe(before);
  });
  it('leaves its old name to a class of its own', () => {
    finish(host, call(host, 'addClass', sheet, ['Pike']));
    expect(answerOf(call(host, 'readLesson')).classes).toEqual(expect.arrayContaining(['Third period', sheet]));
    expect(answerOf(call(host, 'readClass', sheet)).teams.map(({ team }) => team)).toEqual(['Pike']);
    expect(answerOf(call(host, 'readClass', 'Third period')).teams.map(({ team }) => team)).toEqual(['Otter', 'Heron']);
    expect(names().filter((name) => name.includes('kept'))).toEqual([]);
  });
});

describe('a name that is changed in the sidebar', () => {
  it('is plainly the same where only case or spaces differ', () => {
    expect(build(withFern({ name: 'Fern Class', teams: ['otter', 'Heron'] }))).toMatchObject({ ok: true });
    expect(names().filter((name) => name.includes('kept'))).toEqual([]);
    expect(entry('Fern Class')).toBe('119.00');
    expect(answerOf(call(host, 'readClass', 'Fern Class')).teams[0]).toMatchObject({ team: 'otter', key: 'c1-t1' });
  });
  it('is asked about where people have typed, before anything is written', () => {
    const before = workbookText(host);
    const asked = build(withFern({ teams: ['Otters', 'Heron'] }));
    expect(questionOf(asked)).toEqual({
      about: 'names',
      pairs: [{ kind: 'team', from: 'Otter', to: 'Otters', className: sheet }],
    });
    expect(workbookText(host)).toBe(before);
    expect(build(withFern({ teams: ['Otters', 'Heron'] }), { names: 'same' })).toMatchObject({ ok: true });
    expect(entry(sheet)).toBe('119.00');
    expect(answerOf(call(host, 'readClass', sheet)).teams[0]).toMatchObject({
      team: 'Otters',
      members: [{ name: 'Ana' }, { name: 'Ben' }],
    });
  });
  it('is not asked about where nobody has typed: the team keeps its key', () => {
    expect(build(withFern({ teams: ['Otter', 'Herons'] }))).toMatchObject({ ok: true });
    expect(answerOf(call(host, 'readClass', sheet)).teams[1]).toMatchObject({ team: 'Herons', key: 'c1-t2' });
  });
});

describe('cells that people typed', () => {
  it('are set aside only after a yes that counts them', () => {
    const before = workbookText(host);
    const gone = withFern({ teams: ['Heron'] });
    expect(questionOf(build(gone))).toEqual({
      about: 'typed',
      cells: 2,
      where: [{ className: sheet, team: 'Otter', cells: 2 }],
    });
    expect(questionOf(build(withFern({ teams: ['Vole', 'Heron'] }), { names: 'other' }))).toMatchObject({
      about: 'typed',
      cells: 2,
    });
    expect(workbookText(host)).toBe(before);
    expect(build(gone, { setAside: true })).toMatchObject({ ok: true });
    expect(names().some((name) => name.startsWith('Fern class, kept '))).toBe(true);
  });
  it('are counted class by class for another activity, which begins the next lesson', () => {
    const plain: Setup = {
      ...setup,
      activity: 'solution from a solid',
      givens: { formula: 'NaHCO3', molarity: '0.250', flask: '200', ion: 'Na+' },
    };
    expect(questionOf(build(plain))).toMatchObject({ about: 'next lesson', where: [{ cells: 1 }] });
  });
  it('are not asked about where a class goes in which nobody has typed', () => {
    expect(build({ ...setup, classes: setup.classes.slice(0, 1) })).toMatchObject({ ok: true });
    expect(names().some((name) => name.startsWith('Moss class, kept '))).toBe(true);
  });
});
