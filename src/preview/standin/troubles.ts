import type { Seat } from '../view.ts';
import type { Span } from './drawn.ts';

/**
 * How this place differs from the host at its best: each has happened to somebody, or is something that nobody has ruled
 * out. Left out, none of them is the case.
 */
export interface Troubles {
  /**
   * Accounts for which a school has switched scripts off: no menu, no trigger, no panel. A function in a cell that such
   * an account makes work gives an error; what the host shows there is not documented.
   */
  readonly scriptsOff?: readonly Seat[];
  /** Accounts that say no when the host asks for consent: menus and panels fail; functions and triggers go on. */
  readonly consentRefused?: readonly Seat[];
  /** Simple triggers fire for nobody, as for editors by link who are not signed in. */
  readonly triggersOff?: boolean;
  /** Taking editors off a protection fails, as with a group of which whoever runs the script is a member. */
  readonly editorsStay?: boolean;
  /** A duplicated sheet comes without its metadata. */
  readonly tagsLostInCopies?: boolean;
  /** Reading a formula back drops quotes round the name of a sheet that would do without. */
  readonly quotesDropped?: boolean;
  /** Other runs at work: the lock may be held when it is asked for. */
  readonly otherRuns?: {
    readonly seed: number;
    /** In how many of the times it is asked for, from 0 to 1. */
    readonly share: number;
    /** For how much longer it is held then. */
    readonly heldMs: Span;
  };
  /** The host takes its time; it passes by `passTime` alone. */
  readonly slow?: Slow;
}

export interface Slow {
  readonly seed: number;
  /** From an edit until its trigger begins, and from then until what it writes arrives. */
  readonly triggerStartsMs: Span;
  readonly triggerTakesMs: Span;
  /** From a change of its arguments until the result of a function in a cell arrives. */
  readonly functionTakesMs: Span;
  /** Functions that run at once; the others wait for their turn. */
  readonly functionsAtOnce?: number;
}
