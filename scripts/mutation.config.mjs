// `npm run mutation`: changes the pure rooms in thousands of small ways and counts how many of them a test notices.
// Slow, so it is no part of `npm test`.
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'scripts/mutation.vitest.ts', related: false },
  mutate: ['src/chemistry/**/*.ts', 'src/measurement/**/*.ts', '!src/**/*.generated.ts', '!src/**/*Texts.ts'],
  ignorePatterns: ['dist', 'src/preview', 'reports', '.preview'],
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'reports/mutation.json' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: true },
  // The marks it would put into every file would make generated tables look stale.
  disableTypeChecks: false,
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 20_000,
  tempDirName: '.stryker-tmp',
};
