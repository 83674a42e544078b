import type { CalculatedStep } from '../lesson/activity.ts';
import { quantities } from '../quantities.ts';
import type { Carried } from './filledQuantity.ts';
import type { Surroundings } from './judgedRow.ts';
import type { CarriedRows } from './judgeEntry.ts';
import { workedFrom } from './workedFrom.ts';

/** Every choice of one of its ways for some of the rows, but not for none. */
function someOf<T>(rows: readonly (readonly T[])[]): readonly (readonly T[])[] {
  let chosen: readonly (readonly T[])[] = [[]];
  for (const ways of rows) chosen = [...chosen, ...ways.flatMap((way) => chosen.map((some) => [...some, way]))];
  return chosen.slice(1);
}

/**
 * Every set of the team's own entries that a step may have been carried forward from. Of a row that stands for a number
 * given, such as the molarity really made, also what a right entry is rounded from, whether or not it is the one typed;
 * what the step works out itself has that in its own span.
 */
export function carriedRows(
  { quantity, buildsOn }: CalculatedStep,
  { rowOf }: Pick<Surroundings, 'rowOf'>,
): readonly CarriedRows[] {
  const isGiven = (name: string): boolean => quantities[quantity].takes.some((argument) => argument.name === name);
  const held = Object.keys(buildsOn).map((name) => {
    const row = rowOf(buildsOn[name] ?? '');
    if (row?.value === undefined) return [];
    const isRight = row.status === 'on target';
    const own = { name, row, isRight, values: isGiven(name) ? workedFrom(row) : [row.value] };
    // A row that is still wrong takes nothing from who works on from what it should have been.
    const really = isGiven(name) && !isRight && row.unrounded.length > 0;
    return really ? [own, { name, row, isRight: true, values: row.unrounded }] : [own];
  });
  return someOf(held).flatMap((some) => {
    const unsound = some.find(({ isRight }) => !isRight);
    let sets: readonly Carried[] = [{}];
    for (const { name, values } of some)
      sets = values.flatMap((value) => sets.map((set): Carried => ({ ...set, [name]: value })));
    return sets.map((carried) => ({ carried, sound: !unsound, lookAt: unsound?.row.root ?? '' }));
  });
}
