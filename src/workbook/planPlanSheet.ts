import { seatsOf } from '../lab/exit/seatsOf.ts';
import { readingNotes } from '../lab/judging/readingNotes.ts';
import { settingNames } from '../lab/lesson/setup.ts';
import { ownHelpGiven, showExitGiven, teamColumns } from '../lab/lesson/teamColumns.ts';
import { layoutVersion, planColumns, planRows, teamLinesFor } from './layout.ts';
import type { Lesson, PlanPlaces, SheetNames } from './lesson.ts';
import { paintedSizes } from './paintedSizes.ts';
import { settingOptions } from './settingOptions.ts';
import { words } from './words.ts';
import { type CellContent, type Choice, type LookArea, type SheetPlan, text } from './workbook.ts';

/** One line of the settings table. */
interface SettingLine {
  readonly name: string;
  readonly value: string;
  readonly about: string;
  readonly options?: readonly string[];
}

/** Between semicolons, since a comma may belong to the number. */
const sizes = (list: readonly number[]): string => list.map(String).join('; ');

function settingLines({ setup, activity, invented }: Lesson): readonly SettingLine[] {
  const { settings: names, settingNotes: notes } = words;
  const { shelf } = setup;
  const lines: SettingLine[] = settingNames.map((name) => {
    const options = settingOptions[name];
    // The shelf's balance is the one that numbers are made for, so the checks read the same.
    const value = name === 'balance' ? `${shelf.balanceReadabilityG} g` : setup.settings[name];
    return { name, value, about: notes[name], ...(options === undefined ? {} : { options }) };
  });
  lines.push(
    { name: names.flasks, value: sizes(shelf.flasksMl), about: notes[names.flasks] },
    { name: names.pipettes, value: sizes(shelf.pipettesMl), about: notes[names.pipettes] },
    { name: names.balanceRange, value: `${shelf.balanceMaxG} g`, about: notes[names.balanceRange] },
    {
      name: names.numbers,
      value: setup.ownNumbers ? names.ownNumbers : names.sharedNumbers,
      about: notes.numbers,
      options: [names.ownNumbers, names.sharedNumbers],
    },
  );
  for (const { name } of activity.givens) {
    lines.push({ name: `${names.startPrefix}${name}`, value: setup.givens[name] ?? '', about: notes.start });
  }
  lines.push({ name: names.layout, value: String(layoutVersion), about: notes.layout });
  if (invented) lines.push({ name: names.invented, value: 'yes', about: notes.invented });
  return lines;
}

/** How the tolerance of each reading comes about: the title beside its first line. Nothing where a setting cannot be read. */
function readingLines({ setup, activity }: Lesson): readonly (readonly [string, string])[] {
  const settings = { ...setup.settings, balance: `${setup.shelf.balanceReadabilityG} g` };
  const notes = readingNotes(activity, { settings, givens: setup.givens });
  if (!notes.ok || notes.value.length === 0) return [];
  return [
    [words.plan.readings, words.plan.readingsAbout],
    ...notes.value.flatMap(({ step, lines }) =>
      lines.map((line, index): readonly [string, string] => [index === 0 ? step : '', line]),
    ),
  ];
}

/** Columns of what a team has of its own: behind the one about today, which stays where absence is noted. */
function teamColumnPlaces({ setup, givenNames }: Lesson): Readonly<Record<string, number>> {
  const first = planColumns.firstGiven + givenNames.length + 1;
  return Object.fromEntries(teamColumns(seatsOf(setup.settings)).map((name, place) => [name, first + place]));
}

/** Where the Plan's tables will stand. */
export function planPlaces(lesson: Lesson): PlanPlaces {
  const first = planRows.settingsHeading;
  const readings = readingLines(lesson).length;
  const blankRow = first + settingLines(lesson).length + 1 + (readings === 0 ? 0 : readings + 1);
  const headingRow = blankRow + 1;
  return {
    settings: { row: first, column: 1, rows: blankRow - first + 1, columns: 2 },
    closed: { row: first + settingLines(lesson).length + 1, column: 1, rows: 1, columns: 2 },
    keys: { row: headingRow, column: planColumns.key, rows: 1 + teamLinesFor(lesson.teams.length), columns: 1 },
    givenHeadings: {
      row: headingRow,
      column: planColumns.firstGiven,
      rows: 1,
      columns: Math.max(1, lesson.givenNames.length),
    },
    teamColumns: teamColumnPlaces(lesson),
  };
}

/** The Plan: settings by name, then a line for each team, all as text, so that 0.400 stays 0.400. */
export function planPlanSheet(lesson: Lesson, names: SheetNames): SheetPlan {
  const { plan } = words;
  const places = planPlaces(lesson);
  const lines = settingLines(lesson);
  const readings = readingLines(lesson);
  const readingsRow = planRows.settingsHeading + lines.length + 2;
  const givens = lesson.givenNames;
  const headingRow = places.keys.row;
  const todayColumn = planColumns.firstGiven + givens.length;
  const ofTeam = teamColumns(seatsOf(lesson.setup.settings));
  const columnCount = Math.max(todayColumn + ofTeam.length, 8);

  const settingCells: CellContent[][] = [
    [text(plan.setting), text(plan.value), text(plan.about)],
    ...lines.map(({ name, value, about }) => [text(name), text(value), text(about)]),
  ];
  const teamCells: CellContent[][] = [
    [text(plan.key), text(plan.className), text(plan.team), ...givens.map(text)],
    ...lesson.teams.map((team) => [
      text(team.key),
      text(team.className),
      text(team.team),
      ...givens.map((name) => text(team.givens[name] ?? '')),
    ]),
  ];
  const choices: Choice[] = [];
  lines.forEach(({ options, about }, index) => {
    if (options !== undefined) {
      choices.push({
        area: { row: planRows.settingsHeading + 1 + index, column: 2, rows: 1, columns: 1 },
        options,
        help: about,
      });
    }
  });
  choices.push({
    area: { row: headingRow + 1, column: todayColumn, rows: teamLinesFor(lesson.teams.length), columns: 1 },
    options: [plan.absent],
    help: plan.absentHelp,
  });
  const teamLines = { row: headingRow + 1, rows: teamLinesFor(lesson.teams.length), columns: 1 };
  ofTeam.forEach((name, place) => {
    const about = { [ownHelpGiven]: plan.ownHelpAbout, [showExitGiven]: plan.showExitAbout }[name];
    const options = settingOptions[name as keyof typeof settingOptions];
    if (about === undefined || options === undefined) return;
    choices.push({ area: { ...teamLines, column: todayColumn + 1 + place }, options, help: about });
  });
  const looks: LookArea[] = [
    { row: planRows.title, column: 1, rows: 1, columns: columnCount, look: 'title' },
    { row: planRows.note, column: 1, rows: 2, columns: columnCount, look: 'note' },
    { row: planRows.settingsHeading, column: 1, rows: 1, columns: 3, look: 'heading' },
    { row: planRows.settingsHeading + 1, column: 1, rows: lines.length, columns: 1, look: 'setting name' },
    { row: planRows.settingsHeading + 1, column: 2, rows: lines.length, columns: 1, look: 'setting value' },
    { row: planRows.settingsHeading + 1, column: 3, rows: lines.length, columns: 1, look: 'note' },
    { row: headingRow, column: 1, rows: 1, columns: 4 + givens.length + ofTeam.length, look: 'heading' },
  ];
  if (readings.length > 0) {
    looks.push(
      { row: readingsRow, column: 1, rows: 1, columns: 1, look: 'heading' },
      { row: readingsRow, column: 2, rows: 1, columns: columnCount - 1, look: 'note' },
      { row: readingsRow + 1, column: 1, rows: readings.length - 1, columns: 1, look: 'setting name' },
      { row: readingsRow + 1, column: 2, rows: readings.length - 1, columns: columnCount - 1, look: 'note' },
    );
  }
  if (lesson.teams.length > 0) {
    looks.push(
      { row: headingRow + 1, column: 1, rows: lesson.teams.length, columns: 1, look: 'note' },
      {
        row: headingRow + 1,
        column: 2,
        rows: lesson.teams.length,
        columns: 3 + givens.length + ofTeam.length,
        look: 'setting value',
      },
    );
  }
  return {
    name: names.plan,
    role: { kind: 'plan' },
    rowCount: headingRow + teamLinesFor(lesson.teams.length),
    columnCount,
    columnWidths: paintedSizes([210, 170, 130, ...Array.from({ length: columnCount - 3 }, () => 100)]),
    hiddenColumns: undefined,
    frozenRows: 1,
    frozenColumns: 0,
    blocks: [
      {
        row: planRows.title,
        column: 1,
        cells: [[text(plan.title)], [text(plan.note)], [text(lesson.invented ? plan.invented : plan.notice)]],
      },
      { row: planRows.settingsHeading, column: 1, cells: settingCells },
      ...(readings.length > 0 ? [{ row: readingsRow, column: 1, cells: readings.map((line) => line.map(text)) }] : []),
      { row: headingRow, column: 1, cells: teamCells },
      { row: headingRow, column: todayColumn, cells: [[text(plan.today)]] },
      {
        row: headingRow,
        column: todayColumn + 1,
        cells: [
          ofTeam.map(text),
          ...lesson.teams.map(({ givens: own }) => ofTeam.map((name) => text(own[name] ?? ''))),
        ],
      },
    ],
    checks: [],
    looks,
    formats: [],
    states: [],
    choices,
    // Written at the bell and never by a build: a class that is closed stays so until somebody opens it.
    writable: [places.closed],
    unprotected: [
      { row: planRows.settingsHeading + 1, column: 2, rows: lines.length, columns: 1 },
      {
        row: headingRow + 1,
        column: 2,
        rows: teamLinesFor(lesson.teams.length),
        columns: 3 + givens.length + ofTeam.length,
      },
    ],
    spill: [],
    identity: {
      firstRow: planRows.settingsHeading,
      columns: [1],
      rows: [
        ...settingCells.map(([name]) => [name?.kind === 'text' ? name.text : '']),
        [''],
        ...(readings.length > 0 ? [...readings.map(([title]) => [title]), ['']] : []),
        [plan.key],
        ...lesson.teams.map(({ key }) => [key]),
      ],
    },
    carried: [],
  };
}
