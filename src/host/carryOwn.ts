import type { CellValue } from '../measurement/cellValue.ts';
import { columnIn, inTodaysColumns } from '../workbook/classCells.ts';
import { columnLetters } from '../workbook/reference.ts';
import { isNamed, nameOf } from './lateEntries.ts';
import type { OwnSheet } from './ownSheets.ts';
import type { Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { makeRoom } from './writeSheet.ts';
import { writeTexts } from './writeTexts.ts';

/** Rows of a class sheet that bear a mark of ours above its blocks. */
const marksAbove = 2;

/**
 * What people have put beside the table of a class sheet that is kept, and notes on its cells, to the row of the same team
 * and step in the sheet in use. It may be done twice. Hands back the cells of what stays behind: formulas, since places
 * are others there, and what stands in rows that have no like.
 */
export function carryOwn(old: Sheet, target: OwnSheet | undefined, width: number): readonly string[] {
  const all = old.getRange(1, 1, old.getMaxRows(), old.getMaxColumns());
  const found = all.getValues();
  const formulas = inTodaysColumns(all.getFormulas());
  const notes = inTodaysColumns(all.getNotes());
  const there = target === undefined ? [] : valuesOf(target.sheet);
  const left: string[] = [];
  const seen: string[] = [];
  inTodaysColumns(found).forEach((line, down) => {
    const name = isNamed(line) ? nameOf(line) : '';
    // The closing row of a block bears the name of its heading.
    const row = name === '' || seen.includes(name) ? 0 : there.findIndex((one) => nameOf(one) === name) + 1;
    if (name !== '') seen.push(name);
    line.forEach((cell, right) => {
      const isBeside = right >= width;
      const value = isBeside || (name === '' && seen.length > marksAbove) ? cell : '';
      const note = String(notes[down]?.[right] ?? '');
      if (value === '' && note === '') return;
      const place = { row, column: right + 1 + (isBeside ? (target?.tag.columns ?? width) - width : 0) };
      const stays = row === 0 || (value !== '' && formulas[down]?.[right] !== '');
      if (stays || target === undefined || !put(target.sheet, { ...place, value, note }))
        left.push(`${columnLetters(columnIn(found, right + 1))}${down + 1}`);
    });
  });
  return left;
}

/** False where something else stands there. */
function put(
  sheet: Sheet,
  { row, column, value, note }: { row: number; column: number; value: CellValue; note: string },
): boolean {
  makeRoom(sheet, { rows: row, columns: column });
  const cell = sheet.getRange(row, column);
  const noted = cell.getNote();
  const now = value === '' ? '' : String(cell.getValue());
  if ((now !== '' && now !== String(value)) || (noted !== '' && !noted.includes(note))) return false;
  if (now !== String(value)) {
    if (typeof value === 'string') cell.setNumberFormat('@');
    writeTexts(cell, [[value]]);
  }
  if (noted === '') cell.setNote(note);
  return true;
}
