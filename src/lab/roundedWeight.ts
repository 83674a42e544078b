/**
 * Least and greatest value of an atomic weight that is left unrounded or rounded, half up or half to even, to
 * `decimals` or more decimals.
 */
export function roundedWeight(weight: number, decimals: number): { readonly low: number; readonly high: number } {
  const printed = String(weight);
  const point = printed.indexOf('.');
  const own = point < 0 ? 0 : printed.length - point - 1;
  let low = weight;
  let high = weight;
  for (let kept = decimals; kept < own; kept += 1) {
    // Shifted by its exponent, the double nearest to the decimal, so that a tie is exactly one half.
    const shifted = Number(`${printed}e${kept}`);
    const below = Math.floor(shifted);
    const part = shifted - below;
    const halfUp = part >= 0.5 ? below + 1 : below;
    const halfEven = part === 0.5 && below % 2 === 0 ? below : halfUp;
    low = Math.min(low, Number(`${halfEven}e-${kept}`));
    high = Math.max(high, Number(`${halfUp}e-${kept}`));
  }
  return { low, high };
}
