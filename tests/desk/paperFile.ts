import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { Asked, Work } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type {
  ApplyWish,
  AsideWish,
  BookReading,
  CellSent,
  ChecksEntered,
  EmptyFileWish,
  Outcome as HostOutcome,
  ReadWish,
  Seen,
  SheetListed,
} from '../../src/host/calls.ts';
import { checkHeadings } from '../../src/lab/texts/feedback.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { carriedEntries } from '../../src/workbook/carriedEntries.ts';
import { freeName } from '../../src/workbook/freeName.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { obstaclesIn } from '../../src/workbook/obstaclesIn.ts';
import { readClassSheet } from '../../src/workbook/readClassSheet.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { restWords } from '../../src/workbook/restWords.ts';
import type { SheetPlan, SheetRole } from '../../src/workbook/workbook.ts';
import { checksAreWritten } from '../../src/workbook/writtenChecks.ts';

export interface PaperSheet {
  id: number;
  name: string;
  tag: SheetListed['tag'];
  kept: boolean;
  cells: CellSent[][];
  formulaEntries: readonly number[];
}

/** What a file holds besides its sheets; a test may change any of it, as a new day or somebody else does. */
export interface PaperState {
  fileName: string;
  decimalMark: 'point' | 'comma';
  timeZone: string;
  now: number;
  today: string;
  clock: string;
  activeSheet: number;
  emptySheet: number | null;
  note: string;
  sheets: PaperSheet[];
}

/**
 * A file on paper: the eight calls of the script over plain values, with no formulas and no host, so that what the desk
 * does is seen in milliseconds. It says `changed` as the script does. What functions would show is put in by the test,
 * but for the names of teams and the heading of the checks, without which no block could be read.
 */
export function paperFile(given: Partial<PaperState> = {}) {
  const state: PaperState = {
    fileName: 'Invented school',
    decimalMark: 'point',
    timeZone: 'Etc/UTC',
    now: Date.parse('2026-03-02T10:15:00Z'),
    today: '2026-03-02',
    clock: '10:15',
    activeSheet: 1,
    emptySheet: 1,
    note: '',
    sheets: [{ id: 1, name: 'Sheet1', tag: null, kept: false, cells: [], formulaEntries: [] }],
    ...given,
  };
  const asked: Asked[] = [];
  let nextId = Math.max(99, ...state.sheets.map(({ id }) => id)) + 1;
  /** Runs once before the next call that writes: somebody who is quicker. */
  let meanwhile: (() => void) | undefined;
  let checkAnswer: ChecksEntered = { renewed: 0, waiting: 0, missing: [], moved: [] };
  let refusal: HostOutcome<never> | undefined;

  const markOf = ({ tag, cells }: PaperSheet): string =>
    JSON.stringify([
      tag?.kind === 'class' ? cells.map((line) => [line[at.key - 1] ?? '', line[at.step - 1] ?? '']) : cells,
      tag?.state === 'away',
    ]);
  const reading = ({ kinds, ids = [], brief = false }: ReadWish): BookReading => {
    const { sheets, ...rest } = state;
    const { now, note } = rest;
    const isRead = ({ id, tag, kept }: PaperSheet) =>
      !kept && tag !== null && ((kinds.includes(tag.kind) && tag.state !== 'away') || ids.includes(id));
    return {
      ...(brief ? { now, note } : rest),
      sheets: sheets.map(({ id, name, tag, kept }) => ({ id, name: brief && tag === null ? '' : name, tag, kept })),
      read: sheets.filter(isRead).map((sheet) => ({
        id: sheet.id,
        cells: sheet.cells.map((line) => [...line]),
        formulaEntries: sheet.formulaEntries,
        mark: markOf(sheet),
      })),
    };
  };
  const isChanged = (seen: readonly Seen[]) =>
    seen.some(({ id, mark }) => {
      const sheet = state.sheets.find((one) => one.id === id);
      return sheet === undefined || markOf(sheet) !== mark;
    });
  const changed = { ok: false, problem: { message: 'Somebody was quicker.', reason: 'changed' } } as const;

  const isOf = ({ tag, kept }: PaperSheet, { kind, className, lesson }: SheetRole) =>
    !kept && tag?.kind === kind && tag.className === className && tag.lesson === lesson;
  const put = (sheet: PaperSheet, row: number, column: number, value: CellSent) => {
    while (sheet.cells.length < row) sheet.cells.push([]);
    const line = sheet.cells[row - 1] ?? [];
    while (line.length < column) line.push('');
    line[column - 1] = value;
  };
  const valuesOf = (sheet: PaperSheet): CellValue[][] =>
    sheet.cells.map((line) => line.map((cell) => (typeof cell === 'object' ? new Date(cell.date) : cell)));

  function writePlan(sheet: PaperSheet, plan: SheetPlan) {
    for (const block of [...plan.blocks, ...plan.checks]) {
      block.cells.forEach((line, down) => {
        line.forEach((content, right) => {
          const value =
            content.kind === 'text'
              ? content.text
              : content.kind === 'number'
                ? content.value
                : content.kind === 'sheet id'
                  ? sheet.id
                  : '';
          // What a formula would show is left as the test has put it.
          if (content.kind !== 'formula' || sheet.cells[block.row + down - 1]?.[block.column + right - 1] === undefined)
            put(sheet, block.row + down, block.column + right, value);
        });
      });
    }
    const { firstRow, columns, rows } = plan.identity;
    rows.forEach((texts, down) => {
      for (const [place, text] of texts.entries())
        if (text !== '') put(sheet, firstRow + down, columns[place] ?? 0, text);
    });
    for (const { row, column } of plan.invitation?.places ?? [])
      if ((sheet.cells[row - 1]?.[column - 1] ?? '') === '') put(sheet, row, column, plan.invitation?.text ?? '');
    if (plan.role.kind === 'class') showHeadings(sheet, plan);
  }
  /** The names of the teams, which a lookup in the Plan shows, and the headings that the check spills. */
  function showHeadings(sheet: PaperSheet, { role: { lesson: id }, identity: { firstRow, rows } }: SheetPlan) {
    const plan = state.sheets.find((one) => isOf(one, { kind: 'plan', ...(id === undefined ? {} : { lesson: id }) }));
    const lesson = readLesson(plan === undefined ? [] : valuesOf(plan));
    const seen = new Set<string>();
    rows.forEach(([key = ''], down) => {
      if (key === '' || seen.has(key)) return;
      seen.add(key);
      const team = lesson.ok ? lesson.value.teams.find((one) => one.key === key)?.team : undefined;
      if (team === undefined) return;
      put(sheet, firstRow + down, at.title, team);
      put(sheet, firstRow + down, at.check, checkHeadings.check);
    });
  }

  function apply({
    plan,
    keptName,
    replace = false,
    firstEntries = [],
    tab,
  }: Partial<ApplyWish> & Pick<ApplyWish, 'plan' | 'keptName'>) {
    const { kind, className, lesson } = plan.role;
    const present = state.sheets.find((one) => isOf(one, plan.role));
    if (present?.tag?.state === 'away') wake(present, present.tag);
    const isOther =
      present !== undefined &&
      (replace ||
        layoutFits(plan, valuesOf(present)) === 'other' ||
        (plan.activity !== undefined && present.tag?.activity !== plan.activity));
    const stays = present !== undefined && !isOther ? present : undefined;
    const made = stays === undefined;
    if (present !== undefined && isOther) Object.assign(present, { kept: true, name: keptName });
    const sheet: PaperSheet = stays ?? {
      id: nextId++,
      name: freeName(
        plan.name,
        state.sheets.map(({ name }) => name),
      ),
      tag: {
        kind,
        ...(className === undefined ? {} : { className }),
        ...(lesson === undefined ? {} : { lesson }),
        layout: layoutVersion,
        state: 'built',
        ...(plan.activity === undefined ? {} : { activity: plan.activity }),
      },
      kept: false,
      cells: [],
      formulaEntries: [],
    };
    if (made) {
      state.sheets.push(sheet);
      state.activeSheet = sheet.id;
    }
    writePlan(sheet, plan);
    if (present !== undefined && isOther && present.tag?.activity === plan.activity) {
      const runs = carriedEntries({ plan, from: valuesOf(present), to: [] });
      for (const { row, column, values } of runs)
        values.forEach((value, down) => {
          if (value instanceof Date || (value !== undefined && value !== null && value !== ''))
            put(sheet, row + down, column, value instanceof Date ? { date: value.getTime() } : value);
        });
      Object.assign(present, { tag: null });
    } else if (present !== undefined && isOther) Object.assign(present, { tag: null });
    if (made)
      for (const { row, column, texts, counts } of firstEntries) {
        texts.forEach((text, down) => {
          if (text !== '') put(sheet, row + down, column, text);
        });
        counts?.rows.forEach((count, down) => {
          if (count === null) return;
          put(sheet, row + down, counts.column, count[0]);
          put(sheet, row + down, counts.column + 1, { date: count[1] });
        });
      }
    if (tab !== undefined && sheet.name === tab.was) sheet.name = tab.now;
    return { sheet, made };
  }
  /** Checks say what they said, as words of that time; so they do again once the sheet is woken. */
  const changeChecks = (sheet: PaperSheet, change: (word: string) => string) => {
    if (sheet.tag?.kind !== 'class') return;
    for (const line of sheet.cells) {
      const word = line[at.check - 1];
      if (typeof word === 'string' && word !== '' && (line[at.key - 1] ?? '') !== '') line[at.check - 1] = change(word);
    }
  };
  const rest = (word: string) => (word === checkHeadings.check ? restWords.checks : `${restWords.before}${word}`);
  const awake = (word: string) =>
    word === restWords.checks ? checkHeadings.check : word.replace(restWords.before, '');
  /** As the script does; notes on cells do not stand on paper. */
  function takeOutTyped(sheet: PaperSheet) {
    const cells = valuesOf(sheet);
    for (const block of readClassSheet(cells)?.blocks ?? [])
      for (const { row, column } of obstaclesIn(block, cells)) sheet.cells[row - 1]?.splice(column - 1, 1, '');
  }
  function wake(sheet: PaperSheet, { about: _, ...tag }: NonNullable<PaperSheet['tag']>) {
    if (checksAreWritten(valuesOf(sheet))) takeOutTyped(sheet);
    else changeChecks(sheet, awake);
    sheet.tag = { ...tag, state: 'built' };
  }
  function putAway(sheet: PaperSheet, { keptName, about = '' }: AsideWish) {
    if (sheet.tag === null || sheet.tag.state === 'away') return;
    if (!checksAreWritten(valuesOf(sheet))) changeChecks(sheet, rest);
    Object.assign(sheet, { name: keptName, tag: { ...sheet.tag, state: 'away', about } });
  }
  function touch({ note, last }: Pick<ApplyWish, 'note' | 'last'>, made = false) {
    if (note?.after !== undefined) state.note = note.after;
    if (last === undefined) return;
    state.note = '';
    if (last.emptySheet !== null) state.sheets = state.sheets.filter(({ id }) => id !== last.emptySheet);
    state.emptySheet = null;
    if ((made || last.madeBefore) && last.show !== null) state.activeSheet = last.show;
  }
  function empty({ anew, removeOthers, note }: EmptyFileWish) {
    state.sheets = removeOthers ? [] : state.sheets.filter(({ tag, kept }) => tag === null && !kept);
    for (const one of anew) apply(one);
    state.note = note;
    return { left: state.sheets.map(({ name }) => name), reading: undefined };
  }

  /** Answers one call. */
  function answer(one: Asked): unknown {
    asked.push(one);
    if (refusal !== undefined) return refusal;
    if (one.call === 'readBook') return { ok: true, value: reading(one.wish) };
    if (one.call === 'checkAgain') return { ok: true, value: checkAnswer };
    if (one.call === 'tryHost') return { ok: true, value: [] };
    if (one.call === 'show' || one.call === 'openPage') return { ok: true, value: null };
    meanwhile?.();
    meanwhile = undefined;
    if (isChanged(one.wish.seen)) return changed;
    switch (one.call) {
      case 'applySheet': {
        const { sheet, made } = apply(one.wish);
        if (made && one.wish.also?.length && sheet.name !== one.wish.plan.name) return changed;
        const others = (one.wish.also ?? []).map(apply);
        const isMade = made || others.some((other) => other.made);
        touch(one.wish, isMade);
        return {
          ok: true,
          value: { sheetId: sheet.id, made: isMade, reading: reading(one.wish.read) },
        };
      }
      case 'writeCells': {
        const places = one.wish.cells.map((cell) => ({ cell, sheet: sheetWithId(cell.sheetId) }));
        const isOther = ({ cell, sheet }: (typeof places)[number]) =>
          JSON.stringify(sheet.cells[cell.row - 1]?.[cell.column - 1] ?? '') !== JSON.stringify(cell.was);
        if (places.some(isOther)) return changed;
        for (const { cell, sheet } of places) put(sheet, cell.row, cell.column, cell.now);
        return { ok: true, value: reading(one.wish.read) };
      }
      case 'putAside': {
        const { sheetId, was, keptName, about, remove, instead } = one.wish;
        if (remove !== true && about !== undefined && ![was, keptName].includes(sheetWithId(sheetId).name))
          return changed;
        if (remove === true) state.sheets = state.sheets.filter(({ id }) => id !== sheetId);
        else if (about !== undefined) putAway(sheetWithId(sheetId), one.wish);
        else Object.assign(sheetWithId(sheetId), { kept: true, name: keptName, tag: null });
        const comes = state.sheets.find(({ id }) => id === instead?.sheetId);
        const isFree = state.sheets.every(({ name }) => name !== instead?.now);
        if (instead !== undefined && isFree && comes?.name === instead.was) comes.name = instead.now;
        touch(one.wish);
        return { ok: true, value: { reading: reading(one.wish.read) } };
      }
      default: {
        const { left } = empty(one.wish);
        return { ok: true, value: { left, reading: reading(one.wish.read) } };
      }
    }
  }
  const sheetWithId = (id: number): PaperSheet =>
    found(
      state.sheets.find((one) => one.id === id),
      `a sheet ${id}`,
    );
  const sheetCalled = (name: string): PaperSheet =>
    found(
      state.sheets.find((one) => one.name === name),
      `a sheet “${name}” among ${state.sheets.map((one) => one.name).join(', ')}`,
    );
  const run = <T>(work: Work<T>): T => runWork(work, answer);
  /** Does or reads as a page that was just opened. */
  const call = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): DeskAnswer<Name> =>
    run(workFor({ book: undefined }, name, about));

  return {
    state,
    /** Every call so far, in order. */
    asked,
    run,
    answer,
    call,
    sheetCalled,
    names: () => state.sheets.map(({ name }) => name),
    /** Goes on to the end as a page does that was opened after the first step. */
    finish: (first: Outcome<BuildState>): BuildState => {
      const page: File = { book: undefined };
      let now = valueIn(first);
      for (let steps = 0; !now.finished; steps += 1) {
        if (steps > 40) throw new Error(`Expected the build to finish, received ${now.done} of ${now.total}.`);
        now = valueIn(run(workFor(page, 'continueBuild', [])));
      }
      return now;
    },
    /** Row of a team's step, or of its heading where no step is named. */
    rowOf: (sheet: string, key: string, step = ''): number => {
      const row = sheetCalled(sheet).cells.findIndex(
        (line) => (line[at.key - 1] ?? '') === key && (line[at.step - 1] ?? '') === step,
      );
      if (row < 0) throw new Error(`Expected a row for ${step} of ${key} in ${sheet}.`);
      return row + 1;
    },
    cell: (sheet: string, row: number, column: number): CellSent =>
      sheetCalled(sheet).cells[row - 1]?.[column - 1] ?? '',
    /** What people type or functions show. */
    put: (sheet: string, row: number, column: number, value: CellSent) => put(sheetCalled(sheet), row, column, value),
    /** Somebody who is quicker than the next call that writes. */
    before: (act: () => void) => {
      meanwhile = act;
    },
    checksAnswer: (given: Partial<ChecksEntered>) => {
      checkAnswer = { ...checkAnswer, ...given };
    },
    /** Every call is refused from now on. */
    refuse: (given: HostOutcome<never> | undefined) => {
      refusal = given;
    },
  };
}
export type PaperFile = ReturnType<typeof paperFile>;

/** The value of an outcome; a problem fails the test with its own words. */
export function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}
/** The problem of an outcome that has to be one. */
export function problemOf(outcome: Outcome<unknown>) {
  if (outcome.ok) throw new Error(`Expected a problem, received ${JSON.stringify(outcome.value).slice(0, 200)}.`);
  return outcome.problem;
}
function found<T>(one: T | undefined, what: string): T {
  if (one === undefined) throw new Error(`Expected ${what}.`);
  return one;
}

/** A copy that shares nothing with the file it was made from, as a file that was saved. */
export const copyOf = ({ state }: PaperFile, given: Partial<PaperState> = {}): PaperFile =>
  paperFile({ ...structuredClone(state), ...given });
