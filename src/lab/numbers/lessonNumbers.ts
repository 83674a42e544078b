import type { LinePair } from './linePair.ts';

/** The numbers of one team that the shelf has a say in: mol/L, mL and, for a portion, mL by pipette. */
export interface LessonNumbers {
  /** A solution from a solid. */
  readonly solid?: { readonly molarity: number; readonly flask: number };
  readonly dilution?: { readonly stock: number; readonly target: number; readonly volume: number };
  /** Like a dilution, of a stock that comes in its bottle and is measured by cylinder. */
  readonly reagent?: { readonly stock: number; readonly target: number; readonly volume: number };
  readonly serial?: { readonly stock: number; readonly portion: number; readonly flask: number };
  readonly residue?: { readonly molarity: number; readonly portion: number };
  /** A portion that is weighed, with two lines of a table of densities; not numbers where the table has none. */
  readonly density?: LinePair & { readonly molarity: number; readonly portion: number };
}

/** What is the same for all teams of a lesson. */
export interface Substance {
  /** As typed. */
  readonly formula: string;
  /** g/mol; not a number where no solid is weighed. */
  readonly molarMass: number;
  readonly purityPercent: number;
  /** mol/L that surely dissolves; undefined where no figure is known. */
  readonly solubleMolarity: number | undefined;
}

/** Volume of stock to take, in mL. */
export const portionOf = ({ stock, target, volume }: { stock: number; target: number; volume: number }): number =>
  (target / stock) * volume;

/** Equal but for the last bits of binary arithmetic. */
export const isSame = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
