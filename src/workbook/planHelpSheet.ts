import type { Activity } from '../lab/lesson/activity.ts';
import { helpRows } from './layout.ts';
import type { Lesson, SheetNames } from './lesson.ts';
import { words } from './words.ts';
import { type Area, type SheetPlan, text } from './workbook.ts';

/** Rows kept below the last step, so that a line for a step of another activity can be added by hand. */
const spareLines = 10;
const levels = ['1', '2', '3'] as const;
const columns = { step: 1, level: 2, wording: 3, link: 4 } as const;
const headingRow = helpRows.firstNote + words.help.notes.length + 1;

/** Step, level, wording and link: what CHECKTEAM takes as the teacher's own hints, heading included. */
export const ownHintsArea = ({ steps }: Activity): Area => ({
  row: headingRow,
  column: columns.step,
  rows: 1 + steps.length * levels.length + spareLines,
  columns: columns.link,
});

/** Help: how the table is meant, and room for the teacher's own wording and links, which win over ours. */
export function planHelpSheet({ activity }: Lesson, names: SheetNames): SheetPlan {
  const { help } = words;
  const lines = activity.steps.flatMap(({ id }) => levels.map((level) => [id, level]));
  const own = { row: headingRow + 1, column: columns.wording, columns: 2 };
  const spare = { row: headingRow + 1 + lines.length, rows: spareLines };
  return {
    name: names.help,
    role: { kind: 'help' },
    rowCount: headingRow + lines.length + spareLines,
    columnCount: columns.link,
    columnWidths: [160, 50, 420, 240],
    hiddenColumns: undefined,
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      { row: helpRows.title, column: 1, cells: [[text(help.title)], ...help.notes.map((note) => [text(note)])] },
      { row: headingRow, column: 1, cells: [[text(help.step), text(help.level), text(help.wording), text(help.link)]] },
      { row: headingRow + 1, column: 1, cells: lines.map((line) => line.map(text)) },
    ],
    checks: [],
    looks: [
      { row: helpRows.title, column: 1, rows: 1, columns: columns.link, look: 'title' },
      { row: helpRows.firstNote, column: 1, rows: help.notes.length, columns: columns.link, look: 'note' },
      { row: headingRow, column: 1, rows: 1, columns: columns.link, look: 'heading' },
      { row: headingRow + 1, column: columns.step, rows: lines.length + spareLines, columns: 2, look: 'setting name' },
      { ...own, rows: lines.length + spareLines, look: 'helper' },
    ],
    formats: [],
    states: [],
    choices: [],
    writable: [
      { ...own, rows: lines.length },
      { ...spare, column: columns.step, columns: columns.link },
    ],
    unprotected: [],
    spill: [],
    identity: {
      firstRow: headingRow,
      columns: [columns.step, columns.level],
      rows: [[help.step, help.level], ...lines],
    },
    carried: [columns.wording, columns.link],
  };
}
