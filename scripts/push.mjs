// `npm run push`: builds, then sends the three files of dist/ to the script project named in .clasp.json.
import { clasp } from './clasp.mjs';
import { prepare, root, runTypeScript, stop } from './prepare.mjs';
import { pushProblem } from './pushProblem.mjs';

prepare();
const problem = pushProblem(root, ['Code.js', 'Sidebar.html', 'appsscript.json']);
if (problem !== undefined) stop(problem);
// The build writes all three anew: a manifest that create-script has fetched never wins, and a failed build sends nothing.
if (runTypeScript('scripts/build.ts') !== 0) stop('the build failed; nothing was pushed.');
// Without -f a changed manifest makes clasp skip the whole push when nobody is there to answer.
const pushed = clasp(['push', '-f']);
if (pushed === 0) {
  console.log(
    '\nlabrow: pushed. “npm run clasp -- open-container” opens the sheet; reload it if it is open. ' +
      'Then choose Labrow, Try this file out: once as the teacher, once from a student’s account.',
  );
}
process.exit(pushed);
