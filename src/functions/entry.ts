import type { Formula } from '../chemistry/formula.ts';
import type { Result } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import type { Grams, GramsPerMillilitre, Millilitres, Moles, MolesPerLitre, Percent } from '../measurement/quantity.ts';
import type { Measure } from '../measurement/readMeasure.ts';
import type { TypedNumber } from '../measurement/readNumber.ts';

/** Rows of cells, all of one length. */
export type Grid = readonly (readonly CellValue[])[];
/** What the host hands over for one argument: a cell, or a range as rows of cells. */
export type CellArgument = CellValue | Grid;
/** What goes back: one cell, or a rectangle of cells that spills. */
export type CellResult = CellValue | CellValue[][];
/** What our functions put into one cell; '' leaves it blank. */
export type Filled = string | number | boolean;

/** What an argument is read as, and what `compute` receives for it. */
interface Readings {
  readonly formula: Formula;
  /** A formula, or a name of the list of substances: the cell itself, since which of the two it is decides what follows. */
  readonly substance: CellValue;
  readonly text: string;
  readonly volume: Millilitres;
  readonly mass: Grams;
  readonly amount: Moles;
  readonly concentration: MolesPerLitre;
  readonly density: GramsPerMillilitre;
  /** A purity or a mass percent: a bare 1 or less may come from a percentage cell, so it is refused. */
  readonly percent: Percent;
  /** Percent or percentage points where less than 1 is usual: text with its sign, or a bare number as printed. */
  readonly 'percentage points': Percent;
  readonly number: number;
  /** A number with or without a unit of any kind; what it is compared with says what fits. */
  readonly measure: Measure;
  /** How many times a volume grows, more than 1; a ratio has two readings. */
  readonly factor: number;
  /** A number with the digits that were typed. */
  readonly digits: TypedNumber;
  /** A number, with or without a unit, of which only the figures count; so a comma may be read either way. */
  readonly figures: TypedNumber;
  readonly 'whole number': number;
  readonly 'yes or no': boolean;
  /** The cell itself: an entry is judged, never refused. */
  readonly entry: CellValue;
  /** Ranges that belong together as they stand and are not gone through cell by cell. */
  readonly row: readonly CellValue[];
  readonly column: readonly CellValue[];
  readonly table: Grid;
}
export type ArgumentKind = keyof Readings;

/** Kinds that no example of a value explains: where such an argument is missing, its message says what it is. */
type ToldKind = 'text' | 'substance' | 'row' | 'column' | 'table';

interface ArgumentBase {
  /** In snake_case; people's sheets depend on names and order. */
  readonly name: string;
  /** The only texts that the argument can be; reading ignores case and spacing. */
  readonly oneOf?: readonly string[];
  /** What else people call one of those. */
  readonly otherNames?: Readonly<Record<string, string>>;
}

/** What an argument is stands beside it where a message needs it, else in the help. */
export type ArgumentEntry = ArgumentBase &
  (
    | { readonly kind: ToldKind; readonly optional?: never; readonly about: string }
    | { readonly kind: ToldKind; readonly optional: true; readonly about?: string }
    | { readonly kind: Exclude<ArgumentKind, ToldKind>; readonly optional?: true; readonly about?: string }
  );

interface FunctionExample {
  readonly call: readonly CellArgument[];
  /** The result as computed, to a relative 1e-12; a table with all its rows. */
  readonly gives: Filled | readonly (readonly Filled[])[];
}

/** Bad input and the full text that it is answered with. */
interface RefusedExample {
  readonly call: readonly CellArgument[];
  readonly says: string;
}

export const groups = [
  'Substances and amounts',
  'Making a solution',
  'Diluting',
  'Converting',
  'Measuring and comparing',
  'Checking',
] as const;

/** One public function as it runs: what it is called with and what it does with that. */
export interface FunctionEntry {
  readonly name: string;
  readonly arguments: readonly ArgumentEntry[];
  /** Headings of what it fills, where that is more than one column. */
  readonly columns?: readonly string[];
  /** How arguments are gone through: `cellByCell`, `rowByRow`, `oneTable` or `wholeBlock`. */
  readonly call: (this: FunctionEntry, cells: readonly CellArgument[]) => CellResult;
  /** From values as read, in the order of the arguments, to what fills one place. */
  readonly compute: (...values: never[]) => Result<unknown>;
}

/**
 * What people are told of a function. The declarations' comments, the reference and the tests come from it; it stands
 * apart from the entry because every cell that calls a function pays for loading the script, and never reads this.
 */
export interface EntryHelp {
  readonly group: (typeof groups)[number];
  /** One sentence. */
  readonly summary: string;
  /** What each argument is, by name, unless the entry says so. */
  readonly about: Readonly<Record<string, string>>;
  readonly returns: string;
  readonly source: string;
  /** What its user must know besides. */
  readonly notes: readonly string[];
  readonly examples: readonly [FunctionExample, ...FunctionExample[]];
  /** The likeliest misuses, shown in the reference with their messages. */
  readonly refuses: readonly RefusedExample[];
}

/** A function with its help. */
export interface PublicFunction extends FunctionEntry, EntryHelp {
  readonly arguments: readonly ToldArgument[];
}

/** An argument with what it is. */
export type ToldArgument = ArgumentEntry & { readonly about: string };

type ValueOf<Argument extends ArgumentEntry> = Argument extends { readonly oneOf: readonly (infer Choice)[] }
  ? Choice
  : Readings[Argument['kind']];

/** The values that `compute` receives for a list of arguments. */
export type Values<Arguments extends readonly ArgumentEntry[]> = {
  -readonly [Place in keyof Arguments]: Arguments[Place] extends { readonly optional: true }
    ? ValueOf<Arguments[Place]> | undefined
    : ValueOf<Arguments[Place]>;
};
