import { type Result, success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { grams, millilitres } from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity, MeasuredStep } from '../lesson/activity.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import { toleranceTexts } from '../texts/readings.ts';
import { decimalText } from './decimalText.ts';
import { readingTolerance, type SettingCells, type ToolUsed } from './readingTolerance.ts';

export interface ReadingNote {
  /** Title of the measured step. */
  readonly step: string;
  /**
   * How far a reading may be off and why, line by line, and what that makes for round readings that belong to no team:
   * nothing in them is worked from a team's numbers.
   */
  readonly lines: readonly string[];
}

const anyVolume = 100;

/** Round readings in the unit of a row, to show what a tolerance comes to. */
const roundReadings: Readonly<Record<string, readonly number[]>> = { g: [1, 10], mL: [10, 100] };
const anyReadings: readonly number[] = [1];

interface NoteInput {
  readonly settings: SettingCells;
  readonly givens: Readonly<Record<string, CellValue>>;
}

function toolsOf({ tools, instrument, unit }: MeasuredStep, reading: number, { givens, settings }: NoteInput) {
  const load = unit === 'g' ? reading : 10;
  return (tools ?? (instrument === 'bench' ? [] : [{ tool: instrument }])).map((used): ToolUsed => {
    if (used.tool === 'balance') return { tool: used.tool, mass: grams(load) };
    const name = 'volume' in used ? used.volume : undefined;
    if (name === undefined) return { tool: used.tool, volume: millilitres(unit === 'mL' ? reading : anyVolume) };
    const size = readQuantity(givens[name], 'volume', name, { decimalMark: decimalMarkOf(settings) });
    return { tool: used.tool, volume: millilitres(size.ok ? size.value.value : anyVolume) };
  });
}

/** Two figures are enough to see how much it is. */
const shortLimit = (limit: number, settings: SettingCells): string =>
  decimalText(Number(limit.toPrecision(2)), decimalMarkOf(settings));

/**
 * For every measured step of an activity, how its tolerance comes about with these settings and sizes: for the Plan.
 *
 * @returns Fails with `lesson-setting` where a setting cannot be read.
 */
export function readingNotes(activity: Activity, input: NoteInput): Result<readonly ReadingNote[]> {
  const { settings } = input;
  const notes: ReadingNote[] = [];
  for (const step of activity.steps) {
    if (step.kind !== 'measured') continue;
    const examples: { reading: string; limit: string }[] = [];
    let words = '';
    for (const reading of roundReadings[step.unit] ?? anyReadings) {
      const tolerance = readingTolerance(
        { expected: reading, tools: toolsOf(step, reading, input), techniqueShare: step.techniqueShare },
        settings,
      );
      if (!tolerance.ok) return tolerance;
      examples.push({ reading: String(reading), limit: shortLimit(tolerance.value.limit, settings) });
      words = tolerance.value.words;
    }
    notes.push({ step: step.title, lines: [...words.split('\n'), toleranceTexts.examples(step.unit, examples)] });
  }
  return success(notes);
}
