import { seededRandom } from '../seededRandom.ts';
import type { Candidate } from './candidates.ts';
import type { TeamPlace } from './teamKeys.ts';

export interface Dealt {
  readonly given: readonly { readonly place: TeamPlace; readonly candidate: Candidate }[];
  /** Teams whose numbers another team has as well. */
  readonly shared: number;
}

const solidTask = ({ lesson }: Candidate): string =>
  lesson.solid ? `${lesson.solid.molarity} ${lesson.solid.flask}` : '';
const dilutionTask = ({ lesson }: Candidate): string =>
  lesson.dilution ? `${lesson.dilution.stock} ${lesson.dilution.target} ${lesson.dilution.volume}` : '';

/**
 * Gives each team a set of its own: each looks from a place of its own in the pool for one whose parts nobody has, then
 * for one that nobody has as a whole. The place comes from the seed and the team's key alone.
 */
export function dealtCandidates(pool: readonly Candidate[], places: readonly TeamPlace[], seed: string): Dealt {
  const solids = new Set<string>();
  const dilutions = new Set<string>();
  const wholes = new Set<string>();
  const stocksOfClass = new Set<string>();
  const stockOf = ({ lesson }: Candidate, className: string): string =>
    `${className} ${lesson.solid?.molarity ?? lesson.dilution?.stock}`;
  let shared = 0;
  const given = places.map((place) => {
    const start = Math.floor(seededRandom(`${seed} ${place.key}`)() * pool.length);
    const isFree = (candidate: Candidate): boolean => !wholes.has(`${solidTask(candidate)} ${dilutionTask(candidate)}`);
    const partsFree = (candidate: Candidate): boolean =>
      !(candidate.lesson.solid && solids.has(solidTask(candidate))) &&
      !(candidate.lesson.dilution && dilutions.has(dilutionTask(candidate)));
    const wishes = [
      (candidate: Candidate) => partsFree(candidate) && !stocksOfClass.has(stockOf(candidate, place.className)),
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
    solids.add(solidTask(candidate));
    dilutions.add(dilutionTask(candidate));
    wholes.add(`${solidTask(candidate)} ${dilutionTask(candidate)}`);
    stocksOfClass.add(stockOf(candidate, place.className));
    return { place, candidate };
  });
  return { given, shared };
}
