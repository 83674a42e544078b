import { expect, it } from 'vitest';
import { noticeUnloaded } from '../../scripts/noticeUnloaded.mjs';

/** Tests of a file whose reading has failed with these words or has not; `npm run mutation` asks its tester the same. */
function testsAfter(...errors: readonly string[]) {
  const task = { type: 'suite', name: 'a.test.ts', tasks: [] as object[] };
  const module = { errors: () => errors.map((message) => ({ message })), task };
  noticeUnloaded(module);
  return task.tasks;
}

it('a file of tests that cannot be read has a failed test, and one that can has none of ours', () => {
  expect(testsAfter('Cannot find module')).toMatchObject([
    { type: 'test', result: { state: 'fail', errors: [{ message: 'Cannot find module' }] } },
  ]);
  expect(testsAfter()).toEqual([]);
});
