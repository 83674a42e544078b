import type { SlipId } from '../texts/feedback.ts';
import type { Carried, FilledQuantity } from './filledQuantity.ts';
import type { ReadEntry, Unreadable } from './readEntry.ts';
import { isOfSchoolTable } from './schoolMolarMasses.ts';
import { slipsFound } from './slipsFound.ts';
import { leadingPlace } from './span.ts';
import { closeness, isOneFigureOf, isOnTarget, isTruncated, stepTolerance, type Tolerance } from './tolerance.ts';
import { hasFiguresAsked, type TypedEntry } from './typedEntry.ts';

/** Entries of earlier rows that a row may have been worked from. */
export interface CarriedRows {
  readonly carried: Carried;
  /** Whether each of those rows is on target itself. */
  readonly sound: boolean;
  /** The row to look at first where one is not. */
  readonly lookAt: string;
}

/** What is found about an entry, as data; `feedbackText` turns it into words. */
export type Judgement =
  | { readonly status: 'on target' }
  | {
      readonly status: 'close';
      readonly because: 'rounding' | 'cut off' | 'few figures' | 'wrong figures' | 'table';
      readonly asked: Tolerance['asked'];
    }
  | { readonly status: 'follows'; readonly lookAt: string }
  | {
      readonly status: 'not yet';
      readonly slips: readonly SlipId[];
      /** Something about the entry itself that is plainer than any slip. */
      readonly question?: 'unit of another kind' | 'unit does not fit' | 'other mark' | 'sign' | 'negative';
    }
  | {
      readonly status: 'not yet';
      readonly slips: readonly [];
      readonly question: 'one figure';
      readonly asked: Tolerance['asked'];
    }
  | { readonly status: 'blank' }
  | { readonly status: 'unreadable'; readonly because: Unreadable };

/** A percent error may carry the sign of measured − accepted; the target is its size. */
function withoutHonestSign({ quantity, numbers }: FilledQuantity, entry: TypedEntry): TypedEntry {
  const isSigned = quantity.name === 'percent error' && entry.value < 0;
  return isSigned && Number(numbers.measured) < Number(numbers.accepted) ? { ...entry, value: -entry.value } : entry;
}

const figuresFit = (entry: TypedEntry, { asked, placeLow, placeHigh }: Tolerance): boolean =>
  hasFiguresAsked(entry, asked) ||
  // Where the last place is bound otherwise, as in a difference, that place is right too.
  entry.lastPlace === leadingPlace(placeLow) ||
  entry.lastPlace === leadingPlace(placeHigh);

/**
 * Judges an entry: on target, then close, then following from an earlier row, then a slip. Never fails.
 *
 * @param rows - Every set of earlier entries that it may have been worked from; none outside a team's table.
 * @param shortTable - True where the class works with a short table of atomic weights: what that gives is on target.
 */
export function judgeEntry(
  step: FilledQuantity,
  read: ReadEntry,
  {
    rows = [],
    judgeFigures = false,
    shortTable = false,
  }: {
    readonly rows?: readonly CarriedRows[];
    readonly judgeFigures?: boolean;
    readonly shortTable?: boolean;
  } = {},
): Judgement {
  if (read.kind === 'blank') return { status: 'blank' };
  if (read.kind === 'unreadable') return { status: 'unreadable', because: read.because };
  if (read.unit === 'other kind') return { status: 'not yet', slips: [], question: 'unit of another kind' };
  const entry = withoutHonestSign(step, read.entry);
  const tolerance = stepTolerance(step);
  const { asked } = tolerance;
  const fits = rows.filter(({ carried }) => isOnTarget(entry.value, stepTolerance(step, carried)));
  if (isOnTarget(entry.value, tolerance) || fits.some(({ sound }) => sound)) {
    return judgeFigures && entry.isText && !figuresFit(entry, tolerance)
      ? { status: 'close', because: 'wrong figures', asked }
      : { status: 'on target' };
  }
  const isOfTable =
    step.quantity.name === 'molar mass' && step.formula !== undefined && isOfSchoolTable(entry, step.formula);
  if (isOfTable && shortTable) return { status: 'on target' };
  const near = closeness(entry, tolerance);
  if (near === 'few figures') return { status: 'close', because: near, asked };
  if (isOfTable) return { status: 'close', because: 'table', asked };
  if (near) {
    const isCutOff = near === 'rounding' && isTruncated(entry, tolerance);
    return { status: 'close', because: isCutOff ? 'cut off' : near, asked };
  }
  if (read.otherMark) {
    const other = withoutHonestSign(step, read.otherMark);
    const isSoundWith = (row: CarriedRows) => row.sound && isOnTarget(other.value, stepTolerance(step, row.carried));
    if (isOnTarget(other.value, tolerance) || rows.some(isSoundWith)) {
      return { status: 'not yet', slips: [], question: 'other mark' };
    }
  }
  const [followed] = fits;
  if (followed) return { status: 'follows', lookAt: followed.lookAt };
  if (read.unit === 'fits' && isOnTarget(read.bare.value, tolerance)) {
    return { status: 'not yet', slips: [], question: 'unit does not fit' };
  }
  const slips = slipsFound(
    step,
    entry,
    rows.filter(({ sound }) => sound).map(({ carried }) => carried),
  );
  if (slips.length === 0 && isOneFigureOf(entry, tolerance)) {
    return { status: 'not yet', slips: [], question: 'one figure', asked };
  }
  if (slips.length === 0 && entry.value < 0) {
    const isSignAlone = step.quantity.name === 'percent error' && isOnTarget(-entry.value, tolerance);
    return { status: 'not yet', slips, question: isSignAlone ? 'sign' : 'negative' };
  }
  return { status: 'not yet', slips };
}
