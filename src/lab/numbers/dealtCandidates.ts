import { seededRandom } from '../seededRandom.ts';
import type { Candidate } from './candidates.ts';
import type { TeamPlace } from './teamKeys.ts';

export interface Dealt {
  readonly given: readonly { readonly place: TeamPlace; readonly candidate: Candidate }[];
  /** Teams whose numbers another team has as well. */
  readonly shared: number;
}

/** The tasks of a set, each as text: what a team would have in common with another that has it too. */
const tasksOf = ({ lesson }: Candidate): readonly string[] =>
  Object.entries(lesson).map(([name, numbers]) => `${name} ${Object.values(numbers).join(' ')}`);

/** The molarity that a team starts from. */
const startOf = ({ lesson }: Candidate): number | undefined =>
  lesson.solid?.molarity ??
  lesson.dilution?.stock ??
  lesson.reagent?.target ??
  lesson.serial?.stock ??
  lesson.residue?.molarity ??
  lesson.density?.molarity;

/**
 * Gives each team a set of its own: each looks from a place of its own in the pool for one whose parts nobody has, then
 * for one that nobody has as a whole. The place comes from the seed and the team's key alone.
 */
export function dealtCandidates(pool: readonly Candidate[], places: readonly TeamPlace[], seed: string): Dealt {
  const tasks = new Set<string>();
  const wholes = new Set<string>();
  const startsOfClass = new Set<string>();
  let shared = 0;
  const given = places.map((place) => {
    const start = Math.floor(seededRandom(`${seed} ${place.key}`)() * pool.length);
    const startInClass = (candidate: Candidate): string => `${place.className} ${startOf(candidate)}`;
    const isFree = (candidate: Candidate): boolean => !wholes.has(tasksOf(candidate).join());
    const partsFree = (candidate: Candidate): boolean => !tasksOf(candidate).some((task) => tasks.has(task));
    const wishes = [
      (candidate: Candidate) => partsFree(candidate) && !startsOfClass.has(startInClass(candidate)),
      partsFree,
      isFree,
    ];
    let found: Candidate | undefined;
    for (const wish of wishes) {
      for (let step = 0; step < pool.length && found === undefined; step += 1) {
        const candidate = pool[(start + step) % pool.length];
        if (candidate && wish(candidate)) found = candidate;
      }
    }
    const candidate = found ?? pool[start];
    if (candidate === undefined) throw new Error('There are no numbers to deal.');
    if (found === undefined) shared += 1;
    for (const task of tasksOf(candidate)) tasks.add(task);
    wholes.add(tasksOf(candidate).join());
    startsOfClass.add(startInClass(candidate));
    return { place, candidate };
  });
  return { given, shared };
}
