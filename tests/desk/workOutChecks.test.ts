import { beforeEach, describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { deskWords } from '../../src/desk/words.ts';
import { classColumns as at, classRows, countedColumn } from '../../src/workbook/layout.ts';
import { writtenColumn } from '../../src/workbook/typedOver.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';

const ofClass = (name: string) => ({ ...setup, classes: setup.classes.filter((one) => one.name === name) });
const bySidebar = {
  ...ofClass(moss),
  settings: { ...setup.settings, 'checks come from': 'sidebar' as const },
};

let file: PaperFile;
/** Fern class at a lesson with formulas, Moss class at the next one, whose checks the sidebar works out. */
beforeEach(() => {
  file = builtLesson();
  Object.assign(file.state, { today: '2026-03-09', now: Date.parse('2026-03-09T10:15:00Z') });
  file.finish(file.call('nextLesson', bySidebar));
  file.put(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry, '119.00');
  file.state.activeSheet = file.sheetCalled(fern).id;
});
const checkOf = (sheet: string, key: string) => file.cell(sheet, file.rowOf(sheet, key, 'molar mass'), at.check);

describe('checks that the sidebar works out beside a lesson whose checks are formulas', () => {
  it('are asked for whichever lesson the page speaks of, and written where they are wanted alone', () => {
    expect(valueIn(file.call('readLesson'))).toMatchObject({ classes: [fern, moss], worksOutChecks: true });
    expect(valueIn(file.call('workOutChecks')).rows).toBeGreaterThan(0);
    // On paper no formula hands the team its numbers, so that the judge finds none.
    expect([checkOf(moss, 'c2-t1'), checkOf(fern, 'c1-t1')]).toEqual(['unreadable', '']);
    expect(valueIn(file.call('workOutChecks')).rows).toBe(0);
  });
  it('are those of the numbers that the formulas hand to the team, and are written over none of them', () => {
    const names = file.sheetCalled(moss).cells[classRows.title - 1] ?? [];
    const plan = file.sheetCalled('Plan 2').cells;
    const headings = plan.find(([key]) => key === words.plan.key) ?? [];
    const line = plan.find(([key]) => key === 'c2-t1') ?? [];
    const heading = file.rowOf(moss, 'c2-t1');
    for (let column: number = at.givens; column <= names.length; column += 1) {
      const place = headings.indexOf(names[column - 1] ?? '');
      if (names[column - 1] !== '' && place >= 0) file.put(moss, heading, column, line[place] ?? '');
    }
    const given = structuredClone(file.sheetCalled(moss).cells[heading - 1]);
    valueIn(file.call('workOutChecks'));
    expect(checkOf(moss, 'c2-t1')).toBe('on target');
    expect(file.sheetCalled(moss).cells[heading - 1]?.slice(writtenColumn - 1)).toEqual(
      given?.slice(writtenColumn - 1),
    );
  });
  it('are asked for by no file without such a lesson', () => {
    expect(valueIn(builtLesson().call('readLesson')).worksOutChecks).toBe(false);
  });
  it('are written though the Plan of the other lesson cannot be read, and that is said', () => {
    const plan = file.state.sheets.find(({ tag }) => tag?.kind === 'plan');
    const heading = plan?.cells.find(([key, name]) => key === words.plan.key && name === words.plan.className);
    heading?.splice(0, 2, 'keys', 'classes');
    expect(problemOf(file.call('workOutChecks')).message).toContain(words.plan.key);
    expect(checkOf(moss, 'c2-t1')).toBe('unreadable');
  });
});

describe('what a trigger would have counted', () => {
  const row = () => file.rowOf(moss, 'c2-t1', 'molar mass');
  const noted = () => [at.tries, at.lastEntry, countedColumn].map((column) => file.cell(moss, row(), column));
  const typed = (entry: string) => file.put(moss, row(), at.entry, entry);
  let page: File;
  const look = () => valueIn(file.run(workFor(page, 'workOutChecks', [])));
  beforeEach(() => {
    page = { book: undefined };
  });
  it('is noted by the open page: a time for what came since its last look, and none for what stood there', () => {
    look();
    expect(noted()).toEqual([1, '', '“119.00']);
    typed('118.00');
    look();
    expect(noted()).toEqual([2, { date: file.state.now }, '“118.00']);
    const asked = file.asked.length;
    look();
    typed('');
    look();
    expect(noted()).toEqual([2, { date: file.state.now }, '“118.00']);
    expect(file.asked.slice(asked).filter(({ call }) => call === 'writeCells')).toEqual([]);
    // What was typed overnight, while nobody looked, gets no time of the morning after.
    file.state.now += 24 * 3_600_000;
    file.state.today = '2026-03-10';
    typed('117.00');
    look();
    expect(noted()).toEqual([3, { date: file.state.now - 24 * 3_600_000 }, '“117.00']);
  });
  it('is never noted twice, and waits where the trigger was quicker', () => {
    look();
    typed('118.00');
    file.before(() => {
      file.put(moss, row(), at.tries, 2);
      file.put(moss, row(), countedColumn, '“118.00');
    });
    expect(problemOf(file.run(workFor(page, 'workOutChecks', []))).reason).toBe('changed');
    look();
    expect(noted()).toEqual([2, '', '“118.00']);
    // A count that somebody wrote over with words is left alone.
    file.put(moss, row(), at.tries, 'three');
    typed('117.00');
    look();
    expect(noted()).toEqual(['three', '', '“118.00']);
  });
});

describe('what somebody typed where a check belongs', () => {
  const row = () => file.rowOf(moss, 'c2-t1', 'molar mass');
  const look = () => valueIn(file.call('workOutChecks'));
  const words = () => [at.check, at.lookAt, at.hint].map((column) => file.cell(moss, row(), column));
  it.each([
    ['x', at.check],
    ['an idea', at.lookAt],
    ['7', at.hint],
    [{ date: Date.parse('2026-03-02T00:00:00Z') }, at.check],
  ] as const)('stays where it is, %j, and is named', (text, column) => {
    look();
    const before = words();
    file.put(moss, row(), column, text);
    const cell = `${'EFG'[column - at.check]}${row()}`;
    expect(look()).toMatchObject({ rows: 0, inTheWay: [cell] });
    expect(words()).toEqual(before.map((word, right) => (right === column - at.check ? text : word)));
    expect(valueIn(file.call('readClass', moss)).inTheWay).toEqual([expect.stringContaining(`${cell} holds`)]);
    file.put(moss, row(), column, '');
    expect(look().inTheWay).toBeUndefined();
    expect(words()).toEqual(before);
  });
  it('is known by what the page notes: its own words in another row give way', () => {
    look();
    const before = words();
    file.put(moss, row(), at.lookAt, file.cell(moss, row() + 1, at.lookAt));
    expect(look().inTheWay).toBeUndefined();
    expect(words()).toEqual(before);
    // A row from before anything was noted is told by the word of its check, and noted from then on.
    file.put(moss, row(), writtenColumn, '');
    file.put(moss, row(), at.lookAt, 'words of another version');
    expect(look().inTheWay).toBeUndefined();
    expect(words()).toEqual(before);
    file.put(moss, row(), at.lookAt, 'an idea');
    expect(look().inTheWay).toHaveLength(1);
  });
  it('is named by its cell where it was typed into a lesson put away, as that is opened again', () => {
    look();
    const typed = row();
    const written = words();
    Object.assign(file.state, { today: '2026-03-16', now: Date.parse('2026-03-16T10:15:00Z') });
    file.finish(file.call('nextLesson', { ...ofClass(moss), givens: { ...setup.givens, formula: 'KCl', ion: 'Cl-' } }));
    const away = deskWords.awayName(moss, '2026-03-09');
    file.put(away, typed, at.check, 'an idea');
    file.put(away, typed + 1, at.hint, 'another');
    expect(file.finish(file.call('openEarlier', '2026-03-09.1')).late).toBe(
      deskWords.overChecks({ className: moss, cells: [`E${typed}`, `G${typed + 1}`] }),
    );
    look();
    expect(words()).toEqual(written);
  });
});
