import { atomsKey } from '../../../chemistry/atomsKey.ts';
import { readFormula } from '../../../chemistry/readFormula.ts';
import { soluteMass } from '../../../chemistry/soluteMass.ts';
import { success } from '../../../errors/result.ts';
import { millilitres, molesPerLitre } from '../../../measurement/quantity.ts';
import { startTexts } from '../../texts/numbers.ts';
import { dissolvingDemands } from '../dissolvingDemands.ts';
import { massDemands } from '../massDemands.ts';
import { nearTexts } from '../nearTexts.ts';
import type { RecipeEntry } from '../recipe.ts';
import { portionDemands } from '../shelfDemands.ts';
import { weighedPortionNear, weighedPortions } from '../weighedPortions.ts';

/** Salts that stay what they are when a portion is heated to dryness (common practice, no source). */
const dryingSalts = ['NaCl', 'KCl', 'KBr', 'Na2SO4', 'K2SO4'];

/** Two weighings in a row that agree, and one before them: the least for drying to constant mass. */
const weighingsOfResidue = 3;

/** A portion by pipette of a solution that stands ready, dried and weighed. */
export const driedPortion: RecipeEntry<'molarity' | 'portion'> = {
  takes: { molarity: { kind: 'concentration', atMostTyped: true }, portion: { kind: 'volume' } },
  tasks: [['molarity', 'portion']],
  startsFrom: 'molarity',
  bottle: 'molarity',
  weighedPortion: 'portion',
  dissolves: true,
  odd: { molarity: 0.3173, portion: 13.7 },
  unfit: (formula, received) => {
    const survives = dryingSalts.some((written) => {
      const known = readFormula(written);
      return known.ok && atomsKey(known.value) === atomsKey(formula);
    });
    return survives ? undefined : startTexts.dryingSalt(received, dryingSalts);
  },
  near: ({ numbers, typed }, bench, reach) => {
    const portions = weighedPortions(numbers.portion, bench, reach);
    return {
      sets: weighedPortionNear(nearTexts(typed.molarity, reach), portions),
      otherDigits: false,
      lacks: portions.length === 0 ? { what: 'pipette', about: 'portion' } : undefined,
    };
  },
  demands: ({ molarity, portion }, bench) => [
    ...portionDemands('portion', portion, bench),
    ...massDemands({ molarity, volume: portion }, bench),
    ...dissolvingDemands(molarity, bench.substance),
  ],
  use: (numbers, { molarMass, portion }) => {
    const molarity = molesPerLitre(numbers.molarity);
    const volume = millilitres(numbers.portion);
    const left = soluteMass({ molarMass, molarity, volume });
    if (!left.ok) return left;
    return success({
      taken: portion(molarity, volume, 'molarity'),
      deliveredMl: [volume],
      driedCount: 1,
      weighings: Array.from({ length: weighingsOfResidue }, () => left.value),
    });
  },
  picture: ({ molarity, portion }) =>
    success({ first: { molarity: molesPerLitre(molarity), volume: millilitres(portion) } }),
};
