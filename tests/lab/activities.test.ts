import { describe, expect, it } from 'vitest';
import { procedureByName } from '../../src/lab/bench/procedures.ts';
import { questionByName } from '../../src/lab/bench/questions.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity, Shown } from '../../src/lab/lesson/activity.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';
import { teamUse } from '../../src/lab/preparation/teamUse.ts';
import type { QuantityArgument } from '../../src/lab/quantities/quantityEntry.ts';
import { quantities } from '../../src/lab/quantities.ts';
import { firstTeamGivens } from './firstTeam.ts';

const givensShown = (pieces: readonly Shown[]): string[] =>
  pieces.flatMap((piece) => (typeof piece === 'string' ? [] : [piece.given]));

/** Whether a team weighs its substance as a solid, from a jar or dried. */
function weighsSolid(activity: Activity): boolean {
  const place = { key: 'a', className: 'Fern class', team: 'Otter' };
  const team = { ...place, givens: firstTeamGivens(activity) };
  const use = teamUse(activity, team, { decimalMark: 'point', studentsDilute: false });
  if (!use.ok) throw new Error(use.error.advice);
  return use.value.solid !== undefined || use.value.driedCount > 0;
}

describe('allActivities', () => {
  it.each(allActivities().map((activity) => [activity.id, activity] as const))(
    'gives %s steps that all resolve',
    (id, activity) => {
      expect(activityById(id)).toEqual(activity);
      expect(activity.extension).toMatch(/^[A-Z].*\?$/);
      const ids = activity.steps.map((step) => step.id);
      expect(new Set(ids).size).toBe(ids.length);
      const recipe = recipeOf(activity);
      const givens = activity.givens.map(({ name }) => name);
      expect(new Set(givens).size).toBe(givens.length);
      activity.steps.forEach((step, at) => {
        const earlier = activity.steps.slice(0, at);
        const isEarlier = (other: string) => earlier.some((before) => before.id === other);
        for (const given of givensShown(step.shown)) expect(givens, step.id).toContain(given);
        switch (step.kind) {
          case 'calculated': {
            const takes: readonly QuantityArgument[] = quantities[step.quantity].takes;
            for (const { name, optional } of takes) {
              const source = step.takes[name];
              if (source === undefined) {
                expect(optional, `${step.id} has no ${name}`).toBe(true);
              } else if ('given' in source) {
                expect(givens).toContain(source.given);
                const isOptional = activity.givens.find(({ name: given }) => given === source.given)?.optional;
                if (isOptional) expect(optional, `${step.id} needs ${source.given}`).toBe(true);
              } else {
                expect(isEarlier(source.entryOf), `${step.id} reads ${source.entryOf}`).toBe(true);
              }
            }
            expect(Object.keys(step.takes).filter((name) => !takes.some((taken) => taken.name === name))).toEqual([]);
            // Or in place of a given, such as the molarity that was really made.
            const builds: readonly string[] = [...quantities[step.quantity].buildsOn, ...takes].map(({ name }) => name);
            for (const [name, other] of Object.entries(step.buildsOn)) {
              expect(builds).toContain(name);
              expect(isEarlier(other)).toBe(true);
            }
            expect(step.unit).toBe(quantities[step.quantity].unit);
            break;
          }
          case 'measured': {
            if (typeof step.expects !== 'string' && 'expected' in step.expects) {
              for (const { given } of Object.values(step.expects.takes)) expect(givens).toContain(given);
              break;
            }
            if (typeof step.expects !== 'string') {
              const { given } = step.expects;
              expect(activity.givens.find(({ name }) => name === given)?.unit).toBe(step.unit);
              break;
            }
            const expected = earlier.find((before) => before.id === step.expects);
            expect(expected?.kind).toBe('calculated');
            expect(step.unit).toBe(expected?.unit);
            break;
          }
          case 'ordered':
            expect(procedureByName(step.procedure).actions.length).toBeGreaterThan(3);
            break;
          case 'chosen': {
            const { stem, right, others, hints } = questionByName(step.question);
            const texts = [stem, right.text, ...others.map(({ text }) => text), hints[2]];
            for (const given of texts.flatMap(givensShown)) expect(givens).toContain(given);
            break;
          }
          case 'ticked':
            expect(at, 'the cautions come first').toBe(0);
            for (const given of Object.values({ ...step.substance, solid: 'formula' })) expect(givens).toContain(given);
            expect(step.substance.solid === true, 'the solid is weighed').toBe(weighsSolid(activity));
            expect(step.substance.massPercent).toBe(recipe?.takes.massPercent);
            expect(step.substance.molarity).toBe(
              recipe?.entry.takes[recipe.entry.startsFrom]?.kind === 'concentration'
                ? recipe.takes[recipe.entry.startsFrom]
                : undefined,
            );
            break;
          case 'told':
            expect(step.shown.length).toBeGreaterThan(0);
            break;
        }
      });
    },
  );

  it('deals numbers only in givens that the activity has', () => {
    for (const { givens, numbers } of allActivities()) {
      const names = givens.map(({ name }) => name);
      const dealt = [
        numbers.formula,
        ...(numbers.ion ? [numbers.ion] : []),
        ...Object.values(numbers.recipe === undefined ? {} : numbers.takes),
      ];
      for (const name of dealt) expect(names).toContain(name);
    }
  });

  it('keeps the everyday activity’s steps and givens as sheets have them', () => {
    const everyday = activityById(' Stock and  dilution');
    expect(everyday?.steps.map(({ id, kind }) => `${id}: ${kind}`)).toEqual([
      'cautions read: ticked',
      'molar mass: calculated',
      'moles of solute: calculated',
      'mass of solute: calculated',
      'stock procedure: ordered',
      'mass weighed: measured',
      'stock made: calculated',
      'dilution factor: calculated',
      'stock volume: calculated',
      'water volume: calculated',
      'dilution procedure: ordered',
      'diluted molarity: calculated',
      'ion molarity: calculated',
      'particles: chosen',
      'in your words: told',
    ]);
    expect(everyday?.givens.map(({ name }) => name)).toEqual([
      'formula',
      'stock molarity',
      'flask',
      'target molarity',
      'target volume',
      'ion',
      'purity',
    ]);
  });

  it('knows no activity by another name', () => {
    expect(activityById('toString')).toBeUndefined();
    expect(activityById('')).toBeUndefined();
  });
});
