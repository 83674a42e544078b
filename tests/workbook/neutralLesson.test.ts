import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { ownHelpGiven } from '../../src/lab/lesson/teamColumns.ts';
import { neutralLesson } from '../../src/workbook/neutralLesson.ts';
import { planPlanSheet } from '../../src/workbook/planPlanSheet.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { settingOptions } from '../../src/workbook/settingOptions.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { lesson } from './lesson.ts';

/** The cells of a planned Plan, as the host would hand them back. */
function planCells(): string[][] {
  const plan = planPlanSheet(lesson, newSheetNames([]));
  const cells = Array.from({ length: plan.rowCount }, () => Array.from({ length: plan.columnCount + 2 }, () => ''));
  for (const { row, column, cells: block } of plan.blocks)
    block.forEach((contents, down) => {
      contents.forEach((content, right) => {
        const found = cells[row - 1 + down];
        if (found !== undefined && content.kind === 'text') found[column - 1 + right] = content.text;
      });
    });
  return cells;
}
function reading(change: (cells: string[][]) => void = () => {}) {
  const cells = planCells();
  change(cells);
  const read = readLesson(cells);
  if (!read.ok) throw new Error('Expected a Plan that can be read.');
  return read.value;
}
const lineOf = (cells: string[][], first: string) => cells.find(([cell]) => cell === first) ?? [];

describe('neutralLesson', () => {
  it('keeps every number and counts classes and teams instead of naming them', () => {
    const made = neutralLesson(reading(), lesson.activity);
    expect(made.teams.map(({ givens }) => givens)).toEqual(lesson.teams.map(({ givens }) => givens));
    expect(made.teams.map(({ key, className, team }) => [key, className, team]).slice(0, 3)).toEqual([
      ['c1-t1', 'Class 1', 'Team 1'],
      ['c1-t2', 'Class 1', 'Team 2'],
      ['c2-t1', 'Class 2', 'Team 1'],
    ]);
    expect(made.setup.classes).toEqual([
      { name: 'Class 1', teams: ['Team 1', 'Team 2'] },
      { name: 'Class 2', teams: [1, 2, 3, 4, 5, 6].map((number) => `Team ${number}`) },
    ]);
    expect(made.setup.settings).toEqual(reading().setup.settings);
    expect(JSON.stringify(made)).not.toMatch(/Otter|Heron|Fern|Moss/);
  });
  it('leaves out what people added to the Plan', () => {
    const made = neutralLesson(
      reading((cells) => {
        lineOf(cells, 'key')[11 - 1] = 'remark by Zyx';
        lineOf(cells, 'c1-t1')[11 - 1] = 'Zyx';
        lineOf(cells, 'c1-t2')[0] = 'Zyx-key';
        lineOf(cells, 'seed')[1] = 'Zyx seed';
      }),
      lesson.activity,
    );
    expect(JSON.stringify(made)).not.toContain('Zyx');
    expect(made.setup.settings.seed).toBe(defaultSettings.seed);
  });
});

describe('readLesson', () => {
  it('reads who is absent from the column about the day, and no given out of it', () => {
    const found = reading((cells) => {
      lineOf(cells, 'c1-t1')[11 - 1] = 'absent 2026-03-02';
      lineOf(cells, 'c1-t2')[11 - 1] = 'absent';
      lineOf(cells, 'c2-t1')[11 - 1] = 'came late';
    });
    expect(found.absent).toEqual([
      { key: 'c1-t1', day: '2026-03-02' },
      { key: 'c1-t2', day: '' },
    ]);
    expect(found.givenNames).toEqual(lesson.givenNames);
    expect(found.problems).toEqual([]);
  });
});

describe('the planned Plan', () => {
  it('offers the levels of help under the heading of that column, in every line of a team', () => {
    const plan = planPlanSheet(lesson, newSheetNames([]));
    const row = planCells().findIndex(([first]) => first === 'key') + 1;
    const column = (planCells()[row - 1] ?? []).indexOf(ownHelpGiven) + 1;
    const offered = plan.choices.filter((choice) => choice.options === settingOptions[ownHelpGiven]);
    expect(offered.map(({ area }) => [area.row, area.column]).filter(([at]) => at === row + 1)).toEqual([
      [row + 1, column],
    ]);
  });
  it('gives a look to no rows at all where there are no teams yet', () => {
    const { looks } = planPlanSheet({ ...lesson, teams: [] }, newSheetNames([]));
    expect(looks.filter(({ rows, columns }) => rows < 1 || columns < 1)).toEqual([]);
  });
});
