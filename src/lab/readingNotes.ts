import { type Result, success } from '../errors/result.ts';
import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { grams, millilitres } from '../measurement/quantity.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import type { Activity, MeasuredStep } from './activity.ts';
import { readingTolerance, type SettingCells, type ToolUsed } from './readingTolerance.ts';

export interface ReadingNote {
  /** Title of the measured step. */
  readonly step: string;
  /** How far a reading may be off and why, in words; nothing in them is worked from a team's numbers. */
  readonly words: string;
}

/** The words of a tolerance depend on no load, so that any will do. */
const anyLoad = grams(1);
const anyVolume = millilitres(100);

function toolsOf(
  { tools, instrument }: MeasuredStep,
  givens: Readonly<Record<string, CellValue>>,
): readonly ToolUsed[] {
  return (tools ?? [{ tool: instrument }]).map((used): ToolUsed => {
    if (used.tool === 'balance') return { tool: used.tool, mass: anyLoad };
    const name = 'volume' in used ? used.volume : undefined;
    if (name === undefined || isBlank(givens[name])) return { tool: used.tool, volume: anyVolume };
    const size = readQuantity(givens[name], 'volume', name, { decimalMark: 'point' });
    return { tool: used.tool, volume: size.ok ? millilitres(size.value.value) : anyVolume };
  });
}

/**
 * For every measured step of an activity, how its tolerance comes about with these settings and sizes: for the Plan.
 *
 * @returns Fails with `lesson-setting` where a setting cannot be read.
 */
export function readingNotes(
  activity: Activity,
  { settings, givens }: { readonly settings: SettingCells; readonly givens: Readonly<Record<string, CellValue>> },
): Result<readonly ReadingNote[]> {
  const notes: ReadingNote[] = [];
  for (const step of activity.steps) {
    if (step.kind !== 'measured') continue;
    const tolerance = readingTolerance({ expected: 1, tools: toolsOf(step, givens) }, settings);
    if (!tolerance.ok) return tolerance;
    notes.push({ step: step.title, words: tolerance.value.words });
  }
  return success(notes);
}
