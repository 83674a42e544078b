import { readMembers } from '../../lab/members/readMembers.ts';
import { mergedWords } from '../../lab/record/mergedWords.ts';
import { nameIn } from '../../lab/record/nameIn.ts';
import { type RecordEntry, type RecordField, recordFields, wordFields } from '../../lab/record/recordEntry.ts';
import { roles } from '../../lab/roles.ts';
import { recordWords } from '../../lab/texts/record.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { type RecordReading, readRecordSheet, rowFor } from '../../workbook/readRecordSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import { planInUse } from '../build.ts';
import type { Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets } from '../ownSheets.ts';
import { recordSheetMade } from '../recordSheet.ts';
import { openSpreadsheet, type Sheet, type Spreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';
import { writeTexts } from '../writeTexts.ts';

const patienceMs = 2000;
const longest = 2000;
const mostRows = 50;

interface SentRow {
  readonly entry: RecordEntry;
  readonly base: RecordEntry | undefined;
}

/**
 * Writes one row for each class and day. A row that is there is rewritten where the sidebar has new words; what somebody
 * wrote in the sheet since it was read stays, beside the new words where both changed.
 */
export function saveRecord(given: unknown): Outcome<{ readonly saved: readonly RecordEntry[] }> {
  const { record: say } = hostWords;
  if (!Array.isArray(given) || given.length === 0 || given.length > mostRows)
    return problem({ ...say.rows, received: Array.isArray(given) ? `${given.length} of them` : typeof given });
  const rows: SentRow[] = [];
  for (const sent of given) {
    const row = readRow(sent);
    if (row === undefined) return problem({ ...say.rows, received: 'one of another shape' });
    rows.push(row);
  }
  const spreadsheet = openSpreadsheet();
  const names = namesInFile(spreadsheet);
  for (const { entry } of rows) {
    for (const field of wordFields) {
      const where = `“${recordWords.labels[field]}” of ${entry.className}`;
      if (entry[field].length > longest)
        return problem({ ...say.tooLong, where, received: String(entry[field].length) }, `${entry.className}.${field}`);
      const name = nameIn(entry[field], names);
      if (name !== undefined)
        return problem({ ...say.named, where, received: `“${name}”` }, `${entry.className}.${field}`);
    }
  }
  const locked = withDocumentLock(patienceMs, () => write(spreadsheet, rows));
  return locked.ran ? locked.value : problem(say.busy);
}

function write(
  spreadsheet: Spreadsheet,
  rows: readonly SentRow[],
): Outcome<{ readonly saved: readonly RecordEntry[] }> {
  const sheet = recordSheetMade(spreadsheet);
  const saved: RecordEntry[] = [];
  for (const { entry, base } of rows) {
    const reading = sheet === undefined ? undefined : readRecordSheet(valuesOf(sheet));
    if (sheet === undefined || reading === undefined) return problem(hostWords.record.headings);
    const there = rowFor(reading, entry);
    const written = {} as Record<RecordField, string>;
    for (const field of recordFields) {
      written[field] =
        there === undefined
          ? entry[field]
          : mergedWords({ base: base?.[field] ?? '', there: there.entry[field], typed: entry[field] });
    }
    writeRow({ sheet, reading, row: there?.row ?? reading.freeRow, entry: written, there: there?.entry });
    saved.push(written);
  }
  return done({ saved });
}

/** Only cells that change are written; a new row in one call where its columns stand side by side. */
function writeRow({
  sheet,
  reading,
  row,
  entry,
  there,
}: {
  sheet: Sheet;
  reading: RecordReading;
  row: number;
  entry: RecordEntry;
  there: RecordEntry | undefined;
}): void {
  const { columns } = reading;
  if (row > sheet.getMaxRows()) sheet.insertRowsAfter(sheet.getMaxRows(), row - sheet.getMaxRows());
  const first = columns[recordFields[0]];
  const sideBySide = recordFields.every((field, index) => columns[field] === first + index);
  if (there === undefined && sideBySide) {
    const range = sheet.getRange(row, first, 1, recordFields.length);
    range.setNumberFormat('@');
    writeTexts(range, [recordFields.map((field) => entry[field])]);
    return;
  }
  for (const field of recordFields) {
    if (entry[field] === (there?.[field] ?? '')) continue;
    const cell = sheet.getRange(row, columns[field], 1, 1);
    cell.setNumberFormat('@');
    writeTexts(cell, [[entry[field]]]);
  }
}

/** Names that stand in this file: of teams and the people in them, and what people typed in the column “who” besides the roles. */
function namesInFile(spreadsheet: Spreadsheet): readonly string[] {
  const names = new Set<string>((planInUse(spreadsheet)?.teams ?? []).map(({ team }) => team));
  const known: readonly string[] = roles;
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== 'class' || tag.state !== 'built') continue;
    for (const { who: team, steps } of readClassSheet(valuesOf(sheet))?.blocks ?? []) {
      for (const { name } of readMembers(team).members) names.add(name);
      for (const { who } of steps) if (who !== '' && !known.includes(who)) names.add(who);
    }
  }
  return [...names];
}

function readRow(sent: unknown): SentRow | undefined {
  if (typeof sent !== 'object' || sent === null || !('entry' in sent)) return undefined;
  const entry = readEntry(sent.entry);
  if (entry === undefined || entry.className === '' || !/^\d{4}-\d{2}-\d{2}$/.test(entry.day)) return undefined;
  return { entry, base: 'base' in sent ? readEntry(sent.base) : undefined };
}

function readEntry(given: unknown): RecordEntry | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const entry = {} as Record<RecordField, string>;
  for (const field of recordFields) {
    const words = (given as Record<string, unknown>)[field];
    if (typeof words !== 'string') return undefined;
    entry[field] = words.trim();
  }
  return entry;
}
