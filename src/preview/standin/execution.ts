import type { PanelView, Seat } from '../view.ts';

/** What a run of the script may do: a function in a cell, a simple trigger, or a run that people consented to. */
export type Mode = 'CUSTOM_FUNCTION' | 'LIMITED' | 'FULL';

/** One run of the script, as the services see it. */
export interface Execution {
  readonly mode: Mode;
  readonly seat: Seat;
  /** A sidebar or dialog that the run opened last. */
  panel: PanelView | null;
  /** Where the host takes its time: what the run writes, until it arrives. */
  readonly held?: (() => void)[];
}
