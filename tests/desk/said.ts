import { problem } from '../../src/desk/outcome.ts';

/** What people read of a problem with these parts. */
export const said = (parts: Parameters<typeof problem>[0]): string => {
  const outcome = problem(parts);
  return outcome.ok ? '' : outcome.problem.message;
};
