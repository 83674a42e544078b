import { defineConfig } from 'vitest/config';

/** The tests of the rooms that are mutated, without those that repeat the same paths thousands of times. */
export default defineConfig({
  test: {
    include: ['tests/chemistry/**/*.test.ts', 'tests/measurement/**/*.test.ts', 'tests/errors/**/*.test.ts'],
    testTimeout: 30_000,
  },
});
