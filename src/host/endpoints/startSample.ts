import { sampleSetup } from '../../lab/sampleLesson.ts';
import { startBuild } from '../build.ts';
import type { BuildState, Outcome } from '../calls.ts';

/** Begins an invented school, ready to try; refused in a file that has a lesson of its own. */
export const startSample = (): Outcome<BuildState> => startBuild(sampleSetup(), { sample: true });
