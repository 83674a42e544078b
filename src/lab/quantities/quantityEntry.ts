import type { Formula } from '../../chemistry/formula.ts';
import type { Result } from '../../errors/result.ts';
import type { QuantityName } from '../quantities.ts';
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
  readonly name: string;
  readonly kind: ArgumentKind;
  /** Unit of a bare number; empty for text. */
  readonly unit: string;
  readonly optional?: true;
  /** What it counts as where it is left out. */
  readonly leftOut?: number;
}

/** For an ion: how many of it, and of each other kind, one formula unit gives, and the size of its charge. */
export type IonNumbers = {
  readonly ionCount: number;
  readonly ionCharge: number;
  readonly otherIonCounts: readonly number[];
};

/** Numbers of some names, in the base units of the contract (mL, g, mol, mol/L, g/mL, percent as printed). */
export type NumbersOf<Name extends string> = Readonly<Record<Name, number>> & IonNumbers;

/**
 * Numbers of a quantity that is not known by name, such as one of the list: those that it takes and builds on are there,
 * and NaN where they are still to come. An entry's own calculations know theirs by name; see `quantity`.
 */
export type StepNumbers = IonNumbers & { readonly [name: string]: number | readonly number[] | undefined };

export type Calculation<Numbers = StepNumbers> = (numbers: Numbers) => number;

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
export type SlipEntry<Numbers = StepNumbers> =
  | {
      readonly id: SlipId;
      /** What the wrong calculation gives; several values where it can be done in more than one way. */
      readonly value: (numbers: Numbers) => number | readonly number[];
    }
  | FormulaSlip;

/** The quantity's own relation, with other molar masses in place of the right one. */
export interface FormulaSlip {
  readonly id: SlipId;
  readonly molarMasses: (formula: Formula) => readonly WrongMolarMass[];
}

/** A quantity that can be checked, as data. A new one is one entry, its texts, and a line in `quantities.ts`. */
export interface QuantityEntry<Numbers = StepNumbers, Takes = readonly QuantityArgument[]> {
  readonly name: QuantityName;
  readonly takes: Takes;
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
  readonly buildsOn: readonly { readonly name: QuantityName; readonly relation?: Calculation<Numbers> }[];
  /** The same from `chemistry`, which says what cannot be, such as a target above the stock. */
  readonly chemistry: (numbers: Numbers) => Result<number>;
  readonly relation: Calculation<Numbers>;
  /** A value whose place the figures are never finer than. */
  readonly neverFinerThan?: Calculation<Numbers>;
  readonly slips: readonly SlipEntry<Numbers>[];
}
