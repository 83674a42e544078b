import { mutatedRoom } from './mutationRooms.mjs';

const { name, mutate, withStatic = false } = mutatedRoom();

// What `npm run mutation` gives the mutation tester for one room. What a file works out while it is read (`static`)
// costs every test of the room, so it is changed only where those are few.
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'scripts/mutation.vitest.ts', related: false },
  mutate: [...mutate, '!src/**/*.generated.ts', '!src/**/*Texts.ts'],
  ignorePatterns: ['dist', 'reports', '.preview', '.stryker-tmp'],
  reporters: ['clear-text', 'json', 'progress-append-only'],
  jsonReporter: { fileName: `reports/mutation-${name}.json` },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: true },
  // The marks it would put into every file would make generated tables look stale.
  disableTypeChecks: false,
  coverageAnalysis: 'perTest',
  ignoreStatic: !withStatic,
  concurrency: Number(process.env.LABROW_MUTATION_WORKERS ?? 2),
  timeoutMS: 20_000,
  dryRunTimeoutMinutes: 30,
  tempDirName: `.stryker-tmp/${name}`,
};
