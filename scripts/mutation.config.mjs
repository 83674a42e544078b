import { mutationSample } from './mutationSample.mjs';

// `npm run mutation`: changes the pure rooms in thousands of small ways and counts how many of them a test notices.
// Slow, so it is no part of `npm test`. The rooms that lay out sheets and run the desk are sampled: the same lines each
// time, since every mutant there costs the tests of whole lessons.
const sample = { lines: 300, seed: 20_261_129 };

export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'scripts/mutation.vitest.ts', related: false },
  mutate: [
    'src/chemistry/**/*.ts',
    'src/measurement/**/*.ts',
    'src/lab/judging/**/*.ts',
    ...mutationSample('src/workbook', sample),
    ...mutationSample('src/desk', sample),
    '!src/**/*.generated.ts',
    '!src/**/*Texts.ts',
  ],
  ignorePatterns: ['dist', 'src/preview', 'reports', '.preview'],
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'reports/mutation.json' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: true },
  // The marks it would put into every file would make generated tables look stale.
  disableTypeChecks: false,
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 20_000,
  dryRunTimeoutMinutes: 30,
  tempDirName: '.stryker-tmp',
};
