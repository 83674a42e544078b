import type { CalculatedStep } from '../lesson/activity.ts';
import { isQuantityName, quantities } from '../quantities.ts';

/** A bare quantity as a step: it takes the givens of its own names and builds on the quantities of the block. */
export function bareStep(id: string): CalculatedStep | undefined {
  if (!isQuantityName(id)) return undefined;
  const { takes, buildsOn, unit } = quantities[id];
  return {
    kind: 'calculated',
    id,
    title: id,
    unit,
    shown: [],
    period: 1,
    bench: false,
    quantity: id,
    takes: Object.fromEntries(takes.map(({ name }) => [name, { given: name }])),
    buildsOn: Object.fromEntries(buildsOn.map(({ name }) => [name, name])),
  };
}
