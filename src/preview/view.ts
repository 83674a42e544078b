/** What the stand-in shows the browser, and what the browser may ask of it. */

export interface CellView {
  /** As displayed: number format applied, an error as the host words it. */
  readonly text: string;
  /** What the line above the grid shows: a formula, or what was typed. */
  readonly input: string;
  /** An error's own message, shown on the cell. */
  readonly error?: string;
  readonly note?: string;
  readonly align?: 'left' | 'center' | 'right';
  readonly vertical?: 'top' | 'middle' | 'bottom';
  readonly background?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly wrap?: boolean;
  /** Text too long for the cell ends at its edge, though the next cell is empty. */
  readonly clip?: boolean;
  readonly link?: string;
  readonly options?: readonly string[];
  /** What a list says of itself, shown while its cell is selected. */
  readonly help?: string;
  /** Colour of the line around it. */
  readonly border?: string;
  /** Protected for everybody with a warning, or for this seat altogether. */
  readonly guarded?: 'warning' | 'locked';
  /** Filled by the formula of another cell. */
  readonly spilled?: boolean;
  /** The cell of the script's formula that fills it, as "row,column". */
  readonly filledBy?: string;
}
export interface MergeView {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}
export interface SheetView {
  readonly id: number;
  readonly name: string;
  readonly hidden: boolean;
  readonly tabColor?: string;
  readonly rows: number;
  readonly columns: number;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly columnWidths: readonly number[];
  /** Rows of a height of their own, in pixels; a forced one does not grow with what is in it. */
  readonly rowHeights: readonly { readonly row: number; readonly height: number; readonly forced: boolean }[];
  readonly hiddenColumns: readonly number[];
  readonly hiddenRows: readonly number[];
  readonly merges: readonly MergeView[];
  /** Sparse, by "row,column" from 1. */
  readonly cells: Readonly<Record<string, CellView>>;
}
export interface WorkbookView {
  readonly name: string;
  readonly locale: string;
  readonly version: number;
  readonly activeSheet: number;
  readonly sheets: readonly SheetView[];
}
/** What changed since a version: whole sheets where structure changed, else cells (null clears one). */
export interface ChangeView {
  readonly version: number;
  readonly sheets: readonly SheetView[];
  readonly removedSheets: readonly number[];
  readonly order: readonly number[];
  readonly cells: readonly { readonly sheet: number; readonly cells: Readonly<Record<string, CellView | null>> }[];
  readonly activate?: { readonly seat: Seat; readonly sheet: number; readonly row: number; readonly column: number };
  readonly toast?: { readonly title: string; readonly message: string };
}
export type Seat = 'teacher' | 'student';
export interface Edit {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}
export interface PlaceView {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}
/** What taking back, or doing again, came to: the cells that changed, and those left alone as somebody changed them since. */
export interface StepView {
  readonly done: boolean;
  readonly changed: readonly PlaceView[];
  readonly left: readonly PlaceView[];
}
export interface MenuView {
  readonly title: string;
  readonly items: readonly ({ readonly label: string; readonly run: string } | null)[];
}
export interface PanelView {
  readonly title: string;
  readonly html: string;
  readonly kind: 'sidebar' | 'dialog';
  readonly width?: number;
  readonly height?: number;
}
export interface FunctionHelp {
  readonly name: string;
  readonly summary: string;
  readonly arguments: readonly { readonly name: string; readonly about: string; readonly optional: boolean }[];
}

/**
 * The stand-in, as the preview's server and the integration tests use it. A `window` is any name for one of the windows
 * of a seat: each takes back only what it did itself. Left out, all windows of the seat are one.
 */
export interface PreviewHost {
  view(seat: Seat): WorkbookView;
  /** What people type, paste or clear: read as the host reads it; triggers onEdit. One entry on the undo list. */
  type(
    seat: Seat,
    edits: readonly Edit[],
    window?: string,
  ): { readonly refused: readonly { readonly edit: Edit; readonly reason: string }[] };
  undo(seat: Seat, window?: string): StepView;
  redo(seat: Seat, window?: string): StepView;
  insertRows(seat: Seat, sheet: number, before: number, count: number, window?: string): void;
  deleteRows(seat: Seat, sheet: number, first: number, count: number, window?: string): void;
  sortRows(
    seat: Seat,
    sheet: number,
    area: { row: number; column: number; rows: number; columns: number },
    byColumn: number,
    ascending: boolean,
    window?: string,
  ): void;
  menus(seat: Seat): readonly MenuView[];
  /** Which sheet a window has in front when it asks for a run. Optional: a host without it knows what scripts showed last. */
  front?(seat: Seat, sheet: number): void;
  /** Runs a menu item; a sidebar or dialog that it opened comes back. */
  choose(seat: Seat, run: string): PanelView | null;
  /** google.script.run: legal values only, one fresh context a call. Throws what the host would report. */
  run(seat: Seat, name: string, args: readonly unknown[]): unknown;
  /** A sidebar or dialog that the last `run` opened, once. Optional: a host without it opens panels from menus only. */
  takePanel?(seat: Seat): PanelView | null;
  functions(): readonly FunctionHelp[];
  /** Where students open the file from now on: what the host calls the address of the file. */
  servedAt(address: string): void;
  onChange(listener: () => void): () => void;
  changeSince(seat: Seat, version: number): ChangeView;
  /** Exact counts since the last reset: host service calls by name, custom-function calls by name. */
  readonly counts: {
    readonly host: Readonly<Record<string, number>>;
    readonly functions: Readonly<Record<string, number>>;
  };
  resetCounts(): void;
  /** The workbook as JSON text, and back: nothing is lost over a restart. */
  save(): string;
}
