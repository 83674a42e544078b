// `npm run mutation`: changes the pure rooms in thousands of small ways and counts how many of them a test notices. Hours,
// so it is no part of `npm test`. `-- judging` does one room; `-- judging --lines 190 --seed 7` some of its lines.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { builtFolder } from './builtFolder.mjs';
import { mutationRooms } from './mutationRooms.mjs';
import { noticeUnloaded } from './noticeUnloaded.mjs';
import { install, prepare, root, run, runTypeScript, stop } from './prepare.mjs';

const usage = 'npm run mutation -- [room …] [--lines number] [--seed number]';
const { values, positionals } = parseArgs({
  strict: false,
  options: { lines: { type: 'string' }, seed: { type: 'string' } },
});
const unknown = Object.keys(values).find((name) => name !== 'lines' && name !== 'seed');
if (unknown !== undefined) stop(`There is no --${unknown}. Type ${usage}.`);
const known = Object.keys(mutationRooms);
const strange = positionals.find((room) => !known.includes(room));
if (strange !== undefined)
  stop(`There is no room “${strange}” to change. Choose from ${known.join(', ')}. Type ${usage}.`);
for (const [name, number] of Object.entries(values)) {
  if (!/^\d+$/.test(String(number))) stop(`“${number}” is no whole number for --${name}. Type ${usage}.`);
}
prepare();
// Two fifths of all packages serve this alone, so they are installed when it is first asked for.
const folder = join(root, 'scripts/mutation');
install(folder, 'what changes the sources (once)');
const tester = join(folder, 'node_modules/@stryker-mutator');
const unloaded = await countedWhereUnloaded();
if (unloaded !== 'Cannot find module')
  stop(
    `the mutation tester counts a file of tests that cannot be read as ${unloaded ?? 'nothing'}; mend noticeUnloaded.`,
  );
if (values.lines !== undefined) process.env.LABROW_MUTATED_LINES = String(values.lines);
if (values.seed !== undefined) process.env.LABROW_MUTATED_SEED = String(values.seed);
// The script for the stand-in is built once, from sources without marks: it runs beside the mutants and not with them.
const built = builtFolder();
if (runTypeScript('scripts/buildForTests.ts', [built]) !== 0)
  stop('the project could not be built; the lines above say why.');
process.env.LABROW_BUILT = built;
const stryker = join(tester, 'core/bin/stryker.js');
let failed = 0;
for (const room of positionals.length > 0 ? positionals : known) {
  console.log(`\nlabrow: mutants of ${room} …`);
  process.env.LABROW_ROOM = room;
  if (run(process.execPath, [stryker, 'run', 'scripts/mutation.config.mjs']) !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;

/** With which words the tester counts a file of tests as failed that could not be read; undefined where it does not. */
async function countedWhereUnloaded() {
  const helpers = pathToFileURL(join(tester, 'vitest-runner/dist/src/vitest-helpers.js')).href;
  const { collectTestsFromSuite, convertTestToTestResult } = await import(helpers);
  const task = { type: 'suite', name: 'a.test.ts', filepath: '/invented/a.test.ts', tasks: [] };
  noticeUnloaded(/** @type {never} */ ({ errors: () => [{ message: 'Cannot find module' }], task }));
  const [counted] = collectTestsFromSuite(task).map(convertTestToTestResult);
  return counted?.failureMessage;
}
