import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { inTodaysColumns } from '../workbook/classCells.ts';
import { digest } from '../workbook/digest.ts';
import { classColumns as at } from '../workbook/layout.ts';
import { columnLetters, onSheet } from '../workbook/reference.ts';
import type { LateSent, OwnLeft } from './calls.ts';
import { carryEntries } from './carryEntries.ts';
import { carryOwn } from './carryOwn.ts';
import { type FileInRun, sheetById } from './fileInRun.ts';
import { type OwnSheet, otherSheets, ownSheets, sheetInUse } from './ownSheets.ts';
import { valuesOf } from './valuesOf.ts';

type Cells = readonly (readonly CellValue[])[];

/** What became of entries that were typed into a sheet after it had been put aside. */
export type Late = LateSent;

/** A sheet as it was when its entries were taken: what stands otherwise in it later was typed later. */
interface Taken {
  readonly className: string;
  readonly lesson?: string | undefined;
  readonly activity: string;
  /** How many columns its table has; others are people's own. */
  readonly columns: number;
  /** By team and step: sums over what stood in the columns that people type in; rows without anything are left out. */
  readonly rows: Readonly<Record<string, readonly string[]>>;
}

const property = 'labrow.taken';
const pieceLength = 8000;
const typed = [at.entry, at.help, at.who] as const;
export const nameOf = (line: readonly CellValue[]): string =>
  `${cellText(line[at.key - 1])} ${cellText(line[at.step - 1])}`;
export const isNamed = (line: readonly CellValue[]): boolean => cellText(line[at.key - 1]) !== '';

/** Notes what a class sheet holds at the moment when its entries are taken; an earlier moment counts. */
export function noteTaken({ store }: FileInRun, old: OwnSheet, cells: Cells, columns = cells[0]?.length ?? 0): void {
  const ids = takenIds(store);
  if (old.tag.kind !== 'class' || ids.includes(old.id)) return;
  const rows: Record<string, string[]> = {};
  for (const line of inTodaysColumns(cells).filter(isNamed)) {
    const name = nameOf(line);
    const sums = typed.map((column) => sumOf(cellText(line[column - 1])));
    if (rows[name] === undefined && sums.some((sum) => sum !== '')) rows[name] = sums;
  }
  const { className = '', lesson, activity = '' } = old.tag;
  const taken = { className, lesson, activity, columns: old.tag.columns ?? columns, rows };
  const words = JSON.stringify(taken satisfies Taken);
  let count = 0;
  for (let from = 0; from < words.length; from += pieceLength) {
    store.write(`${property}.${old.id}.${count}`, words.slice(from, from + pieceLength));
    count += 1;
  }
  // Named last: pieces that stand alone are no note.
  store.write(property, [...ids, old.id].join(' '));
}

type Store = FileInRun['store'];

const takenIds = (store: Store): readonly number[] =>
  store
    .read(property)
    .split(' ')
    .filter((id) => id !== '')
    .map(Number);

function readTaken(store: Store, id: number): Taken | undefined {
  let words = '';
  for (let piece = 0; ; piece += 1) {
    const part = store.read(`${property}.${id}.${piece}`);
    if (part === '') break;
    words += part;
  }
  try {
    return JSON.parse(words) as Taken;
  } catch {
    // Words that are no note of ours: nothing can be said of what was typed later.
    return undefined;
  }
}

function forget(store: Store, id: number): void {
  const others = takenIds(store).filter((one) => one !== id);
  if (others.length > 0) store.write(property, others.join(' '));
  else store.remove(property);
  for (let piece = 0; store.read(`${property}.${id}.${piece}`) !== ''; piece += 1) {
    store.remove(`${property}.${id}.${piece}`);
  }
}

/**
 * At the end of a build: what was typed into sheets after their entries had been taken goes to the rows of the same team
 * and step in the sheet in use, where nothing stands there yet. Nothing is written over, and what stays is counted.
 */
export function carryLate(file: FileInRun): Late {
  let carried = 0;
  let left = 0;
  let away = 0;
  const own: OwnLeft[] = [];
  const kept: string[] = [];
  for (const id of takenIds(file.store)) {
    const old = sheetById(file, id);
    const taken = readTaken(file.store, id);
    if (old !== undefined && taken !== undefined) {
      const { className, lesson } = taken;
      const target = sheetInUse(ownSheets(file), { kind: 'class', className, lesson });
      const late = lateCells(inTodaysColumns(valuesOf(old.sheet)), taken);
      const found = late.some((line) => line.some((cell) => cell !== '')) ? carryOne({ taken, target, late }) : none;
      carried += found.carried;
      // In a lesson that is put away they stand in their rows, and count again once it is opened.
      if (old.tag?.state === 'away') away += found.left;
      else {
        left += found.left;
        // In a lesson that is put away all of that is where it was.
        const cells = carryOwn(old.sheet, target, taken.columns);
        const name = old.sheet.getName();
        kept.push(name);
        if (cells.length > 0) own.push({ sheet: name, cells });
      }
    }
    forget(file.store, id);
  }
  // Formulas of people's own that followed a sheet which is out of use show what nobody works on.
  for (const { sheet } of kept.length > 0 ? otherSheets(file) : []) {
    const cells = sheet
      .getDataRange()
      .getFormulas()
      .flatMap((line, down) =>
        line.flatMap((formula, right) =>
          kept.some((name) => formula.includes(onSheet(name, ''))) ? [`${columnLetters(right + 1)}${down + 1}`] : [],
        ),
      );
    if (cells.length > 0) own.push({ sheet: sheet.getName(), cells });
  }
  return { carried, left, away, own };
}

const none = { carried: 0, left: 0 };

/** The cells as they are, with nothing in them but names and what was typed later. */
const lateCells = (cells: Cells, { rows }: Taken): CellValue[][] =>
  cells.map((line) => {
    const kept: CellValue[] = line.map(() => '');
    if (!isNamed(line)) return kept;
    const sums = rows[nameOf(line)];
    typed.forEach((column, index) => {
      const value = line[column - 1];
      if (cellText(value) !== '' && sumOf(cellText(value)) !== (sums?.[index] ?? '')) kept[column - 1] = value;
    });
    if (kept.some((cell) => cell !== '')) {
      kept[at.key - 1] = line[at.key - 1];
      kept[at.step - 1] = line[at.step - 1];
    }
    return kept;
  });

function carryOne({
  taken,
  target,
  late,
}: {
  readonly taken: Taken;
  readonly target: OwnSheet | undefined;
  readonly late: CellValue[][];
}): Pick<Late, 'carried' | 'left'> {
  const before = target === undefined ? [] : valuesOf(target.sheet);
  const isOther = target?.tag.activity !== undefined && taken.activity !== '' && target.tag.activity !== taken.activity;
  if (target !== undefined && !isOther) {
    const rows = before.map((line) => [cellText(line[at.key - 1]), cellText(line[at.step - 1])]);
    const area = { row: 1, column: 1, rows: before.length, columns: at.who };
    carryEntries({
      sheet: target.sheet,
      plan: {
        rowCount: before.length,
        role: target.tag,
        identity: { firstRow: 1, columns: [at.key, at.step], rows },
        carried: typed,
        writable: [area],
        unprotected: [],
      },
      from: late,
    });
    target.cells = undefined;
  }
  const after = target === undefined ? [] : valuesOf(target.sheet);
  const standsIn = (cells: Cells, line: readonly CellValue[], column: number): string =>
    cellText(cells.find((other) => nameOf(other) === nameOf(line))?.[column - 1]);
  let carried = 0;
  let left = 0;
  for (const line of late.filter(isNamed)) {
    for (const column of typed) {
      const text = cellText(line[column - 1]);
      if (text === '' || (!isOther && standsIn(before, line, column) === text)) continue;
      if (!isOther && standsIn(after, line, column) === text) carried += 1;
      else left += 1;
    }
  }
  return { carried, left };
}

/** Blank for nothing: the note holds sums, and nobody's words. */
const sumOf = (text: string): string => (text === '' ? '' : digest(text));
