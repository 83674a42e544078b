import type { RecipeEntry, RecipeNumbers } from './recipe.ts';

/** How far numbers lie above what was typed, in what nobody should get more of. */
interface Excess {
  readonly names: readonly string[];
  /** Product of the ratios, of flasks alone; 1 where none is larger. */
  readonly flasks: number;
}

/** What a team would get more of than was typed. */
export function beyondTyped(
  { takes }: Pick<RecipeEntry, 'takes'>,
  { numbers, from }: { readonly numbers: RecipeNumbers; readonly from: RecipeNumbers },
): Excess {
  const names: string[] = [];
  let flasks = 1;
  for (const [name, { atMostTyped, isFlask }] of Object.entries(takes)) {
    const ratio = (numbers[name] ?? Number.NaN) / (from[name] ?? Number.NaN);
    if (!atMostTyped || !(ratio > 1 + 1e-9)) continue;
    names.push(name);
    if (isFlask) flasks *= ratio;
  }
  return { names, flasks };
}

/** Of some sets those that go least beyond what was typed: in fewest numbers, then in the smallest flasks. */
export function leastBeyond<Set extends { readonly numbers: RecipeNumbers }>(
  sets: readonly Set[],
  { entry, from }: { readonly entry: Pick<RecipeEntry, 'takes'>; readonly from: RecipeNumbers },
): readonly Set[] {
  const all = sets.map((set) => ({ set, excess: beyondTyped(entry, { numbers: set.numbers, from }) }));
  const fewest = Math.min(...all.map(({ excess }) => excess.names.length));
  const few = all.filter(({ excess }) => excess.names.length === fewest);
  const smallest = Math.min(...few.map(({ excess }) => excess.flasks));
  return few.filter(({ excess }) => excess.flasks <= smallest * (1 + 1e-9)).map(({ set }) => set);
}
