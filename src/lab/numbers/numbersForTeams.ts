import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import { activityById, allActivities } from '../lesson/activities.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import { plannerCaution } from '../lesson/plannerCaution.ts';
import type { Setup, TeamNumbers, TeamPlan } from '../lesson/setup.ts';
import { type SlipId, type SlipText, slipTexts } from '../texts/feedback.ts';
import { numbersRemarks, startTexts } from '../texts/numbers.ts';
import { beyondTyped } from './beyondTyped.ts';
import { type Candidate, type CandidateList, startOfRecipe } from './candidates.ts';
import { type Confusion, confusionName, confusions, readySteps, type StepReady } from './confusions.ts';
import { type Dealt, dealtCandidates, type ScoredCandidate } from './dealtCandidates.ts';
import { isSame } from './isSame.ts';
import { type MakeableSets, makeableSets } from './makeableSets.ts';
import { mostFigures } from './nearbyNumbers.ts';
import { portions } from './portions.ts';
import type { Bench, Unmet } from './recipe.ts';
import { type ActivityRecipe, recipeOf } from './recipeOf.ts';
import { readStartNumbers, type StartNumbers } from './startNumbers.ts';
import { teamKeys } from './teamKeys.ts';

/** The given that one of a recipe's numbers is read from. */
const givenOf = (recipe: ActivityRecipe, name: string): string => recipe.takes[name] ?? name;

const refused = (recipe: ActivityRecipe, { about, expected, received, advice }: Unmet) =>
  failure({ code: 'numbers-shelf', argument: givenOf(recipe, about), expected, received, advice });

/** Sizes that pipettes are commonly made in (common practice, no source): what could be added to a shelf. */
const usualPipettesMl = [1, 2, 5, 10, 15, 20, 25, 50, 100];

/** Where a portion is weighed, the pipette nearest to it comes first. */
const usualPipettesFor = (portion: number | undefined): readonly number[] =>
  portion === undefined
    ? usualPipettesMl
    : [...usualPipettesMl].sort((one, other) => Math.abs(one - portion) - Math.abs(other - portion));

/** Why no numbers near the start fit, with the one thing that would free them. */
function nothingFits(
  recipe: ActivityRecipe,
  { start, bench, looked }: { readonly start: StartNumbers; readonly bench: Bench; readonly looked: CandidateList },
): Result<never> {
  const { entry } = recipe;
  const from = startOfRecipe(recipe, start);
  const { lacks } = looked;
  if (lacks?.what === 'pipette') {
    const portion = entry.weighedPortion === undefined ? undefined : from[entry.weighedPortion];
    const size = usualPipettesFor(portion).find((volume) => {
      const shelf = { ...bench.shelf, pipettesMl: [...bench.shelf.pipettesMl, volume] };
      const richer = { ...bench, shelf, deliverable: portions(shelf) };
      const { found } = makeableSets(recipe, start, { bench: richer, teams: 1, seed: '' });
      return found?.sets.some(({ away }) => away === 0);
    });
    return failure({
      code: 'numbers-shelf',
      argument: givenOf(recipe, lacks.about),
      ...startTexts.noPipette(size, lacks.about === 'target' ? 'target' : 'portion'),
    });
  }
  if (lacks !== undefined) {
    return failure({ code: 'numbers-shelf', argument: givenOf(recipe, lacks.about), ...startTexts.noFlask });
  }
  // The demand that stands alone in the way of most sets is the one to free.
  const standing: Record<string, { unmet: Unmet; alone: number; all: number }> = {};
  for (const { numbers } of looked.candidates) {
    const unmet = entry.demands(numbers, bench);
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
  if (worst === undefined) {
    // No number near has the figures, or a table ends below all of them: then the start itself says what is in the way.
    const [unmet] = entry.demands(from, bench);
    return unmet
      ? refused(recipe, unmet)
      : failure({ code: 'numbers-shelf', argument: givenOf(recipe, entry.startsFrom), ...startTexts.nothingNear });
  }
  const atStart = entry.demands(from, bench).find(({ demand }) => demand === worst.unmet.demand);
  return refused(recipe, atStart ?? worst.unmet);
}

/** How many sets are compared for the slips that they hide; more would take longer and find hardly better ones. */
const compared = 500;
/** Sets that a deal is made from at the least, so that a team more or less leaves the others’ numbers alone. */
const poolLeast = 150;

/** The sets in which fewest slips are hidden, and others to make up the least, best first. */
function clearest(
  sets: readonly Candidate[],
  steps: readonly StepReady[],
  { least }: { readonly least: number },
): ScoredCandidate[] {
  const scored = sets
    .slice(0, Math.max(compared, least))
    .map((candidate) => ({ candidate, hidden: confusions(steps, candidate.values).length }))
    .sort((one, other) => one.hidden - other.hidden);
  const best = scored[0]?.hidden ?? 0;
  return scored
    .filter(({ hidden }, place) => hidden === best || place < least)
    .map(({ candidate, hidden }) => ({ ...candidate, isClear: hidden === best }));
}

/** Slips that cannot be told apart on any numbers, because the substance makes them alike. */
function inherentConfusions(recipe: ActivityRecipe | undefined, steps: readonly StepReady[]): ReadonlySet<string> {
  const values: Record<string, number> = {};
  for (const [name, value] of Object.entries(recipe?.entry.odd ?? {})) {
    const given = recipe?.takes[name];
    if (given !== undefined && value !== undefined) values[given] = value;
  }
  return new Set(confusions(steps, values).map(confusionName));
}

const slipWords = (id: SlipId, { step }: Confusion): string => {
  const text: SlipText & { readonly in?: Readonly<Partial<Record<string, SlipText>>> } = slipTexts[id];
  return (text.in?.[step.quantity] ?? text).fits;
};

/** What the numbers hide, in words, the widest spread first. */
function givenUp(
  recipe: ActivityRecipe | undefined,
  steps: readonly StepReady[],
  teams: readonly Readonly<Record<string, number>>[],
): readonly string[] {
  const inherent = inherentConfusions(recipe, steps);
  const frees = recipe?.entry.weighedPortion === undefined ? 'sizes' : 'portion';
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

/** Sets of one difficulty with one filling of a pipette before others; see `pool`. */
const kindsOf = (all: readonly Candidate[], whole: boolean): readonly (readonly Candidate[])[] => {
  const asWhole = ({ wholeFactor }: Candidate) => wholeFactor === whole;
  const oneFilling = ({ fillings }: Candidate) => fillings < 2;
  return [
    all.filter((candidate) => asWhole(candidate) && oneFilling(candidate)),
    all.filter((candidate) => !asWhole(candidate) && oneFilling(candidate)),
    all.filter(asWhole),
    all,
  ];
};

/**
 * The narrowest kind of sets that gives every team its own, or else the one with most. What is given up first stands last:
 * dilutions near the start, one bottle, targets up to the start's, one difficulty, one filling of a pipette.
 */
function poolOf(
  { sets, bottles: [first] }: MakeableSets,
  {
    recipe: { entry },
    whole,
    teams,
  }: { readonly recipe: ActivityRecipe; readonly whole: boolean; readonly teams: number },
): readonly Candidate[] {
  const { bottle } = entry;
  let most: readonly Candidate[] = [];
  for (const furthest of [0, 1, 2]) {
    const near = sets.filter(({ away }) => away <= furthest);
    const ofOne = bottle === undefined ? near : near.filter(({ numbers }) => numbers[bottle] === first);
    for (const ofBottles of [ofOne, near]) {
      for (const within of [ofBottles.filter(({ withinTarget }) => withinTarget), ofBottles]) {
        for (const kind of kindsOf(within, whole)) {
          if (kind.length > most.length) most = kind;
          if (most.length >= teams) return most;
        }
      }
    }
  }
  return most;
}

interface Lesson {
  readonly setup: Setup;
  readonly start: StartNumbers;
  readonly recipe: ActivityRecipe;
  readonly steps: readonly StepReady[];
  /** A number in the class's own decimal mark. */
  readonly inMark: (text: string) => string;
}

/** Numbers for each team from the sets that can be made, and what was given up for them. */
function dealt(
  found: MakeableSets,
  { setup, start, recipe, steps, inMark }: Lesson,
): Dealt & { readonly remarks: readonly string[] } {
  const places = teamKeys(setup.classes);
  const from = startOfRecipe(recipe, start);
  const whole = recipe.entry.isWhole?.(from) ?? false;
  const pool = poolOf(found, { recipe, whole, teams: places.length });
  const clear = clearest(pool, steps, { least: Math.max(poolLeast, 3 * places.length) });
  const outcome = dealtCandidates(clear, {
    places,
    seed: setup.settings.seed,
    entry: recipe.entry,
    bottles: found.bottles,
  });
  return {
    ...outcome,
    remarks: dealRemarks(outcome, { found, start, recipe, whole, different: clear.length, inMark }),
  };
}

/** What was given up so that each team has numbers of its own, in plain words. */
function dealRemarks(
  { given, shared }: Dealt,
  {
    found,
    start,
    recipe,
    whole,
    different,
    inMark,
  }: Pick<Lesson, 'start' | 'recipe' | 'inMark'> & {
    readonly found: MakeableSets;
    readonly whole: boolean;
    readonly different: number;
  },
): readonly string[] {
  const { entry } = recipe;
  const sets = given.map(({ candidate }) => candidate);
  const from = startOfRecipe(recipe, start);
  const isWeighed = entry.weighedPortion !== undefined;
  const remarks: string[] = [];
  const textOf = (name: string, value: number): string =>
    sets.find(({ numbers }) => numbers[name] === value)?.texts[givenOf(recipe, name)] ?? String(value);
  if (sets.some(({ numbers }) => beyondTyped(entry, { numbers, from }).names.length > 0)) {
    remarks.push(numbersRemarks.beyondTyped);
  }
  const { bottle } = entry;
  if (bottle !== undefined) {
    const used = found.bottles.filter((stock) => sets.some(({ numbers }) => numbers[bottle] === stock));
    const texts = used.map((stock) => inMark(textOf(bottle, stock)));
    const typed = from[bottle] ?? Number.NaN;
    const [only] = texts;
    if (texts.length > 1) remarks.push(numbersRemarks.twoBottles(texts));
    else if (only !== undefined && !used.some((stock) => isSame(stock, typed))) {
      remarks.push(numbersRemarks.otherBottle({ typed: inMark(String(typed)), stock: only }));
    }
  }
  if (sets.some(({ fillings }) => fillings === 2)) {
    remarks.push(isWeighed ? numbersRemarks.portionInTwo : numbersRemarks.twoFillings);
  }
  if (new Set(sets.map(({ wholeFactor }) => wholeFactor === whole)).size > 1) remarks.push(numbersRemarks.mixedFactors);
  if (sets.some(({ away }) => away > 0)) remarks.push(numbersRemarks.otherRatios);
  else if (!sets.every(({ withinTarget }) => withinTarget)) remarks.push(numbersRemarks.lessDiluted);
  if (entry.weighedPortion !== undefined) {
    const asked = from[entry.weighedPortion] ?? Number.NaN;
    const taken = [...new Set(sets.map(({ numbers }) => numbers[entry.weighedPortion ?? ''] ?? Number.NaN))];
    const [portion] = taken;
    if (portion !== undefined && taken.length === 1 && !isSame(portion, asked)) {
      remarks.push(numbersRemarks.otherPortion({ asked, portion }));
    }
  }
  if (shared > 0) {
    const figures = Object.keys(sets[0]?.texts ?? {}).flatMap((name) => {
      const read = start.typed[name];
      const kind = Object.entries(recipe.takes).find(([, given]) => given === name)?.[0] ?? '';
      return read && entry.takes[kind]?.kind === 'concentration' ? [read.figures] : [];
    });
    const frees = isWeighed
      ? 'portions'
      : bottle !== undefined
        ? 'sizes for bottles'
        : Math.min(...figures) < mostFigures
          ? 'figures'
          : 'sizes';
    remarks.push(numbersRemarks.shared({ teams: given.length, different, frees }));
  }
  return remarks;
}

function substanceRemarks(recipe: ActivityRecipe | undefined, { substance, remarks }: StartNumbers): readonly string[] {
  const caution = plannerCaution(substance.formula);
  return [
    ...(caution === '' ? [] : [numbersRemarks.caution(substance.formula, caution)]),
    ...(recipe?.entry.dissolves && substance.solubleMolarity === undefined
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
  const decimalMark = decimalMarkOf(settings);
  const steps = readySteps(activity, setup.givens, {
    figures: Number(settings.figures) || 3,
    decimals: Number(settings['atomic-weight decimals']) || 2,
    decimalMark,
  });
  const inMark = (text: string): string => withDecimalMark(text, decimalMark);
  const asTyped = Object.fromEntries(
    activity.givens.map(({ name, fromTable }) => {
      const own = (setup.givens[name] ?? '').trim();
      return [name, own === '' && fromTable ? inMark(start.value.typed[name]?.typed ?? '') : own];
    }),
  );
  const recipe = recipeOf(activity);
  const about = substanceRemarks(recipe, start.value);

  if (!setup.ownNumbers || recipe === undefined) {
    const [unmet] = recipe?.entry.demands(startOfRecipe(recipe, start.value), bench) ?? [];
    if (recipe && unmet) return refused(recipe, unmet);
    const values = Object.fromEntries(Object.entries(start.value.typed).map(([name, { value }]) => [name, value]));
    const teams = teamKeys(setup.classes).map((place): TeamPlan => ({ ...place, givens: asTyped }));
    return success({
      teams,
      remarks: [
        ...about,
        ...(setup.ownNumbers ? [numbersRemarks.noRecipe] : []),
        ...givenUp(
          recipe,
          steps,
          teams.map(() => values),
        ),
      ],
    });
  }

  const count = setup.classes.reduce((sum, { teams }) => sum + teams.length, 0);
  const { found, looked } = makeableSets(recipe, start.value, { bench, teams: count, seed: settings.seed });
  if (found === undefined) return nothingFits(recipe, { start: start.value, bench, looked });
  const { given, remarks } = dealt(found, { setup, start: start.value, recipe, steps, inMark });
  return success({
    teams: given.map(({ place, candidate }): TeamPlan => {
      const own = Object.fromEntries(Object.entries(candidate.texts).map(([name, text]) => [name, inMark(text)]));
      return { ...place, givens: { ...asTyped, ...own } };
    }),
    remarks: [
      ...about,
      ...remarks,
      ...(found.otherDigits ? [numbersRemarks.otherDigits] : []),
      ...givenUp(
        recipe,
        steps,
        given.map(({ candidate }) => candidate.values),
      ),
    ],
  });
}
