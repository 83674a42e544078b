import type { TypedNumber } from './typedNumber.ts';

/**
 * Significant figures as typed. Trailing zeros of a whole number without a point do not count, unless a power of ten or
 * a closing point settles that they do; zero itself counts as one figure.
 *
 * Source: OpenStax Chemistry 2e, section 1.5; the count for zero is common practice, no source.
 */
export const significantFigures = (number: TypedNumber): number => number.figures - number.ambiguousZeros;
