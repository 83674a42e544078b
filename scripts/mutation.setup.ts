import { vi } from 'vitest';

// A property is tried a few times for each mutant, not thousands of times: a law that breaks, breaks soon.
const runsForEach = 20;

vi.mock('fast-check', async (importOriginal) => {
  const real = await importOriginal<typeof import('fast-check')>();
  const few = (parameters: unknown) => ({ ...(parameters as object | undefined), numRuns: runsForEach });
  const assert = ((property: never, parameters: unknown) =>
    real.assert(property, few(parameters))) as typeof real.assert;
  return { ...real, assert, default: { ...real.default, assert } };
});
