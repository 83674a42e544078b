import type { QuantityName } from '../quantities.ts';
import type { NumbersOf, QuantityArgument, QuantityEntry } from './quantityEntry.ts';

/** Names of the numbers among some arguments. */
type NumbersAmong<Takes extends readonly QuantityArgument[]> = Exclude<Takes[number]['name'], 'formula' | 'ion'>;

/**
 * A quantity's entry. Its calculations may use the numbers that it takes and the quantities that it builds on, and no
 * others: the compiler knows them by name.
 */
export const quantity = <const Takes extends readonly QuantityArgument[]>(
  entry: QuantityEntry<NumbersOf<NumbersAmong<Takes> | QuantityName>, Takes>,
): QuantityEntry => entry as unknown as QuantityEntry;
