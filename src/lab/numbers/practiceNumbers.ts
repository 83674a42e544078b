import { type Result, success } from '../../errors/result.ts';
import { activityById } from '../lesson/activities.ts';
import type { Setup, TeamPlan } from '../lesson/setup.ts';
import { isSame } from './isSame.ts';
import { numbersForTeams } from './numbersForTeams.ts';
import { recipeOf } from './recipeOf.ts';

type Givens = TeamPlan['givens'];

const isAlike = (one = '', other = ''): boolean => {
  const [first, second] = [one, other].map((text) => Number(text.trim().replace(',', '.')));
  return one.trim() === other.trim() || (first !== undefined && second !== undefined && isSame(first, second));
};

/**
 * Numbers for one who works through a lesson again, dealt as for a team more: of equal difficulty, and the shelf can make
 * them. Of those that no team of the class has, the ones that share no part of its work with any are taken first.
 *
 * @param taken - What the teams of the class have, practice included.
 * @returns `isFresh` is false where the shelf gives none that nobody has. Fails as `numbersForTeams` does.
 */
export function practiceNumbers(
  setup: Setup,
  { className, taken }: { readonly className: string; readonly taken: readonly Givens[] },
): Result<{ readonly givens: Givens; readonly isFresh: boolean }> {
  // One set more than are taken: where the shelf gives that many, one at least is nobody's.
  const teams = Array.from({ length: taken.length + 1 }, (_, place) => `practice ${place + 1}`);
  const dealt = numbersForTeams({ ...setup, ownNumbers: true, classes: [{ name: className, teams }] });
  if (!dealt.ok) return dealt;
  const activity = activityById(setup.activity);
  const recipe = activity && recipeOf(activity);
  const given = (name: string): string => recipe?.takes[name] ?? name;
  const tasks = (recipe?.entry.tasks ?? []).map((names) => names.map(given));
  const all = Object.values(recipe?.takes ?? {});
  const has = (names: readonly string[], one: Givens, other: Givens): boolean =>
    names.every((name) => isAlike(one[name], other[name]));
  const sets = dealt.value.teams.map(({ givens }) => givens);
  const fresh = sets.filter((set) => all.length > 0 && !taken.some((other) => has(all, set, other)));
  const apart = fresh.find((set) => !taken.some((other) => tasks.some((names) => has(names, set, other))));
  const found = apart ?? fresh[0];
  return success({ givens: found ?? sets[0] ?? {}, isFresh: found !== undefined });
}
