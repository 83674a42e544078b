import type { SheetPlan, SheetRole } from '../workbook/workbook.ts';
import type { PageName } from './pages.ts';

/*
 * What the page may ask of the script: nine calls that know nothing of lessons. Every value is plain data, since the
 * bridge refuses dates; a moment crosses as milliseconds since 1970.
 */

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** Something to mend, in words for people; `field` names the field of the page that it belongs to. */
export interface Problem {
  readonly message: string;
  readonly field?: string;
  /**
   * `busy`: another run was at work and nothing was done. `changed`: the file is another than the page has seen, and
   * nothing was written. `older`: the page belongs to another version of the script. `teacher`: this part is the
   * teacher's, and whoever asked is not let in.
   */
  readonly reason?: 'busy' | 'changed' | 'older' | 'teacher';
}

export type SheetKind = SheetRole['kind'];

/** What a cell holds as it crosses the bridge. */
export type CellSent = string | number | boolean | { readonly date: number };

/** What a sheet of ours is, as its tag says. */
interface TagSeen {
  readonly kind: SheetKind;
  readonly className?: string;
  readonly lesson?: string | undefined;
  readonly layout: number;
  readonly state: 'building' | 'built' | 'leaving' | 'kept' | 'away';
  readonly activity?: string;
  /** Of a class sheet at rest: whether what was typed over the words of its checks can be told. */
  readonly sums?: boolean;
  /** Of a sheet that was put away with its lesson: what the page noted about it then. */
  readonly about?: string;
  readonly keptName?: string;
  /** Of a sheet that is leaving: the name that its successor takes over. */
  readonly name?: string;
}

/** One sheet of the list that every reading brings along. */
export interface SheetListed {
  readonly id: number;
  readonly name: string;
  /** Null for a sheet that is not ours, and for one of ours that was kept. */
  readonly tag: TagSeen | null;
  readonly kept: boolean;
}

/** A sheet that was asked for, with its cells from A1 on. */
export interface SheetRead {
  readonly id: number;
  readonly cells: readonly (readonly CellSent[])[];
  /** Of a class sheet: rows whose entry is a formula and not something typed. */
  readonly formulaEntries: readonly number[];
  /** What was seen, as one short text: of a class sheet its teams and steps, of any other all its cells. */
  readonly mark: string;
}

export interface ReadWish {
  /** Sheets in use of these kinds, and old ones whose place is being taken; those kept or put away are not read by kind. */
  readonly kinds: readonly SheetKind[];
  /** Single sheets of ours besides. */
  readonly ids?: readonly number[];
  /** Whether the address of the file is wanted. */
  readonly address?: boolean;
  /** Of a step of a build that others follow: what the page knows already of the file as a whole is left out. */
  readonly brief?: boolean;
}

/** What is said of the file as a whole. */
export interface FileRead {
  readonly fileName: string;
  readonly decimalMark: 'point' | 'comma';
  readonly timeZone: string;
  /** The moment of the reading in the file's own time zone: year-month-day. */
  readonly today: string;
  /** Hours and minutes. */
  readonly clock: string;
  readonly activeSheet: number;
  /** The one sheet of a file in which nobody has typed anything yet; null in any other file. */
  readonly emptySheet: number | null;
}

/** Of a brief one there is nothing of the file as a whole, and no name of sheets that are not ours or were kept before. */
export interface BookReading extends Partial<FileRead> {
  /** Milliseconds since 1970. */
  readonly now: number;
  /** What the page noted about a build that is under way; empty where none is. */
  readonly note: string;
  /** Of the file, as the host gives it; left out where nobody asked. */
  readonly address?: string;
  readonly sheets: readonly SheetListed[];
  readonly read: readonly SheetRead[];
}

/** A sheet as the page saw it; the script compares before it writes. */
export interface Seen {
  readonly id: number;
  readonly mark: string;
}

/** What every call that writes may carry. */
export interface WriteWish {
  /** Sheets that what is written was worked out from. */
  readonly seen: readonly Seen[];
  /** Read again when all is written, so that the page goes on from what stands there now. */
  readonly read: ReadWish;
}

/** Entries for a sheet that is made: a column of texts, and what the trigger would have noted beside them. */
export interface FirstEntriesSent {
  readonly row: number;
  readonly column: number;
  readonly texts: readonly string[];
  readonly counts?: {
    readonly column: number;
    readonly rows: readonly (readonly [tries: number, time: number] | null)[];
  };
}

/** A sheet and the plan that it is brought to. */
export interface SheetWish {
  readonly plan: SheetPlan;
  /** Dated name for the old sheet, where it has to be replaced. */
  readonly keptName: string;
  readonly firstEntries?: readonly FirstEntriesSent[];
}

export interface ApplyWish extends WriteWish, SheetWish {
  readonly replace?: boolean;
  /** Further sheets, brought to their plans behind the first: to go and ask again costs more than to write a small one. */
  readonly also?: readonly SheetWish[];
  /** The name that its tab gets, where it still has the one that it had. */
  readonly tab?: { readonly was: string; readonly now: string };
  readonly note?: NoteWish;
  readonly last?: LastTouch;
  readonly show?: boolean;
}

/** What is noted before anything is written, and when it is written, so that whoever opens the file next can go on. */
export interface NoteWish {
  /** The note as the page has read it: another one refuses the call, so that nobody's build is forgotten. */
  readonly was?: string;
  readonly before?: string;
  readonly after?: string;
}

/** What the last step of a build leaves behind: no note, no empty first sheet, a sheet in view, and these out of sight. */
export interface LastTouch {
  /** Shown where a sheet was made, in this step or before it, or one of those to hide is in view; else nothing moves. */
  readonly show: number | null;
  readonly madeBefore: boolean;
  readonly emptySheet: number | null;
  readonly hide?: readonly SheetKind[];
}

/** Cells of people's own that a build has not brought along, by the sheet that they stand in. */
export interface OwnLeft {
  readonly sheet: string;
  readonly cells: readonly string[];
}

/** Cells that were typed into sheets that were no longer in use: copied, left in an old sheet, or in a lesson put away. */
export interface LateSent {
  /** Notes, formulas and texts beside the tables of sheets that are kept, and formulas elsewhere that look at these. */
  readonly own: readonly OwnLeft[];
  readonly carried: number;
  readonly left: number;
  readonly away: number;
}

/** What a step of a build hands back. */
export interface StepReading {
  /** With the last step of a build: how much was typed into sheets after they had been put aside. */
  readonly late?: LateSent;
  readonly reading: BookReading;
}
interface AppliedReading extends StepReading {
  readonly sheetId: number;
  readonly made: boolean;
}

export interface CellWish {
  readonly sheetId: number;
  readonly row: number;
  readonly column: number;
  /** What stood there when the page looked; anything else refuses the whole call. */
  readonly was: CellSent;
  /** A text stays text whatever it begins with; a number or a moment goes into a cell that has the format for it. */
  readonly now: CellSent;
}
export interface CellsWish extends WriteWish {
  readonly cells: readonly CellWish[];
  /** Rows of our sheets that are made so high, in pixels, for what is written. */
  readonly heights?: readonly { readonly sheetId: number; readonly row: number; readonly height: number }[];
}

export interface AsideWish extends WriteWish {
  readonly sheetId: number;
  /** The name of its tab as the page has seen it: with another one it is left alone. */
  readonly was: string;
  readonly keptName: string;
  /** Put away with its lesson, hidden, to be woken again: what is noted about it. */
  readonly about?: string;
  /** Taken out of the file for good. */
  readonly remove?: boolean;
  /** The sheet that comes in its place, and the name that its tab gets, where it still has the one that it had. */
  readonly instead?: { readonly sheetId: number; readonly was: string; readonly now: string };
  readonly note?: NoteWish;
  readonly last?: LastTouch;
}

export interface EmptyFileWish extends WriteWish {
  /** The file's name as typed. */
  readonly fileName: string;
  /** The Plan that stays, and Help with the teacher's own wording where that is to stay; both take the place of what is there. */
  readonly anew: readonly SheetWish[];
  /** Sheets that are not ours go as well. */
  readonly removeOthers: boolean;
  readonly note: string;
}

export interface ShowWish {
  readonly sheetId: number;
  /** A cell to go to; left out where the sheet is enough. */
  readonly cell?: { readonly row: number; readonly column: number };
  /** Sheets in use of these kinds go out of sight then. */
  readonly hide?: readonly SheetKind[];
}

export interface PageWish {
  readonly page: PageName | 'sidebar';
  readonly about: string;
}

export interface ChecksEntered {
  readonly renewed: number;
  /** Checks that the host is working out: left to it, and begun anew where a press a minute later finds them so. */
  readonly waiting: number;
  /** Sheets where a formula is gone. */
  readonly missing: readonly number[];
  /** What kept checks from showing and was moved out of their cells, each named by its cell, as sentences. */
  readonly moved: readonly string[];
}

/** Calls of the host one after the other, each on what the one before came to; a name without a call is looked up. */
export interface TrialChain {
  readonly on: 'sheet' | 'file' | 'app' | 'lock' | 'store' | 'session' | 'tools';
  readonly calls: readonly (readonly [name: string, ...given: readonly unknown[]])[];
}

/** The scratch sheet of the self-check is made or taken away; `sheetId` is shown again then. */
export interface TrialAct {
  readonly do: 'begin' | 'end';
  readonly sheetId?: number;
}

/** What came of a step: what the host handed back as a plain value, or its words where it refused; and how long it took. */
export interface TrialFact {
  readonly ms: number;
  readonly value?: unknown;
  readonly refused?: string;
}

export interface TrialWish {
  readonly steps: readonly (TrialAct | TrialChain)[];
}

/** Name of the call → its type. The build writes one top-level declaration for each; nothing else is callable. */
export interface Calls {
  /** The list of sheets, and the cells of those asked for. Nothing is written. */
  readBook(version: number, wish: ReadWish): Outcome<BookReading>;
  /** Brings a sheet, and what goes with it, to its plan; the same call finishes one that stopped. */
  applySheet(version: number, wish: ApplyWish): Outcome<AppliedReading>;
  /** Writes values into cells of our sheets, or none of them where one holds something else by now. */
  writeCells(version: number, wish: CellsWish): Outcome<BookReading>;
  /** Keeps a sheet under a dated name behind all others, puts it away with its lesson, or takes it out. */
  putAside(version: number, wish: AsideWish): Outcome<StepReading>;
  /** Takes everything personal out of a copy, which must be named. */
  emptyFile(
    version: number,
    wish: EmptyFileWish,
  ): Outcome<{ readonly left: readonly string[]; readonly reading: BookReading }>;
  show(version: number, wish: ShowWish): Outcome<null>;
  /** Opens a page to print or project in place of the sidebar, or the sidebar again; `about` is handed over as data. */
  openPage(version: number, wish: PageWish): Outcome<null>;
  /** Makes room for checks that something typed keeps from showing, and enters again those that failed. */
  checkAgain(version: number): Outcome<ChecksEntered>;
  /** Takes steps of the self-check, each whatever the others come to; its sheet goes with the step `end`. */
  tryHost(version: number, wish: TrialWish): Outcome<readonly TrialFact[]>;
}
export const callNames = [
  'readBook',
  'applySheet',
  'writeCells',
  'putAside',
  'emptyFile',
  'show',
  'openPage',
  'checkAgain',
  'tryHost',
] as const satisfies readonly (keyof Calls)[];
export type CallName = (typeof callNames)[number];
