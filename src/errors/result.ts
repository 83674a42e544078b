import type { ErrorCode, Messages } from './messages.ts';

/** What an error may give its sentences besides its argument and a place. */
interface ErrorTexts {
  /** What was wanted, with an example where that helps. */
  readonly expected: string;
  /** What was typed, unchanged; text stands in curly quotes (see `quoted`). */
  readonly received: string;
  /** One thing to do now, as a full sentence. */
  readonly advice: string;
  /** A few words for the short form in a range. */
  readonly brief: string;
}

/** The texts that a sentence has a place for. */
type ShownIn<Sentence extends string> = {
  [Text in keyof ErrorTexts]: Sentence extends `${string}{${Text}}${string}` ? Text : never;
}[keyof ErrorTexts];

/** The error of one code. It carries what its two sentences show, and nothing that nobody would read. */
export type ErrorOf<Code extends ErrorCode> = {
  readonly [One in Code]: ErrorBase<One> &
    Pick<ErrorTexts, ShownIn<Messages[One]['full' | 'short']>> & {
      readonly [Text in Exclude<keyof ErrorTexts, ShownIn<Messages[One]['full' | 'short']>>]?: never;
    };
}[Code];

interface ErrorBase<Code extends ErrorCode> {
  readonly code: Code;
  /** Name of the argument as the sheet shows it. */
  readonly argument: string;
  /** Place in a text, counted from 0. */
  readonly at?: { readonly text: string; readonly from: number };
}

/** A person's mistake, as data. `errors/errorText.ts` turns it into words; nothing below `functions` throws it. */
export type ChemError = ErrorOf<ErrorCode>;

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: ChemError };

export const success = <T>(value: T): Result<T> => ({ ok: true, value });
export const failure = (error: ChemError): Result<never> => ({ ok: false, error });
