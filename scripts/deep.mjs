// `npm run deep`: the long form of what `npm test` tries briefly, with cases that nobody has drawn before.
import { randomInt } from 'node:crypto';
import { join } from 'node:path';
import { prepare, root, run, runTypeScript, stop } from './prepare.mjs';

const usage = 'npm run deep -- [seed] [--mutation]';
const [typed, ...others] = process.argv.slice(2).filter((argument) => argument !== '--mutation');
const seed = typed === undefined ? randomInt(2 ** 31) : Number(typed);
if (!Number.isInteger(seed) || seed < 0 || others.length > 0) {
  stop(`Expected a whole number as seed, received “${[typed, ...others].join(' ')}”. Type ${usage}.`);
}
prepare();
console.log(`labrow: seed ${seed}; “npm run deep -- ${seed}” tries the same cases again`);

/** @param {string} bin @param {string[]} args */
const tool = (bin, ...args) => run(process.execPath, [join(root, 'node_modules', bin), ...args]);
/** @type {[string, () => number][]} */
const stages = [
  [
    'sidebar tests with every answer late',
    () => {
      process.env.LABROW_LATE = '250';
      const code = tool('vitest/vitest.mjs', 'run', '--config', '.vitest.config.ts', '--no-isolate', 'tests/sidebar/');
      delete process.env.LABROW_LATE;
      return code;
    },
  ],
  [
    'tests in their long form',
    () => {
      Object.assign(process.env, { LABROW_DEEP: '1', LABROW_SEED: String(seed) });
      const left = ['--exclude', 'tests/**/*.browser.test.ts'];
      return tool('vitest/vitest.mjs', 'run', '--config', '.vitest.config.ts', '--maxWorkers', '100%', ...left);
    },
  ],
  [
    'browser tests in their long form',
    () => tool('vitest/vitest.mjs', 'run', '--config', '.vitest.config.ts', '--maxWorkers', '100%', 'browser.test'),
  ],
  ['students over 11,000 generated plans', () => runTypeScript('scripts/simulate.ts', ['11000', String(seed)])],
  ['500,000 hostile texts', () => runTypeScript('scripts/fuzz.ts', ['500000', String(seed)])],
  ...(process.argv.includes('--mutation')
    ? [
        /** @type {[string, () => number]} */ ([
          'mutants',
          () => run(process.execPath, [join(root, 'scripts/mutation.mjs')]),
        ]),
      ]
    : []),
];
const lines = stages.map(([name, stage]) => {
  console.log(`\nlabrow: ${name} …`);
  const from = performance.now();
  const code = stage();
  const minutes = ((performance.now() - from) / 60_000).toFixed(1);
  return { code, line: `${code === 0 ? '✓' : '✗'} ${name.padEnd(40)}${minutes.padStart(6)} min` };
});
console.log(`\nseed ${seed}\n${lines.map(({ line }) => line).join('\n')}`);
if (lines.some(({ code }) => code !== 0)) {
  stop(`the lines above say what failed; “npm run deep -- ${seed}” tries the same cases again.`);
}
