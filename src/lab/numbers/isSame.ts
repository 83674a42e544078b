/** Equal but for the last bits of binary arithmetic. */
export const isSame = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
