import type { CalculatedStep } from '../activity.ts';
import type { Carried } from '../preparedStep.ts';
import { isSound } from './isSound.ts';
import type { JudgedRow } from './judgedRow.ts';
import type { Surroundings } from './surroundings.ts';

/** What later rows may honestly be worked from: the entry, and where it is right also what it was rounded from. */
const workedFrom = (row: JudgedRow): readonly number[] =>
  row.value === undefined ? [] : isSound(row) ? [...new Set([row.value, ...row.unrounded])] : [row.value];

/** Every set of numbers for the rows that a step takes its own from, the entries as typed first. */
export function sourceSets({ takes }: CalculatedStep, { rowOf }: Pick<Surroundings, 'rowOf'>): readonly Carried[] {
  let sets: readonly Carried[] = [{}];
  for (const [name, source] of Object.entries(takes)) {
    const row = 'entryOf' in source ? rowOf(source.entryOf) : undefined;
    if (row) sets = workedFrom(row).flatMap((value) => sets.map((set): Carried => ({ ...set, [name]: value })));
  }
  return sets;
}
