import type { Formula } from '../../chemistry/formula.ts';
import type { Result } from '../../errors/result.ts';
import type { QuantityName } from '../activity.ts';
import type { SlipId } from '../texts/feedback.ts';

/** What an argument of a quantity is read as; `number` is a pure number or one with any unit of the list. */
type ArgumentKind =
  | 'formula'
  | 'ion'
  | 'volume'
  | 'mass'
  | 'amount'
  | 'concentration'
  | 'density'
  | 'percent'
  | 'number';

export interface QuantityArgument {
  /** Name in the `given` table. */
  readonly name: NumberName | 'formula' | 'ion';
  readonly kind: ArgumentKind;
  /** Unit of a bare number; empty for text. */
  readonly unit: string;
  readonly optional?: true;
}

/** Names of the numbers a calculation can use: arguments, and the quantities that others are built on. */
export type NumberName =
  | 'molarity'
  | 'volume'
  | 'mass'
  | 'purity'
  | 'stock molarity'
  | 'target molarity'
  | 'target volume'
  | 'stock volume'
  | 'final volume'
  | 'measured'
  | 'accepted'
  | 'mass percent'
  | 'density'
  | 'lighter percent'
  | 'lighter density'
  | 'heavier percent'
  | 'heavier density'
  | 'molar mass'
  | 'moles of solute'
  | 'dilution factor';

/**
 * Numbers in the base units of the contract (mL, g, mol, mol/L, g/mL, percent as printed).
 * A name that the quantity does not take is absent and reads as NaN through `relation`'s type, so no entry may use it.
 */
export type StepNumbers = Readonly<Record<NumberName, number>> & {
  /** For an ion: how many of it, and of each other kind, one formula unit gives, and the size of its charge. */
  readonly ionCount: number;
  readonly ionCharge: number;
  readonly otherIonCounts: readonly number[];
};

export type Calculation = (numbers: StepNumbers) => number;

/**
 * A molar mass worked out wrongly: other atoms than the formula has, atomic numbers in place of weights, or one part
 * multiplied by another that should be added.
 */
export interface WrongMolarMass {
  readonly atoms: Formula['atoms'];
  readonly byAtomicNumber?: true;
  readonly times?: Formula['atoms'];
}

/** A wrong calculation that people are known to do, beside the relation that it deforms. */
export type SlipEntry = { readonly id: SlipId } & (
  | {
      /** What the wrong calculation gives; several values where it can be done in more than one way. */
      readonly value: (numbers: StepNumbers) => number | readonly number[];
    }
  | {
      /** The quantity's own relation, with these molar masses in place of the right one. */
      readonly molarMasses: (formula: Formula) => readonly WrongMolarMass[];
    }
);

/** A quantity that can be checked, as data. A new one is one entry, its texts, and a line in `quantities.ts`. */
export interface QuantityEntry {
  readonly name: QuantityName;
  readonly takes: readonly QuantityArgument[];
  /** What the entry is read as: a kind of measurement, or one of two of its own. */
  readonly entryKind: 'volume' | 'mass' | 'amount' | 'concentration' | 'density' | 'molar mass' | 'ratio' | 'percent';
  readonly unit: string;
  /** Figures asked where nobody says otherwise; `decimals` follows the rounding of atomic weights. */
  readonly figures: number | 'decimals';
  /** True: asked so, whatever figures a lesson asks for elsewhere. */
  readonly ownFigures?: true;
  /** Whether an entry within 1 % is close, because several rounded steps lead to it. */
  readonly wideClose: boolean;
  /** Quantities it is worked from on the way, in order, each with how it follows from the numbers before it. */
  readonly buildsOn: readonly { readonly name: NumberName & QuantityName; readonly relation?: Calculation }[];
  /** The same from `chemistry`, which says what cannot be, such as a target above the stock. */
  readonly chemistry: (numbers: StepNumbers) => Result<number>;
  readonly relation: Calculation;
  /** A value whose place the figures are never finer than. */
  readonly neverFinerThan?: Calculation;
  readonly slips: readonly SlipEntry[];
}
