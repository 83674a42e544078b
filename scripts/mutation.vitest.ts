import { defineConfig } from 'vitest/config';

const rooms = ['chemistry', 'measurement', 'errors', 'lab', 'workbook', 'desk'];

/** The tests of the rooms that are mutated, without those that only repeat: random texts, and whole simulated classes. */
export default defineConfig({
  test: {
    include: rooms.map((room) => `tests/${room}/**/*.test.ts`),
    exclude: ['tests/lab/simulation.test.ts'],
    globalSetup: ['tests/globalSetup.ts'],
    setupFiles: ['tests/setup.ts'],
    // A property is tried a few times for each mutant, not hundreds of times: a law that breaks, breaks soon.
    env: { LABROW_MOST_CASES: '20' },
    testNamePattern: /^(?!.*random and mutated)/,
    testTimeout: 120_000,
  },
});
