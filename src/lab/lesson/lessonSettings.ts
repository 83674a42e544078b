import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { plainName } from './givenCells.ts';

/** What a team's check reads of the settings; a number that cannot be read is `undefined` and its name is in `bad`. */
export interface LessonSettings {
  readonly activity: string;
  readonly figures: number;
  readonly decimals: number;
  /** Whether the class works with a short table of atomic weights, one that prints 35.5 for chlorine. */
  readonly shortTable: boolean;
  readonly decimalMark: 'point' | 'comma';
  readonly judgeFigures: boolean;
  readonly highestHelpLevel: number;
  /** Whether answers to exit questions are judged; until then they are kept. */
  readonly showExitChecks: boolean;
  /** Whether students dilute a concentrated reagent themselves; staff do unless the teacher has said otherwise. */
  readonly studentsDilute: boolean;
  /** Whether a dilution is worked from the stock that the team really made. */
  readonly fromRealStock: boolean;
  /** Of the sheet that the entries stand in; older than any where it says what is no layout, of today for a call without a sheet. */
  readonly layout: number;
  /** Names of settings whose value cannot be used; only rows that need them are unreadable. */
  readonly bad: readonly string[];
  /** The cell beside each name, for what others read. */
  readonly cells: Readonly<Record<string, CellValue>>;
}

const whole = (cell: CellValue): number => {
  const typed = typeof cell === 'number' ? cell : typeof cell === 'string' ? Number(cell.trim()) : Number.NaN;
  return Number.isInteger(typed) ? typed : Number.NaN;
};

/** The mark that the class writes numbers with. */
export const decimalMarkOf = (cells: Readonly<Record<string, CellValue>>): 'point' | 'comma' =>
  plainName(cells['decimal mark']) === 'comma' ? 'comma' : 'point';

export const isYes = (cell: CellValue): boolean =>
  cell === true || (typeof cell === 'string' && /^(?:yes|on|true)$/i.test(cell.trim()));

/** Reads the Plan's two columns, name and value; names of other settings are kept aside. */
export function readLessonSettings(table: readonly (readonly CellValue[])[]): LessonSettings {
  const cells: Record<string, CellValue> = Object.create(null);
  for (const [name, value] of table) {
    const plain = plainName(name);
    if (plain !== '' && !(plain in cells)) cells[plain] = value;
  }
  const bad: string[] = [];
  const level = (name: string, { least, most, otherwise }: { least: number; most: number; otherwise: number }) => {
    if (isBlank(cells[name])) return otherwise;
    const value = whole(cells[name]);
    if (value >= least && value <= most) return value;
    bad.push(name);
    return otherwise;
  };
  return {
    activity: typeof cells.activity === 'string' ? cells.activity : '',
    figures: level('figures', { least: 1, most: 15, otherwise: 3 }),
    decimals: level('atomic-weight decimals', { least: 0, most: 10, otherwise: 2 }),
    shortTable: /^\s*35[.,]50*\s*$/.test(String(cells['chlorine on the table'] ?? '')),
    decimalMark: decimalMarkOf(cells),
    judgeFigures: isYes(cells['judge figures']),
    highestHelpLevel: level('highest help level', { least: 0, most: 3, otherwise: 3 }),
    showExitChecks: isYes(cells['show exit checks']),
    studentsDilute: plainName(cells['concentrated reagents']) === 'students',
    fromRealStock: plainName(cells['work the dilution from']) === 'real stock',
    // Every Plan that was ever built has a line for it: settings without one were typed for this call.
    layout: 'layout' in cells ? Math.max(0, whole(cells.layout) || 0) : Number.POSITIVE_INFINITY,
    bad,
    cells,
  };
}
