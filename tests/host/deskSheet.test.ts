import { beforeEach, describe, expect, it } from 'vitest';
import { type CallName, callNames, type Outcome } from '../../src/host/calls.ts';
import { copyOfFile } from '../../src/preview/standin/copyOfFile.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { deskSheetName } from '../../src/workbook/scratchSheet.ts';
import { answerOf, buildSetup, call, open, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const saved = savedWith(setup);
let host: StandIn;
beforeEach(() => {
  host = open({ saved });
});
const people = { teacher: 'teacher@class.invalid', student: 'student@class.invalid' };
const asked = (seat: 'teacher' | 'student', name: CallName, wish: unknown) =>
  host.run(seat, name, [layoutVersion, wish]) as Outcome<unknown>;

describe('the hidden sheet that tells who teaches', () => {
  it('is made by a build: hidden, with a sentence that says why, and nobody but the builder let in', () => {
    const desk = sheetState(host, deskSheetName);
    expect(desk.hidden).toBe(true);
    expect(valueAt(host, { sheet: deskSheetName, row: 1, column: 1 })).toMatch(/teacher’s part of the Labrow sidebar/);
    expect(desk.protections).toHaveLength(1);
    expect(desk.protections[0]).toMatchObject({ kind: 'SHEET', warningOnly: false, editors: [people.teacher] });
    expect(host.view('student').sheets.find(({ name }) => name === deskSheetName)?.hidden).toBe(true);
  });
  it('stays as it is when built again: whom the owner lets in stays in', () => {
    sheetState(host, deskSheetName).protections[0]?.editors.push(people.student);
    buildSetup(host, { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] });
    expect(sheetState(host, deskSheetName).protections[0]?.editors).toEqual([people.teacher, people.student]);
    expect(host.book.sheets.filter(({ name }) => name.startsWith(deskSheetName))).toHaveLength(1);
  });
  it('is made once more where it is gone or has lost its protection, as in a copy', () => {
    host.book.removeSheet(sheetState(host, deskSheetName));
    expect(asked('student', 'readBook', { kinds: [] }).ok).toBe(true);
    buildSetup(host, setup);
    expect(asked('student', 'readBook', { kinds: [] }).ok).toBe(false);
    sheetState(host, deskSheetName).protections = [];
    expect(asked('student', 'readBook', { kinds: [] }).ok).toBe(true);
    buildSetup(host, setup);
    expect(asked('student', 'readBook', { kinds: [] }).ok).toBe(false);
  });
  it('comes with a build in a copy of the file that has lost its tags, in which no sheet is made twice', () => {
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    const names = () => host.book.sheets.map(({ name }) => name).sort();
    const before = names();
    host = open({ saved: copyOfFile(host.save(), { tags: true }), fileId: 'copy' });
    expect(answerOf(call(host, 'readLesson')).built).toBe(true);
    buildSetup(host, setup);
    expect(names()).toEqual(before);
    expect(valueAt(host, { sheet, row, column: at.entry })).toBe('119.00');
    expect(answerOf(call(host, 'readClass', sheet)).teams[0]?.done).toBe(1);
  });
  it('leaves what is in view in view', () => {
    const view = host.view('teacher');
    expect(view.sheets.find(({ id }) => id === view.activeSheet)?.name).toBe(sheet);
  });
  it('goes when a copy is emptied', () => {
    answerOf(call(host, 'emptyCopy', { fileName: 'Workbook', keepHints: false, removeOthers: false }));
    expect(host.book.sheets.map(({ name }) => name)).not.toContain(deskSheetName);
  });
});

describe('a student', () => {
  const wishes: Readonly<Partial<Record<CallName, unknown>>> = {
    readBook: { kinds: ['plan'] },
    writeCells: { seen: [], read: { kinds: [] }, cells: [] },
    putAside: { seen: [], read: { kinds: [] }, sheetId: 1, was: 'x', keptName: 'x' },
    emptyFile: { seen: [], read: { kinds: [] }, fileName: 'Workbook', anew: [], removeOthers: true, note: '' },
  };
  it.each(Object.entries(wishes))('is kept out of %s, in a plain sentence, and nothing changes', (name, wish) => {
    const before = workbookText(host);
    expect(asked('student', name as CallName, wish)).toEqual({
      ok: false,
      problem: { message: 'This part is for the teacher of the class.', reason: 'teacher' },
    });
    expect(workbookText(host)).toBe(before);
  });
  it('is kept out of bringing a sheet to a plan', () => {
    const before = workbookText(host);
    const run = host.run;
    let refused: unknown;
    // The teacher's own page makes the call; the seat is what differs.
    const asStudent = Object.assign(Object.create(host) as StandIn, {
      run: (_: 'teacher' | 'student', name: string, args: readonly unknown[]) => {
        if (name !== 'applySheet') return run('teacher', name, args);
        refused = run('student', name, args);
        return refused;
      },
    });
    expect(call(asStudent, 'startBuild', { ...setup, classes: setup.classes.slice(0, 1) }).ok).toBe(false);
    expect(refused).toMatchObject({ ok: false, problem: { reason: 'teacher' } });
    expect(workbookText(host)).toBe(before);
  });
  it('types, is checked and counted, opens a page, and may check again and try the file out', () => {
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    expect(valueAt(host, { sheet, row, column: at.check })).toBe('on target');
    expect(valueAt(host, { sheet, row, column: at.tries })).toBe('1');
    expect(host.triggerErrors).toEqual([]);
    expect(host.run('student', 'checkAgain', [layoutVersion])).toMatchObject({ ok: true });
    expect(asked('student', 'openPage', { page: 'sidebar', about: '' }).ok).toBe(true);
    expect(asked('student', 'show', { sheetId: sheetState(host, sheet).id }).ok).toBe(true);
    expect(asked('student', 'tryHost', { steps: [] }).ok).toBe(true);
    expect(host.choose('student', 'checkAgainFromMenu')).toBeNull();
  });
  it('is shown no sheet that is hidden, and hides none', () => {
    const before = workbookText(host);
    const shown = sheetState(host, sheet).id;
    for (const wish of [{ sheetId: sheetState(host, 'Plan').id }, { sheetId: shown, hide: ['poll'] }])
      expect(asked('student', 'show', wish)).toMatchObject({ ok: false, problem: { reason: 'teacher' } });
    expect(workbookText(host)).toBe(before);
  });
  it('is let in as before in a file that has no such sheet yet', () => {
    const older = open();
    expect(older.run('student', 'readBook', [layoutVersion, { kinds: [] }])).toMatchObject({ ok: true });
  });
  it('has every call either behind the curb or needed by students', () => {
    const free: readonly CallName[] = ['show', 'openPage', 'checkAgain', 'tryHost'];
    expect([...Object.keys(wishes), 'applySheet', ...free].sort()).toEqual([...callNames].sort());
  });
});

describe('the teacher', () => {
  it('is let in, and pays three calls of the host for being asked', () => {
    host.resetCounts();
    expect(asked('teacher', 'readBook', { kinds: [] }).ok).toBe(true);
    expect(host.counts.host).toMatchObject({
      'Spreadsheet.getSheetByName': 1,
      'Sheet.getProtections': 1,
      'Protection.canEdit': 1,
    });
  });
});

describe('a host that lets nobody be taken off', () => {
  it('builds all the same, and everybody goes on being let in', () => {
    const stubborn = open({ troubles: { editorsStay: true } });
    expect(buildSetup(stubborn, setup).finished).toBe(true);
    expect(stubborn.run('student', 'readBook', [layoutVersion, { kinds: [] }])).toMatchObject({ ok: true });
  });
});
