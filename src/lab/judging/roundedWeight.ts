/** An atomic weight with fewer decimals than it is printed with, one number for each way to shorten it. */
interface ShortenedWeight {
  readonly halfUp: number;
  readonly halfEven: number;
}

/** A weight at `kept` decimals; as it stands where it has no more. */
export function shortenedWeight(weight: number, kept: number): ShortenedWeight {
  // Shifted by its exponent, the double nearest to the decimal, so that a tie is exactly one half.
  const shifted = Number(`${weight}e${kept}`);
  const below = Math.floor(shifted);
  const part = shifted - below;
  const halfUp = part >= 0.5 ? below + 1 : below;
  const halfEven = part === 0.5 && below % 2 === 0 ? below : halfUp;
  const unshifted = (whole: number): number => Number(`${whole}e-${kept}`);
  return { halfUp: unshifted(halfUp), halfEven: unshifted(halfEven) };
}

const decimalsOf = (weight: number): number => String(weight).split('.')[1]?.length ?? 0;

/**
 * Least and greatest value of an atomic weight that is left unrounded or rounded, half up or half to even, to
 * `decimals` or more decimals.
 */
export function roundedWeight(weight: number, decimals: number): { readonly low: number; readonly high: number } {
  const own = decimalsOf(weight);
  let low = weight;
  let high = weight;
  for (let kept = decimals; kept < own; kept += 1) {
    const { halfUp, halfEven } = shortenedWeight(weight, kept);
    low = Math.min(low, halfEven);
    high = Math.max(high, halfUp);
  }
  return { low, high };
}
