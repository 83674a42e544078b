import { startBuild as start } from '../build.ts';
import type { BuildState, Outcome } from '../calls.ts';
import { readSetup } from '../readSetup.ts';

/** Writes the Plan from what the sidebar sent, and the list of sheets still to build. */
export function startBuild(given: unknown): Outcome<BuildState> {
  const setup = readSetup(given);
  return setup.ok ? start(setup.value, { sample: false }) : setup;
}
