import type { MenuView, Seat } from '../../view.ts';
import type { Book } from '../book.ts';
import type { Execution } from '../execution.ts';
import type { Troubles } from '../troubles.ts';
import type { Stores } from './stores.ts';

export interface Selection {
  sheet: number;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

/** What the services of one run work on. */
export interface ScriptRun {
  readonly book: Book;
  readonly execution: Execution;
  readonly selections: Readonly<Record<Seat, Selection>>;
  readonly menus: Record<Seat, Map<string, MenuView>>;
  readonly stores: Stores;
  readonly troubles: Troubles;
  /** Number of the file, which a copy does not share. */
  readonly fileId: string;
  /** Address of the file as it is now. */
  address(): string;
  readonly htmlFiles: Readonly<Record<string, string>>;
  /** For a function in a cell: the cell that calls it. */
  readonly callingCell?: { readonly sheet: number; readonly row: number; readonly column: number };
  toast(message: string, title: string): void;
  activated(seat: Seat): void;
  log(line: string): void;
  sleep(milliseconds: number): void;
}
