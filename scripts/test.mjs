// `npm test`: installs on first use, then every check, the quickest first; each failure says what puts it right.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { prepare, root, run, stop } from './prepare.mjs';

prepare();

/** @param {string} bin @param {string[]} args */
const tool = (bin, ...args) => run(process.execPath, [join(root, 'node_modules', bin), ...args]);

const projects = ['.', 'src/host', 'src/sidebar', 'src/preview', 'src/preview/page', 'scripts', 'tests'];
/** @type {[string, () => number, string][]} */
const checks = [
  [
    'format and lint',
    () => tool('@biomejs/biome/bin/biome', 'check', '.'),
    'run “npm run format”, then mend what is left',
  ],
  ...projects.map(
    (project) =>
      /** @type {[string, () => number, string]} */ ([
        `types in ${project}`,
        () => tool('typescript/bin/tsc', '-p', project),
        'mend the types named above',
      ]),
  ),
  ['unused files, exports and packages', () => tool('knip/bin/knip.js', '--no-progress'), 'remove what is named above'],
];
for (const [name, check, remedy] of checks) {
  console.log(`labrow: ${name} …`);
  if (check() !== 0) stop(`${name} failed: ${remedy}.`);
}

const browsers = 'tests/**/*.browser.test.ts';
const { findBrowser } = await import('./findBrowser.mjs');
/** @type {{ passed: number, failed: number }} */
const total = { passed: 0, failed: 0 };
for (const [name, args] of /** @type {[string, string[]][]} */ ([
  // Nothing here waits for a clock, so every core may work; windows that people watch get the machine for themselves.
  ['unit and integration tests', ['--exclude', browsers, '--maxWorkers', '100%']],
  ['browser tests', ['browser.test']],
])) {
  console.log(`labrow: ${name} …`);
  if (name === 'browser tests') findBrowser();
  const report = join(root, '.cache', `${name.split(' ')[0]}.json`);
  mkdirSync(join(root, '.cache'), { recursive: true });
  rmSync(report, { force: true });
  const code = tool(
    'vitest/vitest.mjs',
    'run',
    '--config',
    '.vitest.config.ts',
    '--reporter',
    'default',
    '--reporter',
    'json',
    '--outputFile.json',
    report,
    ...args,
  );
  if (existsSync(report)) {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'));
    total.passed += numPassedTests;
    total.failed += numFailedTests;
  }
  if (code !== 0) {
    console.log(`\n${total.passed} passed, ${total.failed} failed`);
    stop(`${name} failed; the lines above say which.`);
  }
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
