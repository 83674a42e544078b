import { beforeEach, describe, expect, it } from 'vitest';
import type { BuildState } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, classRows, layoutVersion } from '../../src/workbook/layout.ts';
import { cases } from '../depth.ts';
import { answerOf, buildSetup, call, finish, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { actAtEveryCall, type Change, changesOf, savedBefore } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const yes = { names: 'other', setAside: true } as const;
const [fern, moss] = setup.classes;
if (fern === undefined || moss === undefined) throw new Error('Expected two classes.');
const three = { ...fern, teams: ['Otter', 'Heron', 'Pike'] };
/** A team that is gone: the class gets a new sheet. */
const moved: Setup = setup;
const withoutMoss: Setup = { ...setup, classes: [three] };

const saved = (() => {
  const host = open({ clock });
  buildSetup(host, { ...setup, classes: [three, moss] });
  typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), at.entry, '119.00']] });
  typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t2', step: 'molar mass' }), at.entry, '12']] });
  return host.save();
})();
let host: StandIn;
beforeEach(() => {
  host = open({ saved, clock });
});

const keptName = (start = sheet): string => {
  const found = host.book.sheets.find(({ name }) => name.startsWith(`${start}, kept`));
  if (found === undefined) throw new Error(`Expected a kept sheet of ${start}.`);
  return found.name;
};
const formulasIn = (name: string): readonly string[] =>
  [...sheetState(host, name).cells.values()].flatMap(({ content }) =>
    content?.kind === 'formula' ? [JSON.stringify(content)] : [],
  );
const entry = (name: string, key: string, step: string): string =>
  valueAt(host, { sheet: name, row: stepRow(host, { sheet: name, key, step }), column: at.entry });
const type = (name: string, key: string, step: string, text: string) =>
  typeIn(host, { sheet: name, cells: [[stepRow(host, { sheet: name, key, step }), at.entry, text]] });
/** Builds until the class has its new sheet, and not to the end. */
function buildUntil(wanted: Setup, isThere: () => boolean): BuildState {
  let state = answerOf(call(host, 'startBuild', wanted, yes));
  while (!isThere()) state = answerOf(call(host, 'continueBuild'));
  expect(state.finished).toBe(false);
  return state;
}
/** Changes that the rest of a build will make: it is built in a copy of the file. */
function changesToCome(state: BuildState): readonly Change[] {
  const copy = open({ saved: host.save(), clock });
  const changes = changesOf(copy);
  finish(copy, { ok: true, value: state });
  return changes;
}
const isKept = (start: string) => () => host.book.sheets.some(({ name }) => name.startsWith(`${start}, kept`));

describe('a class sheet that was put aside', () => {
  it('says at its top that it is not checked, and links to the sheet in use', () => {
    buildSetup(host, moved);
    expect(valueAt(host, { sheet: keptName(), row: classRows.headings, column: at.task })).toMatch(
      /no longer checked.*sheet in use/,
    );
    expect(formulasIn(keptName()).filter((text) => text.includes(`#gid=${sheetState(host, sheet).id}`))).toHaveLength(
      1,
    );
  });
  it('says so without a link where no sheet is in use any more', () => {
    buildSetup(host, withoutMoss);
    expect(valueAt(host, { sheet: keptName('Moss class'), row: classRows.headings, column: at.task })).toMatch(
      /no longer checked\.$/,
    );
  });
  it('checks nothing, shows what its checks said as words of that time, and keeps the formula in its tag', () => {
    const before = formulasIn(sheet).filter((text) => text.includes('CHECKTEAM'));
    expect(before).toHaveLength(3);
    buildSetup(host, moved);
    const kept = keptName();
    expect(formulasIn(kept).filter((text) => text.includes('CHECKTEAM'))).toEqual([]);
    const row = stepRow(host, { sheet: kept, key: 'c1-t1', step: 'molar mass' });
    const wordAt = () => valueAt(host, { sheet: kept, row, column: at.check });
    expect(wordAt()).toBe('then: on target');
    host.resetCounts();
    type(kept, 'c1-t1', 'molar mass', '7');
    expect(wordAt()).toBe('then: on target');
    expect(host.counts.functions).toEqual({});
    expect(valueAt(host, { sheet: kept, row: row - 2, column: at.check })).toBe('Checks are off');
    const [tag] = sheetState(host, kept).metadata.map(({ value }) => JSON.parse(value) as { check?: string });
    // The Plan that it reads was kept as well, so it goes by another name.
    const ranges = (text: string) => text.replace(/('[^']+'|\b[A-Z][a-z]+)!/g, '');
    expect(before.map(ranges).some((text) => text.includes(ranges(tag?.check ?? '?')))).toBe(true);
  });
});

describe('what is typed into a sheet after it was put aside, while the build goes on', () => {
  it('comes along at the end where its row is still blank, and the build says how much', () => {
    const first = buildUntil(moved, isKept(sheet));
    type(keptName(), 'c1-t1', 'moles of solute', '0.0600');
    const last = finish(host, { ok: true, value: first });
    expect(entry(sheet, 'c1-t1', 'moles of solute')).toBe('0.0600');
    expect(last.late).toMatch(/^1 cell was typed into an old sheet meanwhile and copied here\.$/);
  });
  it('is never written over what stands there by then, and is counted', () => {
    const first = buildUntil(moved, isKept(sheet));
    type(keptName(), 'c1-t1', 'moles of solute', '0.0600');
    type(sheet, 'c1-t1', 'moles of solute', '0.0700');
    const last = finish(host, { ok: true, value: first });
    expect(entry(sheet, 'c1-t1', 'moles of solute')).toBe('0.0700');
    expect(entry(keptName(), 'c1-t1', 'moles of solute')).toBe('0.0600');
    expect(last.late).toMatch(/^1 cell was .*left there/);
  });
  it('does not bring back what a team has cleared in its new row', () => {
    const first = buildUntil(moved, isKept(sheet));
    type(sheet, 'c1-t1', 'molar mass', '');
    const last = finish(host, { ok: true, value: first });
    expect(entry(sheet, 'c1-t1', 'molar mass')).toBe('');
    expect(last.late).toBeUndefined();
  });
  it('is counted for a class that is no longer in the plan', () => {
    const first = buildUntil(withoutMoss, isKept('Moss class'));
    type(keptName('Moss class'), 'c2-t1', 'molar mass', '119');
    expect(finish(host, { ok: true, value: first }).late).toMatch(/^1 cell was .*left there/);
  });
  it('comes along and is told where the last step puts a sheet aside', () => {
    buildUntil(moved, isKept(sheet));
    type(keptName(), 'c1-t1', 'moles of solute', '0.0600');
    const { id } = sheetState(host, 'Moss class');
    const wish = { seen: [], read: { kinds: [] }, sheetId: id, was: 'Moss class', keptName: 'Moss class, kept' };
    const last = { show: null, emptySheet: null };
    expect(host.run('teacher', 'putAside', [layoutVersion, { ...wish, last }])).toMatchObject({
      ok: true,
      value: { late: { carried: 1, left: 0 } },
    });
    expect(entry(sheet, 'c1-t1', 'moles of solute')).toBe('0.0600');
  });
  it('comes along wherever the rest of the build is stopped, once', () => {
    const first = buildUntil(moved, isKept(sheet));
    type(keptName(), 'c1-t1', 'moles of solute', '0.0600');
    type(keptName(), 'c1-t2', 'moles of solute', '0.0500');
    type(sheet, 'c1-t2', 'moles of solute', '0.0700');
    const changes = changesToCome(first);
    const each = cases({ short: 37, deep: 1 });
    const tried = changes.filter(({ place }) => place % each === 0 || place > changes.length - 6);
    const stops = savedBefore(host, tried);
    finish(host, { ok: true, value: first });
    expect(host.save()).not.toContain('labrow.taken');
    expect(stops.size).toBe(tried.length);
    for (const [{ place, name }, stopped] of stops) {
      host = open({ saved: stopped, clock });
      const { building } = answerOf(call(host, 'readLesson'));
      if (building !== undefined) finish(host, { ok: true, value: building });
      expect([place, name, entry(sheet, 'c1-t1', 'moles of solute')]).toEqual([place, name, '0.0600']);
      expect([place, name, entry(sheet, 'c1-t2', 'moles of solute')]).toEqual([place, name, '0.0700']);
    }
  }, 600_000);
});

describe('what a team types into its new sheet while its old entries are on their way there', () => {
  it('stays, and the old entry stays in the old sheet', () => {
    const hasRows = () =>
      [...sheetState(host, sheet).cells.values()].some(
        ({ content }) => content?.kind === 'text' && content.text === 'molar mass',
      );
    let typed = 0;
    const { stop } = actAtEveryCall(host, (called) => {
      // Asked for between the look at the new sheet and what is written into it.
      if (called !== 'Sheet.getMaxRows' || typed > 0 || !isKept(sheet)() || !hasRows()) return;
      type(sheet, 'c1-t1', 'molar mass', '118.9');
      typed += 1;
    });
    finish(host, call(host, 'startBuild', moved, yes));
    stop();
    expect(typed).toBe(1);
    expect(entry(sheet, 'c1-t1', 'molar mass')).toBe('118.9');
    expect(entry(sheet, 'c1-t2', 'molar mass')).toBe('12');
    expect(entry(keptName(), 'c1-t1', 'molar mass')).toBe('119.00');
  });
});

describe('what a teacher has put on and beside a sheet that is put aside', () => {
  const step = (key: string, name: string, inSheet = sheet) => stepRow(host, { sheet: inSheet, key, step: name });
  const noteAt = (inSheet: string, row: number, column: number): string =>
    host.book.cell(sheetState(host, inSheet), row, column).note ?? '';
  const note = (row: number, column: number, text: string) =>
    host.book.decorate(sheetState(host, sheet), row, column, (cell) => ({ ...cell, note: text }));
  const beside = sheetState(open({ saved, clock }), sheet).columns;
  const put = (row: number, column: number, text: string) =>
    typeIn(host, { sheet, seat: 'teacher', cells: [[row, column, text]] });

  it('is in the rows of the same teams afterwards, notes as well, and once where the end of the build is made again', () => {
    const row = step('c1-t2', 'moles of solute');
    note(row, at.entry, 'ask about the zero');
    put(row, beside, 'mine');
    put(row - 3, beside, '=1+1');
    put(step('c1-t3', 'molar mass'), beside, 'of a team that goes');
    const first = buildUntil(moved, isKept(sheet));
    const each = cases({ short: 3, deep: 1 });
    const tried = changesToCome(first)
      .slice(-9)
      .filter(({ place }) => place % each === 0);
    const stops = savedBefore(host, tried);
    const last = finish(host, { ok: true, value: first });
    const kept = keptName();
    expect(last.late).toContain(`what is your own in “${kept}”`);
    expect(last.late).toMatch(/: [A-Z]+\d+, [A-Z]+\d+\.$/);
    const stands = () => {
      const now = step('c1-t2', 'moles of solute');
      expect(noteAt(sheet, now, at.entry)).toBe('ask about the zero');
      expect(valueAt(host, { sheet, row: now, column: beside })).toBe('mine');
      expect(valueAt(host, { sheet: kept, row: row - 3, column: beside })).toBe('2');
    };
    stands();
    expect(stops.size).toBe(tried.length);
    for (const stopped of stops.values()) {
      host = open({ saved: stopped, clock });
      const { building } = answerOf(call(host, 'readLesson'));
      if (building !== undefined) finish(host, { ok: true, value: building });
      stands();
    }
  });
  it('is named where a formula in a sheet of the teacher’s own looks at it', () => {
    host.book.addSheet('Roster', 0);
    typeIn(host, { sheet: 'Roster', seat: 'teacher', cells: [[2, 2, `='${sheet}'!C20`]] });
    expect(buildSetup(host, moved).late).toMatch(/“Roster”.*: B2\.$/);
  });
  it('is said nothing of where there is nothing', () => {
    expect(buildSetup(host, moved).late).toBeUndefined();
  });
});
