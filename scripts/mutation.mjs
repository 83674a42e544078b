// `npm run mutation`: changes the pure rooms in thousands of small ways and counts how many of them a test notices. Hours,
// so it is no part of `npm test`. `-- judging` does one room; `-- judging --lines 190 --seed 7` some of its lines.
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { builtFolder } from './builtFolder.mjs';
import { mutationRooms } from './mutationRooms.mjs';
import { prepare, root, run, runTypeScript, stop } from './prepare.mjs';

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
if (values.lines !== undefined) process.env.LABROW_MUTATED_LINES = String(values.lines);
if (values.seed !== undefined) process.env.LABROW_MUTATED_SEED = String(values.seed);
// The script for the stand-in is built once, from sources without marks: it runs beside the mutants and not with them.
const built = builtFolder();
if (runTypeScript('scripts/buildForTests.ts', [built]) !== 0)
  stop('the project could not be built; the lines above say why.');
process.env.LABROW_BUILT = built;
const stryker = join(root, 'node_modules/@stryker-mutator/core/bin/stryker.js');
let failed = 0;
for (const room of positionals.length > 0 ? positionals : known) {
  console.log(`\nlabrow: mutants of ${room} …`);
  process.env.LABROW_ROOM = room;
  if (run(process.execPath, [stryker, 'run', 'scripts/mutation.config.mjs']) !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;
