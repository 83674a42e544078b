import { expect, it } from 'vitest';
import {
  collectTestsFromSuite,
  convertTestToTestResult,
} from '../../node_modules/@stryker-mutator/vitest-runner/dist/src/vitest-helpers.js';
import { noticeUnloaded } from '../../scripts/noticeUnloaded.mjs';

/** What the mutation tester counts in a file of tests, whose reading has failed with these words or has not. */
function counted(...errors: readonly string[]) {
  const task = { type: 'suite', name: 'a.test.ts', filepath: '/invented/a.test.ts', tasks: [] as object[] };
  const module = { errors: () => errors.map((message) => ({ message })), task };
  noticeUnloaded(module);
  return collectTestsFromSuite(task as never)
    .filter((test) => test.result)
    .map((test) => convertTestToTestResult(test));
}

it('a file of tests that cannot be read counts as a failed test of the mutation run, and one that can as nothing', () => {
  expect(counted('Cannot find module')).toMatchObject([
    { status: 1, failureMessage: 'Cannot find module', fileName: expect.stringContaining('a.test.ts') },
  ]);
  expect(counted()).toEqual([]);
});
