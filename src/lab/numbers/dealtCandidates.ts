import type { Candidate } from './candidates.ts';
import type { RecipeEntry } from './recipe.ts';
import { seededRandom } from './seededRandom.ts';
import type { TeamPlace } from './teamKeys.ts';

export interface ScoredCandidate extends Candidate {
  /** No set hides fewer slips. */
  readonly isClear: boolean;
}

export interface Dealt {
  readonly given: readonly { readonly place: TeamPlace; readonly candidate: Candidate }[];
  /** Teams whose numbers another team had before them. */
  readonly shared: number;
}

/**
 * Gives each team a set of its own: each looks from a place of its own in the pool for one whose parts nobody has, then
 * for one that nobody has as a whole; of those that do equally well, for a clear one. The place comes from the seed and the
 * team's key alone. Sets of the first bottle go out before any of the second. Where there are too few, sets are given again, those first that nobody in the class has,
 * then those that the team before has not, then those that fewest have.
 */
export function dealtCandidates(
  pool: readonly ScoredCandidate[],
  {
    places,
    seed,
    entry: { tasks: parts, startsFrom, bottle },
    bottles,
  }: {
    readonly places: readonly TeamPlace[];
    readonly seed: string;
    readonly entry: Pick<RecipeEntry, 'tasks' | 'startsFrom' | 'bottle'>;
    /** Of stocks that stand ready, the first before the second. */
    readonly bottles: readonly number[];
  },
): Dealt {
  /** The tasks of a set, each as text: what a team would have in common with another that has it too. */
  const tasksOf = ({ numbers }: Candidate): readonly string[] =>
    parts.map((names, part) => `${part} ${names.map((name) => numbers[name]).join(' ')}`);
  const wholeOf = (candidate: Candidate): string => tasksOf(candidate).join();
  const tasks = new Set<string>();
  const uses = new Map<string, number>();
  const usesInClass = new Map<string, number>();
  const startsOfClass = new Set<string>();
  const last = new Map<string, string>();
  let shared = 0;
  const given = places.map((place) => {
    const start = Math.floor(seededRandom(`${seed} ${place.key}`)() * pool.length);
    const startInClass = ({ numbers }: Candidate): string => `${place.className} ${numbers[startsFrom]}`;
    const isFree = (candidate: Candidate): boolean => !uses.has(wholeOf(candidate));
    const isFirst = ({ numbers }: Candidate): boolean => bottle === undefined || numbers[bottle] === bottles[0];
    const partsFree = (candidate: Candidate): boolean => !tasksOf(candidate).some((task) => tasks.has(task));
    const wishes = [
      (candidate: Candidate) =>
        isFirst(candidate) && partsFree(candidate) && !startsOfClass.has(startInClass(candidate)),
      (candidate: Candidate) => isFirst(candidate) && partsFree(candidate),
      (candidate: Candidate) => isFirst(candidate) && isFree(candidate),
      isFree,
    ];
    const inTurn = pool.map((_, step) => pool[(start + step) % pool.length] as ScoredCandidate);
    let found: Candidate | undefined;
    for (const wish of wishes) found ??= inTurn.find((one) => one.isClear && wish(one)) ?? inTurn.find(wish);
    if (found === undefined) {
      shared += 1;
      found = inTurn
        .map((candidate) => {
          const whole = wholeOf(candidate);
          const again = usesInClass.get(`${place.className} ${whole}`) ?? 0;
          const beside = last.get(place.className) === whole ? 1 : 0;
          return { candidate, again, beside, all: uses.get(whole) ?? 0 };
        })
        .sort(
          (one, other) => one.again - other.again || one.beside - other.beside || one.all - other.all,
        )[0]?.candidate;
    }
    if (found === undefined) throw new Error('There are no numbers to deal.');
    const whole = wholeOf(found);
    const inClass = `${place.className} ${whole}`;
    for (const task of tasksOf(found)) tasks.add(task);
    uses.set(whole, (uses.get(whole) ?? 0) + 1);
    usesInClass.set(inClass, (usesInClass.get(inClass) ?? 0) + 1);
    startsOfClass.add(startInClass(found));
    last.set(place.className, whole);
    return { place, candidate: found };
  });
  return { given, shared };
}
