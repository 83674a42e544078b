import type { CalculatedStep } from '../lesson/activity.ts';
import type { Carried } from './filledQuantity.ts';
import type { Surroundings } from './judgedRow.ts';
import { workedFrom } from './workedFrom.ts';

/** Every set of numbers for the rows that a step takes its own from, the entries as typed first. */
export function sourceSets({ takes }: CalculatedStep, { rowOf }: Pick<Surroundings, 'rowOf'>): readonly Carried[] {
  let sets: readonly Carried[] = [{}];
  for (const [name, source] of Object.entries(takes)) {
    const row = 'entryOf' in source ? rowOf(source.entryOf) : undefined;
    if (row) sets = workedFrom(row).flatMap((value) => sets.map((set): Carried => ({ ...set, [name]: value })));
  }
  return sets;
}
