import { fileURLToPath } from 'node:url';
import { codeFile } from '../../scripts/build/codeFile.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { BuildState, Calls, Outcome } from '../../src/host/calls.ts';
import { callNames } from '../../src/host/calls.ts';
import type { Setup } from '../../src/lab/setup.ts';
import { openStandIn, type StandIn, type StandInOptions } from '../../src/preview/standin/openStandIn.ts';
import { sheetState, valueAt } from './cells.ts';

/** The script as it is pushed, from the sources as they are now. */
const script = await codeFile(fileURLToPath(new URL('../..', import.meta.url)), { catalogue, callNames });

export const open = (options: Partial<StandInOptions> = {}): StandIn =>
  openStandIn({ code: script, sidebarHtml: '<p>sidebar</p>', ...options });

/** Calls an endpoint as the sidebar does. */
export const call = <Name extends keyof Calls>(
  host: StandIn,
  name: Name,
  ...args: Parameters<Calls[Name]>
): ReturnType<Calls[Name]> => host.run('teacher', name, args) as ReturnType<Calls[Name]>;

/** The value of an outcome; a problem fails the test with its own words. */
export function answerOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

/** Builds to the end, one call for each sheet, and hands back the last state. */
function buildAll(host: StandIn, first: (host: StandIn) => Outcome<BuildState>): BuildState {
  let state = answerOf(first(host));
  for (let calls = 0; !state.finished; calls += 1) {
    if (calls > 40) throw new Error(`Expected the build to finish, received ${state.done} of ${state.total}.`);
    state = answerOf(call(host, 'continueBuild'));
  }
  return state;
}

export const buildSample = (host: StandIn): BuildState => buildAll(host, (one) => call(one, 'startSample'));
export const buildSetup = (host: StandIn, setup: Setup): BuildState =>
  buildAll(host, (one) => call(one, 'startBuild', setup));

/** Row of a team's step in a class sheet, found by its key and step id. */
export function stepRow(host: StandIn, { sheet, key, step }: { sheet: string; key: string; step: string }): number {
  const { rows } = sheetState(host, sheet);
  for (let row = 1; row <= rows; row += 1) {
    if (valueAt(host, { sheet, row, column: 11 }) === key && valueAt(host, { sheet, row, column: 12 }) === step) {
      return row;
    }
  }
  throw new Error(`Expected a row for ${step} of ${key} in ${sheet}.`);
}

/** Types into cells of one sheet as somebody at a seat does; a paste is several at once. */
export function typeIn(
  host: StandIn,
  {
    sheet,
    seat = 'student',
    cells,
  }: { sheet: string; seat?: 'teacher' | 'student'; cells: readonly (readonly [number, number, string])[] },
) {
  const { id } = sheetState(host, sheet);
  return host.type(
    seat,
    cells.map(([row, column, text]) => ({ sheet: id, row, column, text })),
  );
}
