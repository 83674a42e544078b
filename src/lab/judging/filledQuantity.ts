import type { Formula } from '../../chemistry/formula.ts';
import type { QuantityEntry, StepNumbers } from '../quantities/quantityEntry.ts';
import type { Span } from './span.ts';
import type { Asked } from './tolerance.ts';

/** A quantity with its numbers in place, ready to judge any entry. */
export interface FilledQuantity {
  readonly quantity: QuantityEntry;
  /** The formula whose molar mass the quantity is worked from, where it is. */
  readonly formula: Formula | undefined;
  readonly molarMass: Span | undefined;
  readonly numbers: StepNumbers;
  readonly asked: Asked;
  /** To how many decimals atomic weights may be rounded at the coarsest. */
  readonly decimals: number;
}

/** Values taken from a team's own entries, by the name of what they stand for. */
export type Carried = Readonly<Partial<Record<string, number>>>;
