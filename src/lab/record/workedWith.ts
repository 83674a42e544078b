import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity, Given } from '../lesson/activity.ts';
import type { TeamPlan } from '../lesson/setup.ts';
import { listedSolutes } from '../lesson/solutes.ts';
import { recordWords } from '../texts/record.ts';
import type { ClassDay } from './classFacts.ts';

/** What these teams worked with: the substance by name and formula, and the concentrations that they were given. */
export function workedWith({
  activity,
  teams,
  decimalMark,
}: {
  readonly activity: Activity;
  readonly teams: readonly Pick<TeamPlan, 'givens'>[];
  readonly decimalMark: 'point' | 'comma';
}): Pick<ClassDay, 'substance' | 'concentrations'> {
  const valuesOf = (name: string) => [
    ...new Set(teams.map(({ givens }) => (givens[name] ?? '').trim()).filter((text) => text !== '')),
  ];
  const concentration = (given: Given): string => {
    const kind = kindOf(given);
    if (kind === undefined) return '';
    const read = valuesOf(given.name)
      .flatMap((text) => {
        const quantity = readQuantity(text, kind, given.name, { decimalMark });
        return quantity.ok ? [{ text, value: quantity.value.value }] : [];
      })
      .sort((one, other) => one.value - other.value);
    const [first] = read;
    const last = read[read.length - 1];
    if (first === undefined || last === undefined) return '';
    // Whoever typed a unit is shown that one.
    const unit = [first, last].every(({ text }) => /\d$/.test(text)) ? given.unit : '';
    return recordWords.concentration({ name: given.name, from: first.text, to: last.text, unit });
  };
  return {
    substance: recordWords.and(
      valuesOf(activity.numbers.formula).map((formula) =>
        recordWords.substance({
          formula,
          name: listedSolutes().find((listed) => listed.formula === formula)?.name ?? '',
        }),
      ),
    ),
    concentrations: recordWords.and(activity.givens.map(concentration).filter((words) => words !== '')),
  };
}

/** Of the solution or of the bottle; the purity of a solid is none. */
function kindOf({ name, unit }: Given): 'concentration' | 'percent' | undefined {
  if (unit === 'mol/L') return 'concentration';
  return unit === '%' && name === 'mass percent' ? 'percent' : undefined;
}
