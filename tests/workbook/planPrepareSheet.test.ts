import { describe, expect, it } from 'vitest';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { planPrepareSheet } from '../../src/workbook/planPrepareSheet.ts';
import { hostileNames, lesson } from './lesson.ts';

const names = { prepare: 'Prepare', plan: 'Plan' };
const places = planPlaces(lesson);
const cells = (teams = lesson.teams) =>
  planPrepareSheet({ ...lesson, teams }, names, places).blocks.flatMap((block) => block.cells);

describe('planPrepareSheet', () => {
  it('holds plain text and numbers, and no formula but the line that looks at the Plan', () => {
    const formulas = planPrepareSheet(lesson, names, places).blocks.flatMap(({ row, cells: lines }) =>
      lines.flatMap((line, down) => line.flatMap(({ kind }) => (kind === 'formula' ? [row + down] : []))),
    );
    expect(formulas.sort()).toEqual([1, 2]);
    const solid = cells().find(([, what]) => what?.kind === 'text' && what.text === 'KBr, solid');
    expect(solid?.[2]?.kind).toBe('number');
  });

  it('names no team', () => {
    const words = JSON.stringify(cells());
    for (const name of ['Otter', 'Heron', ...hostileNames.filter((typed) => typed.length > 3)]) {
      expect(words).not.toContain(name);
    }
  });

  it('tells totals of one or two teams coarsely, since they are the teams’ own answers', () => {
    const [first] = lesson.teams;
    const solid = cells(first ? [first] : []).find(([, what]) => what?.kind === 'text' && what.text === 'KBr, solid');
    // 7.1401 g with spare is 7.855 g; one figure says as much as the day needs.
    expect(solid?.[2]).toEqual({ kind: 'blank' });
    expect(solid?.[3]).toEqual({ kind: 'number', value: 8 });
  });

  it('always fits over an earlier list', () => {
    const plan = planPrepareSheet(lesson, names, places);
    const there = Array.from({ length: plan.rowCount }, (_, index) => [
      'x',
      'y',
      '',
      '',
      '',
      '',
      index + 1 === plan.identity.firstRow ? 'prepare' : '',
    ]);
    expect(layoutFits(plan, there)).toBe('same');
    expect(planPrepareSheet({ ...lesson, teams: lesson.teams.slice(0, 1) }, names, places).rowCount).toBe(
      plan.rowCount,
    );
  });
});
