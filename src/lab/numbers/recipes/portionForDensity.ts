import { densityFormulas, waterAt20 } from '../../../chemistry/densityLines.ts';
import { densityOfMolarity } from '../../../chemistry/densityOfMolarity.ts';
import { listedFormula } from '../../../chemistry/listedFormula.ts';
import { success } from '../../../errors/result.ts';
import { grams, millilitres, molesPerLitre } from '../../../measurement/quantity.ts';
import { demandTexts, startTexts } from '../../texts/numbers.ts';
import { densityOnLine } from '../densityOnLine.ts';
import { dissolvingDemands } from '../dissolvingDemands.ts';
import { liesBetween } from '../liesBetween.ts';
import { straightLineOf } from '../linePair.ts';
import { lineTexts } from '../lineTexts.ts';
import { nearTexts } from '../nearTexts.ts';
import { readTableLines } from '../readTableLines.ts';
import type { Bench, NearSet, RecipeEntry, RecipeNumbers, Unmet } from '../recipe.ts';
import { portionDemands } from '../shelfDemands.ts';
import { tableLines } from '../tableLines.ts';
import { weighedPortionNear, weighedPortions } from '../weighedPortions.ts';

type Line = 'lighterPercent' | 'lighterDensity' | 'heavierPercent' | 'heavierDensity';
type Name = 'molarity' | 'portion' | Line;

/** A portion is weighed far finer than a solid: only its difference from water counts. One part in a thousand. */
const readabilitiesOfPortion = 1000;
/** g: a small closed vessel that the portion is weighed in (common practice, no source). */
const vesselG = 60;
/** Least share by which the density differs from that of water: twice what a careful team's own may be off. */
const differenceNeeded = 0.01;
/** The vessel empty, and with the portion. */
const weighingsOfPortion = 2;

/** What a weighed portion asks of the table, the solution and the balance. */
function densityDemands(
  numbers: RecipeNumbers<Name>,
  { shelf, substance: { formula, molarMass } }: Bench,
): readonly Unmet<Name>[] {
  const { molarity, portion } = numbers;
  const expected = densityOnLine(numbers, { molarMass, molarity });
  if (expected === undefined || !liesBetween(expected, numbers)) {
    return [{ demand: 'within table', about: 'molarity', ...demandTexts.withinTable({ molarity, formula }) }];
  }
  const unmet: Unmet<Name>[] = [];
  if (Math.abs(expected / waterAt20.density - 1) < differenceNeeded) {
    unmet.push({ demand: 'density differs', about: 'molarity', ...demandTexts.densityDiffers({ molarity }) });
  }
  const mass = expected * portion;
  if (mass < readabilitiesOfPortion * shelf.balanceReadabilityG) {
    const found = { portion, readability: shelf.balanceReadabilityG };
    unmet.push({ demand: 'portion fine enough', about: 'portion', ...demandTexts.portionFine(found) });
  }
  if (mass + vesselG > shelf.balanceMaxG) {
    const found = { portion, most: shelf.balanceMaxG };
    unmet.push({ demand: 'portion within range', about: 'portion', ...demandTexts.portionRange(found) });
  }
  return unmet;
}

/** A portion by pipette of a solution that stands ready, weighed for its density, with two lines of a table of densities. */
export const portionForDensity: RecipeEntry<Name> = {
  takes: {
    molarity: { kind: 'concentration', atMostTyped: true },
    portion: { kind: 'volume' },
    lighterPercent: { kind: 'percent', isPictured: false },
    lighterDensity: { kind: 'density', isPictured: false },
    heavierPercent: { kind: 'percent', isPictured: false },
    heavierDensity: { kind: 'density', isPictured: false },
  },
  tasks: [['molarity', 'portion']],
  startsFrom: 'molarity',
  bottle: 'molarity',
  weighedPortion: 'portion',
  dissolves: true,
  odd: { molarity: 0.3173, portion: 13.7 },
  unfit: (formula, received) =>
    listedFormula(formula) === undefined ? startTexts.densityTable(received, densityFormulas()) : undefined,
  fillIn: readTableLines,
  near: ({ numbers, typed, table }, bench, reach) => {
    const portions = weighedPortions(numbers.portion, bench, reach);
    const sets = weighedPortionNear(nearTexts(typed.molarity, reach), portions);
    return {
      sets: table === undefined ? sets : sets.flatMap((set) => withLines(set, { table, bench })),
      otherDigits: false,
      lacks: portions.length === 0 ? { what: 'pipette', about: 'portion' } : undefined,
    };
  },
  demands: (numbers, bench) => [
    ...portionDemands('portion', numbers.portion, bench),
    ...densityDemands(numbers, bench),
    ...dissolvingDemands(numbers.molarity, bench.substance),
  ],
  use: (numbers, { molarMass, portion }) => {
    const molarity = molesPerLitre(numbers.molarity);
    const volume = millilitres(numbers.portion);
    const expected = densityOfMolarity({ ...straightLineOf(numbers), molarMass, molarity });
    if (!expected.ok) return expected;
    return success({
      taken: portion(molarity, volume, 'molarity'),
      deliveredMl: [volume],
      closedCount: 1,
      weighings: Array.from({ length: weighingsOfPortion }, () => grams(expected.value * volume)),
    });
  },
  picture: ({ molarity, portion }) =>
    success({ first: { molarity: molesPerLitre(molarity), volume: millilitres(portion) } }),
};

/** A set with the lines of the table that enclose its molarity, where the plan leaves them to us; none beyond the table. */
function withLines(
  set: NearSet<'molarity' | 'portion'>,
  { table, bench }: { readonly table: Parameters<typeof tableLines>[0]; readonly bench: Pick<Bench, 'substance'> },
): readonly NearSet<Name>[] {
  const pair = tableLines(table, {
    molarMass: bench.substance.molarMass,
    molarity: set.numbers.molarity ?? Number.NaN,
  });
  if (pair === undefined) return [];
  return [{ ...set, numbers: { ...set.numbers, ...pair }, texts: { ...set.texts, ...lineTexts(pair) } }];
}
