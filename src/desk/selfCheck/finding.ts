import type { ProbeName } from './words.ts';

export type Verdict = 'expected' | 'different' | 'not tried';

/** What one probe came to, in plain sentences; nothing in it names a person, an account or the file. */
export interface Finding {
  readonly name: ProbeName;
  readonly verdict: Verdict;
  /** What was seen. */
  readonly saw: string;
}

export type Role = 'teacher' | 'student';

/** What is handed from one probe to the next. */
export interface Trial {
  readonly role: Role;
  /** Name of the scratch sheet. */
  readonly sheet: string;
  /** Between the arguments of a formula that a script sets; known once the probe of formulas has run. */
  separator: ',' | ';';
  /** False where a function in a cell has given no answer: then there is nothing more to ask of functions. */
  functionsAnswer: boolean;
  /** The sheet that was in view, to be shown again. */
  readonly shown: number | undefined;
  /** What an earlier run has left for a run in a copy. */
  readonly left: LeftMarks | undefined;
}

/** What the page knows of the device that it runs on. */
export interface Device {
  /** Milliseconds since 1970. */
  readonly now: number;
  readonly timeZone: string;
}

/** Marks in a sheet that an earlier run left on purpose. */
export interface LeftMarks {
  readonly isCopy: boolean;
  readonly tags: number;
  readonly properties: boolean;
  readonly protections: number;
}
