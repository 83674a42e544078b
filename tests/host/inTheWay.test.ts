import { beforeEach, describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { columnLetters } from '../../src/workbook/reference.ts';
import { cases } from '../depth.ts';
import { answerOf, buildSetup, call, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { saveAtChanges } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const clock = () => new Date('2026-03-02T10:00:00Z');
const saved = (() => {
  const host = open({ clock });
  buildSetup(host, setup);
  typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), at.entry, '119.00']] });
  return host.save();
})();
let host: StandIn;
beforeEach(() => {
  host = open({ saved, clock });
});

const molarMass = stepRow(open({ saved, clock }), { sheet, key: 'c1-t1', step: 'molar mass' });
const heading = stepRow(open({ saved, clock }), { sheet, key: 'c1-t1', step: 'cautions read' }) - 1;
const view = () => answerOf(call(host, 'readClass', sheet));
const noteAt = (row: number, column: number): string => host.book.cell(sheetState(host, sheet), row, column).note ?? '';
const formulaAt = (row: number, column: number) =>
  host.book.cell(sheetState(host, sheet), row, column).content?.kind === 'formula';

const places = [
  { where: 'a check', row: molarMass, column: at.check },
  { where: 'what to look at', row: molarMass + 1, column: at.lookAt },
  { where: 'a hint', row: molarMass + 3, column: at.hint },
  { where: 'the cell of the formula', row: heading, column: at.check },
] as const;

describe.each(places)('something typed in $where', ({ row, column }) => {
  const cell = `${columnLetters(column)}${row}`;
  const type = (text = 'x') => typeIn(host, { sheet, cells: [[row, column, text]] });

  it('keeps the checks of that team from showing, and Class now names it by its cell', () => {
    type();
    const { inTheWay, teams, notYetKnown } = view();
    expect(notYetKnown).toBe(15);
    expect(inTheWay).toEqual([expect.stringContaining(`${cell} holds “x”, so the checks of Otter cannot show.`)]);
    expect(teams[1]?.steps.every(({ check }) => check !== 'not yet known')).toBe(true);
  });
  it('is moved into a note by one press, which names it, and the checks come back', () => {
    type();
    const outcome = answerOf(call(host, 'checkAgain'));
    expect(outcome.moved).toEqual([expect.stringContaining(`${cell} held “x”`)]);
    expect(noteAt(row, column)).toContain('“x”');
    expect(view()).toMatchObject({ notYetKnown: 0 });
    expect(view().inTheWay).toBeUndefined();
    expect(view().teams[0]?.done).toBe(1);
    expect(formulaAt(heading, at.check)).toBe(true);
    expect(answerOf(call(host, 'checkAgain'))).toEqual({ renewed: 0 });
  });
  it('is moved aside by a build as well, and nothing typed is lost', () => {
    type('an idea');
    buildSetup(host, setup);
    expect(noteAt(row, column)).toContain('“an idea”');
    expect(view()).toMatchObject({ notYetKnown: 0 });
    expect(view().teams[0]?.done).toBe(1);
  });
  it('is in its cell or in a note wherever the press is stopped, and the next press heals the class', () => {
    type('an idea');
    const changes = saveAtChanges(host);
    answerOf(call(host, 'checkAgain'));
    expect(changes.length).toBeGreaterThan(1);
    const each = cases({ short: 3, deep: 1 });
    for (const { saved: stopped, place, name } of changes.filter((one) => one.place % each === 0 || one.place <= 3)) {
      host = open({ saved: stopped, clock });
      const stands = `${valueAt(host, { sheet, row, column })}\n${noteAt(row, column)}`;
      expect([place, name, stands]).toEqual([place, name, expect.stringContaining('an idea')]);
      answerOf(call(host, 'checkAgain'));
      expect([place, view().notYetKnown, noteAt(row, column).split('an idea')]).toMatchObject([
        place,
        0,
        { length: 2 },
      ]);
    }
  });
});

describe('something typed where a check belongs', () => {
  it('is in a note before its lesson is put away, since the places of checks are emptied when that is opened again', () => {
    typeIn(host, { sheet, cells: [[molarMass, at.lookAt, 'an idea']] });
    const about = { sheetId: sheetState(host, sheet).id, was: sheet, keptName: 'Away', about: '{}' };
    const wish = { seen: [], read: { kinds: [] }, ...about };
    expect(host.run('teacher', 'putAside', [layoutVersion, wish])).toMatchObject({ ok: true });
    expect(host.book.cell(sheetState(host, 'Away'), molarMass, at.lookAt).note).toContain('“an idea”');
  });
});

describe('checks that are still being worked out', () => {
  it('have nothing in their way', () => {
    const slow = open({ saved, clock, delays: true });
    host = slow;
    typeIn(host, { sheet, cells: [[molarMass, at.entry, '118.00']] });
    expect(view().inTheWay).toBeUndefined();
    expect(answerOf(call(host, 'checkAgain')).moved).toBeUndefined();
    expect(noteAt(heading, at.check)).toBe('');
  });
  it('are left to the host by a press, while one that failed begins anew', () => {
    host = open({ saved, clock, delays: true });
    typeIn(host, { sheet, cells: [[molarMass, at.entry, '118.00']] });
    expect(valueAt(host, { sheet, row: heading, column: at.check })).toBe('Loading...');
    host.resetCounts();
    expect(answerOf(call(host, 'checkAgain'))).toEqual({ renewed: 0, waiting: 3 });
    expect(host.counts.host['Range.setValue']).toBeUndefined();
    expect(valueAt(host, { sheet, row: heading, column: at.check })).toBe('Loading...');

    host = open({ saved, clock });
    host.failCalls('CHECKTEAM', 1);
    typeIn(host, { sheet, cells: [[molarMass, at.entry, '118.00']] });
    expect(view().notYetKnown).toBe(15);
    expect(answerOf(call(host, 'checkAgain'))).toEqual({ renewed: 1 });
    expect(view().notYetKnown).toBe(0);
  });
});

describe('a check that hangs', () => {
  it('begins anew where presses a minute apart both find it at work, and is never taken for wrong', () => {
    let now = clock().getTime();
    const press = (seconds: number) => {
      now += seconds * 1000;
      return answerOf(call(host, 'checkAgain'));
    };
    host = open({ saved, clock: () => new Date(now), delays: true });
    host.release();
    typeIn(host, { sheet, cells: [[molarMass, at.entry, '118.00']] });
    expect([press(0), press(59)]).toEqual([
      { renewed: 0, waiting: 1 },
      { renewed: 0, waiting: 1 },
    ]);
    expect(press(1)).toEqual({ renewed: 1 });
    expect(view().teams[0]?.steps.every(({ check }) => check === 'not yet known')).toBe(true);
    // Begun anew, so it has its minute again; and what has arrived is left alone.
    expect(press(1)).toEqual({ renewed: 0, waiting: 1 });
    host.release();
    expect(press(90)).toEqual({ renewed: 0 });
    expect(view().notYetKnown).toBe(0);
    expect(host.save()).not.toContain('labrow.waiting');
  });
});

describe('what was noted on a cell before', () => {
  it('stays above what is moved there, and a formula is kept as it was typed', () => {
    host.book.decorate(sheetState(host, sheet), molarMass, at.lookAt, (cell) => ({
      ...cell,
      note: 'ask at the bench',
    }));
    typeIn(host, { sheet, seat: 'teacher', cells: [[molarMass, at.lookAt, '=1+1']] });
    answerOf(call(host, 'checkAgain'));
    expect(noteAt(molarMass, at.lookAt)).toMatch(/^ask at the bench\n.*“=1\+1”$/);
  });
});
