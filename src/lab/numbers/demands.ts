import { waterAt20 } from '../../chemistry/densityLines.ts';
import type { Shelf } from '../setup.ts';
import { demandTexts } from '../texts/numbers.ts';
import { densityOnLine } from './densityOnLine.ts';
import { isSame, type LessonNumbers, portionOf, type Substance } from './lessonNumbers.ts';
import { liesBetween } from './liesBetween.ts';
import type { Portion } from './portions.ts';

/** What the shelf, the balance and the substance ask of a team's numbers. */
export type Demand =
  | 'stock above target'
  | 'flask on shelf'
  | 'final flask on shelf'
  | 'portion deliverable'
  | 'portion within stock'
  | 'mass fine enough'
  | 'mass within range'
  | 'dissolves'
  | 'within table'
  | 'density differs'
  | 'portion fine enough';

/** What numbers are tried against. */
export interface Bench {
  readonly shelf: Shelf;
  /** All that its pipettes deliver; see `portions`. */
  readonly deliverable: readonly Portion[];
  readonly substance: Substance;
}

export interface Unmet {
  readonly demand: Demand;
  /** Which number it is about. */
  readonly about: 'molarity' | 'flask' | 'stock' | 'target' | 'volume' | 'portion';
  readonly expected: string;
  readonly received: string;
  /** What would free it. */
  readonly advice: string;
}

/** g to weigh. */
const massOf = (
  { molarity, flask }: { readonly molarity: number; readonly flask: number },
  { molarMass, purityPercent }: Substance,
): number => (molarity * flask * molarMass) / 1000 / (purityPercent / 100);

/** Smallest share of a weighing that the balance may be unsure of: one part in a hundred. */
const readabilitiesNeeded = 100;

/** A portion is weighed far finer than a solid: only its difference from water counts. One part in a thousand. */
const readabilitiesOfPortion = 1000;
/** g: a small closed vessel that the portion is weighed in (common practice, no source). */
const vesselG = 60;
/** Least share by which the density differs from that of water: twice what a careful team's own may be off. */
const differenceNeeded = 0.01;

/** What a weighed portion asks of the table, the solution and the balance. */
function unmetOfDensity(
  density: NonNullable<LessonNumbers['density']>,
  { shelf, substance }: Pick<Bench, 'shelf' | 'substance'>,
): readonly Unmet[] {
  const { molarity, portion } = density;
  const { formula, molarMass } = substance;
  const expected = densityOnLine(density, { molarMass, molarity });
  if (expected === undefined || !liesBetween(expected, density)) {
    return [{ demand: 'within table', about: 'molarity', ...demandTexts.withinTable({ molarity, formula }) }];
  }
  const unmet: Unmet[] = [];
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
    unmet.push({ demand: 'mass within range', about: 'portion', ...demandTexts.portionRange(found) });
  }
  return unmet;
}

/** Demands that a team's numbers do not meet, the most basic first. Volumes in mL, masses in g, molarities in mol/L. */
export function unmetDemands(
  { solid, dilution, reagent, serial, residue, density }: LessonNumbers,
  { shelf, deliverable, substance }: Bench,
): readonly Unmet[] {
  const unmet: Unmet[] = [];
  const isOnShelf = (volume: number): boolean => shelf.flasksMl.some((size) => isSame(size, volume));
  const isDeliverable = (volume: number): boolean => deliverable.some((portion) => isSame(portion.volume, volume));
  const made = dilution ?? reagent;
  if (made && !(made.target < made.stock && !isSame(made.target, made.stock))) {
    unmet.push({ demand: 'stock above target', about: 'target', ...demandTexts.stockAboveTarget(made) });
  }
  const flask = solid?.flask ?? serial?.flask;
  if (flask !== undefined && !isOnShelf(flask)) {
    unmet.push({
      demand: 'flask on shelf',
      about: 'flask',
      ...demandTexts.flask({ size: flask, shelf: shelf.flasksMl }),
    });
  }
  if (made && !isOnShelf(made.volume)) {
    unmet.push({
      demand: 'final flask on shelf',
      about: 'volume',
      ...demandTexts.flask({ size: made.volume, shelf: shelf.flasksMl }),
    });
  }
  if (dilution && unmet.length === 0) {
    const portion = portionOf(dilution);
    if (!isDeliverable(portion)) {
      unmet.push({
        demand: 'portion deliverable',
        about: 'target',
        ...demandTexts.portion({ pipettes: shelf.pipettesMl }),
      });
    }
    if (solid && portion > solid.flask / 2) {
      unmet.push({ demand: 'portion within stock', about: 'flask', ...demandTexts.portionWithinStock(solid) });
    }
  }
  const portion = serial?.portion ?? residue?.portion ?? density?.portion;
  if (portion !== undefined && !isDeliverable(portion)) {
    unmet.push({
      demand: 'portion deliverable',
      about: 'portion',
      ...demandTexts.portion({ pipettes: shelf.pipettesMl }),
    });
  }
  if (serial && !(serial.portion <= serial.flask / 2)) {
    unmet.push({ demand: 'portion within stock', about: 'portion', ...demandTexts.portionWithinFlask(serial) });
  }
  const weighed = solid ?? (residue && { molarity: residue.molarity, flask: residue.portion });
  if (weighed) {
    const mass = massOf(weighed, substance);
    const least = readabilitiesNeeded * shelf.balanceReadabilityG;
    if (mass < least) {
      const found = { least, readability: shelf.balanceReadabilityG };
      unmet.push({ demand: 'mass fine enough', about: 'molarity', ...demandTexts.massFine(found) });
    }
    if (mass > shelf.balanceMaxG) {
      unmet.push({
        demand: 'mass within range',
        about: 'molarity',
        ...demandTexts.massRange({ most: shelf.balanceMaxG }),
      });
    }
  }
  if (density) unmet.push(...unmetOfDensity(density, { shelf, substance }));
  const dissolved = weighed?.molarity ?? density?.molarity;
  const limit = substance.solubleMolarity;
  if (dissolved !== undefined && limit !== undefined && dissolved > limit) {
    const found = { formula: substance.formula, molarity: dissolved, limit };
    unmet.push({ demand: 'dissolves', about: 'molarity', ...demandTexts.dissolves(found) });
  }
  return unmet;
}
