import type { Activity } from '../lab/lesson/activity.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { helpRows } from './layout.ts';
import type { Lesson, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { words } from './words.ts';
import { type Area, type SheetPlan, text } from './workbook.ts';

/** Rows kept below the last step, so that a line for a step of another activity can be added by hand. */
const spareLines = 10;
const levels = ['1', '2', '3'] as const;
const columns = { step: 1, level: 2, wording: 3, link: 4 } as const;
const headingRow = helpRows.firstNote + words.help.notes.length + 1;

/** Step and level of each line, in the order of the sheet. */
export type HelpLines = readonly (readonly [step: string, level: string])[];

const linesOf = ({ steps }: Activity): HelpLines =>
  steps.flatMap(({ id }) => levels.map((level) => [id, level] as const));

/**
 * The lines of Help once it serves an activity as well: those that stand there stay where they are, since sheets of other
 * lessons look at them, and what is missing comes below.
 */
export function helpLinesFor(activity: Activity, cells: readonly (readonly CellValue[])[]): HelpLines {
  const at = (row: number, column: number): string => cellText(cells[row - 1]?.[column - 1]);
  const own = linesOf(activity);
  if (at(headingRow, columns.step) !== words.help.step || at(headingRow, columns.level) !== words.help.level)
    return own;
  let last = cells.length;
  while (last > headingRow && [1, 2, 3, 4].every((column) => at(last, column) === '')) last -= 1;
  const there = Array.from(
    { length: last - headingRow },
    (_, index) => [at(headingRow + 1 + index, columns.step), at(headingRow + 1 + index, columns.level)] as const,
  );
  const isThere = ([step, level]: HelpLines[number]) => there.some((line) => line[0] === step && line[1] === level);
  return [...there, ...own.filter((line) => !isThere(line))];
}

/**
 * Step, level, wording and link: what CHECKTEAM takes as the teacher's own hints, heading included. It ends a few lines
 * below the last one of the activity, and so stays the same when lines of another one come behind it.
 */
export function ownHintsArea(activity: Activity, lines: HelpLines = linesOf(activity)): Area {
  const last = Math.max(...linesOf(activity).map(([step, level]) => indexOf(lines, step, level)));
  return { row: headingRow, column: columns.step, rows: 2 + last + spareLines, columns: columns.link };
}

const indexOf = (lines: HelpLines, step: string, level: string): number =>
  lines.findIndex((line) => line[0] === step && line[1] === level);

/** Help: how the table is meant, and room for the teacher's own wording and links, which win over ours. */
export function planHelpSheet(
  { activity }: Lesson,
  names: Pick<SheetNames, 'help'>,
  lines: HelpLines = linesOf(activity),
): SheetPlan {
  const { help } = words;
  const own = { row: headingRow + 1, column: columns.wording, columns: 2 };
  const spare = { row: headingRow + 1 + lines.length, rows: spareLines };
  return {
    name: names.help,
    role: { kind: 'help' },
    rowCount: headingRow + lines.length + spareLines,
    columnCount: columns.link,
    columnWidths: paintedSizes([160, 50, 420, 240]),
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
