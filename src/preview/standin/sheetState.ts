import type { Area } from './address.ts';
import type { Content } from './typed.ts';

export interface Format {
  readonly numberFormat?: string;
  readonly background?: string;
  readonly color?: string;
  readonly weight?: 'bold' | 'normal';
  readonly style?: 'italic' | 'normal';
  readonly line?: 'none' | 'underline' | 'line-through';
  readonly size?: number;
  readonly family?: string;
  readonly wrap?: 'WRAP' | 'OVERFLOW' | 'CLIP';
  readonly horizontal?: 'left' | 'center' | 'right';
  readonly vertical?: 'top' | 'middle' | 'bottom';
  readonly border?: string;
}

export interface Validation {
  readonly kind: 'list' | 'checkbox' | 'number-between' | 'number-at-least' | 'number-at-most';
  readonly options?: readonly string[];
  readonly dropdown?: boolean;
  readonly low?: number;
  readonly high?: number;
  readonly allowInvalid: boolean;
  readonly help?: string;
}

/** Replaced as a whole when anything in it changes, so that undo may keep the old one. */
export interface CellState {
  readonly content?: Content;
  readonly format?: Format;
  readonly note?: string;
  readonly validation?: Validation;
}

export interface Condition {
  readonly kind:
    | 'text-starts-with'
    | 'text-ends-with'
    | 'text-equal'
    | 'text-contains'
    | 'text-does-not-contain'
    | 'formula'
    | 'empty'
    | 'not-empty'
    | 'number-between'
    | 'number-equal'
    | 'number-greater'
    | 'number-less';
  readonly text?: string;
  readonly low?: number;
  readonly high?: number;
}

export interface Rule {
  readonly condition: Condition;
  readonly areas: readonly Area[];
  readonly background?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly strike?: boolean;
  readonly underline?: boolean;
}

export interface ProtectionState {
  readonly id: number;
  readonly kind: 'SHEET' | 'RANGE';
  /** For a range; a sheet is protected whole. */
  area: Area | undefined;
  unprotected: Area[];
  description: string;
  warningOnly: boolean;
  editors: string[];
}

export interface Metadata {
  key: string;
  value: string;
  visibility: 'DOCUMENT' | 'PROJECT';
  readonly id: number;
}

/** A value that a script's function left in a cell beside its own. */
export type SpilledValue = number | string | boolean;

export interface SheetState {
  readonly id: number;
  /** The engine's number for the sheet. */
  engine: number;
  name: string;
  hidden: boolean;
  tabColor: string | undefined;
  gridlinesHidden: boolean;
  rows: number;
  columns: number;
  frozenRows: number;
  frozenColumns: number;
  columnWidths: Map<number, number>;
  rowHeights: Map<number, number>;
  /** Rows that keep their height whatever is in them. */
  forcedRows: Set<number>;
  hiddenColumns: Set<number>;
  hiddenRows: Set<number>;
  merges: Area[];
  cells: Map<number, CellState>;
  rules: Rule[];
  protections: ProtectionState[];
  metadata: Metadata[];
  /** Array results of scripts by the cell of their formula: what was returned last. */
  results: Map<number, readonly (readonly SpilledValue[])[]>;
  /** Cells filled by another cell's formula: that cell, and the value. */
  spilled: Map<number, { readonly from: number; readonly value: SpilledValue }>;
  /** Formulas whose result found no room, with the host's words. */
  blocked: Map<number, string>;
}

export function emptySheet(id: number, name: string, engine: number): SheetState {
  return {
    id,
    engine,
    name,
    hidden: false,
    tabColor: undefined,
    gridlinesHidden: false,
    rows: 1000,
    columns: 26,
    frozenRows: 0,
    frozenColumns: 0,
    columnWidths: new Map(),
    rowHeights: new Map(),
    forcedRows: new Set(),
    hiddenColumns: new Set(),
    hiddenRows: new Set(),
    merges: [],
    cells: new Map(),
    rules: [],
    protections: [],
    metadata: [],
    results: new Map(),
    spilled: new Map(),
    blocked: new Map(),
  };
}
