import { leastBeyond } from './beyondTyped.ts';
import { bottles } from './bottles.ts';
import { type Candidate, type CandidateList, candidatesNear, startOfRecipe } from './candidates.ts';
import type { Bench, Reach } from './recipe.ts';
import type { ActivityRecipe } from './recipeOf.ts';
import { seededRandom, shuffled } from './seededRandom.ts';
import type { StartNumbers } from './startNumbers.ts';

export interface MakeableSets {
  /** In an order drawn by the seed; of a stock that stands ready only those of its bottles. */
  readonly sets: readonly Candidate[];
  /** mol/L, of a stock that stands ready; see `bottles`. */
  readonly bottles: readonly number[];
  readonly reach: Reach;
  readonly otherDigits: boolean;
}

/** Up to what was typed first, then with finer numbers; above it only where nothing up to it can be made. */
const reaches: readonly Reach[] = [
  { beyond: false, fine: false },
  { beyond: false, fine: true },
  { beyond: true, fine: false },
  { beyond: true, fine: true },
];

/**
 * Sets of numbers that the shelf, the balance and the substance allow.
 *
 * @param teams - How many different ones are wanted; where the first look finds as many, no other is taken.
 * @returns No sets where nothing can be made; `looked` is then what was tried.
 */
export function makeableSets(
  recipe: ActivityRecipe,
  start: StartNumbers,
  { bench, teams, seed }: { readonly bench: Bench; readonly teams: number; readonly seed: string },
): { readonly found: MakeableSets | undefined; readonly looked: CandidateList } {
  const { entry } = recipe;
  const from = startOfRecipe(recipe, start);
  let best: MakeableSets | undefined;
  let looked: CandidateList | undefined;
  for (const reach of reaches) {
    if (reach.beyond && best?.reach.beyond === false) break;
    // Finer numbers give no more sets of a stock that all share.
    if (reach.fine && best !== undefined && entry.bottle !== undefined) continue;
    const list = candidatesNear(recipe, start, { bench, reach });
    looked = list;
    const makeable = list.candidates.filter(({ numbers }) => entry.demands(numbers, bench).length === 0);
    if (makeable.length === 0) continue;
    const allowed = reach.beyond ? leastBeyond(makeable, { entry, from }) : makeable;
    const ready =
      entry.bottle === undefined
        ? []
        : bottles(allowed, { name: entry.bottle, typed: from[entry.bottle] ?? Number.NaN, seed });
    const { bottle } = entry;
    const sets = shuffled(
      bottle === undefined ? allowed : allowed.filter(({ numbers }) => ready.includes(numbers[bottle] ?? Number.NaN)),
      seededRandom(`${seed} sets`),
    );
    if (best === undefined || sets.length > best.sets.length) {
      best = { sets, bottles: ready, reach, otherDigits: list.otherDigits };
    }
    if (best.sets.length >= teams) break;
  }
  if (looked === undefined) throw new Error('Nothing was looked at.');
  return { found: best, looked };
}
