import { configDefaults, defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/longestFirst.ts';

// No clock decides a test: these limits only end one that hangs, on a machine where others work beside it too.
const isDeep = process.env.LABROW_DEEP === '1';
const patience = isDeep ? 1_800_000 : 120_000;
/** What `npm run deep` runs alone, since `npm test` asks the same in another way. */
const inDeepAlone = [
  // Lives of weeks in a browser, lived on paper in `tests/desk/threeWeeks.test.ts`.
  'tests/journey/threeWeeks.browser.test.ts',
  // Stops and failures one at a time, which come one behind the other in `tests/host/failsAgain.test.ts`.
  'tests/host/interrupted.test.ts',
  'tests/host/lessonStopped.test.ts',
];

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(isDeep ? [] : inDeepAlone)],
    globalSetup: ['tests/globalSetup.ts'],
    setupFiles: ['tests/setup.ts'],
    sequence: { sequencer: LongestFirst },
    // A workbook makes much that is soon forgotten: with more room for it, a tenth of the time goes. Each run of the script
    // has a context of its own, in which no function lives long enough to be worth optimising: when V8 waits longer with
    // that, the compiler beside each worker, a fifth of its time, is quiet.
    execArgv: ['--max-semi-space-size=64', '--interrupt-budget=1000000'],
    testTimeout: patience,
    hookTimeout: patience,
    expect: { poll: { timeout: 60_000, interval: 50 } },
  },
});
