import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Work } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { openStandIn, type StandIn, type StandInOptions } from '../../src/preview/standin/openStandIn.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { builtText } from '../builtText.ts';
import { sheetState, valueAt } from './cells.ts';

/** The script as it is pushed, from the sources as they are now. */
const script = await builtText('dist/Code.js');

export const open = (options: Partial<StandInOptions> = {}): StandIn =>
  openStandIn({ code: script, sidebarHtml: '<p>sidebar</p>', ...options });

/** Runs work of the desk over the script of a stand-in, which answers at once. */
export const run = <T>(host: StandIn, work: Work<T>): T =>
  runWork(work, ({ call: name, wish }) =>
    host.run('teacher', name, wish === undefined ? [layoutVersion] : [layoutVersion, wish]),
  );

/** Asks the desk as the sidebar does, from a page that was just opened: it has read nothing yet. */
export const call = <Name extends DeskCall>(
  host: StandIn,
  name: Name,
  ...about: DeskArguments<Name>
): DeskAnswer<Name> => run(host, workFor({ book: undefined }, name, about));

/** The value of an outcome; a problem fails the test with its own words. */
export function answerOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

/** Goes on to the end, sheet by sheet, as a page does that was opened after the first step; hands back the last state. */
export function finish(host: StandIn, first: Outcome<BuildState>): BuildState {
  const page: File = { book: undefined };
  let state = answerOf(first);
  for (let calls = 0; !state.finished; calls += 1) {
    if (calls > 40) throw new Error(`Expected the build to finish, received ${state.done} of ${state.total}.`);
    state = answerOf(run(host, workFor(page, 'continueBuild', [])));
  }
  return state;
}

export const buildSample = (host: StandIn): BuildState => finish(host, call(host, 'startSample'));

/** Builds whatever is in the way: names that changed are others, and what was typed for what is gone is set aside. */
export const buildSetup = (host: StandIn, setup: Setup): BuildState =>
  finish(host, call(host, 'startBuild', setup, { names: 'other', setAside: true }));

const built = new Map<string, string>();

/** A file in which a lesson stands, as it is kept: each lesson is built once for all tests that share a process. */
export function savedWith(lesson: Setup): string {
  const name = JSON.stringify(lesson);
  const known = built.get(name);
  if (known !== undefined) return known;
  const host = open();
  buildSetup(host, lesson);
  const saved = host.save();
  built.set(name, saved);
  return saved;
}

/** Row of a team's step in a class sheet, found by its key and step id. */
export function stepRow(host: StandIn, { sheet, key, step }: { sheet: string; key: string; step: string }): number {
  const { rows } = sheetState(host, sheet);
  for (let row = 1; row <= rows; row += 1) {
    if (valueAt(host, { sheet, row, column: 12 }) === key && valueAt(host, { sheet, row, column: 13 }) === step) {
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
