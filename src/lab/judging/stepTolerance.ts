import type { Carried, PreparedStep } from './preparedStep.ts';
import { type Tolerance, toleranceOf } from './tolerance.ts';
import { spanOver } from './worked.ts';

/** What counts as right for a step, worked from its givens or, where they are carried, from the team's own entries. */
export function stepTolerance(step: PreparedStep, carried: Carried = {}): Tolerance {
  const { quantity, asked } = step;
  return toleranceOf(spanOver(step, quantity.relation, carried), {
    asked,
    wideClose: quantity.wideClose,
    ...(quantity.neverFinerThan ? { coarsest: spanOver(step, quantity.neverFinerThan, carried) } : {}),
  });
}
