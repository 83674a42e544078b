import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { finite } from '../measurement/finite.ts';
import { type GramsPerMole, gramsPerMole } from '../measurement/quantity.ts';
import { elementBySymbol, relativeMass } from './elements.ts';
import type { Formula } from './formula.ts';

/**
 * Mass of one mole of an atom by its label, in g/mol.
 *
 * @returns Fails with `atomic-weight-none` for an element without a standard atomic weight, saying why.
 */
export function atomicMass(label: string): Result<number> {
  const mass = relativeMass(label);
  if (mass !== undefined) return success(mass);
  // An isotope has a mass, so this label is the symbol of an element.
  const element = elementBySymbol(label);
  return failure({
    code: 'atomic-weight-none',
    argument: 'formula',
    received: `${quoted(label)} (${element?.name})`,
    advice: `Name the isotope you mean; the longest-lived is [${element?.longestLived}${label}].`,
    brief: label,
  });
}

/**
 * Molar mass of a formula with its water of hydration; a charge is passed over, as electrons weigh next to nothing.
 *
 * @returns g/mol, not rounded. Fails with `atomic-weight-none`.
 * Source: standard atomic weights, IUPAC/CIAAW 2021 with the revisions of 2024 (see `elementTable.generated.ts`).
 */
export function molarMass({ atoms }: Pick<Formula, 'atoms'>): Result<GramsPerMole> {
  let sum = 0;
  for (const { element, count } of atoms) {
    const mass = atomicMass(element);
    if (!mass.ok) return mass;
    sum += count * mass.value;
  }
  return finite(gramsPerMole(sum), 'formula');
}
