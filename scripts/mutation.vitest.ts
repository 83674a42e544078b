import { defineConfig } from 'vitest/config';

/** The tests of the rooms that are mutated, without the one that only repeats thousands of random texts. */
export default defineConfig({
  test: {
    include: ['tests/chemistry/**/*.test.ts', 'tests/measurement/**/*.test.ts', 'tests/errors/**/*.test.ts'],
    setupFiles: ['scripts/mutation.setup.ts'],
    testNamePattern: /^(?!.*random and mutated)/,
    testTimeout: 30_000,
  },
});
