import { mutationSample } from './mutationSample.mjs';

/**
 * A room that is mutated: what is changed in it, and which tests have to notice. Left out are tests that are slow and
 * go through far more than the room, so that a mutant costs seconds; what they alone would notice counts as survived.
 *
 * @typedef {{ mutate: string[], tests: string[], without?: string[], withStatic?: boolean }} MutatedRoom
 */

const seed = Number(process.env.LABROW_MUTATED_SEED ?? 20_261_129);
const sampled = Number(process.env.LABROW_MUTATED_LINES ?? Infinity);
/** @param {string} folder @param {number} lines */
const some = (folder, lines) => mutationSample(folder, { lines: Math.min(lines, sampled), seed });

/** Tests of the lab that build it anew, or go through every form of every activity. */
const sweeps = [
  'cautionWords',
  'labTexts',
  'lettersByTeam',
  'numbersForTeams',
  'ownQuantity',
  'procedureLayout',
  'safeOrders',
  'simulation',
].map((name) => `tests/lab/${name}.test.ts`);

/** @type {Record<string, () => MutatedRoom>} */
export const mutationRooms = {
  chemistry: () => ({
    mutate: ['src/chemistry/**/*.ts'],
    tests: ['chemistry', 'measurement', 'errors', 'lab'],
    without: sweeps,
  }),
  measurement: () => ({
    mutate: ['src/measurement/**/*.ts'],
    tests: ['chemistry', 'measurement', 'errors', 'lab'],
    without: sweeps,
  }),
  judging: () => ({
    mutate: Number.isFinite(sampled) ? some('src/lab/judging', sampled) : ['src/lab/judging/**/*.ts'],
    tests: ['lab'],
    without: sweeps,
  }),
  // The rooms that lay out sheets and run the desk are sampled: the same lines each time.
  workbook: () => ({ mutate: some('src/workbook', 300), tests: ['workbook'], withStatic: true }),
  desk: () => ({ mutate: some('src/desk', 300), tests: ['desk'], withStatic: true }),
};

/** The room asked for in LABROW_ROOM. */
export function mutatedRoom() {
  const name = process.env.LABROW_ROOM ?? '';
  const room = mutationRooms[name];
  if (!room)
    throw new Error(`Expected one of ${Object.keys(mutationRooms).join(', ')} in LABROW_ROOM, received “${name}”.`);
  return { name, ...room() };
}
