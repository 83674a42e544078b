import { recordFields } from '../lab/record/recordEntry.ts';
import { recordWords } from '../lab/texts/record.ts';
import { paintedSizes } from './paintedSizes.ts';
import { words } from './words.ts';
import { type SheetPlan, text } from './workbook.ts';

/** Room for a school year of several classes a day; rows are added when it is used up. */
const recordLines = 400;
const headingRow = 4;

/** The Record: a heading, and room for one row for each class and day, which people and the sidebar fill. */
export function planRecordSheet(): SheetPlan {
  const { record } = words;
  const headings = recordFields.map((field) => recordWords.labels[field]);
  const lines = { row: headingRow + 1, column: 1, rows: recordLines, columns: recordFields.length };
  return {
    name: record.sheet,
    role: { kind: 'record' },
    rowCount: headingRow + recordLines,
    columnCount: recordFields.length,
    columnWidths: paintedSizes([100, 110, 150, 220, 120, 100, 200, 300, 200, 200, 260, 170, 200]),
    hiddenColumns: undefined,
    frozenRows: headingRow,
    frozenColumns: 2,
    blocks: [
      { row: 1, column: 1, cells: [[text(record.title)], [text(record.note)]] },
      { row: headingRow, column: 1, cells: [headings.map(text)] },
    ],
    checks: [],
    looks: [
      { row: 1, column: 1, rows: 1, columns: recordFields.length, look: 'title' },
      { row: 2, column: 1, rows: 1, columns: recordFields.length, look: 'note' },
      { row: headingRow, column: 1, rows: 1, columns: recordFields.length, look: 'heading' },
      { ...lines, look: 'question' },
    ],
    formats: [],
    states: [],
    choices: [],
    writable: [lines],
    unprotected: [],
    spill: [],
    identity: { firstRow: headingRow, columns: [1, 2], rows: [headings.slice(0, 2)] },
    carried: [],
  };
}
