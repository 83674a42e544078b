import type { TeamPlan } from '../lesson/setup.ts';
import { portions } from '../numbers/portions.ts';
import { recipeNumbers } from '../numbers/recipeNumbers.ts';
import { recipeOf } from '../numbers/recipeOf.ts';
import { readStartNumbers } from '../numbers/startNumbers.ts';
import { type DayInput, type DayPreparation, dayPreparation } from './dayPreparation.ts';
import { roundedUp } from './spare.ts';

/** A substance that is used up, weighed from its jar or measured from its bottle. */
type Consumed =
  | { readonly formula: string; readonly unit: 'g'; readonly amount: number; readonly purityPercent?: number }
  | { readonly formula: string; readonly unit: 'mL'; readonly amount: number; readonly massPercent: number };

/** What would make less, where something would. */
type Saving =
  | {
      readonly by: 'smaller flasks';
      readonly flaskMl: number;
      /** Solutions made, and waste, in mL, if teams made theirs in these where the shelf and the balance allow it. */
      readonly madeMl: number;
      readonly wasteMl: number;
    }
  | { readonly by: 'ready stock' }
  | { readonly by: 'same numbers'; readonly solutions: number; readonly wasteMl: number };

/** What goes in, what is made of it, and what is poured away in the end: for all teams of a plan, without spare. */
export interface MaterialBalance {
  readonly consumed: readonly Consumed[];
  /** mL of stock and other first solutions, made by teams and by staff. */
  readonly madeMl: number;
  /** mL of these that are taken on: diluted, dried or weighed. Undefined where making them is the whole lesson. */
  readonly usedMl: number | undefined;
  /** mL to pour away in the end: all that is left, weaker solutions and rinsings included. */
  readonly wasteMl: number;
  /** Less than half of what is made is taken on. */
  readonly isMostlyWaste: boolean;
  readonly saving: Saving | undefined;
}

/** Share of a first solution that has to be taken on, or else most of it is thrown away. */
const half = 0.5;
/** A saving is told where it leaves no more than this share. */
const worthIt = 0.8;
/** Different solutions of one reagent that staff make without a word. */
const fewSolutions = 2;

const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

/** mL of first solutions: the teams' own, and those of staff. */
const madeIn = ({ ownStocks, staffMade }: DayPreparation): number =>
  sum(ownStocks.map(({ madeMl }) => madeMl)) + sum(staffMade.map(({ flaskMl, fillings }) => flaskMl * fillings));

/** mL poured away: what teams leave, and what stays over of what staff made. */
function wasteIn({ waste, staffMade }: DayPreparation): number {
  const left = staffMade.map(
    // What staff make in front of a class is for no team to use up.
    ({ flaskMl, fillings, neededMl, isWatched }) => flaskMl * fillings - (isWatched ? 0 : neededMl),
  );
  return sum(waste.map(({ millilitres }) => millilitres)) + sum(left);
}

function consumedIn({ solids, staffMade, poured }: DayPreparation, step: number): readonly Consumed[] {
  const totals = new Map<string, Consumed>();
  const add = (one: Consumed) => {
    const { amount, ...what } = one;
    const key = JSON.stringify(what);
    totals.set(key, { ...one, amount: (totals.get(key)?.amount ?? 0) + amount });
  };
  for (const { formula, purityPercent, grams } of solids) {
    add({ formula, unit: 'g', amount: grams, ...(purityPercent === undefined ? {} : { purityPercent }) });
  }
  for (const { formula, from } of staffMade) {
    if (from.kind === 'solid') add({ formula: formula.text, unit: 'g', amount: from.gramsInAll });
    else add({ formula: formula.text, unit: 'mL', amount: from.millilitresInAll, massPercent: from.massPercent });
  }
  for (const { formula, massPercent, millilitres } of poured) {
    add({ formula, unit: 'mL', amount: millilitres, massPercent });
  }
  return [...totals.values()].map((one) => ({ ...one, amount: roundedUp(one.amount, one.unit === 'g' ? step : 0.1) }));
}

/** Teams with their first solution in a smaller flask, each where its numbers can still be made. */
function inSmallerFlasks({ activity, teams, shelf, settings }: DayInput, flaskMl: number): readonly TeamPlan[] {
  const recipe = recipeOf(activity);
  const given = recipe?.takes[recipe.entry.madeIn ?? ''];
  if (recipe === undefined || given === undefined) return teams;
  return teams.map((team) => {
    const givens = { ...team.givens, [given]: String(flaskMl) };
    const own = readStartNumbers(activity, { settings, givens: team.givens });
    const start = readStartNumbers(activity, { settings, givens });
    if (!start.ok || !own.ok || !((own.value.typed[given]?.value ?? 0) > flaskMl)) return team;
    const { typed, substance } = start.value;
    const values = Object.fromEntries(Object.entries(typed).map(([name, { value }]) => [name, value]));
    const bench = { shelf, deliverable: portions(shelf), substance };
    return recipe.entry.demands(recipeNumbers(recipe, values), bench).length === 0 ? { ...team, givens } : team;
  });
}

function savingOf(day: DayPreparation, input: DayInput): Saving | undefined {
  const { shelf } = input;
  const made = madeIn(day);
  const reagents = day.staffMade.filter(({ isWatched }) => isWatched);
  if (reagents.length > fewSolutions) {
    const [first] = input.teams;
    const teams = input.teams.map((team) => ({ ...team, givens: first?.givens ?? team.givens }));
    return { by: 'same numbers', solutions: reagents.length, wasteMl: wasteIn(dayPreparation({ ...input, teams })) };
  }
  if (day.ownStocks.length === 0) return undefined;
  const largest = Math.max(...day.uses.map((use) => use.made?.volume ?? 0));
  const tried = shelf.flasksMl
    .filter((flaskMl) => flaskMl < largest)
    .map((flaskMl) => {
      const smaller = dayPreparation({ ...input, teams: inSmallerFlasks(input, flaskMl) });
      return { flaskMl, madeMl: madeIn(smaller), wasteMl: wasteIn(smaller) };
    })
    .filter(({ madeMl }) => madeMl <= worthIt * made)
    .sort((one, other) => one.madeMl - other.madeMl || other.flaskMl - one.flaskMl);
  const [best] = tried;
  if (best) return { by: 'smaller flasks', ...best };
  return day.uses.some(({ takenFromOwn }) => takenFromOwn) ? { by: 'ready stock' } : undefined;
}

/** The material balance of a plan, before or after it is built. A line that cannot be read counts for nothing. */
export function materialBalance(input: DayInput): MaterialBalance {
  const day = dayPreparation(input);
  const madeMl = madeIn(day);
  const taken = day.uses
    .flatMap((use) => [use.taken?.volume, use.takenFromOwn?.volume])
    .filter((one) => one !== undefined);
  const usedMl = taken.length === 0 ? undefined : Number(sum(taken).toFixed(1));
  const isMostlyWaste = usedMl !== undefined && usedWithRinsing(day) < half * madeMl;
  const saving = savingOf(day, input);
  return {
    consumed: consumedIn(day, input.shelf.balanceReadabilityG),
    madeMl,
    usedMl,
    wasteMl: roundedUp(wasteIn(day), 1),
    isMostlyWaste,
    saving: saving?.by === 'ready stock' && !isMostlyWaste ? undefined : saving,
  };
}

/** mL that are taken of stocks that stand ready, rinsing included, and of teams' own. */
const usedWithRinsing = ({ staffMade, uses }: DayPreparation): number =>
  sum(staffMade.map(({ neededMl }) => neededMl)) + sum(uses.map(({ takenFromOwn }) => takenFromOwn?.volume ?? 0));
