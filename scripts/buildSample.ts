import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../src/desk/acts.ts';
import type { File } from '../src/desk/file/look.ts';
import { runWork } from '../src/desk/runWork.ts';
import type { BuildState } from '../src/desk/views.ts';
import type { PreviewHost, Seat } from '../src/preview/view.ts';
import { layoutVersion } from '../src/workbook/layout.ts';

/** More calls than any lesson has sheets: a build that never finishes must not hang the preview. */
const mostCalls = 200;

type Answer<Name extends DeskCall> =
  DeskAnswer<Name> extends infer Outcome
    ? Outcome extends { readonly ok: true; readonly value: infer Value }
      ? Value
      : never
    : never;

/** Lets the desk work over the script as the sidebar does, and stops at what it refuses. */
function call<Name extends DeskCall>(
  { host, seat, file }: { readonly host: PreviewHost; readonly seat: Seat; readonly file: File },
  name: Name,
  ...about: DeskArguments<Name>
): Answer<Name> {
  const outcome = runWork(workFor(file, name, about), ({ call: asked, wish }) =>
    host.run(seat, asked, wish === undefined ? [layoutVersion] : [layoutVersion, wish]),
  );
  if (!outcome.ok) throw new Error(`The sample class was not built: ${outcome.problem.message}`);
  return outcome.value as Answer<Name>;
}

/** Builds the invented class as the sidebar does and leaves both seats at its first team. */
export function buildSample(host: PreviewHost, onProgress: (state: BuildState) => void): void {
  const page = { host, seat: 'teacher', file: { book: undefined } } as const;
  let state: BuildState = call(page, 'startSample');
  onProgress(state);
  for (let calls = 0; !state.finished; calls += 1) {
    if (calls === mostCalls) throw new Error(`The sample class was not finished after ${mostCalls} calls.`);
    state = call(page, 'continueBuild');
    onProgress(state);
  }
  const [className] = call(page, 'readLesson').classes;
  if (className === undefined) throw new Error('The sample was built and holds no class.');
  const [team] = call(page, 'readClass', className).teams;
  if (!team) throw new Error(`The sample’s class ${className} holds no team.`);
  for (const seat of ['teacher', 'student'] as const) call({ ...page, seat }, 'goToTeam', className, team.key);
}
