import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { planKeySheet } from '../../src/workbook/planKeySheet.ts';
import { planPlanSheet } from '../../src/workbook/planPlanSheet.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { words } from '../../src/workbook/words.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { lesson } from './lesson.ts';

const plans = (): readonly SheetPlan[] => [
  ...planWorkbook(lesson).sheets,
  planRecordSheet(),
  planKeySheet({ name: 'Key', rows: [['Fern class', 'Otter', 'Mass', '7.14', 'g', '']] }),
];
/** The texts of a sheet as it stands once it was written. */
function written({ blocks, checks, rowCount, columnCount }: SheetPlan): string[][] {
  const cells = Array.from({ length: rowCount }, () => Array.from({ length: columnCount }, () => ''));
  for (const { row, column, cells: lines } of [...blocks, ...checks])
    lines.forEach((line, down) => {
      line.forEach((content, right) => {
        const found = cells[row - 1 + down];
        if (found !== undefined && content.kind === 'text') found[column - 1 + right] = content.text;
      });
    });
  return cells;
}

describe('what a planned sheet is known by', () => {
  it('is what stands in these rows and columns once it is written, to the last row', () => {
    for (const plan of plans()) {
      const cells = written(plan);
      const { firstRow, columns, rows } = plan.identity;
      const found = rows.map((_, down) => columns.map((column) => cells[firstRow - 1 + down]?.[column - 1] ?? ''));
      expect(found, plan.name).toEqual(rows);
      expect(layoutFits(plan, cells), plan.name).toBe('same');
    }
  });
  it('covers all rows of a class, of Progress and of the Poll', () => {
    for (const plan of plans().filter(({ role }) => ['class', 'progress'].includes(role.kind))) {
      const { firstRow, rows } = plan.identity;
      expect(firstRow + rows.length - 1, plan.name).toBe(plan.rowCount);
    }
  });
  it('is not met where somebody wrote into those columns below it', () => {
    for (const plan of plans().filter(({ role }) => role.kind === 'class' || role.kind === 'progress')) {
      const cells = written(plan);
      const line: string[] = Array.from({ length: plan.columnCount }, () => '');
      for (const column of plan.identity.columns) line[column - 1] = 'another';
      expect(layoutFits(plan, [...cells, line]), plan.name).toBe('other');
    }
  });
  it('still holds a key whose writing was interrupted, and not one of other teams', () => {
    const rows = [
      ['Fern class', 'Otter', 'Mass', '7.14', 'g', ''],
      ['Moss class', 'Newt', 'Mass', '3.57', 'g', ''],
    ];
    const plan = planKeySheet({ name: 'Key', rows });
    const cells = written(plan);
    expect(layoutFits(plan, cells)).toBe('same');
    expect(layoutFits(plan, [...cells.slice(0, 3), []])).not.toBe('other');
    expect(layoutFits(planKeySheet({ name: 'Key', rows: rows.slice(1) }), cells)).toBe('other');
  });
  it('is a role of its own for each kind of sheet', () => {
    const roles = plans().map(({ role }) => `${role.kind} ${role.className ?? ''}`.trim());
    expect(new Set(roles).size).toBe(roles.length);
    expect(roles).toEqual(
      expect.arrayContaining(['plan', 'help', 'prepare', 'class Fern class', 'progress', 'poll', 'record', 'key Key']),
    );
  });
  it('names the columns that are carried only where people write', () => {
    const carrying = plans().filter(({ carried }) => carried.length > 0);
    expect(new Set(carrying.map(({ role }) => role.kind))).toEqual(new Set(['class', 'help', 'poll']));
    for (const { carried, columnCount } of carrying)
      for (const column of carried) expect(column > 0 && column <= columnCount).toBe(true);
  });
});

describe('every block of every sheet', () => {
  it('is a rectangle within the sheet, since it is written in one call', () => {
    for (const plan of plans())
      for (const { row, column, cells } of [...plan.blocks, ...plan.checks]) {
        const widths = new Set(cells.map((line) => line.length));
        expect([...widths], `${plan.name} ${row},${column}`).toHaveLength(1);
        expect(row + cells.length - 1).toBeLessThanOrEqual(plan.rowCount);
        expect(column + (cells[0]?.length ?? 0) - 1).toBeLessThanOrEqual(plan.columnCount);
      }
  });
});

describe('what readings may be off, in the Plan', () => {
  const headings = (id: string, settings = {}) => {
    const activity = activityById(id) as Activity;
    const plan = planPlanSheet(
      { ...lesson, activity, setup: { ...lesson.setup, settings: { ...lesson.setup.settings, ...settings } } },
      newSheetNames([]),
    );
    return written(plan).map(([first]) => first);
  };
  const { readings } = words.plan;

  it('stands there where the activity has readings, and not elsewhere', () => {
    expect(headings('stock and dilution')).toContain(readings);
    expect(headings('serial dilution')).not.toContain(readings);
  });
  it('does not stand there where a setting of it cannot be read', () => {
    expect(headings('stock and dilution', { 'allowance for technique': 'a little' })).not.toContain(readings);
  });
});
