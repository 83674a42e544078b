// `npm run push`: builds, then sends the three files of dist/ to the script project named in .clasp.json.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { prepare, root, run, runTypeScript, stop } from './prepare.mjs';

prepare();
if (!existsSync(join(root, '.clasp.json'))) {
  stop(
    'no script project is named yet. Run “npx clasp login”, then “npx clasp create-script --type sheets --title Labrow --rootDir dist”, ' +
      'or write .clasp.json with {"scriptId": "…", "rootDir": "dist"} for a script that exists.',
  );
}
if (runTypeScript('scripts/build.ts') !== 0) stop('the build failed; nothing was pushed.');
// Without -f a changed manifest makes clasp skip the whole push when nobody is there to answer.
process.exit(run(process.execPath, [join(root, 'node_modules/@google/clasp/build/src/index.js'), 'push', '-f']));
