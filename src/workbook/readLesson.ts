import { errorText } from '../errors/errorText.ts';
import { quoted } from '../errors/quoted.ts';
import { type ChemError, failure, type Result, success } from '../errors/result.ts';
import { mostSeats } from '../lab/exit/exitStep.ts';
import { closedKeys } from '../lab/judging/isClosed.ts';
import { defaultSettings, defaultShelf } from '../lab/lesson/defaultSettings.ts';
import { plainName } from '../lab/lesson/givenCells.ts';
import { decimalMarkOf } from '../lab/lesson/lessonSettings.ts';
import { isTeam } from '../lab/lesson/practice.ts';
import {
  type ClassSetup,
  type SettingName,
  type Settings,
  type Setup,
  settingNames,
  settingsBefore,
  type TeamPlan,
} from '../lab/lesson/setup.ts';
import { ownHelpGiven, showExitGiven, teamColumns } from '../lab/lesson/teamColumns.ts';
import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import { cellText } from './cellText.ts';
import { planColumns, teamLinesFor } from './layout.ts';
import type { PlanPlaces } from './lesson.ts';
import { settingOptions } from './settingOptions.ts';
import { words } from './words.ts';

/** The Plan as it stands in the sheet, a teacher's own edits included. */
export interface PlanReading {
  readonly setup: Setup;
  /** Every line that has a key, in the order of the sheet; a key used twice is here twice. */
  readonly teams: readonly TeamPlan[];
  readonly givenNames: readonly string[];
  /** Teams marked absent: key, and the day it was said of, empty where it holds until it is cleared. */
  readonly absent: readonly { readonly key: string; readonly day: string }[];
  /** Keys of teams whose class was closed at the bell and has not gone on since. */
  readonly closed: readonly string[];
  readonly places: PlanPlaces;
  readonly invented: boolean;
  /** Somebody's own words stand behind the column about today: they are never written over. */
  readonly hasOwnColumns: boolean;
  readonly layout: string;
  /** Keys that stand in more than one line, each once. */
  readonly keysUsedTwice: readonly string[];
  /** In words for people, each in three parts. */
  readonly problems: readonly string[];
}

type Cells = readonly (readonly CellValue[])[];

/**
 * Reads a lesson back from the cells of the Plan, from A1 on, values only.
 * Fails with `plan-without-lines` where no table of teams is found; whatever else is odd is reported beside the reading.
 */
export function readLesson(cells: Cells): Result<PlanReading> {
  const at = (row: number, column: number): CellValue => cells[row - 1]?.[column - 1];
  const textAt = (row: number, column: number): string => cellText(at(row, column));
  const rowWith = (first: string, second: string): number =>
    cells.findIndex((_, index) => textAt(index + 1, 1) === first && textAt(index + 1, 2) === second) + 1;

  const settingsRow = rowWith(words.plan.setting, words.plan.value);
  const headingRow = rowWith(words.plan.key, words.plan.className);
  if (headingRow === 0 || settingsRow === 0 || settingsRow > headingRow) {
    return failure({
      code: 'plan-without-lines',
      argument: 'the Plan',
      expected: `row “${words.plan.setting}, ${words.plan.value}” with a row “${words.plan.key}, ${words.plan.className}, ${words.plan.team}” below it`,
      received: 'this sheet',
      advice: 'Undo the change to the headings, or build the class again from the sidebar.',
    });
  }

  const problems: ChemError[] = [];
  const table = settingsTable({ cells, from: settingsRow + 1, to: headingRow - 1 });
  const settings = readSettings({ table, problems });
  const givenNames = headings({ textAt, headingRow });
  const { found: ofTeam, hasOwnColumns } = columnsOfTeam({ cells, headingRow, givenNames });
  const closedRow = rowOfClosed({ textAt, settingsRow, headingRow });
  const { teams, keysUsedTwice, lastLine } = teamLines({ cells, headingRow, givenNames, ofTeam, problems });
  const setup = readSetup({ table, settings, teams, givenNames, problems });
  return success({
    setup,
    teams,
    givenNames,
    absent: absentTeams({ cells, headingRow, givenNames }),
    closed: closedKeys(table.get(words.settings.closed)?.value),
    places: {
      settings: { row: settingsRow, column: 1, rows: headingRow - settingsRow, columns: 2 },
      closed: { row: closedRow, column: 1, rows: 1, columns: 2 },
      keys: { row: headingRow, column: planColumns.key, rows: 1 + teamLinesFor(lastLine - headingRow), columns: 1 },
      givenHeadings: {
        row: headingRow,
        column: planColumns.firstGiven,
        rows: 1,
        columns: Math.max(1, givenNames.length),
      },
      teamColumns: ofTeam,
    },
    hasOwnColumns,
    invented: table.get(words.settings.invented)?.value === 'yes',
    layout: table.get(words.settings.layout)?.value ?? '',
    keysUsedTwice,
    problems: problems.map(errorText),
  });
}

interface SettingCell {
  readonly value: string;
}
type SettingsTable = ReadonlyMap<string, SettingCell>;

function settingsTable({ cells, from, to }: { cells: Cells; from: number; to: number }): SettingsTable {
  const table = new Map<string, SettingCell>();
  for (let row = from; row <= to; row += 1) {
    const name = cellText(cells[row - 1]?.[0]).toLowerCase();
    if (name !== '' && !table.has(name)) table.set(name, { value: cellText(cells[row - 1]?.[1]) });
  }
  return table;
}

const offUnlessSaid: readonly SettingName[] = ['exit questions', 'show exit checks'];

function readSettings({ table, problems }: { table: SettingsTable; problems: ChemError[] }): Settings {
  const settings: Record<string, string> = {};
  for (const name of settingNames) {
    const typed = table.get(name)?.value ?? '';
    const options = settingOptions[name];
    // An option counts however its letters were typed, for the checks in the sheet read it so too.
    const value = options?.find((option) => plainName(option) === plainName(typed)) ?? typed;
    const before = settingsBefore[name];
    if (before !== undefined && !table.has(name)) {
      settings[name] = before;
      continue;
    }
    if (value === '') {
      // Off, which a Plan without the line means as well.
      if (offUnlessSaid.includes(name) && !table.has(name)) {
        settings[name] = defaultSettings[name];
        continue;
      }
      problems.push({
        code: 'plan-setting',
        argument: `the setting “${name}”`,
        received: table.has(name) ? 'is blank' : 'has no line in the Plan',
        advice: `Type one; until then “${defaultSettings[name]}” is used.`,
      });
    } else if (options !== undefined && !options.includes(value)) {
      problems.push({
        code: 'plan-setting',
        argument: `the setting “${name}”`,
        received: `can’t be ${quoted(value)}`,
        advice: `Choose ${options.join(' or ')} in the Plan.`,
      });
    }
    settings[name] = value === '' ? defaultSettings[name] : value;
  }
  return settings as Record<SettingName, string>;
}

function headings({
  textAt,
  headingRow,
}: {
  textAt: (row: number, column: number) => string;
  headingRow: number;
}): readonly string[] {
  const names: string[] = [];
  for (let column: number = planColumns.firstGiven; textAt(headingRow, column) !== ''; column += 1) {
    // The first column behind the givens is about the day and no number.
    if (textAt(headingRow, column) === words.plan.today) break;
    names.push(textAt(headingRow, column));
  }
  return names;
}

/**
 * Columns of what a team has of its own, by their headings, wherever they stand behind the one about today; and whether
 * people have put something of theirs there.
 */
function columnsOfTeam({
  cells,
  headingRow,
  givenNames,
}: {
  cells: Cells;
  headingRow: number;
  givenNames: readonly string[];
}): { readonly found: Readonly<Record<string, number>>; readonly hasOwnColumns: boolean } {
  const known = teamColumns(mostSeats);
  const found: Record<string, number> = {};
  let hasOwnColumns = false;
  const from = planColumns.firstGiven + givenNames.length + 1;
  const width = Math.max(0, ...cells.slice(headingRow - 1).map((line) => line.length));
  for (let column = from; column <= width; column += 1) {
    const heading = cellText(cells[headingRow - 1]?.[column - 1]).toLowerCase();
    if (known.includes(heading) && !(heading in found)) found[heading] = column;
    else hasOwnColumns ||= cells.slice(headingRow - 1).some((line) => cellText(line[column - 1]) !== '');
  }
  return { found, hasOwnColumns };
}

/** The line that names closed classes, or the first below the settings that is free for it; the last of them otherwise. */
function rowOfClosed({
  textAt,
  settingsRow,
  headingRow,
}: {
  textAt: (row: number, column: number) => string;
  settingsRow: number;
  headingRow: number;
}): number {
  let free = headingRow - 1;
  for (let row = headingRow - 1; row > settingsRow; row -= 1) {
    if (textAt(row, 1).toLowerCase() === words.settings.closed) return row;
    if (textAt(row, 1) === '' && textAt(row, 2) === '') free = row;
  }
  return free;
}

function absentTeams({
  cells,
  headingRow,
  givenNames,
}: {
  cells: Cells;
  headingRow: number;
  givenNames: readonly string[];
}): PlanReading['absent'] {
  const column = planColumns.firstGiven + givenNames.length;
  if (cellText(cells[headingRow - 1]?.[column - 1]) !== words.plan.today) return [];
  return cells.slice(headingRow).flatMap((line) => {
    const key = cellText(line[planColumns.key - 1]);
    const said = cellText(line[column - 1]);
    if (key === '' || !said.startsWith(words.plan.absent)) return [];
    return [{ key, day: said.slice(words.plan.absent.length).trim() }];
  });
}

function teamLines({
  cells,
  headingRow,
  givenNames,
  ofTeam,
  problems,
}: {
  cells: Cells;
  headingRow: number;
  givenNames: readonly string[];
  ofTeam: PlanPlaces['teamColumns'];
  problems: ChemError[];
}): { readonly teams: readonly TeamPlan[]; readonly keysUsedTwice: readonly string[]; readonly lastLine: number } {
  const teams: TeamPlan[] = [];
  let lastLine = headingRow;
  const linesByKey = new Map<string, number[]>();
  for (let row = headingRow + 1; row <= cells.length; row += 1) {
    const line = cells[row - 1] ?? [];
    const key = cellText(line[planColumns.key - 1]);
    const className = cellText(line[planColumns.className - 1]);
    const team = cellText(line[planColumns.team - 1]);
    if (key === '' && className === '' && team === '') continue;
    lastLine = row;
    if (key === '' || className === '' || team === '') {
      problems.push({
        code: 'plan-line',
        argument: `line ${row} of the Plan`,
        received: [key || 'no key', className || 'no class', team || 'no team'].join(', '),
        advice: 'Fill in what is missing, or clear the line.',
      });
      if (key === '') continue;
    }
    const sameKey = key.toLowerCase();
    linesByKey.set(sameKey, [...(linesByKey.get(sameKey) ?? []), row]);
    const givens: Record<string, string> = {};
    givenNames.forEach((name, index) => {
      const cell = line[planColumns.firstGiven - 1 + index];
      if (cell instanceof Date || typeof cell === 'boolean') {
        problems.push({
          code: 'plan-line',
          argument: `${name} of ${team} in line ${row} of the Plan`,
          received: `${cell instanceof Date ? 'a date' : quoted(cell)} can’t be used here`,
          advice: 'Set the cell to plain text and type the value again.',
        });
      }
      givens[name] = cellText(cell);
    });
    for (const [name, column] of Object.entries(ofTeam)) givens[name] = cellText(line[column - 1]);
    for (const name of [ownHelpGiven, showExitGiven] as const) {
      const typed = givens[name] ?? '';
      const options: readonly string[] = settingOptions[name] ?? [];
      if (typed === '' || options.includes(typed)) continue;
      problems.push({
        code: 'plan-line',
        argument: `${name} of ${team} in line ${row} of the Plan`,
        received: `can’t be ${quoted(typed)}`,
        advice: `Choose ${options.join(' or ')}, or clear the cell; until then the lesson’s own counts.`,
      });
    }
    teams.push({ key, className, team, givens });
  }
  const keysUsedTwice: string[] = [];
  for (const [key, rows] of linesByKey) {
    if (rows.length < 2) continue;
    keysUsedTwice.push(key);
    problems.push({
      code: 'plan-line',
      argument: `lines ${rows.join(' and ')} of the Plan`,
      received: `the key “${key}” is there more than once`,
      advice: 'Give one of these lines another key; until then neither team’s numbers are shown.',
    });
  }
  return { teams, keysUsedTwice, lastLine };
}

function readSetup({
  table,
  settings,
  teams,
  givenNames,
  problems,
}: {
  table: SettingsTable;
  settings: Settings;
  teams: readonly TeamPlan[];
  givenNames: readonly string[];
  problems: ChemError[];
}): Setup {
  const names = words.settings;
  const decimalMark = decimalMarkOf(settings);
  const read = (cell: string, kind: 'volume' | 'mass', name: string): number | undefined => {
    const quantity = readQuantity(cell, kind, `the setting “${name}”`, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    problems.push(quantity.error);
    return undefined;
  };
  const sizesOf = (name: string, otherwise: readonly number[]): readonly number[] => {
    const typed = table.get(name)?.value ?? '';
    if (typed === '') return otherwise;
    return typed
      .split(';')
      .filter((part) => !isBlank(part))
      .map((part) => read(part.trim(), 'volume', name))
      .filter((size): size is number => size !== undefined);
  };
  const massOf = (name: string, typed: string, otherwise: number): number =>
    typed === '' ? otherwise : (read(typed, 'mass', name) ?? otherwise);

  const classes: { name: string; teams: string[] }[] = [];
  for (const { className, team } of teams.filter(isTeam)) {
    const known = classes.find(({ name }) => name === className);
    if (known === undefined) classes.push({ name: className, teams: [team] });
    else known.teams.push(team);
  }
  const givens: Record<string, string> = {};
  for (const name of givenNames) {
    givens[name] = table.get(`${names.startPrefix}${name}`)?.value ?? teams[0]?.givens[name] ?? '';
  }
  return {
    activity: settings.activity,
    givens,
    ownNumbers: table.get(names.numbers)?.value !== names.sharedNumbers,
    settings,
    shelf: {
      flasksMl: sizesOf(names.flasks, defaultShelf.flasksMl),
      pipettesMl: sizesOf(names.pipettes, defaultShelf.pipettesMl),
      balanceReadabilityG: massOf('balance', settings.balance, defaultShelf.balanceReadabilityG),
      balanceMaxG: massOf(names.balanceRange, table.get(names.balanceRange)?.value ?? '', defaultShelf.balanceMaxG),
    },
    classes: classes as readonly ClassSetup[],
  };
}
