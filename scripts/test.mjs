// `npm test`: installs on first use, then every check, side by side so that no core stands idle; each failure says what
// puts it right.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, setPriority } from 'node:os';
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

/**
 * Rooms whose tests may share a process, which spares loading the sources, the engine and the script for each file. Those
 * of `errors` watch how a module is called, so they have one of their own.
 */
const rooms = ['chemistry', 'functions', 'lab', 'measurement', 'workbook', 'desk', 'sidebar'];
const sharing = [...rooms, 'host', 'preview', 'journey', 'browser'].map((room) => `tests/${room}/`);

/**
 * `flags` are for Node itself; what is `aloud` is heard as it goes; what `isBeside` takes the time that others leave, as
 * tests in a browser leave much of it.
 * @typedef {{ readonly name: string, readonly args: readonly string[], readonly remedy: string,
 *   readonly flags?: readonly string[], readonly aloud?: boolean, readonly isBeside?: boolean }} Check
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

/**
 * All of them in one queue: whichever worker is free takes the next file. A worker more than there are cores costs more
 * than it brings.
 */
const sharingTests = tests('tests of functions, workbook and pages', availableParallelism(), [
  '--no-isolate',
  ...sharing,
]);
const otherTests = tests('tests of what is built, and of the sources', 1, [
  ...sharing.flatMap((folder) => ['--exclude', `${folder}**`]),
]);

/** @type {readonly Check[]} */
const beside = [
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
  otherTests,
];
/** @type {readonly Check[]} */
const inFront = [
  { name: 'a browser', args: [join(root, 'scripts/findBrowser.mjs')], remedy: 'the line above says how to get one' },
  sharingTests,
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
const heard = ({ args: [bin = '', ...args], flags = [], aloud, isBeside }) =>
  new Promise((/** @type {(outcome: { code: number, said: string }) => void} */ resolve) => {
    const env = { ...process.env, LABROW_BUILT: built, ...(process.stdout.isTTY ? { FORCE_COLOR: '1' } : {}) };
    const path = bin.startsWith(root) ? bin : join(root, 'node_modules', bin);
    const child = spawn(process.execPath, [...flags, path, ...args], { cwd: root, env });
    if (isBeside && child.pid !== undefined) setPriority(child.pid, 10);
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
for (const { name } of [sharingTests, otherTests]) rmSync(reportOf(name), { force: true });
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
  [inFront, beside.map((check) => ({ ...check, isBeside: true }))].map(async (checks) => {
    for (const check of checks) {
      // Tests read what is built, and nothing else does.
      if (check.aloud) await isBuilt;
      await done(check);
    }
  }),
);
console.log(`\n${total.passed} passed, ${total.failed} failed`);
if (broken.length > 0) stop(broken.join('\nlabrow: '));
