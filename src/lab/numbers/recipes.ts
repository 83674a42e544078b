import type { RecipeEntry } from './recipe.ts';
import { driedPortion } from './recipes/driedPortion.ts';
import { portionForDensity } from './recipes/portionForDensity.ts';
import { readyStockDiluted } from './recipes/readyStockDiluted.ts';
import { reagentDiluted } from './recipes/reagentDiluted.ts';
import { serialFlasks } from './recipes/serialFlasks.ts';
import { solidInFlask } from './recipes/solidInFlask.ts';
import { solidThenDilution } from './recipes/solidThenDilution.ts';

/** Every recipe: the one list. Numbers for teams, preparation and pictures all ask the entry that an activity names. */
export const recipes = {
  'solid in a flask': solidInFlask,
  'solid, then a dilution': solidThenDilution,
  'ready stock diluted': readyStockDiluted,
  'serial flasks': serialFlasks,
  'reagent diluted': reagentDiluted,
  'dried portion': driedPortion,
  'portion for density': portionForDensity,
} as const;

type TakenBy<Entry> =
  Entry extends RecipeEntry<infer Name, infer Optional>
    ? Readonly<Record<Exclude<Name, Optional>, string>> & Readonly<Partial<Record<Optional, string>>>
    : never;

export type RecipeName = keyof typeof recipes;

/** A recipe by name and, for each of its numbers, the given that it is read from. */
export type RecipeUse = {
  readonly [Name in RecipeName]: { readonly recipe: Name; readonly takes: TakenBy<(typeof recipes)[Name]> };
}[RecipeName];
