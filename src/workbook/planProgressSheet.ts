import type { Step } from '../lab/lesson/activity.ts';
import type { TeamPlan } from '../lab/lesson/setup.ts';
import { closedRow } from '../lab/texts/feedback.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { native } from './formula.ts';
import { classColumns, planColumns } from './layout.ts';
import type { Lesson, PlanPlaces, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { rowName, rowNameColumnOf } from './planClassSheet.ts';
import { columnLetters, fixed, fixedArea, literal, onSheet, wholeColumn } from './reference.ts';
import { words } from './words.ts';
import {
  type Area,
  type Block,
  blank,
  type CellContent,
  computed,
  type FormatArea,
  type LookArea,
  type SheetPlan,
  type StateRule,
  text,
} from './workbook.ts';

const columns = { team: 1, tube: 2, count: 3, firstStep: 4 } as const;
const firstTable = 4;
const states = words.progress.states;

/** Lines kept for a class, so that a late team finds one without moving another class. */
const roomFor = (teamCount: number): number => Math.ceil((teamCount + 1) / 4) * 4;

export interface ProgressInput {
  readonly lesson: Lesson;
  /** For each class its teams, in the order of their blocks. */
  readonly classes: readonly {
    readonly className: string;
    readonly teams: readonly TeamPlan[];
    /** What the class was called when its sheet was made; by it the layout stays the same under another name. */
    readonly id?: string;
    /** Of a class that is at another lesson: that lesson. */
    readonly at?: Pick<ProgressInput, 'lesson' | 'names' | 'places'>;
  }[];
  readonly names: Pick<SheetNames, 'plan' | 'progress' | 'classes'>;
  readonly places: PlanPlaces;
  /** The column of the keys in the sheet that is there: it moves for more steps, and never back. */
  readonly keysAt?: number | undefined;
}

/** Classes in the order in which they stand in Progress, by the name of their first sheet, and the column of the keys. */
export function progressOrder(cells: readonly (readonly CellValue[])[]): {
  readonly ids: readonly string[];
  readonly keysAt: number | undefined;
} {
  const { done, count } = words.progress;
  // The table of words stands right behind the keys.
  const keysAt = (cells[0] ?? []).findIndex((cell) => cellText(cell) === shownAs[0][0]);
  if (keysAt < columns.firstStep) return { ids: [], keysAt: undefined };
  const headings = cells.filter(
    (line) => cellText(line[columns.tube - 1]) === done && cellText(line[columns.count - 1]) === count,
  );
  return { ids: headings.map((line) => cellText(line[keysAt - 1])), keysAt };
}

/** Teams by steps, a word and a sign in each cell, for everybody's eyes. Native formulas only: it costs no run. */
export function planProgressSheet({ classes, keysAt = 0, ...own }: ProgressInput): SheetPlan {
  const { progress } = words;
  const { names } = own;
  const stepCount = Math.max(
    keysAt - columns.firstStep,
    ...[own, ...classes.flatMap(({ at }) => at ?? [])].map(({ lesson }) => lesson.activity.steps.length),
  );
  const keyColumn = columns.firstStep + stepCount;
  const table = wordTable(keyColumn + 1);
  const blocks: Block[] = [
    { row: 1, column: 1, cells: [[text(progress.title)], [text(progress.note)]] },
    { row: 1, column: columns.tube, cells: [[text(progress.now), computed(`=${native('NOW')}`)]] },
    { row: 1, column: keyColumn, cells: [[computed(`=${dayText(fixed({ row: 1, column: columns.count }))}`)]] },
    { row: 1, column: keyColumn + 1, cells: shownAs.map(([check, shown]) => [text(check), text(shown)]) },
  ];
  const looks: LookArea[] = [
    { row: 1, column: 1, rows: 1, columns: columns.count, look: 'title' },
    { row: 2, column: 1, rows: 1, columns: columns.count, look: 'note' },
    { row: 1, column: keyColumn, rows: 1, columns: 1, look: 'mark' },
    { row: 1, column: keyColumn + 1, rows: shownAs.length, columns: 2, look: 'mark' },
  ];
  const formats: FormatArea[] = [
    { row: 1, column: columns.count, rows: 1, columns: 1, format: 'hh:mm' },
    { row: 1, column: keyColumn, rows: 1, columns: 1, format: 'General' },
  ];
  const stepAreas: Area[] = [];
  const identityRows: string[][] = [];
  let row = firstTable;

  for (const { className, teams, id = className, at = own } of classes) {
    const { steps } = at.lesson.activity;
    const headingRow = row;
    const noSteps = Array.from({ length: stepCount - steps.length }, () => blank);
    const room = roomFor(teams.length);
    const cells: CellContent[][] = [
      [
        text(className),
        text(progress.done),
        text(progress.count),
        ...steps.map(({ title }) => text(title)),
        ...noSteps,
        // The class once more, where the layout is told by the keys.
        text(id),
      ],
      ...teams.map((team, index) => teamLine({ team, row: headingRow + 1 + index, className, at, noSteps })),
      ...Array.from({ length: room - teams.length }, () => Array.from({ length: keyColumn }, () => blank)),
    ];
    blocks.push({ row: headingRow, column: 1, cells });
    identityRows.push(
      [id],
      ...teams.map(({ key }) => [key]),
      ...Array.from({ length: room - teams.length + 1 }, () => ['']),
    );
    looks.push({ row: headingRow, column: 1, rows: 1, columns: keyColumn - 1, look: 'heading' });
    const area = { row: headingRow + 1, column: columns.firstStep, rows: room, columns: stepCount };
    stepAreas.push(area);
    looks.push(
      { row: headingRow + 1, column: columns.team, rows: room, columns: 1, look: 'setting name' },
      { row: headingRow + 1, column: columns.tube, rows: room, columns: 1, look: 'link' },
      { row: headingRow + 1, column: columns.count, rows: room, columns: 1, look: 'progress' },
      { ...area, look: 'progress' },
      { row: headingRow, column: keyColumn, rows: room + 1, columns: 1, look: 'quiet' },
    );
    formats.push({
      row: headingRow + 1,
      column: columns.team,
      rows: room,
      columns: columns.count + stepCount,
      format: 'General',
    });
    row += cells.length + 1;
  }

  function teamLine({
    team,
    row,
    className,
    at: { lesson, names, places },
    noSteps,
  }: {
    team: TeamPlan;
    row: number;
    className: string;
    at: Pick<ProgressInput, 'lesson' | 'names' | 'places'>;
    noSteps: readonly CellContent[];
  }): CellContent[] {
    const { steps } = lesson.activity;
    const givenCount = lesson.givenNames.length;
    const keyCell = `$${columnLetters(keyColumn)}${row}`;
    const sheet = names.classes[className] ?? className;
    const keys = onSheet(names.plan, fixedArea(places.keys));
    const teamNames = onSheet(names.plan, fixedArea({ ...places.keys, column: planColumns.team }));
    const name = native(
      'IF',
      `${native('COUNTIF', keys, keyCell)}=1`,
      native('INDEX', teamNames, native('MATCH', keyCell, keys, '0')),
      keyCell,
    );
    const line = fixedArea({ row, column: columns.firstStep, rows: 1, columns: steps.length });
    const scored = steps.filter(({ kind }) => kind !== 'told').length;
    const done = native('COUNTIF', line, literal(states.done));
    const tube = `${native('REPT', literal('●'), done)}&${native('REPT', literal('○'), `${scored}-${done}`)}`;
    const today = onSheet(
      names.plan,
      fixedArea({ ...places.keys, column: planColumns.firstGiven + lesson.givenNames.length }),
    );
    const isAbsent = (mark: string) => `${native('COUNTIFS', keys, keyCell, today, mark)}>0`;
    const ofToday = `${literal(`${words.plan.absent} `)}&${fixed({ row: 1, column: keyColumn })}`;
    const unlessAbsent = ({ absent, here }: { absent: string; here: string }) =>
      native(
        'IF',
        isAbsent(ofToday),
        literal(absent),
        native('IF', isAbsent(literal(words.plan.absent)), literal(absent), here),
      );
    return [
      computed(`=${name}`),
      computed(`=${unlessAbsent({ absent: progress.absent, here: tube })}`),
      computed(`=${unlessAbsent({ absent: '', here: `${done}&${literal(`${progress.of}${scored}`)}` })}`),
      ...steps.map((step) => computed(`=${stepState({ step, keyCell, sheet, givenCount, table })}`)),
      ...noSteps,
      text(team.key),
    ];
  }

  const stateRules: StateRule[] =
    stepAreas.length === 0
      ? []
      : [
          { areas: stepAreas, startsWith: '✓', state: 'on target' },
          { areas: stepAreas, startsWith: '≈', state: 'close' },
          { areas: stepAreas, startsWith: '○', state: 'follows' },
          { areas: stepAreas, startsWith: '·', state: 'blank' },
          { areas: stepAreas, startsWith: '→', state: 'blank' },
          { areas: stepAreas, startsWith: '…', state: 'blank' },
        ];

  return {
    name: names.progress,
    role: { kind: 'progress' },
    rowCount: Math.max(row - 1, firstTable, shownAs.length),
    columnCount: keyColumn + 2,
    // The key behind the steps is as wide as they are, so that it costs no call of its own.
    columnWidths: paintedSizes([
      130,
      Math.max(130, 16 + 12 * stepCount),
      70,
      ...Array.from({ length: stepCount + 1 }, () => 92),
    ]),
    hiddenColumns: { column: keyColumn + 1, count: 2 },
    frozenRows: 1,
    frozenColumns: 1,
    blocks,
    checks: [],
    looks,
    formats,
    states: stateRules,
    choices: [],
    writable: [],
    unprotected: [],
    spill: [],
    identity: { firstRow: firstTable, columns: [keyColumn], rows: identityRows },
    carried: [],
  };
}

/** Year-month-day of a moment, digit by digit: names of formats differ from locale to locale. */
function dayText(moment: string): string {
  const two = (part: 'MONTH' | 'DAY') => native('RIGHT', `${literal('0')}&${native(part, moment)}`, '2');
  return [native('YEAR', moment), two('MONTH'), two('DAY')].join(`&${literal('-')}&`);
}

/** What Progress shows for each word that a check can give. */
const shownAs = [
  ['on target', states.done],
  ['close', states.nearly],
  ['blank', states.toCome],
  [closedRow.check, states.nextTime],
  ['not yet', states.inWork],
  ['follows', states.inWork],
  ['unreadable', states.inWork],
] as const;

/** Where that table stands, to the right of all else: the words of checks, and beside them what is shown. */
const wordTable = (column: number) => ({
  checks: fixedArea({ row: 1, column, rows: shownAs.length, columns: 1 }),
  shown: fixedArea({ row: 1, column: column + 1, rows: shownAs.length, columns: 1 }),
});

/**
 * One match finds the row by its name. A check that is loading or failed, and a row that is not there, give an error or no
 * word of the table: both read as not yet known and never as wrong.
 */
function stepState({
  step,
  keyCell,
  sheet,
  givenCount,
  table,
}: {
  step: Step;
  keyCell: string;
  sheet: string;
  givenCount: number;
  table: ReturnType<typeof wordTable>;
}): string {
  const column = (number: number) => onSheet(sheet, wholeColumn(number));
  const name = `${keyCell}&${literal(rowName({ key: '', step: step.id }))}`;
  const row = native('MATCH', name, column(rowNameColumnOf(givenCount)), '0');
  if (step.kind === 'told') {
    const isBlank = `${native('INDEX', column(classColumns.entry), row)}=""`;
    return native(
      'IFERROR',
      native('IF', isBlank, literal(states.toCome), literal(states.written)),
      literal(states.toCome),
    );
  }
  const check = native('INDEX', column(classColumns.check), row);
  const shown = native('INDEX', table.shown, native('MATCH', check, table.checks, '0'));
  return native('IFERROR', shown, literal(states.notYetKnown));
}
