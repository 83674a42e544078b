import { cellText } from '../workbook/cellText.ts';
import { isAtWork } from '../workbook/isAtWork.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import type { ChecksEntered, Outcome } from './calls.ts';
import { withDocumentLock } from './documentLock.ts';
import { type FileInRun, fileInRun, sheetById } from './fileInRun.ts';
import { moveAside } from './moveAside.ts';
import { busy, done } from './outcome.ts';
import { ownSheets } from './ownSheets.ts';
import { openSpreadsheet, type Sheet, settle } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';

const property = 'labrow.check';
/** Checks that an earlier press has seen at work, each with the moment when one first did. */
const waitingProperty = 'labrow.waiting';
/**
 * A run of a function is ended by the host after half a minute, so a check that shows nothing else for as long as this
 * hangs. Before that it is only slow.
 */
const longestWaitMs = 60_000;

/** A check whose cell is empty for a moment: where it stands and what belongs there. */
interface CheckNoted {
  readonly sheetId: number;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/**
 * Enters again only the checks that failed; those that stand cost the host nothing, and those that it is working out are
 * left to it, since beginning anew would make the wait longer, unless two presses far enough apart find the same one at
 * work. What somebody typed where checks have to show is moved out
 * of their way first: most of them then come by themselves. A formula is noted before its cell is emptied, so that the
 * next press puts it back where this one stops. Sheets where a formula is gone altogether are named: the page plans them
 * anew.
 */
export function checkAgain(): Outcome<ChecksEntered> {
  const locked = withDocumentLock(2000, () => {
    const file = fileInRun(openSpreadsheet());
    let renewed = putBack(file) ? 1 : 0;
    const missing = new Set<number>();
    const moved: string[] = [];
    const before = readNoted<Readonly<Record<string, number>>>(file.store.read(waitingProperty)) ?? {};
    const waiting: Record<string, number> = {};
    const now = Date.now();
    for (const one of ownSheets(file)) {
      const { sheet, id, tag } = one;
      if (tag.kind !== 'class' || tag.state === 'away') continue;
      const obstacles = moveAside(one);
      moved.push(...obstacles.map(hostWords.inTheWay));
      if (obstacles.length > 0) settle();
      const cells = valuesOf(sheet);
      for (const { key, known, headingRow, checkColumn } of readClassSheet(cells)?.blocks ?? []) {
        if (known) continue;
        const formula = sheet.getRange(headingRow, checkColumn).getFormula();
        const name = `${id} ${key}`;
        const since = before[name] ?? now;
        if (formula === '') missing.add(id);
        else if (isAtWork(cellText(cells[headingRow - 1]?.[checkColumn - 1])) && now - since < longestWaitMs)
          waiting[name] = since;
        else {
          renew(file, sheet, { sheetId: id, row: headingRow, column: checkColumn, formula });
          renewed += 1;
        }
      }
    }
    if (Object.keys(waiting).length > 0) file.store.write(waitingProperty, JSON.stringify(waiting));
    else if (file.store.read(waitingProperty) !== '') file.store.remove(waitingProperty);
    return { renewed, waiting: Object.keys(waiting).length, missing: [...missing], moved };
  });
  return locked.ran ? done(locked.value) : busy();
}

const checkCell = (sheet: Sheet, { row, column }: CheckNoted) => sheet.getRange(row, column);

/** The same formula set over itself is not worked out again, so the cell is empty in between. */
function renew({ store }: FileInRun, sheet: Sheet, noted: CheckNoted): void {
  store.write(property, JSON.stringify(noted));
  const cell = checkCell(sheet, noted);
  try {
    cell.setValue('');
    settle();
  } finally {
    cell.setValue(noted.formula);
  }
  store.remove(property);
}

/** A formula that an earlier press took out and could not put back, where its block still stands as it did. */
function putBack(file: FileInRun): boolean {
  const { store } = file;
  const words = store.read(property);
  if (words === '') return false;
  const noted = readNoted<CheckNoted>(words);
  const sheet = noted && sheetById(file, noted.sheetId)?.sheet;
  const isHeading =
    noted !== undefined &&
    sheet !== undefined &&
    readClassSheet(valuesOf(sheet))?.blocks.some(
      ({ headingRow, checkColumn }) => headingRow === noted.row && checkColumn === noted.column,
    ) === true;
  const isEmpty = isHeading && checkCell(sheet, noted).getFormula() === '';
  if (isEmpty) checkCell(sheet, noted).setValue(noted.formula);
  store.remove(property);
  return isEmpty;
}

function readNoted<T>(words: string): T | undefined {
  try {
    return JSON.parse(words) as T;
  } catch {
    // None, or words that are no note of ours: there is nothing to go by.
    return undefined;
  }
}
