import { failure, type Result } from '../errors/result.ts';
import { belowZero, notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import {
  type Grams,
  type GramsPerMole,
  type Millilitres,
  type MolesPerLitre,
  molesPerLitre,
  type Percent,
} from '../measurement/quantity.ts';
import { molarity } from './molarity.ts';

export interface SolutionWithTolerances {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
  readonly volume: Millilitres;
  /** ± g of one reading of the balance. */
  readonly balanceTolerance: Grams;
  /** ± mL of the flask. */
  readonly flaskTolerance: Millilitres;
  readonly purity?: Percent | undefined;
  /** ± percentage points of the purity; 0 where left out. */
  readonly purityTolerance?: Percent | undefined;
}

/** Relative standard uncertainty of a rectangular distribution of this half-width. */
const rectangular = (halfWidth: number, value: number): number => halfWidth / Math.sqrt(3) / value;

/**
 * Standard uncertainty of a concentration made by weighing and making up to a mark. Tolerances are half-widths of
 * rectangular distributions, the components are independent, the balance counts twice (tare and load), atomic weights
 * count as exact.
 *
 * @returns mol/L, not rounded. Fails as `molarity` does, or with `below-zero` for a tolerance.
 * Source: JCGM 100:2008, 4.3.7 and 5.1.6 (clause numbers from memory).
 */
export function molarityUncertainty(solution: SolutionWithTolerances): Result<MolesPerLitre> {
  const { mass, volume, balanceTolerance, flaskTolerance, purity = 100, purityTolerance = 0 } = solution;
  const made = molarity(solution);
  if (!made.ok) return made;
  const error =
    belowZero(
      { value: balanceTolerance, argument: 'balance_tolerance', unit: 'g' },
      { value: flaskTolerance, argument: 'flask_tolerance', unit: 'mL' },
      { value: purityTolerance, argument: 'purity_tolerance', unit: 'percentage points' },
    ) ?? notAboveZero({ value: made.value, argument: 'grams', unit: 'mol/L' });
  if (error) return failure(error);
  const weighing = rectangular(balanceTolerance, mass);
  const relative = Math.hypot(
    weighing,
    weighing,
    rectangular(flaskTolerance, volume),
    rectangular(purityTolerance, purity),
  );
  return finite(molesPerLitre(made.value * relative), 'grams');
}
