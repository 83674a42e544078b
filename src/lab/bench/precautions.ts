import { dissolvesHot } from '../../chemistry/dissolvesHot.ts';
import { needsWaterFirst } from '../../chemistry/needsWaterFirst.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { molesPerLitre } from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { OrderedStep } from '../lesson/activity.ts';
import type { GivenCells } from '../lesson/givenCells.ts';
import type { Precaution } from './procedures/procedure.ts';

/**
 * What a team's own substance and stock ask for in a procedure, beyond what all teams need. None where the step does not
 * say what is handled.
 *
 * @returns Fails as `readFormula` and `readQuantity` do; `argument` is the name of the given.
 */
export function precautions(
  { handles }: Pick<OrderedStep, 'handles'>,
  { givens, decimalMark }: { readonly givens: GivenCells; readonly decimalMark: 'point' | 'comma' },
): Result<readonly Precaution[]> {
  if (handles === undefined) return success([]);
  const formula = readFormula(givens[handles.formula]);
  if (!formula.ok) return failure({ ...formula.error, argument: handles.formula });
  const found: Precaution[] = [];
  if (handles.solid && dissolvesHot(formula.value)) found.push('dissolves hot');
  if (handles.molarity !== undefined) {
    const molarity = readQuantity(givens[handles.molarity], 'concentration', handles.molarity, { decimalMark });
    if (!molarity.ok) return molarity;
    if (needsWaterFirst(formula.value, molesPerLitre(molarity.value.value))) found.push('water first');
  }
  return success(found);
}
