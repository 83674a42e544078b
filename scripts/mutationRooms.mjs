import { mutationSample } from './mutationSample.mjs';

/**
 * A room that is mutated: what is changed in it, and which tests have to notice. Left out are tests that are slow and
 * go through far more than the room, so that a mutant costs seconds; what they alone would notice counts as survived.
 * `withStatic` changes as well what a file works out while it is read, at the cost of all tests of the room.
 *
 * @typedef {{ mutate: string[], tests: string[], without?: string[], withStatic?: boolean }} MutatedRoom
 */

const seed = Number(process.env.LABROW_MUTATED_SEED ?? 20_261_129);
const sampled = Number(process.env.LABROW_MUTATED_LINES ?? Infinity);
/** Lines of a room, always the same ones for a seed; the whole room where no number is asked. */
const some = (/** @type {string} */ folder, lines = Infinity) => {
  const wanted = Math.min(lines, sampled);
  return Number.isFinite(wanted) ? mutationSample(folder, { lines: wanted, seed }) : [`${folder}/**/*.ts`];
};

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
    mutate: some('src/chemistry'),
    tests: ['chemistry', 'measurement', 'errors', 'lab'],
    without: sweeps,
  }),
  measurement: () => ({
    mutate: some('src/measurement'),
    tests: ['chemistry', 'measurement', 'errors', 'lab'],
    without: sweeps,
  }),
  judging: () => ({
    mutate: some('src/lab/judging'),
    // What a row may come to say is asked by those who lay out sheets.
    tests: ['lab', 'workbook'],
    without: sweeps,
  }),
  // The rooms that lay out sheets and run the desk are sampled: the same lines each time.
  workbook: () => ({ mutate: some('src/workbook', 300), tests: ['workbook'], withStatic: true }),
  desk: () => ({
    mutate: some('src/desk', 300),
    tests: ['desk'],
    without: ['tests/desk/randomDays.test.ts'],
    withStatic: true,
  }),
};

/** The room asked for in LABROW_ROOM. */
export function mutatedRoom() {
  const name = process.env.LABROW_ROOM ?? '';
  const room = mutationRooms[name];
  if (!room)
    throw new Error(`Expected one of ${Object.keys(mutationRooms).join(', ')} in LABROW_ROOM, received “${name}”.`);
  return { name, ...room() };
}
