import { expect, it } from 'vitest';
import { withLessonMark } from '../../src/workbook/lessonMark.ts';
import { planClassSheet } from '../../src/workbook/planClassSheet.ts';
import { planPlaces, planPlanSheet } from '../../src/workbook/planPlanSheet.ts';
import { planPrepareSheet } from '../../src/workbook/planPrepareSheet.ts';
import { planProgressSheet, progressOrder } from '../../src/workbook/planProgressSheet.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import { recognisedSheet } from '../../src/workbook/recognisedSheet.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { words } from '../../src/workbook/words.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { lesson, teams } from './lesson.ts';

/** The texts of a planned sheet, as a copy of the file has them that came without any tag. */
function cellsOf({ blocks, rowCount }: SheetPlan): string[][] {
  const cells = Array.from({ length: rowCount }, (): string[] => []);
  for (const { row, column, cells: block } of blocks)
    block.forEach((contents, down) => {
      contents.forEach((content, right) => {
        const line = cells[row - 1 + down] ?? [];
        while (line.length < column + right) line.push('');
        if (content.kind === 'text') line[column - 1 + right] = content.text;
      });
    });
  return cells;
}
const names = newSheetNames(['Fern class']);
const places = planPlaces(lesson);
const ofFern = { className: 'Fern class', teams: teams.slice(0, 2), helpLines: [] };
const sheets: Readonly<Record<string, SheetPlan>> = {
  plan: planPlanSheet(lesson, names),
  prepare: planPrepareSheet(lesson, names, places),
  class: planClassSheet({ lesson, names, places, ...ofFern }),
};

it.each(Object.entries(sheets))('a copied %s says by its cells of which lesson it is', (kind, sheet) => {
  const marked = withLessonMark({ ...sheet, role: { ...sheet.role, lesson: '2026-03-02.1' } });
  expect(recognisedSheet(cellsOf(marked))).toMatchObject({ kind, lesson: '2026-03-02.1' });
  expect(marked.looks.filter(({ look }) => look === 'mark').length).toBeGreaterThan(
    sheet.looks.filter(({ look }) => look === 'mark').length,
  );
  // A sheet of the one lesson of an older file bears none.
  expect(withLessonMark(sheet)).toEqual(sheet);
  expect(recognisedSheet(cellsOf(sheet))).not.toHaveProperty('lesson');
});

it('a copied Record is known by all of its headings in one row, and by some of them no sheet is', () => {
  const cells = cellsOf(planRecordSheet());
  expect(recognisedSheet(cells)).toEqual({ kind: 'record', layout: 0 });
  const headings = cells.find((line) => line.length > 5) ?? [];
  headings[3] = 'mine';
  expect(recognisedSheet(cells)).toBeUndefined();
});

it('Progress says by its cells in which order its classes stand, whatever people wrote between them', () => {
  const classes = ['Moss class', 'Fern class'].map((className, place) => ({
    className,
    id: `${className} as first named`,
    teams: teams.slice(place * 2, place * 2 + 2),
  }));
  const cells = cellsOf(planProgressSheet({ lesson, classes, names, places }));
  const order = progressOrder(cells);
  expect(order.ids).toEqual(classes.map(({ id }) => id));
  cells.push(['a note', words.progress.done], ['another', '', words.progress.count]);
  expect(progressOrder(cells)).toEqual(order);
  expect(progressOrder([['Progress']])).toEqual({ ids: [], keysAt: undefined });
});
