import type { BuildState, Calls, Outcome } from '../../host/calls.ts';
import type { PreviewHost, Seat } from '../view.ts';

/** More calls than any lesson has sheets: a build that never finishes must not hang the preview. */
const mostCalls = 200;

type Answer<Name extends keyof Calls> = ReturnType<Calls[Name]> extends Outcome<infer Value> ? Value : never;

/** Calls the script as the sidebar does, and stops at what it refuses. */
function call<Name extends keyof Calls>(host: PreviewHost, seat: Seat, name: Name, ...args: Parameters<Calls[Name]>) {
  const outcome = host.run(seat, name, args) as Outcome<Answer<Name>>;
  if (!outcome.ok) throw new Error(`The sample class was not built: ${outcome.problem.message}`);
  return outcome.value;
}

/** Builds the invented class with the script's own calls and leaves both seats at its first team. */
export function buildSample(host: PreviewHost, onProgress: (state: BuildState) => void): void {
  let state: BuildState = call(host, 'teacher', 'startSample');
  onProgress(state);
  for (let calls = 0; !state.finished; calls += 1) {
    if (calls === mostCalls) throw new Error(`The sample class was not finished after ${mostCalls} calls.`);
    state = call(host, 'teacher', 'continueBuild');
    onProgress(state);
  }
  const [className] = call(host, 'teacher', 'readLesson').classes;
  if (className === undefined) throw new Error('The sample was built and holds no class.');
  const [team] = call(host, 'teacher', 'readClass', className).teams;
  if (!team) throw new Error(`The sample’s class ${className} holds no team.`);
  for (const seat of ['teacher', 'student'] as const) call(host, seat, 'goToTeam', className, team.key);
}
