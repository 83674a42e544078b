import type { CalculatedStep } from '../activity.ts';
import type { CarriedRows } from '../judgeEntry.ts';
import type { Carried } from '../preparedStep.ts';
import type { Surroundings } from './surroundings.ts';

/** Every choice of some of the items, but not of none. */
function someOf<T>(items: readonly T[]): readonly (readonly T[])[] {
  const chosen: T[][] = [[]];
  for (const item of items) {
    for (const some of chosen.slice()) chosen.push([...some, item]);
  }
  return chosen.slice(1);
}

/** Every set of the team's own entries that a step may have been carried forward from. */
export function carriedRows(
  { buildsOn }: CalculatedStep,
  { rowOf }: Pick<Surroundings, 'rowOf'>,
): readonly CarriedRows[] {
  const held = Object.keys(buildsOn).flatMap((name) => {
    const row = rowOf(buildsOn[name] ?? '');
    return row?.value === undefined ? [] : [{ name, row, value: row.value }];
  });
  return someOf(held).map((some) => {
    const carried: Carried = Object.fromEntries(some.map(({ name, value }) => [name, value]));
    const unsound = some.find(({ row }) => row.status !== 'on target');
    return { carried, sound: !unsound, lookAt: unsound?.row.root ?? '' };
  });
}
