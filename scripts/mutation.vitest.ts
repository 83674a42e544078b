import { defineConfig } from 'vitest/config';
import type { TestSpecification } from 'vitest/node';
import { LongestFirst } from '../tests/longestFirst.ts';
import { mutatedRoom } from './mutationRooms.mjs';
import { noticeUnloaded } from './noticeUnloaded.mjs';

const { tests, without = [] } = mutatedRoom();

/** A mutant is done with at the first test that notices it, and the short files ask the plainest questions. */
class ShortestFirst extends LongestFirst {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).reverse();
  }
}

/** The tests of the room that is mutated, without those that only repeat: random texts, and whole simulated classes. */
export default defineConfig({
  test: {
    include: tests.map((room) => `tests/${room}/**/*.test.ts`),
    exclude: without,
    globalSetup: ['tests/globalSetup.ts'],
    setupFiles: ['tests/setup.ts'],
    // One set of modules for all files of a run: reading them anew for each file would be most of what a mutant costs.
    isolate: false,
    sequence: { sequencer: ShortestFirst },
    // A property is tried a few times for each mutant, not hundreds of times: a law that breaks, breaks soon.
    env: { LABROW_MOST_CASES: '20' },
    testNamePattern: /^(?!.*random and mutated)/,
    testTimeout: 120_000,
    reporters: [{ onTestModuleEnd: noticeUnloaded }],
  },
});
