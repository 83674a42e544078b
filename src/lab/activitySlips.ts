import { readQuantity } from '../measurement/readQuantity.ts';
import type { CalculatedStep } from './activity.ts';
import type { Surroundings } from './judging/surroundings.ts';
import type { PreparedStep } from './preparedStep.ts';
import { fitsSlip } from './slipsFound.ts';
import type { Span } from './span.ts';
import { stepTolerance } from './stepTolerance.ts';
import type { SlipId } from './texts/feedback.ts';
import type { TypedEntry } from './typedEntry.ts';
import { spanOver } from './worked.ts';

/** What surrounds a step in its activity, for slips that its own quantity knows nothing of. */
interface StepSurroundings extends Pick<Surroundings, 'activity' | 'stepOf' | 'givens'> {
  readonly readyOf: (step: CalculatedStep) => PreparedStep | undefined;
  readonly decimalMark: 'point' | 'comma';
}

const exactly = (value: number): Span => ({ low: value, middle: value, high: value });

/** The molarity planned, where that of a weighed mass is asked. */
function plannedMolarity(step: CalculatedStep, { stepOf, readyOf }: StepSurroundings): readonly Span[] {
  const { mass } = step.takes;
  const weighed = mass && 'entryOf' in mass ? stepOf(mass.entryOf) : undefined;
  const planned =
    weighed?.kind === 'measured' && typeof weighed.expects === 'string' ? stepOf(weighed.expects) : undefined;
  if (planned?.kind !== 'calculated' || planned.quantity !== 'mass of solute') return [];
  const ready = readyOf(planned);
  const molarity = ready?.numbers.molarity;
  return typeof molarity === 'number' ? [exactly(molarity)] : [];
}

/** The molarity on the label, where that of a mass percent and a density found at the bench is asked. */
function labelledMolarity(step: CalculatedStep, { activity, givens, decimalMark }: StepSurroundings): readonly Span[] {
  const name = activity?.numbers.recipe === 'portion for density' ? activity.numbers.takes.molarity : undefined;
  const { density } = step.takes;
  if (name === undefined || !density || !('entryOf' in density)) return [];
  const label = readQuantity(givens[name], 'concentration', name, { decimalMark });
  return label.ok ? [exactly(label.value.value)] : [];
}

/** The mass, where the moles are asked that it is worked from. */
function massToWeigh({ id }: CalculatedStep, { activity, readyOf }: StepSurroundings): readonly Span[] {
  const mass = activity?.steps.find(
    (step): step is CalculatedStep =>
      step.kind === 'calculated' && step.quantity === 'mass of solute' && step.buildsOn['moles of solute'] === id,
  );
  const ready = mass && readyOf(mass);
  return ready ? [spanOver(ready, ready.quantity.relation)] : [];
}

/** The ratio, either way up, of the flask of stock and the flask it is diluted in. */
function flasksCompared({ activity, givens, decimalMark }: StepSurroundings): readonly Span[] {
  if (activity?.numbers.recipe !== 'solid, then a dilution') return [];
  const { flask, volume } = activity.numbers.takes;
  const stock = readQuantity(givens[flask], 'volume', flask, { decimalMark });
  const diluted = readQuantity(givens[volume], 'volume', volume, { decimalMark });
  if (!stock.ok || !diluted.ok) return [];
  const ratio = stock.value.value / diluted.value.value;
  return [exactly(ratio), exactly(1 / ratio)];
}

/** Slips that take a number of another row or of another part of the lesson; the entry is known not to be right. */
export function activitySlips(
  step: CalculatedStep,
  { ready, entry, ...around }: StepSurroundings & { readonly ready: PreparedStep; readonly entry: TypedEntry },
): readonly SlipId[] {
  const tolerance = stepTolerance(ready);
  const agrees = (spans: readonly Span[]) => spans.some((span) => fitsSlip(span, { entry, tolerance }));
  switch (step.quantity) {
    case 'molarity':
      return agrees(plannedMolarity(step, around)) ? ['planned-for-made'] : [];
    case 'reagent molarity':
      return agrees(labelledMolarity(step, around)) ? ['planned-for-made'] : [];
    case 'moles of solute':
      return agrees(massToWeigh(step, around)) ? ['mass-reported'] : [];
    case 'dilution factor':
      return agrees(flasksCompared(around)) ? ['flasks-compared'] : [];
    default:
      return [];
  }
}
