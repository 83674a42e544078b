import { pollTexts } from '../lab/texts/poll.ts';
import { native } from './formula.ts';
import { pollColumns as at, layoutVersion, pollMarker, pollRows } from './layout.ts';
import type { Lesson, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { columnLetters, fixed, fixedBelow } from './reference.ts';
import { words } from './words.ts';
import { type Area, type CellContent, computed, type SheetPlan, text } from './workbook.ts';

/** Room for some days of several classes; rows that people add below count as well. */
const answerRows = 240;

const { statements, scale, from } = pollTexts;

/** The Poll: four statements and an open line, one row for each answer, and how many chose what so far. */
export function planPollSheet(lesson: Lesson, names: SheetNames): SheetPlan {
  const { poll } = words;
  const answers = (column: number, columns = 1): Area => ({
    row: pollRows.firstAnswer,
    column,
    rows: answerRows,
    columns,
  });
  // Letters, so that no number of a row is ever taken for one that a team has to find.
  const rowNames = Array.from({ length: answerRows }, (_, index) => [columnLetters(index + 1)]);
  const counts: Area = {
    row: pollRows.firstCount,
    column: at.firstStatement,
    rows: scale.length,
    columns: statements.length,
  };
  const countLine = (word: string, index: number): CellContent[] => [
    text(word),
    ...statements.map((_, place) => {
      const column = at.firstStatement + place;
      return computed(
        `=${native('COUNTIF', fixedBelow({ row: pollRows.firstAnswer, column }), wordCell(pollRows.firstCount + index))}`,
      );
    }),
  ];
  return {
    name: names.poll,
    role: { kind: 'poll' },
    rowCount: pollRows.firstAnswer + answerRows - 1,
    columnCount: at.marker + 1,
    columnWidths: paintedSizes([44, 90, 120, 120, ...statements.map(() => 130), 300]),
    hiddenColumns: { column: at.marker - 1, count: 3 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      { row: pollRows.title, column: 1, cells: [[text(poll.title)], ...poll.notes.map((note) => [text(note)])] },
      { row: pollRows.invented, column: 1, cells: [[text(lesson.invented ? words.class.invented : '')]] },
      { row: pollRows.title, column: at.marker, cells: [[text(pollMarker), text(String(layoutVersion))]] },
      { row: pollRows.firstCount - 1, column: at.from, cells: [[text(poll.soFar), ...statements.map(text)]] },
      { row: pollRows.firstCount, column: at.from, cells: scale.map(countLine) },
      {
        row: pollRows.headings,
        column: 1,
        cells: [
          [
            text(poll.row),
            text(poll.day),
            text(poll.className),
            text(poll.from),
            ...statements.map(text),
            text(poll.openLine),
          ],
        ],
      },
      { row: pollRows.firstAnswer, column: at.row, cells: rowNames.map((line) => line.map(text)) },
    ],
    checks: [],
    looks: [
      { row: pollRows.title, column: 1, rows: 1, columns: at.openLine, look: 'title' },
      { row: pollRows.title + 1, column: 1, rows: 1 + poll.notes.length, columns: at.openLine, look: 'note' },
      { row: pollRows.firstCount - 1, column: at.from, rows: 1, columns: 1 + statements.length, look: 'heading' },
      { row: pollRows.firstCount, column: at.from, rows: scale.length, columns: 1, look: 'setting name' },
      { ...counts, look: 'progress' },
      { row: pollRows.headings, column: 1, rows: 1, columns: at.openLine, look: 'heading' },
      { ...answers(at.row, 2), look: 'quiet' },
      { ...answers(at.className, at.openLine - at.className + 1), look: 'helper' },
      { row: pollRows.title, column: at.marker, rows: 1, columns: 2, look: 'quiet' },
    ],
    formats: [{ ...counts, format: 'General' }],
    states: [],
    choices: [
      {
        area: answers(at.className),
        options: [...new Set(lesson.teams.map(({ className }) => className))],
        help: poll.classHelp,
      },
      { area: answers(at.from), options: [from.student, from.team], help: poll.fromHelp },
      { area: answers(at.firstStatement, statements.length), options: scale, help: poll.scaleHelp },
    ],
    writable: [answers(at.day, at.openLine - at.day + 1)],
    unprotected: [],
    spill: [],
    // The headings are left out: they may be worded anew over answers that stand where they are.
    identity: { firstRow: pollRows.firstAnswer, columns: [at.row], rows: rowNames },
    carriesAddedRows: true,
    carried: Array.from({ length: at.openLine - at.day + 1 }, (_, index) => at.day + index),
  };
}

const wordCell = (row: number): string => fixed({ row, column: at.from });
