import { describe, expect, it } from 'vitest';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { lessonActivity } from '../../src/lab/lesson/lessonActivity.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { preparationTexts } from '../../src/lab/texts/preparation.ts';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { planPrepareSheet } from '../../src/workbook/planPrepareSheet.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { cases, seed } from '../depth.ts';
import { startOf } from '../lab/otherActivities.ts';
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
    expect(solid?.[3]?.kind).toBe('number');
  });

  it('names no team', () => {
    const words = JSON.stringify(cells());
    for (const name of ['Otter', 'Heron', ...hostileNames.filter((typed) => typed.length > 3)]) {
      expect(words).not.toContain(name);
    }
  });

  it('tells amounts coarsely, since they are made of the teams’ own answers', () => {
    const solidOf = (teams: typeof lesson.teams) =>
      cells(teams).find(([, what]) => what?.kind === 'text' && what.text === 'KBr, solid');
    // 7.1401 g with spare is 7.855 g; one figure says as much as the day needs.
    expect(solidOf(lesson.teams.slice(0, 1))?.slice(2, 4)).toEqual([{ kind: 'blank' }, { kind: 'number', value: 8 }]);
    expect(solidOf(lesson.teams)?.[2]).toEqual({ kind: 'blank' });
  });

  it('tells the same amounts where decimals have a comma', () => {
    const settings = { ...lesson.setup.settings, 'decimal mark': 'comma' as const };
    const comma = { ...lesson, setup: { ...lesson.setup, settings } };
    const amounts = (of: typeof lesson) =>
      planPrepareSheet(of, names, places)
        .blocks.flatMap((block) => block.cells)
        .flatMap((line) => line.flatMap((cell) => (cell.kind === 'number' ? [cell.value] : [])));
    expect(amounts(comma)).toEqual(amounts(lesson));
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

describe('what students can read in Prepare', () => {
  /** Every mass and volume of a plan, from its cells and from its words, with the unit that stands beside it. */
  function amounts(
    plan: SheetPlan,
  ): readonly { readonly value: number; readonly unit: string; readonly from: string }[] {
    return plan.blocks
      .flatMap((block) => block.cells)
      .flatMap((line) => {
        const texts = line.map((cell) => (cell.kind === 'text' ? cell.text : ''));
        const section = texts[0];
        // Flasks, beakers and vessels are sizes of things that stand there for all to see.
        const isThing = section === preparationTexts.sections.lay || section === preparationTexts.sections.disposal;
        const inWords = isThing
          ? []
          : [
              ...texts
                .slice(1)
                .join(' ')
                .matchAll(/(\d+(?:\.\d+)?) (g|mL|L)\b/g),
            ].map(([, value, unit]) => ({
              value: Number(value),
              unit: unit ?? '',
            }));
        const inCells = line.flatMap((cell) =>
          cell.kind === 'number' ? [{ value: cell.value, unit: texts[4] ?? '' }] : [],
        );
        return [...inWords, ...inCells]
          .filter(({ unit }) => ['g', 'mL', 'L'].includes(unit))
          .map(({ value, unit }) => ({
            value: unit === 'L' ? value * 1000 : value,
            unit: unit === 'L' ? 'mL' : unit,
            from: texts.join(' | '),
          }));
      });
  }
  const classesOf = (...sizes: readonly number[]) =>
    sizes.map((size, at) => ({ name: `Class ${at}`, teams: Array.from({ length: size }, (_, index) => `T${index}`) }));
  const seeds = Array.from({ length: cases({ short: 1, deep: 40 }) }, (_, index) => String(seed + index));
  const staffings = ['staff', 'students'];
  const days = [[1], [2], [3], [4, 3], [7, 6, 8]] as const;

  it.each(allActivities().map(({ id }) => id))('tells no answer of %s, however it is shared out among teams', (id) => {
    let tried = 0;
    for (const own of seeds) {
      for (const ownNumbers of [true, false]) {
        for (const [index, sizes] of days.entries()) {
          const start = startOf(id);
          const settings = {
            ...start.settings,
            seed: own,
            'concentrated reagents': staffings[index % 2] ?? '',
          };
          const wanted = { ...start, ownNumbers, classes: classesOf(...sizes), settings };
          const numbers = numbersForTeams(wanted);
          if (!numbers.ok) throw new Error(`Expected numbers for ${id}.`);
          const { teams } = numbers.value;
          const activity = lessonActivity(settings);
          if (activity === undefined) throw new Error(`Expected the activity ${id}.`);
          const given = activity.givens.map(({ name }) => name);
          const day = { setup: wanted, activity, teams, givenNames: given, invented: true };
          const shown = amounts(planPrepareSheet(day, names, planPlaces(day)));
          const answers = teams.flatMap((team) =>
            teamKey({ activity, team, settings }).flatMap(({ unit, answer, title }) =>
              unit === 'g' || unit === 'mL' ? [{ unit, title, value: Number(answer) }] : [],
            ),
          );
          const shares = [...new Set([1, teams.length, ...sizes])].flatMap((count) => [count, count * 1.1]);
          for (const { value, unit, from } of shown) {
            for (const share of shares) {
              const told = answers.filter(
                (answer) => answer.unit === unit && Math.abs(value / share - answer.value) <= 0.004 * answer.value,
              );
              expect([from, share, told]).toEqual([from, share, []]);
              tried += 1;
            }
          }
        }
      }
    }
    expect(tried).toBeGreaterThan(100);
  });
  it('names no size of a pipette, which is a volume that teams have to find', () => {
    const shown = planPrepareSheet(lesson, names, places)
      .blocks.flatMap((block) => block.cells)
      .flatMap((line) =>
        line.flatMap((cell) => (cell.kind === 'text' && cell.text.includes('pipette') ? [cell.text] : [])),
      );
    expect(shown.length).toBeGreaterThan(1);
    expect(shown.join()).not.toMatch(/\d/);
  });
});
