/** What menu items and the sidebar call. Cell functions, the menu and the count of tries are compiled without it. */
import { continueBuild } from './build.ts';
import type { Calls } from './calls.ts';
import { checkAgain } from './endpoints/checkAgain.ts';
import { draftTeams } from './endpoints/draftTeams.ts';
import { goToTeam } from './endpoints/goToTeam.ts';
import { readClass } from './endpoints/readClass.ts';
import { readLesson } from './endpoints/readLesson.ts';
import { startBuild } from './endpoints/startBuild.ts';
import { startSample } from './endpoints/startSample.ts';
import { guarded } from './outcome.ts';

export { buildSampleFromMenu_, checkAgainFromMenu_, openSidebar_ } from './menu.ts';

/** Calls from the sidebar, each with its input checked and every refusal in words for people. */
export const endpoints_: Calls = {
  readLesson: () => guarded(readLesson),
  draftTeams: (setup) => guarded(() => draftTeams(setup)),
  startBuild: (setup) => guarded(() => startBuild(setup)),
  continueBuild: () => guarded(continueBuild),
  startSample: () => guarded(startSample),
  readClass: (className) => guarded(() => readClass(className)),
  checkAgain: () => guarded(checkAgain),
  goToTeam: (className, key) => guarded(() => goToTeam(className, key)),
};
