import { relativeMass } from '../../src/chemistry/elements.ts';
import type { FilledQuantity } from '../../src/lab/judging/filledQuantity.ts';
import { judgeFilledQuantity, type QuantityCheck, readFilledQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { slipSpans } from '../../src/lab/judging/slipsFound.ts';
import type { Span } from '../../src/lab/judging/span.ts';
import { isOnTarget, stepTolerance } from '../../src/lab/judging/tolerance.ts';
import { spanOver } from '../../src/lab/judging/worked.ts';
import { type Random, seededRandom } from '../../src/lab/numbers/seededRandom.ts';
import type { StepNumbers } from '../../src/lab/quantities/quantityEntry.ts';
import { type QuantityName, quantities } from '../../src/lab/quantities.ts';
import { type DrawnPlan, drawPlan, pick } from './drawnPlans.ts';
import { classWeight, placeOf, typedTo } from './typing.ts';

/** How many of how many. */
export interface Share {
  hits: number;
  of: number;
}
export const share = (): Share => ({ hits: 0, of: 0 });
export const count = (into: Share, hit: boolean) => {
  into.of += 1;
  if (hit) into.hits += 1;
};
export const total = (shares: readonly Share[]): Share =>
  shares.reduce((sum, { hits, of }) => ({ hits: sum.hits + hits, of: sum.of + of }), share());
export const rate = ({ hits, of }: Share): number => (of === 0 ? Number.NaN : hits / of);

export interface SlipShare {
  readonly quantity: QuantityName;
  readonly id: string;
  readonly named: Share;
  /** Of those for which no other slip of the row gives the same figures. */
  readonly alone: Share;
  readonly namedAtTwo: Share;
  /** Random numbers near the answer, to three figures, that it is named for. */
  readonly accused: Share;
  /** Other slips that give the same figures, with how often. */
  readonly twins: Map<string, number>;
  /** Numbers for which the slip gives an answer that is right or close, so that nothing can be told. */
  hidden: number;
}

export interface Findings {
  readonly plans: number;
  readonly honest: Share;
  readonly roundedInBetween: Share;
  readonly slips: readonly SlipShare[];
  /** Random wrong numbers that some slip is named for, by the figures typed. */
  readonly accused: Readonly<Record<1 | 2 | 3 | 4, Share>>;
  /** The same for numbers near the answer to three figures, by quantity. */
  readonly accusedNear: ReadonlyMap<string, Share>;
  readonly mistyped: Share;
  /** Texts that hold the answer, as found. */
  readonly telling: readonly string[];
  readonly texts: number;
}

/** A molar mass as one class works it out: each weight as published, or rounded in one of the permitted ways. */
function classMolarMass(step: FilledQuantity, random: Random): number {
  const atoms = step.formula?.atoms ?? [];
  return atoms.reduce(
    (sum, { element, count: number }) =>
      sum + number * classWeight(relativeMass(element) ?? Number.NaN, { decimals: step.decimals, random }),
    0,
  );
}

const withMolarMass = (step: FilledQuantity, mass: number): FilledQuantity =>
  step.molarMass ? { ...step, molarMass: { low: mass, middle: mass, high: mass } } : step;

/** Where a careful student stops writing: the figures asked, or the place of the stock in a difference. */
function askedPlace(step: FilledQuantity, value: number): number {
  const { asked, quantity } = step;
  const own = 'decimals' in asked ? -asked.decimals : placeOf(value, asked.figures);
  if (!quantity.neverFinerThan || 'decimals' in asked) return own;
  return Math.max(own, placeOf(spanOver(step, quantity.neverFinerThan).middle, asked.figures));
}

/** The numbers in a text, as far as a reader would see them. */
const numbersIn = (text: string): number[] =>
  (text.match(/\d+(?:[.,]\d+)?(?:e[+-]?\d+)?/gi) ?? []).map((digits) => Number(digits.replace(',', '.')));

/** What turns mL into L and a percent into a share stands in many set-ups, whatever the answer is. */
const unitFactors = [100, 1000];

/** Whether a text holds the answer to two figures or more, other than as one of the numbers given. */
export function tellsAnswer(text: string, { answer, given }: { answer: number; given: readonly string[] }): boolean {
  const shown = [...given.flatMap(numbersIn), ...unitFactors];
  return numbersIn(text).some(
    (number) =>
      number !== 0 &&
      !shown.includes(number) &&
      [2, 3, 4].some(
        (figures) => Number(number.toPrecision(figures)) === number && Number(answer.toPrecision(figures)) === number,
      ),
  );
}

/** Rounds every number on the way to three figures without typing it: the molar mass, the amount, the ratio, the answer. */
function roundedInBetween(step: FilledQuantity, random: Random): string {
  const three = (value: number) => Number(typedTo(value, placeOf(value, 3), random() < 0.5 ? 'up' : 'even'));
  const numbers: Record<string, unknown> = { ...step.numbers };
  if (step.molarMass) numbers['molar mass'] = three(classMolarMass(step, random));
  for (const { name, relation } of step.quantity.buildsOn) {
    if (relation) numbers[name] = three(relation(numbers as unknown as StepNumbers));
  }
  const value = step.quantity.relation(numbers as unknown as StepNumbers);
  return typedTo(value, askedPlace(step, value));
}

/** A number that anybody could type by chance: any digits, within three powers of ten of the answer. */
export const randomNumber = (random: Random, { near, figures }: { near: number; figures: number }): string => {
  const value = near * 10 ** (6 * random() - 3);
  return typedTo(value, placeOf(value, figures));
};

/** A number as wrong answers are, to three figures: of the size of the answer, up to three times as large. */
export const numberNear = (random: Random, near: number): string => {
  const value = near * (0.2 + 3 * random());
  return typedTo(value, placeOf(value, 3));
};

/** Counts a wrong number near the answer in the line of each slip of its quantity, and in all. */
export function countNear(
  found: { readonly status: string; readonly slips: readonly string[] },
  { lines, all }: { readonly lines: readonly { readonly id: string; readonly accused: Share }[]; readonly all: Share },
): void {
  if (found.status !== 'not yet') return;
  count(all, found.slips.length > 0);
  for (const { id, accused } of lines) count(accused, found.slips.includes(id));
}

export const shareIn = (shares: Map<string, Share>, name: string): Share => {
  const known = shares.get(name) ?? share();
  shares.set(name, known);
  return known;
};

/** Numbers near the answer for each plan: to tell a share of one in a hundred from one a fifth larger takes thousands. */
export const triesNear = 60;

/** One digit of a right answer hit one key beside, or replaced by any other. */
function mistyped(text: string, random: Random): string {
  const places = [...text].flatMap((sign, at) => (/\d/.test(sign) ? [at] : []));
  const at = pick(random, places);
  const others = '0123456789'.replace(text.charAt(at), '');
  return text.slice(0, at) + pick(random, [...others]) + text.slice(at + 1);
}

function prepared(plan: DrawnPlan): FilledQuantity | undefined {
  const step = readFilledQuantity(
    plan.quantity,
    plan.given.filter(([, value]) => value !== ''),
  );
  return step.ok ? step.value : undefined;
}

/** A line to count in for every slip of some quantities, the misplaced point included. */
export const slipLines = (names: readonly QuantityName[]): SlipShare[] =>
  names.flatMap((quantity) =>
    [...quantities[quantity].slips.map(({ id }) => id), 'power-of-ten'].map(
      (id): SlipShare => ({
        quantity,
        id,
        named: share(),
        alone: share(),
        namedAtTwo: share(),
        accused: share(),
        twins: new Map(),
        hidden: 0,
      }),
    ),
  );

/** Whether two wrong calculations come to the same figures, as typed, for some rounding of atomic weights and of ties. */
const giveTheSame = (entry: string, { spans, place }: { readonly spans: readonly Span[]; readonly place: number }) =>
  spans.some(({ low, high }) => {
    if (!Number.isFinite(low) || !Number.isFinite(high)) return false;
    const [least, most] = [low, high].map((end) =>
      (['up', 'even'] as const).map((ties) => Number(typedTo(end, place, ties))),
    ) as [number[], number[]];
    return Math.min(...least) <= Number(entry) && Number(entry) <= Math.max(...most);
  });

/** Makes every slip of a step, typed to three figures or as many as are asked, and counts whether it is named, and named alone. */
export function findSlips({
  step,
  check,
  random,
  lines,
  more = [],
}: {
  readonly step: FilledQuantity;
  readonly check: (entry: string) => Pick<QuantityCheck, 'status' | 'slip'>;
  readonly random: Random;
  readonly lines: readonly SlipShare[];
  /** What slips beside the quantity give in this row, as typed. */
  readonly more?: readonly (readonly [id: string, entry: string])[];
}): void {
  const { quantity } = step;
  const tolerance = stepTolerance(step);
  const lineOf = (id: string) => {
    const line = lines.find((one) => one.quantity === quantity.name && one.id === id);
    if (!line) throw new Error(`${quantity.name} ${id} has no line`);
    return line;
  };
  // Of a percent error of nothing at all no slip can be told.
  if (tolerance.span.middle === 0) {
    for (const line of lines) if (line.quantity === quantity.name) line.hidden += 1;
    return;
  }
  for (const slip of quantity.slips) {
    const line = lineOf(slip.id);
    // A class that slips has its own rounding of atomic weights too.
    const own = withMolarMass(step, classMolarMass(step, random));
    const spans = 'value' in slip ? slipSpans(own, slip) : slipSpans(step, slip);
    for (const { low, middle, high } of spans) {
      const value = pick(random, [low, middle, high]);
      if (!Number.isFinite(value) || value === 0) continue;
      const place = 'decimals' in step.asked ? -step.asked.decimals : placeOf(value, Math.max(3, step.asked.figures));
      const entry = typedTo(value, place, random() < 0.5 ? 'up' : 'even');
      const found = check(entry);
      if (found.status === 'on target' || found.status === 'close' || isOnTarget(value, tolerance)) {
        line.hidden += 1;
        continue;
      }
      const ids = found.slip.split(' or ');
      count(line.named, ids.includes(slip.id));
      const twins = new Set([
        ...quantity.slips
          .filter((other) => other.id !== slip.id && giveTheSame(entry, { spans: slipSpans(step, other), place }))
          .map(({ id }): string => id),
        ...more.filter(([, typed]) => Number(typed) === Number(entry)).map(([id]) => id),
      ]);
      for (const id of twins) line.twins.set(id, (line.twins.get(id) ?? 0) + 1);
      if (twins.size === 0) count(line.alone, ids.length === 1 && ids[0] === slip.id);
      const two = judgeFilledQuantity(step, typedTo(value, placeOf(value, 2)));
      count(line.namedAtTwo, two.slip.split(' or ').includes(slip.id));
    }
  }
  const target = tolerance.span.middle;
  const power = pick(random, [-3, -2, -1, 1, 2, 3]);
  // The digits of a right answer with the point elsewhere.
  const place = askedPlace(step, target);
  const moved = Number(typedTo(target, place)) * 10 ** power;
  const found = check(typedTo(moved, place + power));
  const line = lineOf('power-of-ten');
  // Where another slip explains it, that one is named in its place.
  if (found.slip !== '' && !found.slip.includes('power-of-ten')) line.hidden += 1;
  else {
    count(line.named, found.slip === 'power-of-ten');
    count(line.alone, found.slip === 'power-of-ten');
  }
}

/**
 * Students over generated plans of every quantity: honest ones, ones who slip, ones who type anything.
 *
 * @param plansEach - How many plans of each quantity.
 */
export function simulate({ plansEach, seed }: { plansEach: number; seed: string }): Findings {
  const random = seededRandom(seed);
  const names = Object.keys(quantities) as QuantityName[];
  const plans = plansEach * names.length;
  const findings = {
    plans: 0,
    honest: share(),
    roundedInBetween: share(),
    slips: slipLines(names),
    accused: { 1: share(), 2: share(), 3: share(), 4: share() },
    accusedNear: new Map<string, Share>(),
    mistyped: share(),
    telling: [] as string[],
    texts: 0,
  };
  while (findings.plans < plans) {
    const quantity = names[findings.plans % names.length] as QuantityName;
    const plan = drawPlan(quantity, random);
    const step = prepared(plan);
    if (!step) throw new Error(`a drawn plan cannot be read: ${JSON.stringify(plan)}`);
    findings.plans += 1;
    const tolerance = stepTolerance(step);
    const target = tolerance.span.middle;
    const given = plan.given.map(([, value]) => String(value));
    const check = (entry: string): QuantityCheck => {
      const found = judgeFilledQuantity(step, entry);
      findings.texts += 1;
      if (tellsAnswer(found.feedback, { answer: target, given })) findings.telling.push(`${entry}: ${found.feedback}`);
      return found;
    };

    for (const ties of ['up', 'even'] as const) {
      const own = withMolarMass(step, classMolarMass(step, random));
      const value = spanOver(own, step.quantity.relation).middle;
      const found = check(typedTo(value, askedPlace(own, value), ties));
      count(findings.honest, found.status === 'on target');
    }
    if (step.quantity.wideClose) {
      const found = check(roundedInBetween(step, random));
      count(findings.roundedInBetween, found.status === 'on target' || found.status === 'close');
    }

    findSlips({ step, check, random, lines: findings.slips });

    for (const figures of [1, 2, 3, 4] as const) {
      for (let more = 0; more < 20; more += 1) {
        const entry = randomNumber(random, { near: target, figures });
        const wrong = check(entry);
        if (wrong.status === 'not yet') count(findings.accused[figures], wrong.slip !== '');
      }
    }
    for (let more = 0; more < triesNear; more += 1) {
      const wrong = check(numberNear(random, target));
      countNear(
        { status: wrong.status, slips: wrong.slip === '' ? [] : wrong.slip.split(' or ') },
        {
          lines: findings.slips.filter((line) => line.quantity === quantity),
          all: shareIn(findings.accusedNear, quantity),
        },
      );
    }
    const right = typedTo(target, askedPlace(step, target));
    for (let more = 0; more < 5; more += 1) {
      const wrong = check(mistyped(right, random));
      if (wrong.status === 'not yet') count(findings.mistyped, wrong.slip !== '');
    }
  }
  return findings;
}
