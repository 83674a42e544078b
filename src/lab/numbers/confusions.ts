import type { CellValue } from '../../measurement/cellValue.ts';
import type { FilledQuantity } from '../judging/filledQuantity.ts';
import { fillQuantity } from '../judging/fillQuantity.ts';
import { slipSpans } from '../judging/slipsFound.ts';
import type { Span } from '../judging/span.ts';
import { acceptedEnds, stepTolerance, type Tolerance } from '../judging/tolerance.ts';
import type { Activity, CalculatedStep } from '../lesson/activity.ts';
import { takesLessonFigures } from '../lesson/lessonFigures.ts';
import { quantities } from '../quantities.ts';
import type { SlipId } from '../texts/feedback.ts';

/** A slip that looks right for a team's numbers, or two that give the same number. */
export interface Confusion {
  readonly step: CalculatedStep;
  readonly slips: readonly [SlipId] | readonly [SlipId, SlipId];
}

export interface StepReady {
  readonly step: CalculatedStep;
  readonly prepared: FilledQuantity;
  /** Numbers of the quantity that are read from givens, by the given's name. */
  readonly reads: Readonly<Record<string, string>>;
}

/** Calculated steps whose numbers all come from givens, each with the starting numbers in place. */
export function readySteps(
  { steps }: Activity,
  givens: Readonly<Record<string, CellValue>>,
  settings: { readonly figures: number; readonly decimals: number; readonly decimalMark: 'point' | 'comma' },
): readonly StepReady[] {
  const ready: StepReady[] = [];
  for (const step of steps) {
    if (step.kind !== 'calculated') continue;
    const reads: Record<string, string> = {};
    for (const [name, source] of Object.entries(step.takes)) if ('given' in source) reads[name] = source.given;
    if (Object.keys(reads).length < Object.keys(step.takes).length) continue;
    const cells = Object.fromEntries(Object.entries(reads).map(([name, given]) => [name, givens[given]]));
    const prepared = fillQuantity(quantities[step.quantity], cells, {
      ...(takesLessonFigures(quantities[step.quantity]) ? { figures: settings.figures } : {}),
      decimals: settings.decimals,
      decimalMark: settings.decimalMark,
      names: reads,
    });
    if (prepared.ok) ready.push({ step, prepared: prepared.value, reads });
  }
  return ready;
}

/** The same step with a team's own numbers, by the given's name, in place of those it was prepared with. */
const withNumbers = ({ prepared, reads }: StepReady, own: Readonly<Record<string, number>>): FilledQuantity => {
  const changed: Record<string, number> = {};
  for (const [name, given] of Object.entries(reads)) {
    const value = own[given];
    if (value !== undefined) changed[name] = value;
  }
  return { ...prepared, numbers: { ...prepared.numbers, ...changed } };
};

/** Whether an entry typed to the figures asked could agree with both. */
const overlaps = (one: Span, other: Span, place: number): boolean =>
  one.low - place / 2 <= other.high + place / 2 && other.low - place / 2 <= one.high + place / 2;

const placeNear = (value: number, { asked, placeLow }: Tolerance): number =>
  'decimals' in asked || value === 0 ? placeLow : 10 ** (Math.floor(Math.log10(Math.abs(value))) - asked.figures + 1);

/** Slips of the steps that could not be told from the target, or from each other, with a team's own numbers. */
export function confusions(steps: readonly StepReady[], own: Readonly<Record<string, number>>): readonly Confusion[] {
  const found: Confusion[] = [];
  for (const ready of steps) {
    const prepared = withNumbers(ready, own);
    const tolerance = stepTolerance(prepared);
    const accepted = acceptedEnds(tolerance);
    const told: { readonly id: SlipId; readonly span: Span }[] = [];
    for (const slip of prepared.quantity.slips) {
      for (const span of slipSpans(prepared, slip)) {
        if (!Number.isFinite(span.middle)) continue;
        const place = placeNear(span.middle, tolerance);
        if (span.low <= accepted.high && span.high >= accepted.low) {
          found.push({ step: ready.step, slips: [slip.id] });
          continue;
        }
        for (const other of told) {
          if (other.id !== slip.id && overlaps(span, other.span, place)) {
            found.push({ step: ready.step, slips: [other.id, slip.id] });
          }
        }
        told.push({ id: slip.id, span });
      }
    }
  }
  return found;
}

/** Tells confusions of the same slips in the same step. */
export const confusionName = ({ step, slips }: Confusion): string => `${step.id} ${slips.join(' ')}`;
