/** The workbook as a value: what each sheet holds and how it looks. Planned purely, applied by `host/applyWorkbook.ts`. */

/** A cell's content. Text is data and stays text even if it begins with `=`; only `formula` computes. */
export type CellContent =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'formula'; readonly formula: string }
  /** The host's own number of the sheet, for links to a place in it; known only when the sheet exists. */
  | { readonly kind: 'sheet id' }
  | { readonly kind: 'blank' };

/** Position from 1, as the host counts. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** A rectangle of contents, written in one call. Never overlaps a writable area. */
export interface Block {
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly CellContent[])[];
}

/** Names of looks in `workbook/looks.ts`, where colours, weights and sizes stand once. */
export type LookName =
  | 'title'
  | 'note'
  | 'heading'
  | 'team heading'
  | 'class name'
  | 'lesson'
  | 'step'
  | 'task'
  | 'letters'
  | 'unit'
  | 'question'
  | 'entry'
  | 'choice'
  | 'helper'
  | 'quiet'
  | 'caution'
  | 'caution text'
  | 'mark'
  | 'spilled'
  | 'text heading'
  | 'text'
  | 'count'
  | 'setting name'
  | 'setting value'
  | 'link'
  | 'progress'
  | 'closing';

export interface LookArea extends Area {
  readonly look: LookName;
}

/** How a value is shown: `@` keeps what was typed as text, trailing zeros included. */
export interface FormatArea extends Area {
  readonly format: '@' | 'General' | '0' | 'hh:mm';
}

export type StateName = 'on target' | 'close' | 'follows' | 'not yet' | 'unreadable' | 'blank';

/** Colours a cell by its text, on the host's own conditional formats; the word stays in the cell. */
export interface StateRule {
  readonly areas: readonly Area[];
  readonly startsWith: string;
  readonly state: StateName;
}

export interface Choice {
  readonly area: Area;
  readonly options: readonly string[];
  readonly help: string;
}

/** What a sheet is, so that it is found again after it was renamed; for a class, its name. */
export interface SheetRole {
  readonly kind: 'poll' | 'plan' | 'class' | 'progress' | 'help' | 'prepare' | 'record' | 'key';
  readonly className?: string;
  /** The lesson that a Plan, a Prepare or a class sheet belongs to; none in files that were built before there were several. */
  readonly lesson?: string | undefined;
}

/**
 * How to tell whether a sheet that exists has this layout: the texts of these columns, row by row, from `firstRow` on.
 * A sheet that begins the same way may be written in place; any other is left alone and a new one made.
 */
interface Identity {
  readonly firstRow: number;
  readonly columns: readonly number[];
  readonly rows: readonly (readonly string[])[];
}

/** Rows or columns next to each other of one size in pixels. What is in them does not make them grow. */
export interface SizedRun {
  readonly from: number;
  readonly count: number;
  readonly size: number;
}

/**
 * Rows that are answered with letters, and since which layout the letters are a team's own. What was typed in an older sheet
 * stands for something else now: it is carried behind words that say so, and is no answer until it is typed anew.
 */
export interface Relettered {
  readonly since: number;
  readonly column: number;
  readonly rows: readonly number[];
  readonly before: string;
}

export interface SheetPlan {
  readonly name: string;
  readonly role: SheetRole;
  /** Activity that its rows are of: what was typed for another one is not carried into them. */
  readonly activity?: string;
  readonly rowCount: number;
  readonly columnCount: number;
  /** Later runs over earlier ones; columns that are not named have the host's own width. */
  readonly columnWidths: readonly SizedRun[];
  /** Fixed heights, later runs over earlier ones; rows that are not named grow with what is in them. */
  readonly rowHeights?: readonly SizedRun[];
  readonly hiddenColumns: { readonly column: number; readonly count: number } | undefined;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** Text, numbers and light formulas, in the order they are written. */
  readonly blocks: readonly Block[];
  /** Formulas that each cost a run on the host: written last. */
  readonly checks: readonly Block[];
  readonly looks: readonly LookArea[];
  /** Everything not named here is `@`. */
  readonly formats: readonly FormatArea[];
  readonly states: readonly StateRule[];
  readonly choices: readonly Choice[];
  /** Cells people write in: never written or cleared when the sheet is built again. */
  readonly writable: readonly Area[];
  /** A text that stands in cells people write in until somebody does; written only where the cell is empty. */
  readonly invitation?: { readonly places: readonly Area[]; readonly text: string };
  /** What the trigger writes; with `writable`, left out of the sheet's warning-only protection. */
  readonly unprotected: readonly Area[];
  /** Areas that functions spill into and that must stay empty. */
  readonly spill: readonly Area[];
  readonly identity: Identity;
  /** Columns carried by identity from a sheet that had another layout. */
  readonly carried: readonly number[];
  readonly relettered?: Relettered;
  /** Rows without a name of ours, which people added, are carried as well: below the planned ones. */
  readonly carriesAddedRows?: true;
}

export interface WorkbookPlan {
  readonly layoutVersion: number;
  readonly sheets: readonly SheetPlan[];
}

export const text = (words: string): CellContent => (words === '' ? blank : { kind: 'text', text: words });
export const blank: CellContent = { kind: 'blank' };
export const computed = (formula: string): CellContent => ({ kind: 'formula', formula });
