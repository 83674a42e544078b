import { byOwnName } from './byOwnName.ts';
import type { Bench, NearSet, NearSets, Reach, RecipeNumbers } from './recipe.ts';
import { recipeNumbers } from './recipeNumbers.ts';
import type { ActivityRecipe } from './recipeOf.ts';
import type { StartNumbers } from './startNumbers.ts';

/** One set of numbers that a team could get. */
export interface Candidate extends Pick<NearSet, 'fillings' | 'away' | 'withinTarget'> {
  /** All of the recipe's numbers, by its own names. */
  readonly numbers: RecipeNumbers;
  /** Those that differ between teams, by name of the given. */
  readonly values: Readonly<Record<string, number>>;
  readonly texts: Readonly<Record<string, string>>;
  /** A whole dilution factor is easier to see through than another. */
  readonly wholeFactor: boolean;
}

export interface CandidateList extends Pick<NearSets, 'otherDigits' | 'lacks'> {
  readonly candidates: readonly Candidate[];
}

/** The start's own numbers, by the recipe's own names. */
export const startOfRecipe = (recipe: ActivityRecipe, { typed }: Pick<StartNumbers, 'typed'>): RecipeNumbers =>
  recipeNumbers(recipe, Object.fromEntries(Object.entries(typed).map(([name, { value }]) => [name, value])));

/** Every set of numbers near the start, in a fixed order; demands are not looked at yet. */
export function candidatesNear(
  recipe: ActivityRecipe,
  start: StartNumbers,
  { bench, reach }: { readonly bench: Bench; readonly reach: Reach },
): CandidateList {
  const { entry, takes } = recipe;
  const from = startOfRecipe(recipe, start);
  const typed = byOwnName(takes, start.typed);
  const { sets, otherDigits, lacks } = entry.near({ numbers: from, typed, table: start.table }, bench, reach);
  const byGiven = <Value>(own: Readonly<Partial<Record<string, Value>>>): Readonly<Record<string, Value>> => {
    const given: Record<string, Value> = {};
    for (const [name, value] of Object.entries(own)) if (value !== undefined) given[takes[name] ?? name] = value;
    return given;
  };
  const candidates = sets.map((set): Candidate => {
    const numbers = { ...from, ...set.numbers } as RecipeNumbers;
    return {
      numbers,
      values: byGiven(set.numbers),
      texts: byGiven(set.texts),
      fillings: set.fillings,
      away: set.away,
      withinTarget: set.withinTarget,
      wholeFactor: entry.isWhole?.(numbers) ?? false,
    };
  });
  return { candidates, otherDigits, lacks };
}
