// `npm test`: installs on first use, then every check, side by side so that no core stands idle; each failure says what
// puts it right.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { builtFolder } from './builtFolder.mjs';
import { prepare, root, stop } from './prepare.mjs';

prepare();

const cache = join(root, '.cache');
mkdirSync(cache, { recursive: true });
/** Where what would be pushed is built. */
const built = builtFolder();

/** Wall time in seconds, for reading only. @param {number} from */
const seconds = (from) => `${((performance.now() - from) / 1000).toFixed(0)} s`;

const cores = availableParallelism();
const browsers = 'tests/**/*.browser.test.ts';
/**
 * Rooms whose tests only call functions: they may share one process, which spares loading the sources for each file. Those
 * of `errors` watch how a module is called, so they have one of their own.
 */
const pure = ['chemistry', 'desk', 'functions', 'lab', 'measurement', 'preview/page', 'sidebar', 'workbook'];
const pureFolders = pure.map((room) => `tests/${room}/`);

/**
 * `flags` are for Node itself; what is `aloud` is heard as it goes.
 * @typedef {{ readonly name: string, readonly args: readonly string[], readonly remedy: string,
 *   readonly flags?: readonly string[], readonly aloud?: boolean }} Check
 */

/** Tests as one run of Vitest. @param {string} name @param {number} workers @param {readonly string[]} which @returns {Check} */
const tests = (name, workers, which) => ({
  name,
  args: [
    'vitest/vitest.mjs',
    ...['run', '--config', '.vitest.config.ts', '--maxWorkers', String(workers)],
    ...['--reporter', 'default', '--reporter', 'json', '--outputFile.json', reportOf(name)],
    ...which,
  ],
  remedy: 'the lines above say which',
  aloud: true,
});
/** @param {string} name */
const reportOf = (name) => join(cache, `${name.replaceAll(' ', '-')}.json`);

const half = Math.ceil(cores / 2);
// Tests of a script over the stand-in each open a workbook of their own, so they share a process as well: there the engine
// and the script have been compiled once, and what a build needs runs warm.
const overStandIn = [
  ...['tests/host/', 'tests/preview/standin/', 'tests/preview/server/', 'tests/preview/serve.test.ts'],
  'tests/desk/selfCheck.test.ts',
];
/** @param {readonly string[]} paths */
const without = (paths) => paths.flatMap((path) => ['--exclude', path.endsWith('/') ? `${path}**` : path]);
const pureTests = tests('tests of pure functions', half, [
  ...['--no-isolate', '--exclude', browsers, ...pureFolders],
  ...without(overStandIn),
]);
/** Two halves, so that neither is left alone at the end. @param {string} name @param {readonly string[]} which */
const inWorkbook = (name, which) =>
  tests(`tests of the script in a workbook, ${name}`, half, ['--no-isolate', '--exclude', browsers, ...which]);
const inA = 'abcdefghij'.split('').map((letter) => `tests/host/${letter}`);
const inB = 'klmnopqrstuvwxyz'.split('').map((letter) => `tests/host/${letter}`);
const hostTests = inWorkbook('first half', inA);
const moreHostTests = inWorkbook('second half', [...inB, ...overStandIn.filter((path) => path !== 'tests/host/')]);
const otherTests = tests('tests of what is built, and of the sources', half, [
  ...['--exclude', browsers],
  ...without([...overStandIn, ...pureFolders]),
]);
const browserTests = tests('browser tests', cores, ['--no-isolate', 'browser.test']);

/** What takes longest goes beside everything else, and whichever lane is free first takes what is left. */
const left = [hostTests, moreHostTests, pureTests, otherTests];
/** @type {readonly (readonly Check[])[]} */
const lanes = [
  [
    {
      name: 'types',
      args: [join(root, 'scripts/checkTypes.mjs')],
      remedy: 'mend the types named above',
    },
    {
      name: 'format and lint',
      args: ['@biomejs/biome/bin/biome', 'check', '.', '--colors=force'],
      remedy: 'run “npm run format”, then mend what is left',
    },
    {
      name: 'unused files, exports and packages',
      args: ['knip/bin/knip.js', '--no-progress'],
      remedy: 'remove what is named above',
    },
  ],
  [
    { name: 'a browser', args: [join(root, 'scripts/findBrowser.mjs')], remedy: 'the line above says how to get one' },
    browserTests,
  ],
  // Browser tests wait for much of their time: a lane more than there are cores keeps those at work.
  [],
];

/** What tests of the script and of the sidebar read, so that not each run of them builds it. */
const build = {
  name: 'what is pushed, built',
  flags: ['--import', 'tsx'],
  args: [join(root, 'scripts/buildForTests.ts'), built],
  remedy: 'the lines above say what stopped the build',
};

/**
 * Runs a tool and hands back its exit code and what it said; tests are heard as they go.
 * @param {Check} check
 */
const heard = ({ args: [bin = '', ...args], flags = [], aloud }) =>
  new Promise((/** @type {(outcome: { code: number, said: string }) => void} */ resolve) => {
    const env = { ...process.env, LABROW_BUILT: built, ...(process.stdout.isTTY ? { FORCE_COLOR: '1' } : {}) };
    const path = bin.startsWith(root) ? bin : join(root, 'node_modules', bin);
    const child = spawn(process.execPath, [...flags, path, ...args], { cwd: root, env });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream.on('data', (text) => {
        if (aloud) process.stdout.write(text);
        else said += text;
      });
    }
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
  });

/** @type {string[]} */
const broken = [];
const total = { passed: 0, failed: 0 };
for (const { name } of [...left, browserTests]) rmSync(reportOf(name), { force: true });
/** @param {Check} check */
async function done(check) {
  const from = performance.now();
  const { code, said } = await heard(check);
  console.log(`labrow: ${check.name} ${code === 0 ? '✓' : '✗'} ${seconds(from)}`);
  if (existsSync(reportOf(check.name))) {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(reportOf(check.name), 'utf8'));
    total.passed += numPassedTests;
    total.failed += numFailedTests;
  }
  if (code === 0) return;
  if (said) console.log(said);
  broken.push(`${check.name} failed: ${check.remedy}.`);
}
const isBuilt = done(build);
await Promise.all(
  lanes.map(async (checks) => {
    const own = [...checks];
    for (let check = own.shift() ?? left.shift(); check !== undefined; check = own.shift() ?? left.shift()) {
      // Tests read what is built, and nothing else does.
      if (check.aloud) await isBuilt;
      await done(check);
    }
  }),
);
console.log(`\n${total.passed} passed, ${total.failed} failed`);
if (broken.length > 0) stop(broken.join('\nlabrow: '));
