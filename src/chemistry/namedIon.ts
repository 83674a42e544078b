import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { Formula } from './formula.ts';
import { type IonCount, ions } from './ions.ts';
import { matchIon } from './matchIon.ts';

/**
 * The ion of a substance that a text names, and the other kinds beside it.
 *
 * @returns Fails with `ion-none` for a molecular solute, and with what `ions` and `matchIon` fail with.
 */
export function namedIon(
  formula: Formula,
  ion: string,
): Result<{ readonly ion: IonCount; readonly others: readonly IonCount[] }> {
  const present = ions(formula);
  if (!present.ok) return present;
  if (present.value.every(({ charge }) => charge === 0)) {
    return failure({
      code: 'ion-none',
      argument: 'formula',
      received: quoted(formula.text),
      advice: 'Its particles are molecules: use the molarity of the solution.',
    });
  }
  const matched = matchIon(ion, present.value);
  if (!matched.ok) return matched;
  return success({ ion: matched.value, others: present.value.filter((one) => one !== matched.value) });
}
