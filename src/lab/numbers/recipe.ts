import type { DensityLine } from '../../chemistry/densityLines.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { Result } from '../../errors/result.ts';
import type { GramsPerMole, Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import type { TypedQuantity } from '../../measurement/readQuantity.ts';
import type { Shelf } from '../lesson/setup.ts';
import type { OfferedSolute } from '../lesson/solutes.ts';
import type { Solutions } from '../particles/solutions.ts';
import type { Portion, TeamUse } from '../preparation/teamUse.ts';
import type { Portion as Delivered } from './portions.ts';

/** One of the numbers that a recipe takes, by its own name. */
interface RecipeNumber {
  readonly kind: 'concentration' | 'volume' | 'mass' | 'density' | 'percent';
  readonly optional?: true;
  /** The size of a flask that is filled. */
  readonly isFlask?: true;
  /** False: a picture does without it. */
  readonly isPictured?: false;
  /** No team gets more of it than the teacher typed, unless nothing else can be made. */
  readonly atMostTyped?: true;
}

/** What is the same for all teams of a lesson. */
export interface Substance {
  /** As typed. */
  readonly formula: string;
  /** g/mol. */
  readonly molarMass: number;
  readonly purityPercent: number;
  /** mol/L that surely dissolves; undefined where no figure is known. */
  readonly solubleMolarity: number | undefined;
}

/** What numbers are tried against. */
export interface Bench {
  readonly shelf: Shelf;
  /** All that its pipettes deliver; see `portions`. */
  readonly deliverable: readonly Delivered[];
  readonly substance: Substance;
}

/** What the shelf, the balance or the substance asks of numbers, and these do not meet. */
export interface Unmet<Name extends string = string> {
  /** Tells demands apart, such as `flask on shelf`. */
  readonly demand: string;
  /** Which number it is about. */
  readonly about: Name;
  readonly expected: string;
  readonly received: string;
  /** What would free it. */
  readonly advice: string;
}

/** Numbers in base units (mol/L, mL, g, g/mL, percent as printed) by the recipe's own names; NaN for one left out. */
export type RecipeNumbers<Name extends string = string> = Readonly<Record<Name, number>>;

/** What a teacher starts from, by the recipe's own names. */
export interface RecipeStart<Name extends string = string> {
  readonly numbers: RecipeNumbers<Name>;
  /** As typed, for those that were. */
  readonly typed: TypedNumbers<Name>;
  /** The table of densities, where the plan leaves its lines to us. */
  readonly table: readonly DensityLine[] | undefined;
}

/** Numbers as typed, by the recipe's own names; those left blank are absent. */
export type TypedNumbers<Name extends string = string> = Readonly<Partial<Record<Name, TypedQuantity>>>;

export interface FillContext<Name extends string = string> {
  readonly formula: Formula;
  /** g/mol. */
  readonly molarMass: number;
  /** The given that a number is read from, for messages. */
  readonly givenOf: (name: Name) => string;
}

export interface FilledIn<Name extends string = string> {
  readonly filled: TypedNumbers<Name>;
  readonly table: readonly DensityLine[] | undefined;
}

/** How far from the start to look. */
export interface Reach {
  /** Above what was typed too. */
  readonly beyond: boolean;
  /** Every third figure, not only 0 and 5. */
  readonly fine: boolean;
}

/** Some of a recipe's numbers, near the start. */
export interface NearSet<Name extends string = string> {
  readonly numbers: Readonly<Partial<Record<Name, number>>>;
  readonly texts: Readonly<Partial<Record<Name, string>>>;
  /** Fillings of a pipette that the portion takes; 0 where none is taken. */
  readonly fillings: 0 | 1 | 2;
  /** 0 where it dilutes about as far as the start does, 1 where further or less far, 2 where much so. */
  readonly away: 0 | 1 | 2;
  /** False where what is made from a stock is stronger than the start's. */
  readonly withinTarget: boolean;
}

export interface NearSets<Name extends string = string> {
  readonly sets: readonly NearSet<Name>[];
  /** Whether flask sizes with other numbers of digits had to be let in. */
  readonly otherDigits: boolean;
  /** What there is none of, where that leaves nothing. */
  readonly lacks: { readonly what: 'flask' | 'pipette'; readonly about: Name } | undefined;
}

/** Words of a refusal. */
interface Advice {
  readonly expected: string;
  readonly received: string;
  readonly advice: string;
}

/** What a team needs and makes, without whose it is and of what. */
type Amounts = Partial<Omit<TeamUse, 'team' | 'formula' | 'handled'>>;

interface UseContext {
  readonly molarMass: GramsPerMole;
  /** A solution of the lesson's substance; `name` is the number that its molarity is read from, if it is. */
  readonly portion: (molarity: MolesPerLitre, volume: Millilitres, name?: string) => Portion;
  /** How many dilutions the activity asks for, one after the other. */
  readonly dilutions: number;
  /** False: staff dilute concentrated reagents. */
  readonly studentsDilute: boolean;
}

/** A recipe: from which numbers something is made, and all that follows from it. A new one is one entry. */
export interface RecipeEntry<Name extends string = string, Optional extends Name = never> {
  readonly takes: {
    readonly [Own in Name]: RecipeNumber & (Own extends Optional ? { readonly optional: true } : unknown);
  };
  /** Names of the numbers that belong together, each a task of its own that no two teams should share. */
  readonly tasks: readonly (readonly Name[])[];
  /** The molarity that a team starts from: teams of one class have different ones where they can. */
  readonly startsFrom: Name;
  /** The molarity of a stock that stands ready: one bottle for all teams of the lesson, two at the most. */
  readonly bottle?: Name;
  /** The flask in which a team makes its first solution, from the solid. */
  readonly madeIn?: Name;
  /** What the first solution, or a portion of it, is made up to: how strong, and in which flask. */
  readonly dilutes?: { readonly target: Name; readonly flask: Name };
  /** A portion that is weighed. */
  readonly weighedPortion?: Name;
  /** One solution after the other, each from the one before: a picture for each dilution. */
  readonly isRow?: true;
  /** The substance itself is weighed, so that its solubility matters. */
  readonly dissolves: boolean;
  /** Values on which every slip can be told from every other, unless the substance itself makes two alike. */
  readonly odd: Readonly<Partial<Record<Name, number>>>;
  /** What it asks of its substance, where this one does not fit. */
  unfit?(formula: Formula, received: string): Advice | undefined;
  /** The substances to offer in place of the proposed solutes. */
  offers?(): readonly OfferedSolute[];
  /**
   * What a plan may leave blank, filled in from a table, with that table; nothing and none where all was typed. Fails where
   * it cannot be filled in, or where what was typed does not go together.
   */
  fillIn?(typed: TypedNumbers<Name>, context: FillContext<Name>): Result<FilledIn<Name>>;
  /** Every set near the start that the shelf's sizes give, in a fixed order; demands are not looked at yet. */
  near(start: RecipeStart<Name>, bench: Bench, reach: Reach): NearSets<Name>;
  /** Whether it dilutes by a whole number, which is easier to see through than another. */
  isWhole?(numbers: RecipeNumbers<Name>): boolean;
  /** Demands that numbers do not meet, the most basic first. */
  demands(numbers: RecipeNumbers<Name>, bench: Bench): readonly Unmet<Name>[];
  /** What a team uses up and needs. Fails with what the relation itself refuses. */
  use(numbers: RecipeNumbers<Name>, context: UseContext): Result<Amounts>;
  /**
   * The solutions to picture; left out where there are none. `step` is which dilution of a row, from 1 on. Fails with what
   * the relation itself refuses.
   */
  picture?(
    numbers: RecipeNumbers<Name>,
    context: { readonly molarMass: number; readonly step: number },
  ): Result<Pick<Solutions, 'first' | 'diluted' | 'step'>>;
}
