import { soluteMass } from '../../../chemistry/soluteMass.ts';
import { success } from '../../../errors/result.ts';
import { millilitres, molesPerLitre, percent } from '../../../measurement/quantity.ts';
import { dissolvingDemands } from '../dissolvingDemands.ts';
import { flasksNear } from '../flasksNear.ts';
import { massDemands } from '../massDemands.ts';
import { nearTexts } from '../nearTexts.ts';
import type { RecipeEntry } from '../recipe.ts';
import { flaskDemands } from '../shelfDemands.ts';

/** A solution made from a solid, in a flask. */
export const solidInFlask: RecipeEntry<'molarity' | 'flask' | 'purity', 'purity'> = {
  takes: {
    molarity: { kind: 'concentration', atMostTyped: true },
    flask: { kind: 'volume', isFlask: true, atMostTyped: true },
    purity: { kind: 'percent', optional: true, isPictured: false },
  },
  tasks: [['molarity', 'flask']],
  startsFrom: 'molarity',
  madeIn: 'flask',
  dissolves: true,
  odd: { molarity: 0.3173, flask: 237.1 },
  near: ({ numbers, typed }, { shelf }, reach) => {
    const { sizes, otherDigits } = flasksNear(numbers.flask, shelf, reach);
    const molarities = nearTexts(typed.molarity, reach);
    return {
      sets: sizes.flatMap((flask) =>
        molarities.map(({ value, text }) => ({
          numbers: { molarity: value, flask },
          texts: { molarity: text, flask: String(flask) },
          fillings: 0 as const,
          away: 0 as const,
          withinTarget: true,
        })),
      ),
      otherDigits,
      lacks: sizes.length === 0 ? { what: 'flask', about: 'flask' } : undefined,
    };
  },
  demands: ({ molarity, flask }, bench) => [
    ...flaskDemands('flask', flask, bench),
    ...massDemands({ molarity, volume: flask }, bench),
    ...dissolvingDemands(molarity, bench.substance),
  ],
  use: (numbers, { molarMass, portion }) => {
    const molarity = molesPerLitre(numbers.molarity);
    const volume = millilitres(numbers.flask);
    const purity = Number.isNaN(numbers.purity) ? undefined : percent(numbers.purity);
    const weighed = soluteMass({ molarMass, molarity, volume, purity });
    if (!weighed.ok) return weighed;
    return success({
      solid: { mass: weighed.value, ...(purity === undefined ? {} : { purity }) },
      made: portion(molarity, volume, 'molarity'),
      flasksMl: [volume],
      weighings: [weighed.value],
    });
  },
  picture: ({ molarity, flask }) =>
    success({ first: { molarity: molesPerLitre(molarity), volume: millilitres(flask) } }),
};
