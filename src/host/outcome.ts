import { errorText } from '../errors/errorText.ts';
import type { ChemError } from '../errors/result.ts';
import type { Outcome } from './calls.ts';
import { hostWords } from './words.ts';

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** Something to mend, in three parts and one thing to do. */
export const problem = (
  parts: { expected: string; where: string; received: string; advice: string },
  field?: string,
): Outcome<never> => ({
  ok: false,
  problem: { message: hostWords.problem(parts), ...(field === undefined ? {} : { field }) },
});

export const problemOf = (error: ChemError, field?: string): Outcome<never> => ({
  ok: false,
  problem: { message: errorText(error), ...(field === undefined ? {} : { field }) },
});

/** Whatever the host refuses becomes a sentence for people, with what to do next; nothing typed is touched by it. */
export function guarded<T>(work: () => Outcome<T>): Outcome<T> {
  try {
    return work();
  } catch (error) {
    const received = error instanceof Error ? error.message : String(error);
    return problem({ ...hostWords.refused, received: `“${received}”` });
  }
}

/** The same for numbers that could not be made: `argument` names a given, and its field shows why. */
export const numbersProblem = (error: ChemError): Outcome<never> =>
  problemOf(error, error.argument === 'activity' ? 'activity' : `givens.${error.argument}`);
