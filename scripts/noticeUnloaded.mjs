/**
 * Counts one failed test in a file of tests that could not be read. The mutation tester looks at tests alone and would go
 * on without that file: so its first run stops, and a mutant by which a file can be read no more is noticed.
 *
 * @param {{ readonly errors: () => readonly object[] }} module as Vitest reports it, with the task behind it
 */
export function noticeUnloaded(module) {
  const errors = module.errors();
  if (errors.length === 0) return;
  const { task } = /** @type {{ task: { tasks: object[] } }} */ (/** @type {unknown} */ (module));
  task.tasks.push({
    type: 'test',
    name: 'the file can be read',
    mode: 'run',
    file: task,
    result: { state: 'fail', errors, duration: 0 },
    meta: {},
  });
}
