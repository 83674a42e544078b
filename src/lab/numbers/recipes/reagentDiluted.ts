import { atomsKey } from '../../../chemistry/atomsKey.ts';
import { readFormula } from '../../../chemistry/readFormula.ts';
import { reagentMolarity } from '../../../chemistry/reagentMolarity.ts';
import { stockVolume } from '../../../chemistry/stockVolume.ts';
import { success } from '../../../errors/result.ts';
import {
  gramsPerMillilitre,
  gramsPerMole,
  millilitres,
  molesPerLitre,
  percent,
} from '../../../measurement/quantity.ts';
import { concentratedReagents } from '../../lesson/concentratedReagents.ts';
import { plannerCaution } from '../../lesson/plannerCaution.ts';
import { startTexts } from '../../texts/numbers.ts';
import { dilutionPicture } from '../dilutionPicture.ts';
import { flasksNear } from '../flasksNear.ts';
import { nearTexts } from '../nearTexts.ts';
import type { RecipeEntry, RecipeNumbers } from '../recipe.ts';
import { flaskDemands, weakerDemands } from '../shelfDemands.ts';

type Name = 'massPercent' | 'density' | 'target' | 'volume';

const inBottle = ({ massPercent, density }: RecipeNumbers<Name>, molarMass: number) =>
  reagentMolarity({
    molarMass: gramsPerMole(molarMass),
    massPercent: percent(massPercent),
    density: gramsPerMillilitre(density),
  });

/** A solution from a concentrated reagent, whose molarity follows from its label. */
export const reagentDiluted: RecipeEntry<Name> = {
  takes: {
    massPercent: { kind: 'percent' },
    density: { kind: 'density' },
    target: { kind: 'concentration', atMostTyped: true },
    volume: { kind: 'volume', isFlask: true, atMostTyped: true },
  },
  tasks: [['target', 'volume']],
  startsFrom: 'target',
  dilutes: { target: 'target', flask: 'volume' },
  dissolves: false,
  odd: { target: 0.04519, volume: 173.3 },
  unfit: (formula, received) => {
    const listed = concentratedReagents();
    const isListed = listed.some((one) => {
      const known = readFormula(one.formula);
      return known.ok && atomsKey(known.value) === atomsKey(formula);
    });
    if (isListed) return undefined;
    return startTexts.concentratedReagent(
      received,
      listed.filter(({ forStaff }) => forStaff).map((one) => one.formula),
    );
  },
  offers: () =>
    concentratedReagents()
      .filter(({ kind, forStaff }) => kind === 'acid' && forStaff)
      .map(({ name, formula }) => ({ name, formula, caution: plannerCaution(formula) })),
  near: ({ numbers, typed }, { shelf }, reach) => {
    const { sizes, otherDigits } = flasksNear(numbers.volume, shelf, reach);
    const targets = nearTexts(typed.target, reach);
    return {
      sets: targets.flatMap(({ value, text }) =>
        sizes.map((volume) => ({
          numbers: { target: value, volume },
          texts: { target: text, volume: String(volume) },
          fillings: 0 as const,
          away: 0 as const,
          withinTarget: true,
        })),
      ),
      otherDigits,
      lacks: sizes.length === 0 ? { what: 'flask', about: 'volume' } : undefined,
    };
  },
  demands: (numbers, bench) => [
    ...weakerDemands({
      stock: (10 * numbers.massPercent * numbers.density) / bench.substance.molarMass,
      target: numbers.target,
    }),
    ...flaskDemands('volume', numbers.volume, bench),
  ],
  use: (numbers, { molarMass, portion, studentsDilute }) => {
    const bottle = inBottle(numbers, molarMass);
    if (!bottle.ok) return bottle;
    const target = molesPerLitre(numbers.target);
    const volume = millilitres(numbers.volume);
    const taken = stockVolume({ stock: bottle.value, target, finalVolume: volume });
    if (!taken.ok) return taken;
    const massPercent = percent(numbers.massPercent);
    const made = portion(target, volume, 'target');
    return success(
      studentsDilute
        ? { poured: { volume: taken.value, massPercent }, diluted: [made], flasksMl: [volume] }
        : { madeByStaff: { ...made, massPercent, density: gramsPerMillilitre(numbers.density) } },
    );
  },
  picture: (numbers, { molarMass }) => {
    const bottle = inBottle(numbers, molarMass);
    return bottle.ok
      ? dilutionPicture({ stock: bottle.value, target: numbers.target, volume: numbers.volume })
      : bottle;
  },
};
