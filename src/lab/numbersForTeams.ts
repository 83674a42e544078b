import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { activityById, allActivities } from './activities.ts';
import type { Activity } from './activity.ts';
import { type Candidate, type CandidateList, candidatesNear, hasWholeFactor } from './numbers/candidates.ts';
import { type Confusion, confusionName, confusions, readySteps, type StepReady } from './numbers/confusions.ts';
import { type Dealt, dealtCandidates } from './numbers/dealtCandidates.ts';
import { type Bench, type Demand, type Unmet, unmetDemands } from './numbers/demands.ts';
import { isSame, type LessonNumbers } from './numbers/lessonNumbers.ts';
import { mostFigures } from './numbers/nearbyNumbers.ts';
import { portions } from './numbers/portions.ts';
import { readStartNumbers, type StartNumbers } from './numbers/startNumbers.ts';
import { teamKeys } from './numbers/teamKeys.ts';
import { plannerCaution } from './plannerCaution.ts';
import { seededRandom, shuffled } from './seededRandom.ts';
import type { Setup, TeamNumbers, TeamPlan } from './setup.ts';
import { type SlipId, type SlipText, slipTexts } from './texts/feedback.ts';
import { numbersRemarks, startTexts } from './texts/numbers.ts';

/** The given that an unmet demand is about, by its place in the recipe. */
function givenOf({ numbers }: Activity, about: Unmet['about']): string {
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  const names = {
    molarity: solid?.molarity ?? residue?.molarity ?? density?.molarity,
    flask: solid?.flask ?? serial?.flask,
    stock: dilution?.stock ?? serial?.stock,
    target: dilution?.target ?? reagent?.target,
    volume: dilution?.volume ?? reagent?.volume,
    portion: serial?.portion ?? residue?.portion ?? density?.portion,
  };
  return names[about] ?? numbers.formula;
}

const refused = (activity: Activity, { about, expected, received, advice }: Unmet) =>
  failure({ code: 'numbers-shelf', argument: givenOf(activity, about), expected, received, advice });

/** Sizes that pipettes are commonly made in (common practice, no source): what could be added to a shelf. */
const usualPipettesMl = [1, 2, 5, 10, 15, 20, 25, 50, 100];

/** Where all teams weigh one portion, the pipette nearest to it comes first. */
const usualPipettesFor = (portion: number | undefined): readonly number[] =>
  portion === undefined
    ? usualPipettesMl
    : [...usualPipettesMl].sort((one, other) => Math.abs(one - portion) - Math.abs(other - portion));

/** Why no numbers near the start fit, with the one thing that would free them. */
function nothingFits(
  activity: Activity,
  { start, bench, list }: { readonly start: StartNumbers; readonly bench: Bench; readonly list: CandidateList },
): Result<never> {
  if (list.lacks === 'portion') {
    const size = usualPipettesFor(weighedPortionOf(start.lesson)).find((volume) => {
      const shelf = { ...bench.shelf, pipettesMl: [...bench.shelf.pipettesMl, volume] };
      const richer = { ...bench, shelf, deliverable: portions(shelf) };
      return candidatesNear(activity, start, richer).candidates.some(
        ({ lesson }) => unmetDemands(lesson, richer).length === 0,
      );
    });
    return failure({
      code: 'numbers-shelf',
      argument: givenOf(activity, activity.numbers.dilution ? 'target' : 'portion'),
      ...startTexts.noPipette(size, activity.numbers.dilution ? 'target' : 'portion'),
    });
  }
  if (list.lacks !== undefined) {
    return failure({
      code: 'numbers-shelf',
      argument: givenOf(activity, list.lacks === 'flask' ? 'flask' : 'volume'),
      ...startTexts.noFlask,
    });
  }
  // The demand that stands alone in the way of most sets is the one to free.
  const standing: Record<string, { unmet: Unmet; alone: number; all: number }> = {};
  for (const { lesson } of list.candidates) {
    const unmet = unmetDemands(lesson, bench);
    for (const one of unmet) {
      standing[one.demand] ??= { unmet: one, alone: 0, all: 0 };
      const counted = standing[one.demand];
      if (counted) {
        counted.all += 1;
        if (unmet.length === 1) counted.alone += 1;
      }
    }
  }
  const [worst] = Object.values(standing).sort((one, other) => other.alone - one.alone || other.all - one.all);
  if (worst === undefined) throw new Error('Numbers were refused though every demand was met.');
  const atStart = unmetDemands(start.lesson, bench).find(
    ({ demand }: { demand: Demand }) => demand === worst.unmet.demand,
  );
  return refused(activity, atStart ?? worst.unmet);
}

/** How many sets are compared for the slips that they hide; more would take longer and find hardly better ones. */
const compared = 500;
/** Sets that a deal is made from at the least, so that a team more or less leaves the others’ numbers alone. */
const poolLeast = 150;

/** The sets in which fewest slips are hidden, best first. */
function clearest(
  sets: readonly Candidate[],
  steps: readonly StepReady[],
  { least }: { readonly least: number },
): Candidate[] {
  const scored = sets
    .slice(0, Math.max(compared, least))
    .map((candidate) => ({ candidate, hidden: confusions(steps, candidate.values).length }))
    .sort((one, other) => one.hidden - other.hidden);
  const best = scored[0]?.hidden ?? 0;
  return scored.filter(({ hidden }, place) => hidden === best || place < least).map(({ candidate }) => candidate);
}

/** Odd numbers on which every slip can be told from every other, unless the substance itself makes two alike. */
const oddNumbers = { molarity: 0.3173, flask: 237.1, target: 0.04519, volume: 173.3, portion: 13.7 } as const;

function inherentConfusions({ numbers }: Activity, steps: readonly StepReady[]): ReadonlySet<string> {
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  const values: Record<string, number> = {};
  const put = (name: string | undefined, value: number) => {
    if (name !== undefined) values[name] = value;
  };
  for (const name of [solid?.molarity, dilution?.stock, serial?.stock, residue?.molarity, density?.molarity])
    put(name, oddNumbers.molarity);
  for (const name of [solid?.flask, serial?.flask]) put(name, oddNumbers.flask);
  for (const name of [dilution?.target, reagent?.target]) put(name, oddNumbers.target);
  for (const name of [dilution?.volume, reagent?.volume]) put(name, oddNumbers.volume);
  for (const name of [serial?.portion, residue?.portion, density?.portion]) put(name, oddNumbers.portion);
  return new Set(confusions(steps, values).map(confusionName));
}

const slipWords = (id: SlipId, { step }: Confusion): string => {
  const text: SlipText & { readonly in?: Readonly<Partial<Record<string, SlipText>>> } = slipTexts[id];
  return (text.in?.[step.quantity] ?? text).fits;
};

/** What the numbers hide, in words, the widest spread first. */
function givenUp(
  activity: Activity,
  steps: readonly StepReady[],
  teams: readonly Readonly<Record<string, number>>[],
): readonly string[] {
  const inherent = inherentConfusions(activity, steps);
  const frees = (activity.numbers.residue ?? activity.numbers.density) ? 'portion' : 'sizes';
  const counts: Record<string, { readonly confusion: Confusion; teams: number }> = {};
  for (const values of teams) {
    const here: Record<string, Confusion> = {};
    for (const confusion of confusions(steps, values)) here[confusionName(confusion)] = confusion;
    for (const [name, confusion] of Object.entries(here)) {
      if (inherent.has(name)) continue;
      counts[name] = { confusion, teams: (counts[name]?.teams ?? 0) + 1 };
    }
  }
  return Object.values(counts)
    .sort((one, other) => other.teams - one.teams)
    .map(({ confusion, teams: count }) => {
      const words = { step: confusion.step.title, teams: numbersRemarks.teams(count, teams.length) };
      const [first, second] = confusion.slips;
      return second === undefined
        ? numbersRemarks.looksRight({ ...words, slip: slipWords(first, confusion), frees })
        : numbersRemarks.lookAlike({
            ...words,
            slips: `${slipWords(first, confusion)}; ${slipWords(second, confusion)}`,
          });
    });
}

/** mL of a portion that is weighed; undefined where none is. */
const weighedPortionOf = ({ residue, density }: LessonNumbers): number | undefined => (residue ?? density)?.portion;

/** Takes the narrowest kind of sets that gives every team its own: as hard as the start, with one filling of a pipette. */
function dealt(
  sets: readonly Candidate[],
  {
    activity,
    setup,
    start,
    steps,
  }: {
    readonly activity: Activity;
    readonly setup: Setup;
    readonly start: StartNumbers;
    readonly steps: readonly StepReady[];
  },
): Dealt & { readonly remarks: readonly string[]; readonly different: number } {
  const places = teamKeys(setup.classes);
  const whole = hasWholeFactor(start.lesson);
  const asWhole = ({ wholeFactor }: Candidate) => wholeFactor === whole;
  const oneFilling = ({ fillings }: Candidate) => fillings < 2;
  const kindsOf = (all: readonly Candidate[]) => [
    all.filter((candidate) => asWhole(candidate) && oneFilling(candidate)),
    all.filter((candidate) => !asWhole(candidate) && oneFilling(candidate)),
    all.filter(asWhole),
    all,
  ];
  const near = sets.filter(({ nearRatio }) => nearRatio);
  const kinds = near.length < sets.length ? [...kindsOf(near), ...kindsOf(sets)] : kindsOf(sets);
  let outcome: (Dealt & { readonly different: number }) | undefined;
  for (const kind of kinds) {
    if (kind.length === 0) continue;
    const pool = clearest(kind, steps, { least: Math.max(poolLeast, 3 * places.length) });
    const attempt = { ...dealtCandidates(pool, places, setup.settings.seed), different: pool.length };
    if (outcome === undefined || attempt.shared < outcome.shared) outcome = attempt;
    if (outcome.shared === 0) break;
  }
  if (outcome === undefined) throw new Error('There are no numbers to deal.');
  const given = outcome.given.map(({ candidate }) => candidate);
  const asked = weighedPortionOf(start.lesson);
  const portion = given[0] && weighedPortionOf(given[0].lesson);
  const otherPortion =
    asked === undefined || portion === undefined || isSame(asked, portion)
      ? []
      : [numbersRemarks.otherPortion({ asked, portion })];
  // Where all teams weigh one portion, sizes on the shelf would give no more sets, and figures only up to the third.
  const molarity = start.typed[(activity.numbers.residue ?? activity.numbers.density)?.molarity ?? ''];
  const frees = molarity === undefined ? 'sizes' : molarity.figures < mostFigures ? 'figures' : 'nothing';
  const twoFillings = asked === undefined ? numbersRemarks.twoFillings : numbersRemarks.portionInTwo;
  return {
    ...outcome,
    remarks: [
      ...(given.some(({ fillings }) => fillings === 2) ? [twoFillings] : []),
      ...(given.some(asWhole) && !given.every(asWhole) ? [numbersRemarks.mixedFactors] : []),
      ...(given.every(({ nearRatio }) => nearRatio) ? [] : [numbersRemarks.otherRatios]),
      ...otherPortion,
      ...(outcome.shared > 0
        ? [numbersRemarks.shared({ teams: places.length, different: outcome.different, frees })]
        : []),
    ],
  };
}

function substanceRemarks({ numbers }: Activity, { substance, remarks }: StartNumbers): readonly string[] {
  const caution = plannerCaution(substance.formula);
  return [
    ...(caution === '' ? [] : [numbersRemarks.caution(substance.formula, caution)]),
    ...((numbers.solid ?? numbers.residue ?? numbers.density) && substance.solubleMolarity === undefined
      ? [numbersRemarks.solubilityUnknown(substance.formula)]
      : []),
    ...remarks,
  ];
}

/**
 * Numbers for every team of a plan. With `ownNumbers` each team gets its own near the start: the same for the same seed,
 * as many figures, of equal difficulty, makeable with the shelf, and such that known slips can be told apart as far as
 * the shelf allows. Without, every team gets the start's numbers as typed, once they meet the same demands.
 *
 * @returns Fails with `numbers-start` or a reading error for a start value that cannot be used, and with `numbers-shelf`
 * where a demand of the shelf cannot be met: which one, and what would free it. `argument` is the given's name.
 */
export function numbersForTeams(setup: Setup): Result<TeamNumbers> {
  const activity = activityById(setup.activity);
  if (activity === undefined) {
    const known = allActivities().map(({ id }) => id);
    return failure({
      code: 'numbers-start',
      argument: 'activity',
      ...startTexts.activity(quoted(setup.activity), known),
    });
  }
  const start = readStartNumbers(activity, setup);
  if (!start.ok) return start;
  const { settings, shelf } = setup;
  const bench: Bench = { shelf, deliverable: portions(shelf), substance: start.value.substance };
  const decimalMark = settings['decimal mark'] === 'comma' ? 'comma' : 'point';
  const steps = readySteps(activity, setup.givens, {
    figures: Number(settings.figures) || 3,
    decimals: Number(settings['atomic-weight decimals']) || 2,
    decimalMark,
  });
  const inMark = (text: string): string => (decimalMark === 'comma' ? text.replace('.', ',') : text);
  const asTyped = Object.fromEntries(
    activity.givens.map(({ name, fromTable }) => {
      const own = (setup.givens[name] ?? '').trim();
      return [name, own === '' && fromTable ? inMark(start.value.typed[name]?.typed ?? '') : own];
    }),
  );
  const about = substanceRemarks(activity, start.value);

  if (!setup.ownNumbers) {
    const [unmet] = unmetDemands(start.value.lesson, bench);
    if (unmet) return refused(activity, unmet);
    const values = Object.fromEntries(Object.entries(start.value.typed).map(([name, { value }]) => [name, value]));
    const teams = teamKeys(setup.classes).map((place): TeamPlan => ({ ...place, givens: asTyped }));
    return success({
      teams,
      remarks: [
        ...about,
        ...givenUp(
          activity,
          steps,
          teams.map(() => values),
        ),
      ],
    });
  }

  const list = candidatesNear(activity, start.value, bench);
  const sets = shuffled(
    list.candidates.filter(({ lesson }) => unmetDemands(lesson, bench).length === 0),
    seededRandom(`${settings.seed} sets`),
  );
  if (sets.length === 0) return nothingFits(activity, { start: start.value, bench, list });
  const { given, remarks } = dealt(sets, { activity, setup, start: start.value, steps });
  return success({
    teams: given.map(({ place, candidate }): TeamPlan => {
      const own = Object.fromEntries(Object.entries(candidate.texts).map(([name, text]) => [name, inMark(text)]));
      return { ...place, givens: { ...asTyped, ...own } };
    }),
    remarks: [
      ...about,
      ...remarks,
      ...(list.otherDigits ? [numbersRemarks.otherDigits] : []),
      ...givenUp(
        activity,
        steps,
        given.map(({ candidate }) => candidate.values),
      ),
    ],
  });
}
