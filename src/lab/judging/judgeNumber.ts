import type { CellValue } from '../../measurement/cellValue.ts';
import type { NamedUnit } from '../../measurement/unit.ts';
import { figureWords, remarks } from '../texts/feedback.ts';
import { filled, unreadableText } from './feedbackText.ts';
import { type ReadEntry, readEntry } from './readEntry.ts';
import type { Status } from './rowCheck.ts';
import { isWithin } from './span.ts';
import { closeness, isOneFigureOf, isOnTarget, isTruncated, type Tolerance, toleranceOf } from './tolerance.ts';
import type { TypedEntry } from './typedEntry.ts';

export interface EntryCheck {
  readonly status: Status;
  readonly lookAt: string;
}

export interface EntryTarget {
  readonly target: number;
  /** Share of the target within which an entry is on target; left out, honest rounding decides. */
  readonly tolerancePercent?: number | undefined;
  /** Significant figures asked, 3 where left out. */
  readonly figures?: number | undefined;
  readonly decimalMark?: 'point' | 'comma' | undefined;
  /** The unit that the target was typed in, where it has one. */
  readonly unit?: NamedUnit | undefined;
}

/**
 * The readings of an entry, in the unit of the target. A bare target says no unit, so that an entry with one counts as it
 * stands or converted to the unit of its kind; beside a target with a unit a bare entry counts in that unit.
 */
function readings(cell: CellValue, { decimalMark, unit }: EntryTarget): readonly ReadEntry[] {
  if (unit !== undefined) {
    const read = readEntry(cell, unit.kind, { decimalMark });
    return [
      read.kind === 'number' && read.unit === 'fits' ? { ...read, entry: shifted(read.entry, -unit.power) } : read,
    ];
  }
  const asTyped = readEntry(cell, 'ratio', { decimalMark });
  if (asTyped.kind !== 'number' || asTyped.named === undefined) return [asTyped];
  return [{ ...asTyped, unit: 'fits' }, readEntry(cell, asTyped.named.kind, { decimalMark })];
}

/** An entry in another unit of its kind: its digits stay, only their places change. */
const shifted = (entry: TypedEntry, power: number): TypedEntry => ({
  ...entry,
  value: power < 0 ? entry.value / 10 ** -power : entry.value * 10 ** power,
  lastPlace: entry.lastPlace + power,
});

function judge(entry: TypedEntry, tolerance: Tolerance, tolerancePercent: number | undefined): EntryCheck {
  const target = tolerance.span.middle;
  if (tolerancePercent !== undefined) {
    const room = Math.abs(target) * (tolerancePercent / 100);
    if (isWithin(entry.value, { low: target, high: target }, room))
      return { status: 'on target', lookAt: remarks.onTarget };
  } else if (isOnTarget(entry.value, tolerance)) {
    return { status: 'on target', lookAt: remarks.onTarget };
  } else {
    const near = closeness(entry, tolerance);
    const figures = 'figures' in tolerance.asked ? figureWords[tolerance.asked.figures] : undefined;
    if (near === 'few figures') {
      return { status: 'close', lookAt: filled(remarks.closeFewFigures, { figures: figures ?? remarks.figuresAsked }) };
    }
    if (near) {
      return { status: 'close', lookAt: isTruncated(entry, tolerance) ? remarks.closeCutOff : remarks.closeRounding };
    }
    if (isOneFigureOf(entry, tolerance)) {
      return { status: 'not yet', lookAt: filled(remarks.oneFigure, { figures: figures ?? remarks.figuresAsked }) };
    }
  }
  if (entry.value === -target) return { status: 'not yet', lookAt: remarks.signOnly };
  const power = Math.log10(Math.abs(entry.value / target));
  const isShifted =
    Number.isFinite(power) &&
    Math.round(power) !== 0 &&
    Math.abs(power - Math.round(power)) < 0.002 &&
    entry.value * target > 0;
  return { status: 'not yet', lookAt: isShifted ? remarks.shifted : remarks.notYet };
}

/**
 * Judges an entry against a number. Never fails; a target of 0 needs a tolerance and without one only 0 is on target.
 */
export function judgeNumber(cell: CellValue, wanted: EntryTarget): EntryCheck {
  const { target, tolerancePercent, figures = 3, unit } = wanted;
  const tolerance = toleranceOf({ low: target, middle: target, high: target }, { asked: { figures }, wideClose: true });
  const checks = readings(cell, wanted).map((read): EntryCheck => {
    if (read.kind === 'blank') return { status: 'blank', lookAt: '' };
    if (read.kind === 'unreadable') return { status: 'unreadable', lookAt: unreadableText(read.because) };
    if (read.unit === 'other kind') {
      const question = unit === undefined ? remarks.unitUnknown : filled(remarks.unitWanted, { unit: unit.symbol });
      return { status: 'not yet', lookAt: question };
    }
    return judge(read.entry, tolerance, tolerancePercent);
  });
  const [asTyped = { status: 'blank', lookAt: '' }] = checks;
  return ['on target', 'close'].map((best) => checks.find(({ status }) => status === best)).find(Boolean) ?? asTyped;
}
