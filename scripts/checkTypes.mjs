// Checks the types of every project, each with all that it imports, with the compiler that was written anew for speed; the
// one before it is here for the tool that checks imports between rooms (see DEVELOPERS.md).
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { root, run, stop } from './prepare.mjs';
import { projects } from './projects.mjs';

const tsc = join(root, 'node_modules/typescript-7/bin/tsc');
/** What the compiler says of a project. @param {string} project @param {string} flag */
function said(project, flag) {
  const outcome = spawnSync(process.execPath, [tsc, '-p', project, flag], {
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
    cwd: root,
  });
  if (outcome.status !== 0)
    stop(`the compiler could not say what belongs to ${project}: ${outcome.stderr || outcome.stdout}`);
  return outcome.stdout;
}

const broken = projects.filter((project) => run(process.execPath, [tsc, '-p', project, '--pretty']) !== 0);
// A file is checked by the settings of whatever imports it, so one that belongs to no project may use what it must not.
const own = new Set(
  projects.flatMap((project) =>
    JSON.parse(said(project, '--showConfig')).files.map((/** @type {string} */ name) => resolve(root, project, name)),
  ),
);
const imported = new Set(projects.flatMap((project) => said(project, '--listFilesOnly').split(/\r?\n/)));
const strays = [...imported].filter(
  (name) => /(?<!\.d)\.ts$/.test(name) && !/\/node_modules\//.test(name) && existsSync(name) && !own.has(resolve(name)),
);
for (const name of strays)
  console.log(`${relative(root, name)} belongs to no project: only settings of those that import it check its types.`);
process.exitCode = broken.length === 0 && strays.length === 0 ? 0 : 1;
