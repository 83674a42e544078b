import type { RecipeNumbers } from './recipe.ts';
import type { ActivityRecipe } from './recipeOf.ts';

/** A recipe's numbers by its own names, from values by name of the given; NaN for those that are not there. */
export const recipeNumbers = (
  { entry, takes }: Pick<ActivityRecipe, 'entry' | 'takes'>,
  values: Readonly<Record<string, number>>,
): RecipeNumbers =>
  Object.fromEntries(Object.keys(entry.takes).map((name) => [name, values[takes[name] ?? ''] ?? Number.NaN]));
