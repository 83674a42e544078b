import type { ChangeView, Edit, FunctionHelp, MenuView, PanelView, PreviewHost, Seat, StepView } from '../view.ts';
import { Book } from './book.ts';
import { passed } from './bridge.ts';
import { changeViewOf } from './changeViewOf.ts';
import { Counts } from './counts.ts';
import { declaredFunctions } from './declared.ts';
import { drawn, within } from './drawn.ts';
import { refuseLocked, refuseLockedSheet } from './guards.ts';
import { HostException } from './hostError.ts';
import { HostTime } from './hostTime.ts';
import { deleteRowsUndoably, insertRowsUndoably, type RowChange, sortRowsUndoably } from './rowChanges.ts';
import { readSaved, restore, savedText } from './savedBook.ts';
import { limited, ScriptRuns } from './scriptRuns.ts';
import { RangeStandIn } from './services/range.ts';
import type { ScriptRun, Selection } from './services/scriptRun.ts';
import { SpreadsheetStandIn } from './services/spreadsheet.ts';
import { emptyStores } from './services/stores.ts';
import type { SheetState } from './sheetState.ts';
import { takeItsTime } from './takeItsTime.ts';
import type { Troubles } from './troubles.ts';
import { typedStep } from './typedStep.ts';
import { areaOf, eventText, typeInto } from './typing.ts';
import { UndoLists } from './undoList.ts';
import { workbookViewOf } from './viewOf.ts';

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
  /** How this place differs from the host at its best. */
  readonly troubles?: Troubles;
  /** Number of the file; a copy has another. */
  readonly fileId?: string;
  /** Lets the script make code from text (`eval`, `Function`, WebAssembly), of which nothing is documented. */
  readonly allowCodeFromText?: boolean;
}

export interface StandIn extends PreviewHost {
  readonly book: Book;
  /** A minute on the host: delayed results arrive, and what depends on NOW follows the clock where that is switched on. */
  tick(): void;
  /** Lets delayed results through, of all cells or of the `count` that have waited longest. */
  release(count?: number): number;
  /** The next calls of a function from cells fail as the host does when too many scripts run. */
  failCalls(name: string, times: number, words?: string): void;
  /** Under `slow`: lets so much time of the host pass; triggers, their writes and results of functions come when due. */
  passTime(ms: number): void;
  /** Whether something of the host is still to come. */
  readonly isIdle: boolean;
  /** Pretends that another run holds the lock. */
  holdLock(held: boolean): void;
  /** What simple triggers threw, which the host tells nobody at the sheet. */
  readonly triggerErrors: readonly string[];
  /** What the script logged. */
  readonly logged: readonly string[];
  /** Cells of a saved workbook that could not be read; each holds, as text, what was saved of it. */
  readonly unreadCells: readonly string[];
}

const seats = ['teacher', 'student'] as const;
const forSeats = <T>(make: () => T): Record<Seat, T> => ({ teacher: make(), student: make() });

export function openStandIn(options: StandInOptions): StandIn {
  const declared = declaredFunctions(options.code);
  const counts = new Counts();
  const stores = emptyStores();
  const listeners = new Set<() => void>();
  const saved = options.saved === undefined ? undefined : readSaved(options.saved);

  const menus: ScriptRun['menus'] = forSeats(() => new Map<string, MenuView>());
  const selections = forSeats((): Selection => ({ sheet: 0, row: 1, column: 1, rows: 1, columns: 1 }));
  const activated = forSeats(() => 0);
  const toasts: Partial<Record<Seat, { version: number; title: string; message: string }>> = {};
  const opened = forSeats((): PanelView | null => null);
  const undoLists = new UndoLists();
  let servedAt = `https://workbook.invalid/${options.fileId ?? 'stand-in-workbook'}/edit`;

  const troubles = options.troubles ?? {};
  const time = new HostTime();
  const { otherRuns, slow } = troubles;
  const drawLock = drawn(otherRuns?.seed ?? 0);
  if (otherRuns) {
    stores.heldByOthers = () => (drawLock() < otherRuns.share ? within(otherRuns.heldMs, drawLock()) : 0);
  }
  const drawSlow = drawn(slow?.seed ?? 0);

  const runs: ScriptRuns = new ScriptRuns({
    troubles,
    code: options.code,
    declared,
    counts,
    clock: options.clock,
    freshContexts: options.freshContexts ?? false,
    allowCodeFromText: options.allowCodeFromText ?? false,
    book: () => book,
    surroundings: {
      selections,
      menus,
      stores,
      fileId: options.fileId ?? 'stand-in-workbook',
      address: () => servedAt,
      htmlFiles: { Sidebar: options.sidebarHtml, ...options.htmlFiles },
      toast: (seat, message, title) => {
        toasts[seat] = { version: book.version + 1, title, message };
      },
      activated: (seat) => {
        activated[seat] = book.version + 1;
      },
    },
    onMoved: () => undoLists.clear(),
  });

  const book: Book = new Book({
    name: options.name ?? saved?.name ?? 'Workbook',
    locale: options.locale ?? saved?.locale ?? 'en_GB',
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    plainTextKeepsApostrophe: options.plainTextKeepsApostrophe ?? false,
    clock: options.clock ?? (() => new Date()),
    scripts: {
      names: declared.map(({ name }) => name).filter((name) => !name.endsWith('_')),
      call: (call) => runs.callFromCell(call),
    },
  });
  book.calls.delayed = options.delays ?? false;
  const unreadCells = saved ? restore(saved, book, stores) : [];
  if (saved) {
    for (const seat of seats) selections[seat].sheet = saved.active[seat];
  } else {
    book.addSheet('Sheet1');
  }
  for (const selection of Object.values(selections)) {
    if (!book.sheets.some(({ id }) => id === selection.sheet)) selection.sheet = book.sheets[0]?.id ?? 0;
  }
  for (const seat of seats) {
    runs.trigger('onOpen', seat, (run) => ({ authMode: limited, source: new SpreadsheetStandIn(run) }));
  }
  book.publish();
  counts.reset();
  if (slow) takeItsTime({ book, time, slow, draw: drawSlow, onArrived: () => finish() });

  const finish = (): void => {
    book.publish();
    for (const listener of listeners) listener();
  };

  // Typing

  const type = (seat: Seat, edits: readonly Edit[], window: string = seat): ReturnType<PreviewHost['type']> => {
    const [first] = edits;
    const alone = edits.length === 1 && first;
    const oldValue = alone ? eventText(book, book.sheet(first.sheet), first.row, first.column) : undefined;
    runs.atKeyboard = seat;
    const { refused, accepted, before, after } = typeInto(book, seat, edits);
    if (accepted.length > 0) {
      undoLists.of(window).add(typedStep(book, { before, after }));
      fireOnEdit(seat, accepted, oldValue);
      finish();
    }
    return { refused };
  };

  /** One event for what was typed or pasted at once: its sheet's cells as one range. */
  const fireOnEdit = (seat: Seat, edits: readonly Edit[], oldValue: string | undefined): void => {
    const single = edits.length === 1;
    for (const id of new Set(edits.map(({ sheet }) => sheet))) {
      const sheet = book.sheet(id);
      const area = areaOf(edits.filter((edit) => edit.sheet === id));
      Object.assign(selections[seat], { sheet: id, ...area });
      const value = single ? eventText(book, sheet, area.row, area.column) : undefined;
      const run = (held?: (() => void)[]) =>
        runs.trigger(
          'onEdit',
          seat,
          (run) => ({
            authMode: limited,
            source: new SpreadsheetStandIn(run),
            range: new RangeStandIn(run, sheet, area),
            ...(value === undefined ? {} : { value }),
            ...(single && oldValue !== undefined ? { oldValue } : {}),
          }),
          held,
        );
      if (slow === undefined) {
        run();
        continue;
      }
      // It reads what stands there when it begins; what it writes arrives at its end, whatever came between.
      time.after(within(slow.triggerStartsMs, drawSlow()), () => {
        const held: (() => void)[] = [];
        run(held);
        time.after(within(slow.triggerTakesMs, drawSlow()), () => {
          runs.arrive(held);
          finish();
        });
      });
    }
  };

  // Rows, and the way back

  const reshape = (window: string, { moved, step }: RowChange): void => {
    undoLists.of(window).add(step);
    undoLists.follow(moved, window);
    finish();
  };
  const step = (way: 'undo' | 'redo', window: string): StepView => {
    const { moved, ...done } = undoLists.of(window)[way]();
    if (moved) undoLists.follow(moved, window);
    if (done.done) finish();
    return done;
  };
  const openForRows = (seat: Seat, id: number, fits: (sheet: SheetState) => boolean): SheetState => {
    const sheet = book.sheet(id);
    refuseLockedSheet(sheet, seat);
    if (!fits(sheet)) throw new HostException('Those rows are out of bounds.');
    return sheet;
  };

  return {
    book,
    triggerErrors: runs.triggerErrors,
    logged: runs.logged,
    unreadCells,
    counts,
    resetCounts: () => counts.reset(),
    view: (seat) => workbookViewOf(book, seat, selections[seat].sheet),
    type,
    undo: (seat, window = seat) => step('undo', window),
    redo: (seat, window = seat) => step('redo', window),
    insertRows: (seat, id, before, count, window = seat) => {
      const sheet = openForRows(seat, id, ({ rows }) => before >= 1 && before <= rows + 1 && count >= 1);
      reshape(window, insertRowsUndoably(book, sheet, before, count));
    },
    deleteRows: (seat, id, first, count, window = seat) => {
      const sheet = openForRows(seat, id, ({ rows }) => first >= 1 && count >= 1 && first + count - 1 <= rows);
      reshape(window, deleteRowsUndoably(book, sheet, first, count));
    },
    sortRows: (seat, id, area, byColumn, ascending, window = seat) => {
      const sheet = book.sheet(id);
      refuseLocked(sheet, area, seat);
      reshape(window, sortRowsUndoably(book, sheet, area, { byColumn, ascending }));
    },
    menus: (seat) => [...menus[seat].values()],
    front: (seat, id) => {
      const isThere = book.sheets.some((sheet) => sheet.id === id);
      if (isThere && selections[seat].sheet !== id)
        Object.assign(selections[seat], { sheet: id, row: 1, column: 1, rows: 1, columns: 1 });
    },
    choose: (seat, run) => {
      try {
        return runs.choose(seat, run);
      } finally {
        finish();
      }
    },
    run: (seat, name, args) => {
      if (name.endsWith('_') || !runs.isDeclared(name)) {
        throw new HostException(`Script function not found: ${name}`);
      }
      const handed = args.map((argument, index) => passed(argument, `argument ${index}`));
      try {
        return runs.execute('FULL', seat, (context, run) => {
          const given = handed.map((argument) => context.toScript(argument));
          const result = passed(context.call(name, given));
          opened[seat] = run.execution.panel;
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
    functions: () => options.functions ?? runs.help,
    servedAt: (address) => {
      servedAt = address;
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    changeSince: (seat, version): ChangeView => {
      const { sheet, row, column } = selections[seat];
      const toast = toasts[seat];
      return {
        ...changeViewOf(book, seat, version),
        ...(activated[seat] > version ? { activate: { seat, sheet, row, column } } : {}),
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
    passTime: (ms) => time.pass(ms),
    get isIdle() {
      return time.isIdle;
    },
    failCalls: (name, times, words) => runs.fail(name, times, words),
    holdLock: (held) => {
      stores.lockedByOther = held;
    },
  };
}
