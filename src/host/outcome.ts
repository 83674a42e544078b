import type { Outcome, Problem } from './calls.ts';
import { hostWords } from './words.ts';

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** Something to mend, in three parts and one thing to do. */
export const problem = (
  parts: { expected: string; where: string; received: string; advice: string },
  about: Omit<Problem, 'message'> = {},
): Outcome<never> => ({ ok: false, problem: { message: hostWords.problem(parts), ...about } });

export const busy = (): Outcome<never> => problem(hostWords.busy, { reason: 'busy' });
export const changed = (where: string): Outcome<never> =>
  problem({ ...hostWords.changed, where }, { reason: 'changed' });

/** Whatever the host refuses becomes a sentence for people, with what to do next; nothing typed is touched by it. */
export function guarded<T>(work: () => Outcome<T>): Outcome<T> {
  try {
    return work();
  } catch (error) {
    const received = error instanceof Error ? error.message : String(error);
    return problem({ ...hostWords.refused, received: `“${received}”` });
  }
}
