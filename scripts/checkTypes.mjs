// Checks the types of every project, each with all that it imports, with the compiler that was written anew for speed; the
// one before it is here for the tool that checks imports between rooms (see DEVELOPERS.md).
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { isAbsolute, join, relative, resolve } from 'node:path';
import { root, stop } from './prepare.mjs';
import { projects } from './projects.mjs';

const tsc = join(root, 'node_modules/typescript-7/bin/tsc');
/**
 * What the compiler says of a project. Tests of other kinds take the cores beside it, so it is one thread that does no
 * work twice, and its collector of garbage may wait (`GOGC`, in percent of what is in use): half the processor's time.
 * @param {string} project @param {readonly string[]} flags
 */
const compiled = (project, flags) =>
  spawnSync(process.execPath, [tsc, '-p', project, '--singleThreaded', ...flags], {
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
    cwd: root,
    env: { GOGC: '400', ...process.env },
  });

/** Names of the files that belong to a project. @param {string} project @returns {readonly string[]} */
function filesOf(project) {
  const { stdout, stderr, status } = compiled(project, ['--showConfig']);
  if (status !== 0) stop(`the compiler could not say what belongs to ${project}: ${stderr || stdout}`);
  return JSON.parse(stdout).files;
}

/** Files of each project with all that they import: told as they are checked, so that nothing is read twice. */
const imported = new Set();
const isFile = (/** @type {string} */ line) => isAbsolute(line) && existsSync(line);
const broken = projects.filter((project) => {
  const { stdout, stderr, status } = compiled(project, ['--pretty', '--listFiles']);
  const lines = stdout.split(/\r?\n/);
  for (const name of lines.filter(isFile)) imported.add(name);
  if (status !== 0) console.log(lines.filter((line) => !isFile(line)).join('\n') || stderr);
  return status !== 0;
});
if (imported.size === 0) stop('the compiler named no file that it checked.');
// A file is checked by the settings of whatever imports it, so one that belongs to no project may use what it must not.
const own = new Set(projects.flatMap((project) => filesOf(project).map((name) => resolve(root, project, name))));
const strays = [...imported].filter(
  (name) => /(?<!\.d)\.ts$/.test(name) && !/\/node_modules\//.test(name) && !own.has(resolve(name)),
);
for (const name of strays)
  console.log(`${relative(root, name)} belongs to no project: only settings of those that import it check its types.`);
process.exitCode = broken.length === 0 && strays.length === 0 ? 0 : 1;
