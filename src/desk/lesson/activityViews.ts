import { allActivities } from '../../lab/lesson/activities.ts';
import type { Activity } from '../../lab/lesson/activity.ts';
import { periodCount } from '../../lab/lesson/periodPlan.ts';
import { recipeOf } from '../../lab/numbers/recipeOf.ts';
import type { ActivityView } from '../views.ts';
import { solutesFor } from './solutesFor.ts';

let made: readonly ActivityView[] | undefined;

/** The activities that a lesson may have, with what each asks for. They never change, so they are worked out once. */
export function activityViews(): readonly ActivityView[] {
  made ??= allActivities().map((activity) => {
    const { id, title, aim, givens } = activity;
    const flasks = flaskGivens(activity);
    const solutes = solutesFor(activity);
    return {
      id,
      title,
      aim,
      periods: periodCount(activity),
      givens: givens.map(({ name, unit, about, optional, fromTable, start }) => ({
        name,
        unit,
        about,
        optional: optional === true || fromTable === true,
        ...(flasks.includes(name) ? { flask: true } : {}),
        ...(start === undefined ? {} : { start }),
      })),
      ...(solutes === undefined ? {} : { solutes }),
    };
  });
  return made;
}

/** Givens that hold the size of a flask that is filled. */
function flaskGivens(activity: Activity): readonly string[] {
  const recipe = recipeOf(activity);
  return Object.entries(recipe?.entry.takes ?? {}).flatMap(([name, { isFlask }]) => {
    const given = recipe?.takes[name];
    return isFlask && given !== undefined ? [given] : [];
  });
}
