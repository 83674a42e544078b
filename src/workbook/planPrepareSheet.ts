import { teamKey } from '../lab/key/teamKey.ts';
import { decimalMarkOf } from '../lab/lesson/lessonSettings.ts';
import { isTeam } from '../lab/lesson/practice.ts';
import { dayPreparation } from '../lab/preparation/dayPreparation.ts';
import { type PreparationRow, preparationRows } from '../lab/preparation/preparationRows.ts';
import type { AnswerKnown } from '../lab/preparation/untold.ts';
import { preparationTexts } from '../lab/texts/preparation.ts';
import { native } from './formula.ts';
import { planColumns, prepareCells } from './layout.ts';
import type { Lesson, PlanPlaces, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { fixed, fixedArea, literal, onSheet } from './reference.ts';
import { words } from './words.ts';
import { blank, type CellContent, computed, type SheetPlan, text } from './workbook.ts';

const headingRow = 5;
/** Always as many rows, so that a shorter list leaves nothing of a longer one behind. */
const lineCount = 150;
const columns = { section: 1, what: 2, amount: 3, withSpare: 4, unit: 5, note: 6, mark: 7, hidden: 8 } as const;

const amount = (value: number | undefined): CellContent => (value === undefined ? blank : { kind: 'number', value });

const cellsOf = ({ section, what, amount: needed, withSpare, unit, note }: PreparationRow): CellContent[] => [
  text(preparationTexts.sections[section]),
  text(what),
  amount(needed),
  amount(withSpare),
  text(unit),
  text(note),
];

/**
 * Prepare: what the day takes, as plain text and numbers. Students can read this sheet, so a number that would be an
 * answer of theirs is left to the sidebar.
 */
export function planPrepareSheet(
  { setup, activity, teams }: Lesson,
  names: Pick<SheetNames, 'prepare' | 'plan'>,
  places: PlanPlaces,
): SheetPlan {
  const { prepare } = words;
  const { settings, shelf } = setup;
  const day = dayPreparation({ activity, teams: teams.filter(isTeam), shelf, settings });
  const rows = preparationRows(day, decimalMarkOf(settings), {
    forEveryone: true,
    answers: teams.flatMap((team) => answersOf({ activity, team, settings })),
  });
  const fits = rows.length <= lineCount;
  const shown = (fits ? rows : rows.slice(0, lineCount - 1)).map(cellsOf);
  if (!fits) {
    const more = preparationTexts.more(rows.length - lineCount + 1);
    shown.push([blank, text(more), blank, blank, blank, blank]);
  }
  const empty = Array.from({ length: lineCount - shown.length }, () =>
    Array.from({ length: columns.note }, () => blank),
  );
  const lines = { row: headingRow + 1, rows: lineCount };
  return {
    name: names.prepare,
    role: { kind: 'prepare' },
    rowCount: headingRow + lineCount,
    columnCount: columns.hidden,
    // Those of the marks at the end share the call of the numbers.
    columnWidths: paintedSizes([120, 230, 80, 80, 80, 560, 80, 80]),
    hiddenColumns: { column: columns.hidden, count: 1 },
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      {
        row: 1,
        column: 1,
        cells: [[text(prepare.title)], [computed(`=${freshness()}`)], ...prepare.notes.map((note) => [text(note)])],
      },
      { ...prepareCells.planNow, cells: [[computed(`=${planText({ names, places })}`)]] },
      {
        row: headingRow,
        column: 1,
        cells: [[...prepare.headings.map(text), text(prepare.mark)]],
      },
      { row: headingRow + 1, column: 1, cells: [...shown, ...empty] },
    ],
    checks: [],
    looks: [
      { row: 1, column: 1, rows: 1, columns: columns.note, look: 'title' },
      { row: 2, column: 1, rows: 1 + prepare.notes.length, columns: columns.note, look: 'note' },
      { row: headingRow, column: 1, rows: 1, columns: columns.note, look: 'heading' },
      { row: headingRow, column: columns.mark, rows: 1, columns: 1, look: 'quiet' },
      { row: 1, column: columns.hidden, rows: headingRow, columns: 1, look: 'mark' },
      { ...lines, column: columns.section, columns: 1, look: 'quiet' },
      { ...lines, column: columns.what, columns: 1, look: 'question' },
      { ...lines, column: columns.amount, columns: 2, look: 'progress' },
      { ...lines, column: columns.unit, columns: 2, look: 'question' },
    ],
    formats: [
      { ...lines, column: columns.amount, columns: 2, format: 'General' },
      { ...prepareCells.freshness, rows: 1, columns: 1, format: 'General' },
      { ...prepareCells.planNow, rows: 1, columns: 1, format: 'General' },
    ],
    states: [
      { areas: [{ ...prepareCells.freshness, rows: 1, columns: columns.note }], startsWith: '⚠', state: 'not yet' },
    ],
    choices: [],
    writable: [],
    unprotected: [],
    spill: [],
    // One mark, so that another list is written in place and never makes another sheet.
    identity: { firstRow: headingRow, columns: [columns.mark], rows: [[prepare.mark]] },
    carried: [],
  };
}

/** The masses and volumes that a team has to find. */
const answersOf = (team: Parameters<typeof teamKey>[0]): readonly AnswerKnown[] =>
  teamKey(team).flatMap(({ unit, answer }) => {
    const value = Number(answer.replace(',', '.'));
    return (unit === 'g' || unit === 'mL') && value > 0 ? [{ value, unit }] : [];
  });

/** Says of the list whether the Plan is still the one it was written from. */
const freshness = (): string =>
  native(
    'IF',
    native('EXACT', fixed(prepareCells.planNow), fixed(prepareCells.planThen)),
    literal(words.prepare.upToDate),
    literal(words.prepare.outOfDate),
  );

/** All that the list is worked out from, as one text: the settings, and every line of a team but who is here today. */
function planText({ names, places }: { names: Pick<SheetNames, 'plan'>; places: PlanPlaces }): string {
  const { settings: all, closed, keys, givenHeadings } = places;
  // Whether a class is closed changes nothing of what it takes.
  const settings = { ...all, rows: Math.max(1, Math.min(all.rows, closed.row - all.row)) };
  const lines = { ...keys, columns: planColumns.firstGiven - 1 + givenHeadings.columns };
  return [settings, lines]
    .map((area) => native('TEXTJOIN', literal('|'), '0', onSheet(names.plan, fixedArea(area))))
    .join('&');
}
