import { beforeEach, describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { deskSheetName } from '../../src/workbook/scratchSheet.ts';
import { words } from '../../src/workbook/words.ts';
import { answerOf, buildSetup, call, finish, open, run, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, typedInto, valueAt } from './cells.ts';
import { failBehind } from './hostFailure.ts';
import { setup } from './setup.ts';

const fern = 'Fern class';
const teachers = ['Plan', 'Help', 'Prepare'];
const saved = savedWith(setup);

let host: StandIn;
beforeEach(() => {
  host = open({ saved });
});
const tabs = () => host.book.sheets.filter(({ hidden }) => !hidden).map(({ name }) => name);
const idOf = (name: string) => sheetState(host, name).id;
const inView = () => {
  const { sheets, activeSheet } = host.view('teacher');
  return sheets.find(({ id }) => id === activeSheet)?.name;
};

describe('what students see', () => {
  it('is their class sheets, then Poll and Progress, once it is built; a build again hides nothing twice', () => {
    expect(tabs()).toEqual([fern, 'Moss class', 'Poll', 'Progress']);
    host.resetCounts();
    buildSetup(host, setup);
    expect(host.counts.host['Sheet.hideSheet']).toBeUndefined();
    expect(host.counts.host['Sheet.isSheetHidden']).toBe(teachers.length);
  });
  it('keeps the order that the teacher gave the tabs', () => {
    host.book.moveSheet(sheetState(host, 'Progress'), 0);
    buildSetup(host, { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] });
    expect(tabs()).toEqual(['Progress', fern, 'Moss class', 'Reed class', 'Poll']);
  });
  it('shows a teacher’s sheet at a press and leaves it in sight while they are in it; one press hides all', () => {
    answerOf(call(host, 'openSheet', idOf('Help')));
    answerOf(call(host, 'openSheet', idOf('Plan')));
    expect(inView()).toBe('Plan');
    buildSetup(host, { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] });
    expect(inView()).toBe('Plan');
    expect(tabs()).toContain('Plan');
    expect(tabs()).not.toContain('Help');
    answerOf(call(host, 'hideTeachersSheets'));
    expect(inView()).toBe(fern);
    expect(tabs()).toEqual([fern, 'Moss class', 'Reed class', 'Poll', 'Progress']);
  });
  it('leaves whoever is in a sheet of the class there when the others are hidden', () => {
    answerOf(call(host, 'openSheet', idOf('Plan')));
    answerOf(call(host, 'openSheet', idOf('Moss class')));
    answerOf(call(host, 'hideTeachersSheets'));
    expect(inView()).toBe('Moss class');
    expect(tabs()).not.toContain('Plan');
  });
  it('does not come to hold the Record or a late team’s leftovers, and the teacher stays where they were', () => {
    answerOf(call(host, 'openSheet', idOf('Moss class')));
    const [first] = answerOf(call(host, 'readRecord')).classes;
    if (first === undefined) throw new Error('Expected a class.');
    answerOf(call(host, 'saveRecord', [{ entry: first.proposal, base: null }]));
    expect(sheetState(host, 'Record').hidden).toBe(true);
    expect(inView()).toBe('Moss class');
  });
  it('is the same where a build stopped with a new Plan in view, and is gone on with', () => {
    const before = tabs();
    const plan = sheetState(host, 'Plan');
    const heading = Array.from({ length: plan.rows }, (_, index) => index + 1).find(
      (row) => host.book.value(plan, row, 1) === words.plan.key,
    );
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[heading ?? 0, 15, 'seats']] });
    answerOf(call(host, 'openSheet', idOf('Moss class')));
    failBehind(host, 'Spreadsheet.insertSheet');
    expect(call(host, 'startBuild', setup).ok).toBe(false);
    expect(inView()).toMatch(/^Plan/);
    finish(host, call(host, 'startBuild', setup));
    expect(host.book.sheets.filter(({ name }) => /^Plan/.test(name))).toHaveLength(2);
    expect(inView()).toBe('Moss class');
    expect(tabs()).toEqual(before);
  });
  it('leaves the teacher in a sheet that they opened after a build whose last answer was lost', () => {
    const page: File = { book: undefined };
    const more = { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] };
    let state = answerOf(run(host, workFor(page, 'startBuild', [more])));
    let before: File = { ...page };
    while (!state.finished) {
      before = { ...page };
      state = answerOf(run(host, workFor(page, 'continueBuild', [])));
    }
    answerOf(call(host, 'openSheet', idOf('Plan')));
    expect(answerOf(run(host, workFor(before, 'continueBuild', []))).finished).toBe(true);
    expect(inView()).toBe('Plan');
  });
  it('offers the teacher each of their sheets, and the desk’s own hidden one to nobody', () => {
    const { teachers: offered } = answerOf(call(host, 'readSheets'));
    expect(offered.map(({ name }) => name)).toEqual(['Plan', 'Prepare', 'Help']);
    expect(offered.map(({ name }) => name)).not.toContain(deskSheetName);
  });
});

describe('links for students', () => {
  it('lead from where the file is served to the sheet of each class', () => {
    host.servedAt('http://127.0.0.1:4317/?seat=student#gid=0');
    expect(answerOf(call(host, 'readSheets')).classes).toEqual(
      [fern, 'Moss class'].map((name) => ({
        name,
        address: `http://127.0.0.1:4317/?seat=student#gid=${idOf(name)}`,
      })),
    );
  });
});

describe('numbers of a team that were changed in the Plan', () => {
  const told = (key: string) => {
    const row = stepRow(host, { sheet: fern, key, step: 'cautions read' }) - 1;
    return valueAt(host, { sheet: fern, row, column: at.task });
  };
  const enter = (key: string, entry: string) =>
    typeIn(host, { sheet: fern, cells: [[stepRow(host, { sheet: fern, key, step: 'molar mass' }), at.entry, entry]] });
  /** Changes the first molarity in the team’s line of the Plan. */
  const change = (key: string, molarity: string) => {
    const { rows } = sheetState(host, 'Plan');
    for (let row = 1; row <= rows; row += 1) {
      if (valueAt(host, { sheet: 'Plan', row, column: 1 }) === key)
        typedInto(host, { sheet: 'Plan', row, column: 5, text: molarity });
    }
  };

  it('are told to a team that has typed, and to no other, until the table is built again', () => {
    const usual = words.class.helpAndWho;
    expect(told('c1-t1')).toBe(usual);
    enter('c1-t1', '119.00');
    expect(told('c1-t1')).toBe(usual);
    change('c1-t1', '0.350');
    change('c1-t2', '0.350');
    expect(told('c1-t1')).toBe(words.class.numbersChanged);
    expect(told('c1-t2')).toBe(usual);
    // The teacher sees of which team that is so.
    const { teams } = answerOf(call(host, 'readClass', fern));
    expect(teams.map(({ numbersChanged }) => numbersChanged)).toEqual([true, undefined]);
    // One of the team types on: the others may not have read it yet.
    enter('c1-t1', '119.0');
    expect(told('c1-t1')).toBe(words.class.numbersChanged);
    change('c1-t1', '0.300');
    expect(told('c1-t1')).toBe(usual);
    change('c1-t1', '0.350');
    buildSetup(host, { ...setup, ownNumbers: false });
    expect(told('c1-t1')).toBe(usual);
  });
});
