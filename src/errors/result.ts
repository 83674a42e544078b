import type { ErrorCode } from './messages.ts';

/** A person's mistake, as data. `errors/errorText.ts` turns it into words; nothing below `functions` throws it. */
export interface ChemError {
  readonly code: ErrorCode;
  /** Name of the argument as the sheet shows it. */
  readonly argument: string;
  /** What was wanted, with an example where that helps. */
  readonly expected: string;
  /** What was typed, unchanged; text stands in curly quotes (see `quoted`). */
  readonly received: string;
  /** One thing to do now, as a full sentence. */
  readonly advice: string;
  /** A few words for the short form in a range; only messages whose short form has {brief} need it. */
  readonly brief?: string;
  /** Place in a text, counted from 0. */
  readonly at?: { readonly text: string; readonly from: number };
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: ChemError };

export const success = <T>(value: T): Result<T> => ({ ok: true, value });
export const failure = (error: ChemError): Result<never> => ({ ok: false, error });
