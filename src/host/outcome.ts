import { filledText } from '../errors/filledText.ts';
import type { Outcome, Problem } from './calls.ts';
import { hostWords } from './words.ts';

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** Something to mend: what is wrong, in which {where} and {received} are filled in, and one thing to do. */
export const problem = (
  { says, advice, ...parts }: { says: string; advice: string; where?: string; received?: string },
  about: Omit<Problem, 'message'> = {},
): Outcome<never> => ({ ok: false, problem: { message: `${filledText(says, parts)} ${advice}`, ...about } });

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
