import { benchReading } from './activities/benchReading.ts';
import { concentratedReagent } from './activities/concentratedReagent.ts';
import { dilutionAlone } from './activities/dilutionAlone.ts';
import { hydrateSolid, impureSolid, plainSolid } from './activities/fromSolid.ts';
import { measuredDensity } from './activities/measuredDensity.ts';
import { serialDilution } from './activities/serialDilution.ts';
import { stockAndDilution } from './activities/stockAndDilution.ts';
import { weighedResidue } from './activities/weighedResidue.ts';
import type { Activity, Variant } from './activity.ts';

const asPlanned: Variant = { fromRealStock: false };

/** By id, the everyday one first. Built when asked for, so that a check builds no activity but its own. */
const activities: Record<string, (variant: Variant) => Activity> = {
  'stock and dilution': stockAndDilution,
  'solution from a solid': plainSolid,
  'solution from a hydrate': hydrateSolid,
  'solution from an impure solid': impureSolid,
  dilution: dilutionAlone,
  'serial dilution': serialDilution,
  'concentrated reagent': concentratedReagent,
  'weighed residue': weighedResidue,
  'measured density': measuredDensity,
  'bench reading': benchReading,
};

export const allActivities = (): readonly Activity[] => Object.values(activities).map((build) => build(asPlanned));

/** The activity of that name as the settings have it, in any case and spacing. */
export function activityById(id: string, variant: Variant = asPlanned): Activity | undefined {
  const wanted = id.trim().replace(/\s+/g, ' ').toLowerCase();
  return Object.keys(activities).includes(wanted) ? activities[wanted]?.(variant) : undefined;
}

/**
 * Adds an activity of a department's own to the list, where it is offered and checked like the others. The id is in lower
 * case and stays as it is once sheets have it. Gives the way to take it out again.
 */
export function addActivity(id: string, build: (variant: Variant) => Activity): () => void {
  const made = build(asPlanned).id;
  if (Object.keys(activities).includes(id) || made !== id) {
    throw new Error(`An activity needs an id that is its own and free: “${id}” was to be added, “${made}” was built.`);
  }
  activities[id] = build;
  return () => {
    delete activities[id];
  };
}
