/** The workbook as a value: what each sheet holds and how it looks. Planned purely, applied by `host/applyWorkbook.ts`. */

/** A cell's content. Text is data and stays text even if it begins with `=`; only `formula` computes. */
export type CellContent =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'formula'; readonly formula: string }
  | { readonly kind: 'blank' };

/** Position from 1, as the host counts. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** A rectangle of contents, written in one call. */
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
  | 'question'
  | 'entry'
  | 'helper'
  | 'quiet'
  | 'spilled'
  | 'setting name'
  | 'setting value'
  | 'closing';

export interface LookArea extends Area {
  readonly look: LookName;
}

/** Colours a cell by its text, on the host's own conditional formats; the sign and word stay in the cell. */
export interface StateRule {
  readonly area: Area;
  readonly startsWith: string;
  readonly state: 'on target' | 'close' | 'follows' | 'not yet' | 'unreadable';
}

export interface Choice {
  readonly area: Area;
  readonly options: readonly string[];
  readonly help: string;
}

export interface SheetPlan {
  readonly name: string;
  /** What the sheet is, so that it is found again after it was renamed; for a class, its name. */
  readonly role: {
    readonly kind: 'plan' | 'class' | 'progress' | 'help' | 'prepare' | 'poll' | 'record';
    readonly className?: string;
  };
  readonly columnWidths: readonly number[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly blocks: readonly Block[];
  readonly looks: readonly LookArea[];
  readonly states: readonly StateRule[];
  readonly choices: readonly Choice[];
  /** Cells people write in: never written or cleared when the sheet is built again. */
  readonly writable: readonly Area[];
  /** Warning-only protection of everything but `writable` and `unprotected`. */
  readonly unprotected: readonly Area[];
  /** Areas that functions spill into and that must stay empty. */
  readonly spill: readonly Area[];
}

export interface WorkbookPlan {
  readonly layoutVersion: number;
  readonly sheets: readonly SheetPlan[];
}
