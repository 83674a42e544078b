import { errorText } from '../errors/errorText.ts';
import { filledText } from '../errors/filledText.ts';
import type { ChemError } from '../errors/result.ts';
import type { Problem as HostProblem } from '../host/calls.ts';
import type { BuildQuestion } from './building/questions.ts';

/** Something to mend, or something that has to be asked first. */
export interface Problem extends HostProblem {
  readonly question?: BuildQuestion;
}

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** Something to mend: what is wrong, in which {where} and {received} are filled in, and one thing to do. */
export const problem = (
  { says, advice, ...parts }: { says: string; advice: string; where?: string; received?: string },
  field?: string,
): Outcome<never> => ({
  ok: false,
  problem: { message: `${filledText(says, parts)} ${advice}`, ...(field === undefined ? {} : { field }) },
});

const problemOf = (error: ChemError, field?: string): Outcome<never> => ({
  ok: false,
  problem: { message: errorText(error), ...(field === undefined ? {} : { field }) },
});

/** The same for numbers that could not be made: `argument` names a given, and its field shows why. */
export const numbersProblem = (error: ChemError): Outcome<never> =>
  problemOf(error, error.argument === 'activity' ? 'activity' : `givens.${error.argument}`);
