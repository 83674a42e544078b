import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity, CalculatedStep, Step } from '../lesson/activity.ts';
import type { QuantityName } from '../quantities.ts';
import type { SlipId } from '../texts/feedback.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import type { Surroundings } from './judgedRow.ts';
import { fitsSlip } from './slipsFound.ts';
import type { Span } from './span.ts';
import { stepTolerance } from './tolerance.ts';
import type { TypedEntry } from './typedEntry.ts';
import { givenKind } from './unitKind.ts';
import { spanOver } from './worked.ts';

/** What surrounds a step in its activity, for slips that its own quantity knows nothing of. */
interface StepSurroundings extends Pick<Surroundings, 'stepOf' | 'givens'> {
  readonly activity: Activity;
  readonly readyOf: (step: CalculatedStep) => FilledQuantity | undefined;
  readonly decimalMark: 'point' | 'comma';
  /** The step itself with its numbers in place. */
  readonly ready: FilledQuantity;
}

const exactly = (value: number): Span => ({ low: value, middle: value, high: value });

/** A given of the team as a number in the unit of its column; nothing where it cannot be read. */
function givenNumber(name: string | undefined, { activity, givens, decimalMark }: StepSurroundings): readonly number[] {
  const given = activity.givens.find((one) => one.name === name);
  const kind = given && givenKind(given.unit);
  if (given === undefined || kind === undefined) return [];
  const read = readQuantity(givens[given.name], kind, given.name, { decimalMark });
  return read.ok ? [read.value.value] : [];
}

/** Where a step takes a number from: a given, or the entry of another row. */
const sourceOf = ({ takes }: CalculatedStep, name: string): { readonly given?: string; readonly entryOf?: string } =>
  takes[name] ?? {};

/** The row whose entry a step takes a number from. */
export function rowBehind(
  step: CalculatedStep,
  name: string,
  { stepOf }: Pick<Surroundings, 'stepOf'>,
): Step | undefined {
  const { entryOf } = sourceOf(step, name);
  return entryOf === undefined ? undefined : stepOf(entryOf);
}

const calculatedSteps = ({ activity }: StepSurroundings): readonly CalculatedStep[] =>
  activity.steps.filter((step) => step.kind === 'calculated');

/** The given that the row of this quantity takes a number from, where the lesson has such a row. */
function givenOf(
  around: StepSurroundings,
  { quantity, takes }: { readonly quantity: QuantityName; readonly takes: string },
): string | undefined {
  const row = calculatedSteps(around).find((step) => step.quantity === quantity);
  return row && sourceOf(row, takes).given;
}

/** The flask that a portion of the stock is made up in, and how strong it becomes there, as the rows of the lesson ask. */
const dilutionAsked = (around: StepSurroundings) => ({
  target: givenOf(around, { quantity: 'stock volume', takes: 'target molarity' }),
  flask: givenOf(around, { quantity: 'stock volume', takes: 'target volume' }),
});

/** The molarity planned, where that of a weighed mass is asked. */
function plannedMolarity(step: CalculatedStep, around: StepSurroundings): readonly number[] {
  const weighed = rowBehind(step, 'mass', around);
  const planned =
    weighed?.kind === 'measured' && typeof weighed.expects === 'string' ? around.stepOf(weighed.expects) : undefined;
  if (planned?.kind !== 'calculated') return [];
  const molarity = around.readyOf(planned)?.numbers.molarity;
  return typeof molarity === 'number' ? [molarity] : [];
}

/** What the planned stock gives, where the stock really made is to be worked with, and the plan for the dilution itself. */
function plannedDilution(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const made = rowBehind(step, 'stock molarity', around);
  const planned = made?.kind === 'calculated' ? plannedMolarity(made, around) : [];
  const { target, flask } = dilutionAsked(around);
  const isOfPlan = sourceOf(step, 'final volume').given === flask;
  return planned.flatMap((molarity) => [
    spanOver(around.ready, around.ready.quantity.relation, { 'stock molarity': molarity }),
    ...(isOfPlan ? givenNumber(target, around).map(exactly) : []),
  ]);
}

/** The molarity on the label, where that of a mass percent and a density found at the bench is asked. */
function labelledMolarity(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  if (sourceOf(step, 'density').entryOf === undefined) return [];
  return givenNumber(givenOf(around, { quantity: 'percent error', takes: 'accepted' }), around).map(exactly);
}

/** The mass, where the moles are asked that it is worked from. */
function massToWeigh({ id }: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const mass = calculatedSteps(around).find(({ buildsOn }) => buildsOn['moles of solute'] === id);
  const ready = mass && around.readyOf(mass);
  return ready ? [spanOver(ready, ready.quantity.relation)] : [];
}

/** The ratio, either way up, of the flask of stock and the flask it is diluted in. */
function flasksCompared(around: StepSurroundings): readonly Span[] {
  const stocks = givenNumber(givenOf(around, { quantity: 'mass of solute', takes: 'volume' }), around);
  const flasks = givenNumber(dilutionAsked(around).flask, around);
  return stocks.flatMap((stock) => flasks.flatMap((flask) => [exactly(stock / flask), exactly(flask / stock)]));
}

/**
 * The right relation with another given of the same unit in place of one that the step takes. Those that it takes anyway
 * are no others, and two of them changed at once are another question.
 */
function otherGivens(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const { activity, ready } = around;
  const names = Object.keys(step.takes);
  const taken = names.map((name) => sourceOf(step, name).given);
  return names.flatMap((name, at) => {
    const own = activity.givens.find((given) => given.name === taken[at]);
    return activity.givens
      .filter((other) => other.unit === own?.unit && !taken.includes(other.name))
      .flatMap((other) => givenNumber(other.name, around))
      .map((value) => spanOver(ready, ready.quantity.relation, { [name]: value }));
  });
}

/** In the second flask of a row, and after: the stock over as many times the factor as there were dilutions. */
function factorsAdded(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const isAlike = (other: CalculatedStep) =>
    ['stock volume', 'final volume'].every(
      (name) => JSON.stringify(other.takes[name]) === JSON.stringify(step.takes[name]),
    );
  let first = step;
  let dilutions = 1;
  for (;;) {
    const before = rowBehind(first, 'stock molarity', around);
    if (before?.kind !== 'calculated' || !isAlike(before)) break;
    first = before;
    dilutions += 1;
  }
  const { ready } = around;
  return givenNumber(sourceOf(first, 'stock molarity').given, around).map((stock) =>
    spanOver(ready, ready.quantity.relation, { 'stock molarity': stock / dilutions }),
  );
}

/** Slips beside the quantity itself, each with what it gives for a step. */
type ActivitySlip = readonly [id: SlipId, spans: (step: CalculatedStep, around: StepSurroundings) => readonly Span[]];
const otherGivenUsed: ActivitySlip = ['other-given-used', otherGivens];
const plannedStockUsed: ActivitySlip = ['planned-for-made', plannedDilution];

const slipsOf: Readonly<Partial<Record<QuantityName, readonly ActivitySlip[]>>> = {
  molarity: [['planned-for-made', (step, around) => plannedMolarity(step, around).map(exactly)]],
  'reagent molarity': [['planned-for-made', labelledMolarity]],
  'moles of solute': [['mass-reported', massToWeigh], otherGivenUsed],
  'mass of solute': [otherGivenUsed],
  'dilution factor': [['flasks-compared', (_, around) => flasksCompared(around)], plannedStockUsed],
  'stock volume': [plannedStockUsed, otherGivenUsed],
  'water volume': [plannedStockUsed],
  'diluted molarity': [plannedStockUsed, ['factors-added', factorsAdded], otherGivenUsed],
  'ion molarity': [otherGivenUsed],
};

/** Every slip beside the quantity itself that a row of it can be asked about. */
export const activitySlipIds = (quantity: QuantityName): readonly SlipId[] =>
  (slipsOf[quantity] ?? []).map(([id]) => id);

/**
 * Slips that take a number of another row or of another part of the lesson; the entry is known not to be right. The
 * planned value in place of the real one wins over any other given.
 */
export function activitySlips(
  step: CalculatedStep,
  { entry, ...around }: StepSurroundings & { readonly entry: TypedEntry },
): readonly SlipId[] {
  const tolerance = stepTolerance(around.ready);
  const found = (slipsOf[step.quantity] ?? [])
    .filter(([, spans]) => spans(step, around).some((span) => fitsSlip(span, { entry, tolerance })))
    .map(([id]) => id);
  return found.includes('planned-for-made') ? found.filter((id) => id !== 'other-given-used') : found;
}
