import type { Activity } from '../lesson/activity.ts';
import type { RecipeEntry } from './recipe.ts';
import { type RecipeName, recipes } from './recipes.ts';

/** The entry of an activity's recipe, and the given that each of its numbers is read from. */
export interface ActivityRecipe {
  readonly name: RecipeName;
  readonly entry: RecipeEntry;
  readonly takes: Readonly<Record<string, string>>;
}

/** What an activity's numbers are made by; undefined where it names no recipe. */
export function recipeOf({ numbers }: Pick<Activity, 'numbers'>): ActivityRecipe | undefined {
  if (numbers.recipe === undefined) return undefined;
  const { recipe: name, takes } = numbers;
  const named = Object.entries(takes).filter((pair): pair is [string, string] => pair[1] !== undefined);
  // Each entry reads only numbers of its own names, which are those that its activity gives.
  return { name, entry: recipes[name] as unknown as RecipeEntry, takes: Object.fromEntries(named) };
}
