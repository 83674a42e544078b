import vm from 'node:vm';
import type { ChangeView, Edit, FunctionHelp, MenuView, PanelView, PreviewHost, Seat } from '../view.ts';
import { type Area, cellKey, columnOf, rowOf } from './address.ts';
import { Book, loading } from './book.ts';
import { passed } from './bridge.ts';
import { cellResult } from './cellResult.ts';
import { Counts } from './counts.ts';
import { declaredFunctions } from './declared.ts';
import type { Argument, ArgumentCell, CallOutcome, EngineCall } from './enginePlugins.ts';
import type { Execution, Mode } from './execution.ts';
import { guardAt, lockedWords, refuseLocked, refuseLockedSheet } from './guards.ts';
import { HostError, HostException } from './hostError.ts';
import { hostFunctions } from './hostFunctions.ts';
import { HostConstant, HostObject } from './hostObject.ts';
import { refuseWithoutPermission } from './permissions.ts';
import { deleteRowsUndoably, insertRowsUndoably, sortRowsUndoably } from './rowChanges.ts';
import { readSaved, restore, savedText } from './savedBook.ts';
import { ScriptContext } from './scriptContext.ts';
import { dateOf } from './serial.ts';
import { LoggerStandIn, ScriptAppStandIn, SessionStandIn, UtilitiesStandIn } from './services/basics.ts';
import type { Desk, Selection } from './services/desk.ts';
import { HtmlServiceStandIn } from './services/html.ts';
import { RangeStandIn } from './services/range.ts';
import { SpreadsheetStandIn } from './services/spreadsheet.ts';
import { SpreadsheetAppStandIn } from './services/spreadsheetApp.ts';
import { CacheServiceStandIn, emptyStores, LockServiceStandIn, PropertiesServiceStandIn } from './services/stores.ts';
import type { CellState, SheetState } from './sheetState.ts';
import { readTyped } from './typed.ts';
import { type Undoable, UndoList } from './undoList.ts';
import { validationRefusal } from './validate.ts';
import { cellViewOf, changedKeys, sheetViewOf, workbookViewOf } from './viewOf.ts';

export interface StandInOptions {
  /** The script as it is pushed. */
  readonly code: string;
  readonly sidebarHtml: string;
  /** HTML files besides `Sidebar`, by name without ending. */
  readonly htmlFiles?: Readonly<Record<string, string>>;
  /** Read from the script's own comments where it is left out. */
  readonly functions?: readonly FunctionHelp[];
  readonly saved?: string;
  readonly name?: string;
  /** As the host names locales, such as `en_GB` or `de_DE`. */
  readonly locale?: string;
  /** Functions in cells show that they are loading until `tick` or `release` lets their results through. */
  readonly delays?: boolean;
  /** What time it is, for NOW and for the script; the real time where it is left out. */
  readonly clock?: () => Date;
  /** Load the script afresh for each call from a cell, as the host does; otherwise once. */
  readonly freshContexts?: boolean;
  /**
   * Plain-text cells keep an apostrophe that a text begins with, and then `=` is text there too. Which of the two ways
   * the host has is not known; by default the apostrophe goes, and a bare `=` from a script is refused there.
   */
  readonly plainTextKeepsApostrophe?: boolean;
}

export interface StandIn extends PreviewHost {
  readonly book: Book;
  /** A minute on the host: delayed results arrive, and what depends on NOW follows the clock where that is switched on. */
  tick(): void;
  /** Lets delayed results through, of all cells or of the `count` that have waited longest. */
  release(count?: number): number;
  /** The next calls of a function from cells fail as the host does when too many scripts run. */
  failCalls(name: string, times: number, words?: string): void;
  /** Pretends that another run holds the lock. */
  holdLock(held: boolean): void;
  /** What simple triggers threw, which the host tells nobody at the sheet. */
  readonly triggerErrors: readonly string[];
  /** What the script logged. */
  readonly logged: readonly string[];
}

/** An event of the host's simple triggers has this mode. */
const limited = new HostConstant('LIMITED');
const tooMany = 'There are too many scripts running simultaneously for this Google user account.';

/** Services that exist on the host and need a consent that the manifest does not ask for. */
class NotConsented extends HostObject {
  readonly kind_: string;
  readonly refuses_ = true;
  constructor(kind: string) {
    super();
    this.kind_ = kind;
  }
}
const notConsented = ['UrlFetchApp', 'DriveApp', 'GmailApp', 'MailApp', 'DocumentApp', 'CalendarApp', 'FormApp'];

export function openStandIn(options: StandInOptions): StandIn {
  const declared = declaredFunctions(options.code);
  const declaredNames = new Map(declared.map(({ name }) => [name.toUpperCase(), name]));
  for (const { name, custom } of declared) {
    if (custom && hostFunctions.has(name.toUpperCase())) {
      throw new Error(`A custom function must not have the name of a built-in one, received ${name}.`);
    }
  }
  const help = options.functions ?? declared.filter(({ custom }) => custom).map((one) => one.help);
  const script = new vm.Script(options.code, { filename: 'Code.gs' });
  const htmlFiles = { Sidebar: options.sidebarHtml, ...options.htmlFiles };
  const counts = new Counts();
  const stores = emptyStores();
  const triggerErrors: string[] = [];
  const logged: string[] = [];
  const failing = new Map<string, { times: number; words: string }>();
  const listeners = new Set<() => void>();
  const saved = options.saved === undefined ? undefined : readSaved(options.saved);

  const menus: Desk['menus'] = { teacher: new Map<string, MenuView>(), student: new Map<string, MenuView>() };
  const selections: Record<Seat, Selection> = {
    teacher: { sheet: 0, row: 1, column: 1, rows: 1, columns: 1 },
    student: { sheet: 0, row: 1, column: 1, rows: 1, columns: 1 },
  };
  const activated: Record<Seat, number> = { teacher: 0, student: 0 };
  const toasts: Partial<Record<Seat, { version: number; title: string; message: string }>> = {};
  const opened: Record<Seat, PanelView | null> = { teacher: null, student: null };
  const undoLists: Record<Seat, UndoList> = { teacher: new UndoList(), student: new UndoList() };

  // One load of the script

  const deskFor = (execution: Execution): Desk => ({
    book,
    execution,
    selections,
    menus,
    stores,
    htmlFiles,
    toast: (message, title) => {
      toasts[execution.seat] = { version: book.version + 1, title, message };
    },
    activated: (seat) => {
      activated[seat] = book.version + 1;
    },
    log: (line) => {
      logged.push(line);
      if (logged.length > 1000) logged.shift();
    },
    // Waiting would hold up the one process that plays the host; nothing else runs meanwhile that could be waited for.
    sleep: () => {},
  });
  const load = (desk: Desk): ScriptContext => {
    const services: Record<string, HostObject> = {
      SpreadsheetApp: new SpreadsheetAppStandIn(desk),
      LockService: new LockServiceStandIn(desk),
      PropertiesService: new PropertiesServiceStandIn(desk),
      CacheService: new CacheServiceStandIn(desk),
      HtmlService: new HtmlServiceStandIn(desk),
      Utilities: new UtilitiesStandIn(desk),
      Session: new SessionStandIn(desk),
      ScriptApp: new ScriptAppStandIn(),
      Logger: new LoggerStandIn(desk, 'Logger'),
      console: new LoggerStandIn(desk, 'console'),
      ...Object.fromEntries(notConsented.map((kind) => [kind, new NotConsented(kind)])),
    };
    const permit = (kind: string, member: string): void => refuseWithoutPermission(desk.execution, kind, member);
    return new ScriptContext(script, services, counts, permit, options.clock);
  };

  // Functions in cells

  let cellContext: { context: ScriptContext; at: { sheet: number; row: number; column: number } } | undefined;
  const contextForCells = (call: EngineCall): ScriptContext => {
    const sheet = book.sheets.find(({ engine }) => engine === call.cell.sheet);
    const at = { sheet: sheet?.id ?? 0, row: call.cell.row + 1, column: call.cell.col + 1 };
    if (!cellContext || options.freshContexts) {
      const place = { ...at };
      const desk = { ...deskFor({ mode: 'CUSTOM_FUNCTION', seat: 'teacher', panel: null }), callingCell: place };
      cellContext = { context: load(desk), at: place };
    }
    Object.assign(cellContext.at, at);
    return cellContext.context;
  };
  const callFromCell = (call: EngineCall): CallOutcome => {
    const name = declaredNames.get(call.name) ?? call.name;
    counts.countFunction(name);
    const failure = failing.get(name);
    if (failure && failure.times > 0) {
      failure.times -= 1;
      return { kind: 'error', message: failure.words };
    }
    try {
      const context = contextForCells(call);
      return cellResult(
        context.call(
          name,
          call.arguments.map((argument) => context.toScript(dated(argument))),
        ),
      );
    } catch (thrown) {
      const { name: kind, message, stack } = thrown as Error;
      const line = /Code\.gs:(\d+)/.exec(stack ?? '')?.[1];
      return { kind: 'error', message: `${kind}: ${message}${line ? ` (line ${line}).` : ''}` };
    }
  };

  const book: Book = new Book({
    name: options.name ?? saved?.name ?? 'Workbook',
    locale: options.locale ?? saved?.locale ?? 'en_GB',
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    plainTextKeepsApostrophe: options.plainTextKeepsApostrophe ?? false,
    clock: options.clock ?? (() => new Date()),
    scripts: { names: declared.map(({ name }) => name).filter((name) => !name.endsWith('_')), call: callFromCell },
  });
  book.delayed = options.delays ?? false;
  if (saved) {
    restore(saved, book, stores);
    selections.teacher.sheet = saved.active.teacher;
    selections.student.sheet = saved.active.student;
  } else {
    book.addSheet('Sheet1');
  }
  for (const selection of Object.values(selections)) {
    if (!book.sheets.some(({ id }) => id === selection.sheet)) selection.sheet = book.sheets[0]?.id ?? 0;
  }

  // Runs

  const finish = (): void => {
    book.publish();
    for (const listener of listeners) listener();
  };
  const execute = <T>(mode: Mode, seat: Seat, body: (context: ScriptContext, desk: Desk) => T): T => {
    const desk = deskFor({ mode, seat, panel: null });
    const { moves } = book;
    try {
      return body(load(desk), desk);
    } finally {
      book.settle();
      if (book.moves !== moves) for (const list of Object.values(undoLists)) list.clear();
    }
  };
  const trigger = (name: 'onOpen' | 'onEdit', seat: Seat, event: (desk: Desk) => Record<string, unknown>): void => {
    if (!declared.some((one) => one.name === name)) return;
    try {
      execute('LIMITED', seat, (context, desk) => context.call(name, [context.toScript(event(desk))]));
    } catch (thrown) {
      const error = thrown as Error;
      triggerErrors.push(`${name}: ${error.name}: ${error.message}`);
    }
  };
  for (const seat of ['teacher', 'student'] as const) {
    trigger('onOpen', seat, (desk) => ({ authMode: limited, source: new SpreadsheetStandIn(desk) }));
  }
  book.publish();
  counts.reset();

  const textOf = (sheet: SheetState, row: number, column: number): string | undefined => {
    const value = book.value(sheet, row, column);
    if (value === '') return undefined;
    if (value === loading) return 'Loading...';
    return value instanceof HostError ? value.code : String(value);
  };

  const type = (seat: Seat, edits: readonly Edit[]): ReturnType<PreviewHost['type']> => {
    const refused: { edit: Edit; reason: string }[] = [];
    const before = new Map<SheetState, Map<number, CellState | undefined>>();
    const first = edits[0];
    const oldValue = edits.length === 1 && first ? textOf(book.sheet(first.sheet), first.row, first.column) : undefined;
    const accepted: Edit[] = [];
    for (const edit of edits) {
      const sheet = book.sheet(edit.sheet);
      const reason = writeTyped(seat, sheet, edit, before);
      if (reason === undefined) accepted.push(edit);
      else refused.push({ edit, reason });
    }
    book.settle();
    const start = accepted[0];
    if (start) {
      const after = new Map([...before].map(([sheet, cells]) => [sheet, statesOf(sheet, cells.keys())] as const));
      undoLists[seat].add({ undo: () => putBack(before), redo: () => putBack(after) });
      fireOnEdit(seat, accepted, oldValue);
      finish();
    }
    return { refused };
  };

  const writeTyped = (
    seat: Seat,
    sheet: SheetState,
    { row, column, text }: Edit,
    before: Map<SheetState, Map<number, CellState | undefined>>,
  ): string | undefined => {
    if (row < 1 || column < 1 || row > sheet.rows || column > sheet.columns) return 'This cell is outside the sheet.';
    if (guardAt(sheet, row, column, seat) === 'locked') return lockedWords;
    const cell = book.cell(sheet, row, column);
    const reading = readTyped(text, { numberFormat: cell.format?.numberFormat, locale: book.locale });
    const reason = validationRefusal(cell.validation, reading.content);
    if (reason !== undefined) return reason;
    const cells = before.get(sheet) ?? new Map<number, CellState | undefined>();
    before.set(sheet, cells);
    const key = cellKey(row, column);
    if (!cells.has(key)) cells.set(key, sheet.cells.get(key));
    const { numberFormat } = reading;
    if (numberFormat !== undefined) {
      book.decorate(sheet, row, column, (state) => ({ ...state, format: { ...state.format, numberFormat } }));
    }
    book.setContent(sheet, row, column, reading.content);
    return undefined;
  };

  /** One event for what was typed or pasted at once: its sheet's cells as one range. */
  const fireOnEdit = (seat: Seat, edits: readonly Edit[], oldValue: string | undefined): void => {
    const sheets = [...new Set(edits.map(({ sheet }) => sheet))];
    for (const id of sheets) {
      const sheet = book.sheet(id);
      const own = edits.filter((edit) => edit.sheet === id);
      const rows = own.map(({ row }) => row);
      const columns = own.map(({ column }) => column);
      const row = Math.min(...rows);
      const column = Math.min(...columns);
      const area: Area = {
        row,
        column,
        rows: Math.max(...rows) - row + 1,
        columns: Math.max(...columns) - column + 1,
      };
      Object.assign(selections[seat], { sheet: id, ...area });
      const single = edits.length === 1;
      const value = single ? textOf(sheet, row, column) : undefined;
      trigger('onEdit', seat, (desk) => ({
        authMode: limited,
        source: new SpreadsheetStandIn(desk),
        range: new RangeStandIn(desk, sheet, area),
        ...(value === undefined ? {} : { value }),
        ...(single && oldValue !== undefined ? { oldValue } : {}),
      }));
    }
  };

  const putBack = (cells: ReadonlyMap<SheetState, ReadonlyMap<number, CellState | undefined>>): boolean => {
    for (const [sheet, states] of cells) if (book.sheets.includes(sheet)) book.restoreCells(sheet, states);
    return true;
  };

  /** A change of rows. The other seat's list ends here: its places mean other cells from now on. */
  const reshape = (seat: Seat, change: () => Undoable): void => {
    const entry = change();
    const other = undoLists[seat === 'teacher' ? 'student' : 'teacher'];
    const alone = (step: () => boolean) => (): boolean => {
      other.clear();
      return step();
    };
    other.clear();
    undoLists[seat].add({ undo: alone(entry.undo), redo: alone(entry.redo) });
    finish();
  };

  return {
    book,
    triggerErrors,
    logged,
    counts,
    resetCounts: () => counts.reset(),
    view: (seat) => workbookViewOf(book, seat, selections[seat].sheet),
    type,
    undo: (seat) => {
      const undone = undoLists[seat].undo();
      if (undone) finish();
      return undone;
    },
    redo: (seat) => {
      const redone = undoLists[seat].redo();
      if (redone) finish();
      return redone;
    },
    insertRows: (seat, id, before, count) => {
      const sheet = book.sheet(id);
      refuseLockedSheet(sheet, seat);
      if (before < 1 || before > sheet.rows + 1 || count < 1) {
        throw new HostException('Those rows are out of bounds.');
      }
      reshape(seat, () => insertRowsUndoably(book, sheet, before, count));
    },
    deleteRows: (seat, id, first, count) => {
      const sheet = book.sheet(id);
      refuseLockedSheet(sheet, seat);
      if (first < 1 || count < 1 || first + count - 1 > sheet.rows) {
        throw new HostException('Those rows are out of bounds.');
      }
      reshape(seat, () => deleteRowsUndoably(book, sheet, first, count));
    },
    sortRows: (seat, id, area, byColumn, ascending) => {
      const sheet = book.sheet(id);
      refuseLocked(sheet, area, seat);
      reshape(seat, () => sortRowsUndoably(book, sheet, area, { byColumn, ascending }));
    },
    menus: (seat) => [...menus[seat].values()],
    choose: (seat, run) => {
      try {
        return execute('FULL', seat, (context, desk): PanelView | null => {
          // Menu items may name methods of objects, such as `menu.open`.
          if (run.includes('.')) throw new HostException(`Script function not found: ${run}`);
          context.call(run, []);
          return desk.execution.panel;
        });
      } finally {
        finish();
      }
    },
    run: (seat, name, args) => {
      if (name.endsWith('_') || !declared.some((one) => one.name === name)) {
        throw new HostException(`Script function not found: ${name}`);
      }
      const handed = args.map((argument, index) => passed(argument, `argument ${index}`));
      try {
        return execute('FULL', seat, (context, desk) => {
          const result = passed(
            context.call(
              name,
              handed.map((argument) => context.toScript(argument)),
            ),
          );
          opened[seat] = desk.execution.panel;
          return result;
        });
      } finally {
        finish();
      }
    },
    takePanel: (seat) => {
      const panel = opened[seat];
      opened[seat] = null;
      return panel;
    },
    functions: () => help,
    onChange: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    changeSince: (seat, version): ChangeView => {
      book.settle();
      const whole = book.sheets.filter((sheet) => (book.restructured.get(sheet.id) ?? 0) > version);
      const selection = selections[seat];
      const toast = toasts[seat];
      return {
        version: book.version,
        sheets: whole.map((sheet) => sheetViewOf(book, sheet, seat)),
        removedSheets: [...book.removed].filter(([, at]) => at > version).map(([id]) => id),
        order: book.sheets.map(({ id }) => id),
        cells: book.sheets
          .filter((sheet) => !whole.includes(sheet))
          .map((sheet) => ({
            sheet: sheet.id,
            cells: Object.fromEntries(
              changedKeys(book, sheet, version).map((key) => [
                `${rowOf(key)},${columnOf(key)}`,
                cellViewOf(book, sheet, key, seat) ?? null,
              ]),
            ),
          }))
          .filter(({ cells }) => Object.keys(cells).length > 0),
        ...(activated[seat] > version
          ? { activate: { seat, sheet: selection.sheet, row: selection.row, column: selection.column } }
          : {}),
        ...(toast && toast.version > version ? { toast: { title: toast.title, message: toast.message } } : {}),
      };
    },
    save: () => savedText(book, stores, { teacher: selections.teacher.sheet, student: selections.student.sheet }),
    tick: () => {
      book.release();
      if (book.interval !== 'ON_CHANGE') book.recalculate();
      finish();
    },
    release: (count) => {
      const released = book.release(count);
      finish();
      return released;
    },
    failCalls: (name, times, words = tooMany) => {
      failing.set(name, { times, words });
    },
    holdLock: (held) => {
      stores.lockedByOther = held;
    },
  };
}

const dated = (argument: Argument): unknown =>
  Array.isArray(argument)
    ? (argument as readonly (readonly ArgumentCell[])[]).map((row) => row.map(datedCell))
    : datedCell(argument as ArgumentCell);
const datedCell = (cell: ArgumentCell): unknown => (typeof cell === 'object' ? dateOf(cell.date) : cell);

const statesOf = (sheet: SheetState, keys: Iterable<number>): Map<number, CellState | undefined> =>
  new Map(Array.from(keys, (key) => [key, sheet.cells.get(key)]));
