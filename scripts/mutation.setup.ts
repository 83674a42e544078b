import { vi } from 'vitest';

// A property is tried a few times for each mutant, not thousands of times: a law that breaks, breaks soon.
const runsForEach = 20;

vi.mock('fast-check', async (importOriginal) => {
  const real = await importOriginal<typeof import('fast-check')>();
  const assert: typeof real.assert = (property, parameters) =>
    real.assert(property, { ...parameters, numRuns: runsForEach } as Parameters<typeof real.assert>[1]);
  return { ...real, assert, default: { ...real.default, assert } };
});
