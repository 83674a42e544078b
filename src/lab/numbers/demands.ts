import type { Shelf } from '../setup.ts';
import { demandTexts } from '../texts/numbers.ts';
import { isSame, type LessonNumbers, portionOf, type Substance } from './lessonNumbers.ts';
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
  | 'dissolves';

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
  readonly about: 'molarity' | 'flask' | 'stock' | 'target' | 'volume';
  readonly expected: string;
  readonly received: string;
  /** What would free it. */
  readonly advice: string;
}

/** g to weigh. */
export const massOf = (
  { molarity, flask }: { readonly molarity: number; readonly flask: number },
  { molarMass, purityPercent }: Substance,
): number => (molarity * flask * molarMass) / 1000 / (purityPercent / 100);

/** Smallest share of a weighing that the balance may be unsure of: one part in a hundred. */
const readabilitiesNeeded = 100;

/** Demands that a team's numbers do not meet, the most basic first. Volumes in mL, masses in g, molarities in mol/L. */
export function unmetDemands(
  { solid, dilution }: LessonNumbers,
  { shelf, deliverable, substance }: Bench,
): readonly Unmet[] {
  const unmet: Unmet[] = [];
  const isOnShelf = (volume: number): boolean => shelf.flasksMl.some((size) => isSame(size, volume));
  if (dilution && !(dilution.target < dilution.stock && !isSame(dilution.target, dilution.stock))) {
    unmet.push({ demand: 'stock above target', about: 'target', ...demandTexts.stockAboveTarget(dilution) });
  }
  if (solid && !isOnShelf(solid.flask)) {
    unmet.push({
      demand: 'flask on shelf',
      about: 'flask',
      ...demandTexts.flask({ size: solid.flask, shelf: shelf.flasksMl }),
    });
  }
  if (dilution && !isOnShelf(dilution.volume)) {
    unmet.push({
      demand: 'final flask on shelf',
      about: 'volume',
      ...demandTexts.flask({ size: dilution.volume, shelf: shelf.flasksMl }),
    });
  }
  if (dilution && unmet.length === 0) {
    const portion = portionOf(dilution);
    if (!deliverable.some(({ volume }) => isSame(volume, portion))) {
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
  if (solid) {
    const mass = massOf(solid, substance);
    const least = readabilitiesNeeded * shelf.balanceReadabilityG;
    if (mass < least) {
      unmet.push({
        demand: 'mass fine enough',
        about: 'molarity',
        ...demandTexts.massFine({ least, readability: shelf.balanceReadabilityG }),
      });
    }
    if (mass > shelf.balanceMaxG) {
      unmet.push({
        demand: 'mass within range',
        about: 'molarity',
        ...demandTexts.massRange({ most: shelf.balanceMaxG }),
      });
    }
    if (substance.solubleMolarity !== undefined && solid.molarity > substance.solubleMolarity) {
      unmet.push({
        demand: 'dissolves',
        about: 'molarity',
        ...demandTexts.dissolves({
          formula: substance.formula,
          molarity: solid.molarity,
          limit: substance.solubleMolarity,
        }),
      });
    }
  }
  return unmet;
}
