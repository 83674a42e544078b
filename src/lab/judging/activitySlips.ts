import { readQuantity } from '../../measurement/readQuantity.ts';
import type { CalculatedStep } from '../lesson/activity.ts';
import type { QuantityName } from '../quantities.ts';
import type { SlipId } from '../texts/feedback.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import type { Surroundings } from './judgedRow.ts';
import { fitsSlip } from './slipsFound.ts';
import type { Span } from './span.ts';
import { stepTolerance } from './tolerance.ts';
import type { TypedEntry } from './typedEntry.ts';
import { unitKind } from './unitKind.ts';
import { spanOver } from './worked.ts';

/** What surrounds a step in its activity, for slips that its own quantity knows nothing of. */
interface StepSurroundings extends Pick<Surroundings, 'activity' | 'stepOf' | 'givens'> {
  readonly readyOf: (step: CalculatedStep) => FilledQuantity | undefined;
  readonly decimalMark: 'point' | 'comma';
  /** The step itself with its numbers in place. */
  readonly ready: FilledQuantity;
}

const exactly = (value: number): Span => ({ low: value, middle: value, high: value });

/** A given of the team as a number in the unit of its column; nothing where it cannot be read. */
function givenNumber(name: string | undefined, { activity, givens, decimalMark }: StepSurroundings): readonly number[] {
  const given = activity?.givens.find((one) => one.name === name);
  if (given === undefined || given.unit === '') return [];
  const kind = given.unit === '%' ? 'percent' : unitKind(given.unit);
  const read = readQuantity(givens[given.name], kind, given.name, { decimalMark });
  return read.ok ? [read.value.value] : [];
}

/** The given that a row of this quantity takes a number from; undefined where no such row takes it from one. */
function givenOf(
  { activity }: StepSurroundings,
  { quantity, takes }: { readonly quantity: QuantityName; readonly takes: string },
): string | undefined {
  for (const step of activity?.steps ?? []) {
    if (step.kind !== 'calculated' || step.quantity !== quantity) continue;
    const source = step.takes[takes];
    if (source && 'given' in source) return source.given;
  }
  return undefined;
}

/** The flask that a portion of the stock is made up in, and how strong it becomes there, as the rows of the lesson ask. */
const dilutionAsked = (around: StepSurroundings) => ({
  target: givenOf(around, { quantity: 'stock volume', takes: 'target molarity' }),
  flask: givenOf(around, { quantity: 'stock volume', takes: 'target volume' }),
});

/** The molarity planned, where that of a weighed mass is asked. */
function plannedMolarity(step: CalculatedStep, { stepOf, readyOf }: StepSurroundings): readonly number[] {
  const { mass } = step.takes;
  const weighed = mass && 'entryOf' in mass ? stepOf(mass.entryOf) : undefined;
  const planned =
    weighed?.kind === 'measured' && typeof weighed.expects === 'string' ? stepOf(weighed.expects) : undefined;
  if (planned?.kind !== 'calculated' || planned.quantity !== 'mass of solute') return [];
  const ready = readyOf(planned);
  const molarity = ready?.numbers.molarity;
  return typeof molarity === 'number' ? [molarity] : [];
}

/** What the planned stock gives, where the stock really made is to be worked with, and the plan for the dilution itself. */
function plannedDilution(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const { 'stock molarity': stock, 'final volume': volume } = step.takes;
  const made = stock && 'entryOf' in stock ? around.stepOf(stock.entryOf) : undefined;
  if (made?.kind !== 'calculated') return [];
  const planned = plannedMolarity(made, around);
  if (planned.length === 0) return [];
  const worked = planned.map((molarity) =>
    spanOver(around.ready, around.ready.quantity.relation, { 'stock molarity': molarity }),
  );
  const { target, flask } = dilutionAsked(around);
  const isOfPlan = flask !== undefined && volume && 'given' in volume && volume.given === flask;
  return [...worked, ...(isOfPlan ? givenNumber(target, around).map(exactly) : [])];
}

/** The molarity on the label, where that of a mass percent and a density found at the bench is asked. */
function labelledMolarity(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const { density } = step.takes;
  if (!density || !('entryOf' in density)) return [];
  return givenNumber(givenOf(around, { quantity: 'percent error', takes: 'accepted' }), around).map(exactly);
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
function flasksCompared(around: StepSurroundings): readonly Span[] {
  const { flask } = dilutionAsked(around);
  const [stock] = givenNumber(givenOf(around, { quantity: 'mass of solute', takes: 'volume' }), around);
  const [diluted] = givenNumber(flask, around);
  if (stock === undefined || diluted === undefined) return [];
  return [exactly(stock / diluted), exactly(diluted / stock)];
}

/**
 * The right relation with another given of the same unit in place of one that the step takes. Those that it takes anyway
 * are no others, and two of them changed at once are another question.
 */
function otherGivens(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  const { activity, ready } = around;
  const taken = Object.values(step.takes).flatMap((source) => ('given' in source ? [source.given] : []));
  return Object.entries(step.takes).flatMap(([name, source]) => {
    if (!('given' in source)) return [];
    const own = activity?.givens.find((given) => given.name === source.given);
    if (own === undefined || own.unit === '') return [];
    return (activity?.givens ?? [])
      .filter((other) => other.unit === own.unit && !taken.includes(other.name))
      .flatMap((other) => givenNumber(other.name, around))
      .map((value) => spanOver(ready, ready.quantity.relation, { [name]: value }));
  });
}

/** In the second flask of a row, and after: the stock over as many times the factor as there were dilutions. */
function factorsAdded(step: CalculatedStep, around: StepSurroundings): readonly Span[] {
  let stage = 1;
  let first = step;
  const alike = (one: CalculatedStep, other: CalculatedStep) =>
    (['stock volume', 'final volume'] as const).every(
      (name) => JSON.stringify(one.takes[name]) === JSON.stringify(other.takes[name]),
    );
  for (;;) {
    const source = first.takes['stock molarity'];
    if (!source || 'given' in source) {
      if (stage === 1) return [];
      const { ready } = around;
      return givenNumber(source?.given, around).map((stock) =>
        spanOver(ready, ready.quantity.relation, { 'stock molarity': stock / stage }),
      );
    }
    const before = around.stepOf(source.entryOf);
    if (before?.kind !== 'calculated' || before.quantity !== 'diluted molarity' || !alike(before, step)) return [];
    stage += 1;
    first = before;
  }
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
