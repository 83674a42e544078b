import { densityOfMolarity } from '../../chemistry/densityOfMolarity.ts';
import { gramsPerMole, molesPerLitre } from '../../measurement/quantity.ts';
import { type LinePair, straightLineOf } from './linePair.ts';

/** What the label of a solution says: g/mol of the solute, and mol/L. */
export interface Label {
  readonly molarMass: number;
  readonly molarity: number;
}

/** g/mL of a solution of the label's molarity, on the line through a pair; undefined where there is none. */
export function densityOnLine(pair: LinePair, { molarMass, molarity }: Label): number | undefined {
  const found = densityOfMolarity({
    ...straightLineOf(pair),
    molarMass: gramsPerMole(molarMass),
    molarity: molesPerLitre(molarity),
  });
  return found.ok ? found.value : undefined;
}
