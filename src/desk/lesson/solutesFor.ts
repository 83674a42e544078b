import { readFormula } from '../../chemistry/readFormula.ts';
import type { Activity } from '../../lab/lesson/activity.ts';
import { defaultSettings } from '../../lab/lesson/defaultSettings.ts';
import { type OfferedSolute, proposedSolutes } from '../../lab/lesson/solutes.ts';
import { startingGivens } from '../../lab/lesson/startingGivens.ts';
import { recipeOf } from '../../lab/numbers/recipeOf.ts';
import { readStartNumbers } from '../../lab/numbers/startNumbers.ts';

const isHydrate = (formula: string): boolean => {
  const read = readFormula(formula);
  return read.ok && read.value.hydrate !== undefined;
};

/** Whether numbers can be made for this substance in this activity, as far as the substance decides it. */
function isAccepted(activity: Activity, formula: string): boolean {
  const read = readStartNumbers(activity, {
    givens: { ...startingGivens(activity), [activity.numbers.formula]: formula },
    settings: defaultSettings,
  });
  return read.ok || read.error.argument !== activity.numbers.formula;
}

/** The substances that an activity can be done with; undefined where any solute that the planner proposes will do. */
export function solutesFor(activity: Activity): readonly OfferedSolute[] | undefined {
  const all = proposedSolutes();
  const start = activity.givens.find(({ name }) => name === activity.numbers.formula)?.start ?? '';
  const own = recipeOf(activity)?.entry.offers?.();
  const offered = own ?? all.filter(({ formula }) => !isHydrate(start) || isHydrate(formula));
  const accepted = offered.filter(({ formula }) => isAccepted(activity, formula));
  return own === undefined && accepted.length === all.length ? undefined : accepted;
}
