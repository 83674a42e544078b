/** A number with the digits that were typed. */
export interface TypedNumber {
  readonly value: number;
  /** The decimal as typed, exactly: sign, digits, at most one point, at most one exponent. */
  readonly decimal: string;
  /** Significant figures, the trailing zeros of a whole number included. */
  readonly figures: number;
  /** Exponent of ten of the last digit typed: −3 for 0.050, 0 for 1200, 3 for 1.40 × 10^5. */
  readonly lastPlace: number;
  /** Trailing zeros of a whole number without a point, which may or may not be significant. */
  readonly ambiguousZeros: number;
  /** Typed as text, so that its trailing zeros were kept. */
  readonly isText: boolean;
  /** As it stood in the cell. */
  readonly typed: string;
}
