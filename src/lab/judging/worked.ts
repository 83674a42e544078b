import type { Calculation, StepNumbers } from '../quantities/quantityEntry.ts';
import type { Carried, FilledQuantity } from './filledQuantity.ts';
import type { Span } from './span.ts';

/** The numbers of a step with one molar mass in place, and everything that the quantity builds on worked from them. */
function numbersWith(step: FilledQuantity, molarMass: number, carried: Carried): StepNumbers {
  const numbers: { -readonly [Name in keyof StepNumbers]: StepNumbers[Name] } = {
    ...step.numbers,
    'molar mass': molarMass,
    ...carried,
  };
  for (const { name, relation } of step.quantity.buildsOn) {
    if (carried[name] === undefined && relation) numbers[name] = relation(numbers);
  }
  return numbers;
}

const ordered = (first: number, middle: number, last: number): Span => ({
  low: Math.min(first, middle, last),
  middle,
  high: Math.max(first, middle, last),
});

/**
 * Results of calculations that give several values, over every permitted rounding of atomic weights. The molar mass is
 * monotone in each weight and each calculation is monotone in the molar mass, so the ends come from its two ends.
 */
export function spansOver(
  step: FilledQuantity,
  calculation: (numbers: StepNumbers) => number | readonly number[],
  {
    molarMass = step.molarMass,
    carried = {},
  }: { readonly molarMass?: Span | undefined; readonly carried?: Carried } = {},
): Span[] {
  const at = (mass: number): readonly number[] => {
    const result = calculation(numbersWith(step, mass, carried));
    return typeof result === 'number' ? [result] : result;
  };
  if (!molarMass) return at(Number.NaN).map((value) => ordered(value, value, value));
  const [low, high] = [at(molarMass.low), at(molarMass.high)];
  return at(molarMass.middle).map((middle, index) => ordered(low[index] ?? middle, middle, high[index] ?? middle));
}

/** The one span of a calculation that gives one value. */
export function spanOver(step: FilledQuantity, calculation: Calculation, carried: Carried = {}): Span {
  const [span] = spansOver(step, calculation, { carried });
  if (!span) throw new Error(`${step.quantity.name}: a calculation gave no value`);
  return span;
}
