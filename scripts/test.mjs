// `npm test`: installs on first use, then every check, the quickest first; each failure says what puts it right.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { prepare, root, run, stop } from './prepare.mjs';

prepare();

const cache = join(root, '.cache');
mkdirSync(cache, { recursive: true });

/** Wall time in seconds, for reading only. @param {number} from */
const seconds = (from) => `${((performance.now() - from) / 1000).toFixed(0)} s`;

const projects = ['tests', 'scripts', 'src/preview', 'src/host', 'src/sidebar', '.', 'src/preview/page'];
/** Each alone, the longest first, so that no core stands idle at the end. @type {[string, string[], string][]} */
const checks = [
  ...projects.map(
    (project) =>
      /** @type {[string, string[], string]} */ ([
        `types in ${project}`,
        [
          'typescript/bin/tsc',
          ...['-p', project, '--pretty', '--incremental'],
          // What has not changed since the last run is not read again.
          ...['--tsBuildInfoFile', join(cache, 'types', `${project.replaceAll('/', '-')}.tsbuildinfo`)],
        ],
        'mend the types named above',
      ]),
  ),
  [
    'format and lint',
    ['@biomejs/biome/bin/biome', 'check', '.', '--colors=force'],
    'run “npm run format”, then mend what is left',
  ],
  ['unused files, exports and packages', ['knip/bin/knip.js', '--no-progress'], 'remove what is named above'],
];

/** Runs a tool and hands back its exit code and what it said. @param {string[]} args */
const heard = ([bin = '', ...args]) =>
  new Promise((/** @type {(outcome: { code: number, said: string }) => void} */ resolve) => {
    const child = spawn(process.execPath, [join(root, 'node_modules', bin), ...args], { cwd: root });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (said += text));
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
  });

/** @type {string[]} */
const broken = [];
const waiting = [...checks];
const checkNext = async () => {
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    const [name, args, remedy] = next;
    const from = performance.now();
    const { code, said } = await heard(args);
    console.log(`labrow: ${name} ${code === 0 ? '✓' : '✗'} ${seconds(from)}`);
    if (code === 0) continue;
    console.log(said);
    broken.push(`${name} failed: ${remedy}.`);
  }
};
await Promise.all(Array.from({ length: availableParallelism() }, checkNext));
if (broken.length > 0) stop(broken.join('\nlabrow: '));

const browsers = 'tests/**/*.browser.test.ts';
const { findBrowser } = await import('./findBrowser.mjs');
/** @type {{ passed: number, failed: number }} */
const total = { passed: 0, failed: 0 };
for (const [name, args] of /** @type {[string, string[]][]} */ ([
  ['unit and integration tests', ['--exclude', browsers]],
  ['browser tests', ['browser.test']],
])) {
  console.log(`labrow: ${name} …`);
  if (name === 'browser tests') findBrowser();
  const from = performance.now();
  const report = join(cache, `${name.split(' ')[0]}.json`);
  rmSync(report, { force: true });
  const code = run(process.execPath, [
    join(root, 'node_modules/vitest/vitest.mjs'),
    ...['run', '--config', '.vitest.config.ts'],
    // Every test waits for a state and none for a clock, so every core may work.
    ...['--maxWorkers', '100%'],
    ...['--reporter', 'default', '--reporter', 'json', '--outputFile.json', report],
    ...args,
  ]);
  if (existsSync(report)) {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'));
    total.passed += numPassedTests;
    total.failed += numFailedTests;
  }
  console.log(`labrow: ${name} ${code === 0 ? '✓' : '✗'} ${seconds(from)}`);
  if (code !== 0) {
    console.log(`\n${total.passed} passed, ${total.failed} failed`);
    stop(`${name} failed; the lines above say which.`);
  }
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
