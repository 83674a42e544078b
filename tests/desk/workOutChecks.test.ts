import { beforeEach, describe, expect, it } from 'vitest';
import { classColumns as at } from '../../src/workbook/layout.ts';
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
