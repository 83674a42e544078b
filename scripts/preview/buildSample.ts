import type { BuildState, Outcome } from '../../src/host/calls.ts';
import type { PreviewHost } from './view.ts';

/** More calls than any lesson has sheets: a build that never finishes must not hang the preview. */
const mostCalls = 200;

/** Builds the invented class with the script's own calls, as the sidebar's button does; says after each what was built. */
export function buildSample(host: PreviewHost, onProgress: (state: BuildState) => void): void {
  const read = (name: string): BuildState => {
    const outcome = host.run('teacher', name, []) as Outcome<BuildState>;
    if (!outcome.ok) throw new Error(`The sample class was not built: ${outcome.problem.message}`);
    onProgress(outcome.value);
    return outcome.value;
  };
  let state = read('startSample');
  for (let calls = 0; !state.finished; calls += 1) {
    if (calls === mostCalls) throw new Error(`The sample class was not finished after ${mostCalls} calls.`);
    state = read('continueBuild');
  }
}
