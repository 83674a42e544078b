import type { RecipeUse } from '../numbers/recipes.ts';
import type { QuantityName } from '../quantities.ts';
import type { SlipId } from '../texts/feedback.ts';

/** One of the numbers a team is given: a column of the Plan. */
export interface Given {
  /** Heading in the Plan, in lower case, such as `stock molarity`. */
  readonly name: string;
  readonly unit: string;
  readonly about: string;
  readonly optional?: true;
  /** Left blank, the table of densities fills it in for every team. */
  readonly fromTable?: true;
  /** What a new plan starts from, as typed; blank where left out. */
  readonly start?: string;
}

/**
 * A piece of the line under a step's title: plain words, or the team's own value of a given.
 * `before` and `after` are words that stand only where that given is filled in.
 */
export type Shown = string | { readonly given: string; readonly before?: string; readonly after?: string };

/** A piece of glassware or a balance that a reading depends on. `volume` names the given that holds its size in mL. */
type ReadingTool = { readonly tool: 'balance' } | { readonly tool: 'flask' | 'pipette'; readonly volume: string };

/** A value that no row asks for, with the given that each of its arguments is read from. */
export interface ExpectedValue {
  readonly expected: 'mass of portion';
  readonly takes: Readonly<Record<string, { readonly given: string }>>;
}

interface StepBase {
  /** Stands in the sheet's step column; never changes once shared. */
  readonly id: string;
  readonly title: string;
  /** Unit that the entry is asked in; empty where there is none. */
  readonly unit: string;
  readonly shown: readonly Shown[];
  /** 1 or 2: in which period of the activity the step is done. */
  readonly period: 1 | 2;
  /** Read at the bench, or the order of work there: waits for the cautions and for every earlier row that needs another look. */
  readonly bench: boolean;
}

export interface CalculatedStep extends StepBase {
  readonly kind: 'calculated';
  readonly quantity: QuantityName;
  /** For each argument of the quantity, the given it is read from, or the step whose entry it is read from. */
  readonly takes: Readonly<Record<string, { readonly given: string } | { readonly entryOf: string }>>;
  /** For each quantity or argument this step can be carried forward from, the step that holds it. */
  readonly buildsOn: Readonly<Record<string, string>>;
  /** What to ask about a slip, by its id, where the words of its quantity do not fit how the step is worked. */
  readonly asks?: Readonly<Partial<Record<SlipId, string>>>;
}
/** What a reading may be asked in. */
export type ReadingUnit = 'g' | 'mL' | 'mol' | 'mol/L' | 'g/mL';
export interface MeasuredStep extends StepBase {
  readonly kind: 'measured';
  readonly unit: ReadingUnit;
  /**
   * What the reading is compared with: the step whose target is expected, a number that the team was given, or a value
   * that no row asks for, worked from givens.
   */
  readonly expects: string | { readonly given: string } | ExpectedValue;
  readonly instrument: 'balance' | 'flask' | 'pipette' | 'bench';
  /** All that the reading depends on, where that is more than the instrument it is read from. */
  readonly tools?: readonly ReadingTool[];
  /** Part of the teacher's allowance for technique that counts for this reading; all of it where left out. */
  readonly techniqueShare?: number;
  /** Which help with readings goes with it, where not that of its instrument. */
  readonly hints?: 'portion';
  /** Worked from two readings in rows of their own, where a lesson asks for them. */
  readonly from?: 'weighings';
}
/** What a balance shows with a vessel on it, before anything is worked from it. */
export interface WeighingStep extends StepBase {
  readonly kind: 'weighing';
  /** The measured step that is worked from it. */
  readonly of: string;
  readonly when: 'empty' | 'loaded';
}
export interface OrderedStep extends StepBase {
  readonly kind: 'ordered';
  /** Name of the procedure in `lab/procedures`. */
  readonly procedure: string;
  /** What the team handles in it, where its strength decides how much care the order takes. */
  readonly handles?: Pick<Substance, 'formula' | 'solid' | 'molarity'>;
}
export interface ChosenStep extends StepBase {
  readonly kind: 'chosen';
  /** Name of the question in `lab/questions`. */
  readonly question: string;
}
export interface ToldStep extends StepBase {
  readonly kind: 'told';
  /** Asked for as evidence, in a row that is no higher than two lines; of a link also whether it is one is said. */
  readonly evidence?: 'words' | 'link';
}
/** What a team handles, by the names of the givens that say it; with a formula alone it is the substance undiluted. */
export interface Substance {
  readonly formula: string;
  /** The substance itself is handled, because it is weighed. */
  readonly solid?: true;
  /** Of a concentrated reagent, as its label has it. */
  readonly massPercent?: string;
  /** Of the strongest solution that is handled or made. */
  readonly molarity?: string;
}

/** The cautions of what is handled, read and ticked: bench rows wait for it. */
export interface TickedStep extends StepBase {
  readonly kind: 'ticked';
  readonly substance: Substance;
}

/** What to do if it splashes, or where it goes: which option is right follows from what is handled. Bench rows wait for it. */
export interface SafetyStep extends StepBase {
  readonly kind: 'safety';
  readonly topic: SafetyTopic;
  readonly substance: Substance;
}
type SafetyTopic = 'splash' | 'waste';

export type Step =
  | CalculatedStep
  | MeasuredStep
  | OrderedStep
  | ChosenStep
  | ToldStep
  | TickedStep
  | SafetyStep
  | WeighingStep;

/** What teams get numbers of their own in; every value in `takes` is the name of a given. */
type NumbersPlan = {
  readonly formula: string;
  readonly ion?: string;
  /** The lesson is about water of hydration, so that the formula has some. */
  readonly hydrate?: true;
} & (RecipeUse | { readonly recipe?: undefined });

/** A lesson as data: the numbers a team is given, and what it finds from them. */
export interface Activity {
  readonly id: string;
  readonly title: string;
  readonly aim: string;
  /** A question for a team that has finished early: to think and talk about, with nothing to hand in. */
  readonly extension: string;
  readonly givens: readonly Given[];
  /** How numbers for teams are made: one of `lab/numbers/recipes.ts`, or none, and then all teams have the same. */
  readonly numbers: NumbersPlan;
  readonly steps: readonly Step[];
}

/** What the settings change in an activity’s steps. */
export interface Variant {
  /** The dilution is worked from the stock that a team really made, in activities that make one. */
  readonly fromRealStock: boolean;
}
