/** Volume of stock to take, in mL. */
export const portionOf = ({
  stock,
  target,
  volume,
}: {
  readonly stock: number;
  readonly target: number;
  readonly volume: number;
}): number => (target / stock) * volume;
