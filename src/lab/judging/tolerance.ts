import type { Carried, FilledQuantity } from './filledQuantity.ts';
import { distanceFrom, isWithin, leadingPlace, relativeSlack, type Span, tenTo } from './span.ts';
import { hasFiguresAsked, isShort, type TypedEntry } from './typedEntry.ts';
import { spanOver } from './worked.ts';

/** How exact an entry is asked to be: so many significant figures, or so many decimals. */
export type Asked = { readonly figures: number } | { readonly decimals: number };

/** What an entry is compared with: the span of right results and the place, at each end, of the last figure asked. */
export interface Tolerance {
  readonly span: Span;
  readonly asked: Asked;
  readonly placeLow: number;
  readonly placeHigh: number;
  /** Whether within 1 % is close as well: several rounded steps lead here. */
  readonly wideClose: boolean;
}

const placeAsked = (value: number, asked: Asked): number =>
  'decimals' in asked ? tenTo(-asked.decimals) : tenTo(leadingPlace(value) - asked.figures + 1);

/** `coarsest` is a span whose places the figures are never finer than. */
export function toleranceOf(
  span: Span,
  { asked, wideClose, coarsest }: { readonly asked: Asked; readonly wideClose: boolean; readonly coarsest?: Span },
): Tolerance {
  const floor = coarsest ? Math.max(placeAsked(coarsest.low, asked), placeAsked(coarsest.high, asked)) : 0;
  return {
    span,
    asked,
    placeLow: Math.max(placeAsked(span.low, asked), floor),
    placeHigh: Math.max(placeAsked(span.high, asked), floor),
    wideClose,
  };
}

/** The span with half a unit of the last figure asked on either side: honest rounding stays inside. */
export const acceptedEnds = ({ span, placeLow, placeHigh }: Tolerance) => ({
  low: span.low - placeLow / 2,
  high: span.high + placeHigh / 2,
});

export const isOnTarget = (value: number, tolerance: Tolerance): boolean =>
  tolerance.span.middle === 0 ? value === 0 : isWithin(value, acceptedEnds(tolerance));

/** Whether an entry is right but for rounding, or typed with too few figures; which of the two, or false. */
export function closeness(entry: TypedEntry, tolerance: Tolerance): 'rounding' | 'few figures' | false {
  const { span, placeLow, placeHigh, wideClose, asked } = tolerance;
  const target = Math.abs(span.middle);
  if (target === 0) return false;
  if (isShort(entry, asked) && isWithin(entry.value, span, tenTo(entry.lastPlace) / 2)) return 'few figures';
  const away = distanceFrom(entry.value, span);
  const place = entry.value < span.low ? placeLow : placeHigh;
  const room = Math.max(Math.min(2 * place, 0.02 * target), wideClose ? 0.01 * target : 0);
  return away <= room + relativeSlack * Math.max(target, Math.abs(entry.value)) && 'rounding';
}

/** Whether an entry of a single figure is what the target rounds to at that figure, where more are asked. */
export const isOneFigureOf = (entry: TypedEntry, { span, asked }: Tolerance): boolean =>
  entry.value !== 0 &&
  entry.figuresMax === 1 &&
  ('decimals' in asked ? entry.lastPlace > -asked.decimals : asked.figures > 1) &&
  isWithin(entry.value, span, tenTo(leadingPlace(entry.value)) / 2);

/** Whether the figures asked were cut off where they should have been rounded up, whatever the atomic weights. */
export function isTruncated(entry: TypedEntry, { span, asked }: Tolerance): boolean {
  if (!hasFiguresAsked(entry, asked)) return false;
  const size = Math.abs(entry.value);
  const [low, high] = [Math.abs(span.low), Math.abs(span.high)];
  const next = size + tenTo('decimals' in asked ? -asked.decimals : leadingPlace(size) - asked.figures + 1);
  return Math.min(low, high) > size && Math.max(low, high) < next;
}

/** What counts as right for a step, worked from its givens or, where they are carried, from the team's own entries. */
export function stepTolerance(step: FilledQuantity, carried: Carried = {}): Tolerance {
  const { quantity, asked } = step;
  return toleranceOf(spanOver(step, quantity.relation, carried), {
    asked,
    wideClose: quantity.wideClose,
    ...(quantity.neverFinerThan ? { coarsest: spanOver(step, quantity.neverFinerThan, carried) } : {}),
  });
}
