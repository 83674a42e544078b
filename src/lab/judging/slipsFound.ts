import type { SlipEntry } from '../quantities/quantityEntry.ts';
import type { SlipId } from '../texts/feedback.ts';
import type { Carried, FilledQuantity } from './filledQuantity.ts';
import { molarMassSpan } from './molarMassSpan.ts';
import { isWithin, relativeSlack, type Span, tenTo } from './span.ts';
import { type Asked, acceptedEnds, stepTolerance, type Tolerance } from './tolerance.ts';
import { lastFigureFilledUp, type TypedEntry } from './typedEntry.ts';
import { spansOver } from './worked.ts';

/** What a slip's wrong calculation gives for a step's numbers. */
export function slipSpans(step: FilledQuantity, slip: SlipEntry, carried: Carried = {}): Span[] {
  if ('value' in slip) return spansOver(step, slip.value, { carried });
  if (!step.formula) return [];
  const { decimals, quantity } = step;
  return slip
    .molarMasses(step.formula)
    .flatMap((wrong) => spansOver(step, quantity.relation, { molarMass: molarMassSpan(wrong, decimals), carried }));
}

/** A slip that gives the target for these numbers says nothing. */
const tellsApart = (span: Span, tolerance: Tolerance): boolean => {
  const accepted = acceptedEnds(tolerance);
  const slack = relativeSlack * Math.max(Math.abs(span.high), Math.abs(accepted.high));
  return span.high < accepted.low - slack || span.low > accepted.high + slack;
};

/** A value with the figures of everyday work is compared to those: more are asked only where the target needs them. */
const usualFigures = 3;
const askedOfSlip = (asked: Asked): Asked =>
  'decimals' in asked ? asked : { figures: Math.min(asked.figures, usualFigures) };

/**
 * Whether an entry is what a slip gives, to half a unit of its last figure, where that can be told from the target. A 0
 * is only a slip that gives just that.
 */
export const fitsSlip = (
  span: Span,
  { entry, tolerance }: { readonly entry: TypedEntry; readonly tolerance: Tolerance },
): boolean =>
  tellsApart(span, tolerance) &&
  isWithin(entry.value, span, entry.value === 0 ? 0 : lastFigureFilledUp(entry, askedOfSlip(tolerance.asked)) / 2);

function isPowerOfTen(entry: TypedEntry, { span, asked }: Tolerance): boolean {
  if (entry.value === 0 || span.middle === 0) return false;
  const power = Math.round(Math.log10(Math.abs(entry.value / span.middle)));
  if (power === 0) return false;
  // Decimals that are asked move with the point.
  const moved = 'decimals' in asked ? { decimals: asked.decimals - power } : asked;
  const ends = { low: Math.abs(span.low) * tenTo(power), high: Math.abs(span.high) * tenTo(power) };
  return (
    Math.sign(entry.value) === Math.sign(span.middle) &&
    isWithin(Math.abs(entry.value), ends, lastFigureFilledUp(entry, moved) / 2)
  );
}

/** Slips that explain an entry with one set of numbers; `power-of-ten` only where nothing else does. */
function slipsWith(step: FilledQuantity, entry: TypedEntry, carried: Carried): readonly SlipId[] {
  const tolerance = stepTolerance(step, carried);
  if (tolerance.span.middle === 0) return [];
  const found = step.quantity.slips
    .filter((slip) => slipSpans(step, slip, carried).some((span) => fitsSlip(span, { entry, tolerance })))
    .map(({ id }) => id);
  if (found.length > 0) return found;
  return isPowerOfTen(entry, tolerance) ? ['power-of-ten'] : [];
}

/**
 * Slips whose own calculation gives the entry, to half a unit of its last figure. The entry itself is known not to agree
 * with the target.
 *
 * @param others - Other numbers that the step may honestly have been worked from, such as rows above before they were
 * rounded. They are tried in turn where the step's own explain nothing.
 */
export function slipsFound(step: FilledQuantity, entry: TypedEntry, others: readonly Carried[]): readonly SlipId[] {
  for (const carried of [{}, ...others]) {
    const found = slipsWith(step, entry, carried);
    if (found.length > 0) return found;
  }
  return [];
}
