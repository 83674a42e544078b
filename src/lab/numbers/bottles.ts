import type { Candidate } from './candidates.ts';
import { isSame } from './isSame.ts';
import { seededRandom, shuffled } from './seededRandom.ts';

/** How far apart two bottles are at the least, as a share of the first, so that nobody takes one for the other. */
const apart = 0.05;

/**
 * The stocks that stand ready for a lesson, mol/L: the one that was typed where anything can be made of it, else the one
 * that most sets can be made of; then, of those clearly apart from it, one that most sets can be made of.
 *
 * @returns One or two; the second is for where one gives too few different sets.
 */
export function bottles(
  sets: readonly Candidate[],
  { name, typed, seed }: { readonly name: string; readonly typed: number; readonly seed: string },
): readonly number[] {
  const counts = new Map<number, number>();
  for (const { numbers } of sets) {
    const stock = numbers[name] ?? Number.NaN;
    counts.set(stock, (counts.get(stock) ?? 0) + 1);
  }
  const all = shuffled([...counts.keys()].sort(), seededRandom(`${seed} bottles`));
  const most = (of: readonly number[]): number | undefined =>
    [...of].sort((one, other) => (counts.get(other) ?? 0) - (counts.get(one) ?? 0))[0];
  const first = all.find((stock) => isSame(stock, typed)) ?? most(all);
  if (first === undefined) return [];
  const second = most(all.filter((stock) => Math.abs(stock - first) >= apart * first));
  return second === undefined ? [first] : [first, second];
}
