import { type Result, success } from '../errors/result.ts';
import { type MolesPerLitre, type Percent, percent } from '../measurement/quantity.ts';
import { type DensityLine, densityLines, waterAt20 } from './densityLines.ts';
import { anhydrousAtoms, type Formula } from './formula.ts';
import { molarMass } from './molarMass.ts';
import { bottleList } from './strengths.generated.ts';

const withoutWater = (text: string): string => text.replace(/\s/g, '').replace(/[·.*•][\d.,½]*H2O$/, '');

/** Between two points of the table on a straight line; above its end the end, which makes a heavy solution look stronger. */
function densityAt(massPercent: number, points: readonly DensityLine[]): number {
  let before = waterAt20;
  for (const point of points.slice(1)) {
    if (massPercent < point.massPercent) {
      const share = (massPercent - before.massPercent) / (point.massPercent - before.massPercent);
      return before.density + share * (point.density - before.density);
    }
    before = point;
  }
  return before.density;
}

/** g/mL where the table has no line: too strict for salts and acids, which is the safe side; ammonia is lighter than water. */
const densityUnlisted = 1;
const densityOfStrongAmmonia = 0.88;

/**
 * Grams of the substance as written in 100 g of a solution of this molarity, at most 100.
 *
 * @returns %, not rounded. Fails with `atomic-weight-none`.
 * Source: definitions of mass fraction and amount concentration, IUPAC Gold Book; densities at 20 °C from the tables named
 * in tests/published/density.csv, 1.00 g/mL where they have none.
 */
export function massPercentOf(formula: Formula, molarity: MolesPerLitre): Result<Percent> {
  const written = molarMass(formula);
  if (!written.ok) return written;
  const dry = molarMass({ atoms: anhydrousAtoms(formula) });
  if (!dry.ok) return dry;
  const dryText = withoutWater(formula.text);
  const points = densityLines(dryText);
  const strength = (gramsPerMl: number, mass: number) => (molarity * mass) / (10 * gramsPerMl);
  if (points === undefined) return success(percent(Math.min(100, strength(densityUnlisted, written.value))));
  const last = points[points.length - 1]?.massPercent ?? 0;
  // Strength and density depend on each other; the density changes so little that a few rounds settle both.
  let gramsPerMl = waterAt20.density;
  for (let round = 0; round < 40; round += 1) gramsPerMl = densityAt(strength(gramsPerMl, dry.value), points);
  if (dryText === 'NH3' && strength(gramsPerMl, dry.value) > last) gramsPerMl = densityOfStrongAmmonia;
  return success(percent(Math.min(100, strength(gramsPerMl, written.value))));
}

/** What a supplier’s table prints for the concentrated reagent of a formula; undefined for what is sold as a solid. */
export function bottleOf(formula: string): { readonly massPercent: number; readonly density: number } | undefined {
  const line = bottleList.split('\n').find((candidate) => candidate.startsWith(`${withoutWater(formula)} `));
  if (line === undefined) return undefined;
  const [, massPercent, density] = line.split(' ');
  return { massPercent: Number(massPercent), density: Number(density) };
}
