/** What menu items and the sidebar call. Cell functions, the menu and the count of tries are compiled without it. */
import { continueBuild } from './build.ts';
import type { Calls } from './calls.ts';
import { addClass, addTeam } from './endpoints/addTeams.ts';
import { checkAgain } from './endpoints/checkAgain.ts';
import { draftTeams } from './endpoints/draftTeams.ts';
import { emptyCopy } from './endpoints/emptyCopy.ts';
import { goToPoll } from './endpoints/goToPoll.ts';
import { goToTeam } from './endpoints/goToTeam.ts';
import { openPage } from './endpoints/openPage.ts';
import { passRoles } from './endpoints/passRoles.ts';
import { readClass } from './endpoints/readClass.ts';
import { readKey } from './endpoints/readKey.ts';
import { readLesson } from './endpoints/readLesson.ts';
import { readNumbers } from './endpoints/readNumbers.ts';
import { readPaper } from './endpoints/readPaper.ts';
import { readPoll } from './endpoints/readPoll.ts';
import { readPreparation } from './endpoints/readPreparation.ts';
import { readRecord, recordDue } from './endpoints/readRecord.ts';
import { readShare } from './endpoints/readShare.ts';
import { readTeams } from './endpoints/readTeams.ts';
import { saveRecord } from './endpoints/saveRecord.ts';
import { setAbsent } from './endpoints/setAbsent.ts';
import { setMembers } from './endpoints/setMembers.ts';
import { startBuild } from './endpoints/startBuild.ts';
import { startSample } from './endpoints/startSample.ts';
import { writeKeySheet } from './endpoints/writeKeySheet.ts';
import { writePrepareSheet } from './endpoints/writePrepareSheet.ts';
import { guarded } from './outcome.ts';

export { buildSampleFromMenu_, checkAgainFromMenu_, openSidebar_ } from './menu.ts';

/** Calls from the sidebar, each with its input checked and every refusal in words for people. */
export const endpoints_: Calls = {
  readRecord: () => guarded(readRecord),
  saveRecord: (rows) => guarded(() => saveRecord(rows)),
  recordDue: () => guarded(recordDue),
  readShare: () => guarded(readShare),
  emptyCopy: (wish) => guarded(() => emptyCopy(wish)),
  readTeams: () => guarded(readTeams),
  addTeam: (className, team) => guarded(() => addTeam(className, team)),
  addClass: (className, teams) => guarded(() => addClass(className, teams)),
  setAbsent: (key, absent) => guarded(() => setAbsent(key, absent)),
  setMembers: (className, key, wish) => guarded(() => setMembers(className, key, wish)),
  passRoles: (className) => guarded(() => passRoles(className)),
  readLesson: () => guarded(readLesson),
  draftTeams: (setup) => guarded(() => draftTeams(setup)),
  startBuild: (setup) => guarded(() => startBuild(setup)),
  continueBuild: () => guarded(continueBuild),
  startSample: () => guarded(startSample),
  readClass: (className) => guarded(() => readClass(className)),
  checkAgain: () => guarded(checkAgain),
  goToTeam: (className, key) => guarded(() => goToTeam(className, key)),
  openPage: (page, about) => guarded(() => openPage(page, about)),
  readPreparation: () => guarded(readPreparation),
  readKey: () => guarded(readKey),
  readPaper: () => guarded(readPaper),
  writePrepareSheet: (stay) => guarded(() => writePrepareSheet(stay)),
  writeKeySheet: (confirmed) => guarded(() => writeKeySheet(confirmed)),
  readNumbers: () => guarded(readNumbers),
  readPoll: () => guarded(readPoll),
  goToPoll: () => guarded(goToPoll),
};
