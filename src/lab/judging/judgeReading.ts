import type { CellValue } from '../../measurement/cellValue.ts';
import type { ReadingUnit } from '../lesson/activity.ts';
import { badSetting, remarks, unreadableTexts } from '../texts/feedback.ts';
import { type ReadingOf, readingAdvice, readingTexts } from '../texts/readings.ts';
import { readEntry } from './readEntry.ts';
import { balanceReadability, readingTolerance, type SettingCells, type ToolUsed } from './readingTolerance.ts';
import type { RowCheck } from './rowCheck.ts';
import type { TypedEntry } from './typedEntry.ts';
import { unitKind } from './unitKind.ts';

export interface Reading {
  /** What the reading is compared with, in the unit that the row asks for. */
  readonly expected: number;
  readonly unit: ReadingUnit;
  /** What is read: what can be done about it differs. */
  readonly of: ReadingOf;
  readonly tools: readonly ToolUsed[];
  /** Part of the allowance for technique that counts; all of it where left out. */
  readonly techniqueShare?: number;
  readonly settings: SettingCells;
  readonly decimalMark: 'point' | 'comma';
}

/** From this many times the plan on, or this share of it down, a unit is likelier to be amiss than the technique. */
const farTimes = 3;
/** Share of the plan by which a reading may be off and still be gone on with (common practice, no source). */
const nearShare = 0.1;

/**
 * Whether an entry in grams ends where the display of the balance does. A number cell has lost its zeros, so that only
 * text tells; the trailing zeros of a whole number may all have been shown.
 */
export function showsEveryFigure(
  { isText, lastPlace, figuresMin, figuresMax }: TypedEntry,
  settings: SettingCells,
): boolean {
  const finest = balanceReadability(settings);
  if (!isText || !finest.ok) return true;
  const place = finest.value.lastPlace;
  return lastPlace <= place && place <= lastPlace + figuresMax - figuresMin;
}

/** Judges a reading by what the tools and the teacher's allowance for technique permit; see `readingTolerance`. */
export function judgeReading(entry: CellValue, reading: Reading): RowCheck {
  const read = readEntry(entry, unitKind(reading.unit), { decimalMark: reading.decimalMark });
  if (read.kind === 'blank') return { status: 'blank', lookAt: '' };
  if (read.kind === 'unreadable') {
    const { because } = read;
    const saysWhy = because === 'two numbers' || because === 'too long';
    return { status: 'unreadable', lookAt: saysWhy ? unreadableTexts[because] : readingTexts.unreadable };
  }
  if (read.unit === 'other kind') return { status: 'not yet', lookAt: readingTexts.unit };
  const tolerance = readingTolerance(reading, reading.settings);
  if (!tolerance.ok) return { status: 'unreadable', isUnusable: true, lookAt: badSetting(tolerance.error.argument) };
  const { value } = read.entry;
  const { expected } = reading;
  // A decimal at the very edge counts as inside, whatever its binary form.
  const isWithinLimit = (reading: number) =>
    Math.abs(reading - expected) <= tolerance.value.limit + 1e-12 * Math.max(Math.abs(reading), Math.abs(expected));
  if (isWithinLimit(value)) {
    const isOfBalance = reading.unit === 'g' && reading.tools.some(({ tool }) => tool === 'balance');
    return isOfBalance && !showsEveryFigure(read.entry, reading.settings)
      ? { status: 'close', lookAt: readingTexts.decimals }
      : { status: 'on target', lookAt: readingTexts.onTarget };
  }
  if (read.otherMark && isWithinLimit(read.otherMark.value)) return { status: 'not yet', lookAt: remarks.otherMark };
  if (value > expected * farTimes) return { status: 'not yet', lookAt: readingTexts.farAbove };
  if (value < expected / farTimes) return { status: 'not yet', lookAt: readingTexts.farBelow };
  const side = value > expected ? 'above' : 'below';
  const { ask, near, further } = readingAdvice[reading.of][side];
  const isNear = Math.abs(value - expected) <= nearShare * Math.abs(expected);
  return { status: 'not yet', lookAt: [readingTexts[side], ask, isNear ? near : further].join(' ') };
}
