import { describe, expect, it } from 'vitest';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { lesson, teams } from './lesson.ts';

const classPlan = (count: number): SheetPlan => {
  const own = teams.filter(({ className }) => className === 'Fern class').slice(0, count);
  const plan = planWorkbook({ ...lesson, teams: own }).sheets.find(({ role }) => role.kind === 'class');
  if (plan === undefined) throw new Error('Expected a class sheet.');
  return plan;
};

/** The cells of a sheet as the plan would leave them, as far as layouts are told apart. */
function cellsOf({ rowCount, columnCount, identity }: SheetPlan): string[][] {
  const cells = Array.from({ length: rowCount }, () => Array.from({ length: columnCount }, () => ''));
  identity.rows.forEach((texts, index) => {
    identity.columns.forEach((column, place) => {
      const row = cells[identity.firstRow - 1 + index];
      if (row !== undefined) row[column - 1] = texts[place] ?? '';
    });
  });
  return cells;
}

describe('layoutFits', () => {
  const two = classPlan(2);
  it('sees its own layout', () => {
    expect(layoutFits(two, cellsOf(two))).toBe('same');
  });
  it('sees an empty sheet and one whose writing stopped as one to go on with', () => {
    expect(layoutFits(two, [[]])).not.toBe('other');
    const half = cellsOf(two).map((row, index) => (index > 20 ? row.map(() => '') : row));
    expect(layoutFits(two, half)).toBe('longer');
  });
  it('sees a row put in or taken out as another layout', () => {
    const more = cellsOf(two);
    more.splice(12, 0, more[0]?.map(() => '') ?? []);
    expect(layoutFits(two, more)).toBe('other');
    const fewer = cellsOf(two);
    fewer.splice(12, 1);
    expect(layoutFits(two, fewer)).toBe('other');
  });
  it('sees a team that the plan no longer has as another layout', () => {
    const one = { ...classPlan(1) };
    expect(layoutFits(one, cellsOf(two))).toBe('other');
  });
  it('does not go on over words that people left below', () => {
    const below = cellsOf(two).slice(0, 26);
    below.push(['', 'a note of ours']);
    const shorter = below.map((row, index) => (index >= 25 && index < 26 ? row.map(() => '') : row));
    expect(layoutFits(two, shorter)).toBe('other');
  });
});
