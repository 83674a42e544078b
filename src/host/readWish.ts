import type {
  ApplyWish,
  AsideWish,
  CellSent,
  CellsWish,
  CellWish,
  EmptyFileWish,
  FirstEntriesSent,
  LastTouch,
  NoteWish,
  PageWish,
  ReadWish,
  Seen,
  SheetKind,
  SheetWish,
  ShowWish,
  TrialWish,
  WriteWish,
} from './calls.ts';
import type { PageName } from './pages.ts';
import { readPlanSent } from './readPlanSent.ts';

/*
 * What came over the bridge, which anybody who may open the file can call with anything. Each reader hands back a value of
 * its type, made anew of what was looked at, or undefined.
 */

const longestName = 100;
const mostCells = 2000;

export function readReadWish(given: unknown): ReadWish | undefined {
  const { kinds, ids, address, brief } = record(given);
  if (!isList(kinds) || !kinds.every(isText)) return undefined;
  return {
    kinds: kindsOf(kinds),
    ids: isList(ids) ? ids.filter(isId) : [],
    address: address === true,
    brief: brief === true,
  };
}

export function readApplyWish(given: unknown): ApplyWish | undefined {
  const { replace, also, show, tab, note, last } = record(given);
  const write = readWriteWish(given);
  const one = readOneSheet(given);
  const more = isList(also) ? allOf(also, readOneSheet) : [];
  const tabRead = tab === undefined || tab === null ? undefined : readTab(tab);
  if (write === undefined || one === undefined || more === undefined || tabRead === null) return undefined;
  return {
    ...write,
    ...one,
    also: more,
    replace: replace === true,
    show: show === true,
    ...(tabRead === undefined ? {} : { tab: tabRead }),
    ...noteOf(note),
    ...lastOf(last),
  };
}

/** A plan and what goes with it: undefined where one of them is none. */
function readOneSheet(given: unknown): SheetWish | undefined {
  const { plan, keptName, firstEntries } = record(given);
  const planRead = readPlanSent(plan);
  const entries = isList(firstEntries) ? allOf(firstEntries, readFirstEntries) : [];
  if (!planRead.ok || !isName(keptName) || entries === undefined) return undefined;
  return { plan: planRead.plan, keptName, firstEntries: entries };
}

export function readAsideWish(given: unknown): AsideWish | undefined {
  const { sheetId, was, keptName, about, remove, instead, note, last } = record(given);
  const next = record(instead).sheetId;
  const tab = readTab(instead);
  const write = readWriteWish(given);
  if (write === undefined || !isId(sheetId) || !isName(was) || !isName(keptName)) return undefined;
  return {
    ...write,
    sheetId,
    was,
    keptName,
    ...(isText(about) ? { about } : {}),
    remove: remove === true,
    ...(isId(next) && tab !== null ? { instead: { sheetId: next, ...tab } } : {}),
    ...noteOf(note),
    ...lastOf(last),
  };
}

export function readCellsWish(given: unknown): CellsWish | undefined {
  const { cells, heights } = record(given);
  const write = readWriteWish(given);
  const read = isList(cells) && cells.length <= mostCells ? allOf(cells, readCell) : undefined;
  if (write === undefined || read === undefined) return undefined;
  return {
    ...write,
    cells: read,
    heights: isList(heights) ? (heights.filter(isHeight) as NonNullable<CellsWish['heights']>) : [],
  };
}

function isHeight(given: unknown): boolean {
  const { sheetId, row, height } = record(given);
  return isId(sheetId) && isPlace(row) && isPlace(height);
}

export function readEmptyFileWish(given: unknown): EmptyFileWish | undefined {
  const { fileName, anew, removeOthers, note } = record(given);
  const write = readWriteWish(given);
  const sheets = isList(anew) ? allOf(anew, readOneSheet) : undefined;
  if (write === undefined || sheets === undefined || !isText(fileName) || !isText(note)) return undefined;
  return { ...write, fileName, anew: sheets, removeOthers: removeOthers === true, note };
}

export function readShowWish(given: unknown): ShowWish | undefined {
  const { sheetId, cell, hide } = record(given);
  if (!isId(sheetId)) return undefined;
  const wish = { sheetId, hide: kindsOf(hide) };
  if (cell === undefined || cell === null) return wish;
  const { row, column } = record(cell);
  return isPlace(row) && isPlace(column) ? { ...wish, cell: { row, column } } : undefined;
}

export function readPageWish(given: unknown): PageWish | undefined {
  const { page, about } = record(given);
  return isText(page) ? { page: page as PageName, about: isText(about) ? about : '' } : undefined;
}

/** Steps of the self-check: one that the host cannot take comes back as refused, like any other. */
export function readTrialWish(given: unknown): TrialWish | undefined {
  const { steps } = record(given);
  return isList(steps) ? { steps: steps as TrialWish['steps'] } : undefined;
}

function readWriteWish(given: unknown): WriteWish | undefined {
  const { seen, read } = record(given);
  const marks = isList(seen) ? allOf(seen, readSeen) : undefined;
  const wish = readReadWish(read);
  return marks === undefined || wish === undefined ? undefined : { seen: marks, read: wish };
}

function readSeen(given: unknown): Seen | undefined {
  const { id, mark } = record(given);
  return isId(id) && isText(mark) ? { id, mark } : undefined;
}

function readCell(given: unknown): CellWish | undefined {
  const { sheetId, row, column, was, now } = record(given);
  const { date } = record(now);
  const isValue = isText(now) || Number.isFinite(now);
  if (!isId(sheetId) || !isPlace(row) || !isPlace(column) || !(isValue || Number.isFinite(date))) return undefined;
  return { sheetId, row, column, was: was as CellSent, now: (isValue ? now : { date }) as CellSent };
}

function readFirstEntries(given: unknown): FirstEntriesSent | undefined {
  const { row, column, texts, counts } = record(given);
  if (!isPlace(row) || !isPlace(column) || !isList(texts) || !texts.every(isText)) return undefined;
  const run = { row, column, texts: texts as readonly string[] };
  if (counts === undefined || counts === null) return run;
  const { column: at, rows } = record(counts);
  const isCount = (entry: unknown): entry is readonly [number, number] | null =>
    entry === null || (isList(entry) && entry.length === 2 && entry.every((part) => typeof part === 'number'));
  return isPlace(at) && isList(rows) && rows.every(isCount) ? { ...run, counts: { column: at, rows } } : undefined;
}

/** Null for what is no name of a tab. */
function readTab(given: unknown): NonNullable<ApplyWish['tab']> | null {
  const { was, now } = record(given);
  return isName(was) && isName(now) ? { was, now } : null;
}

function noteOf(given: unknown): { readonly note?: NoteWish } {
  if (given === undefined || given === null) return {};
  const { was, before, after } = record(given);
  return {
    note: {
      ...(isText(was) ? { was } : {}),
      ...(isText(before) ? { before } : {}),
      ...(isText(after) ? { after } : {}),
    },
  };
}

function lastOf(given: unknown): { readonly last?: LastTouch } {
  if (given === undefined || given === null) return {};
  const { show, madeBefore, emptySheet, hide } = record(given);
  return {
    last: {
      show: isId(show) ? show : null,
      madeBefore: madeBefore === true,
      emptySheet: isId(emptySheet) ? emptySheet : null,
      hide: kindsOf(hide),
    },
  };
}

const record = (given: unknown): Record<string, unknown> =>
  typeof given === 'object' && given !== null ? (given as Record<string, unknown>) : {};

/** Every item read, or undefined where one could not be. */
function allOf<T>(items: readonly unknown[], read: (item: unknown) => T | undefined): readonly T[] | undefined {
  const all = items.map(read);
  return all.includes(undefined) ? undefined : (all as readonly T[]);
}

const isList = (given: unknown): given is readonly unknown[] => Array.isArray(given);
const isText = (given: unknown): given is string => typeof given === 'string';
const isName = (given: unknown): given is string => isText(given) && given !== '' && given.length <= longestName;
const isId = (given: unknown): given is number => typeof given === 'number' && Number.isInteger(given);
const kindsOf = (given: unknown) => (isList(given) ? given.filter(isText) : []) as readonly SheetKind[];
const isPlace = (given: unknown): given is number => isId(given) && given >= 1;
