/** Power of ten of the first digit of a number: 2 for 584, -2 for 0.0584. */
export const leadingPlace = (value: number): number => {
  // Thirteen figures first, so that 0.1 reached as 0.09999999999999999 keeps its place.
  const [, exponent] = Math.abs(value).toExponential(12).split('e');
  return Number(exponent);
};

/** 10 to a whole power, exact to the last bit of a double, as `10 ** power` is not. */
export const tenTo = (power: number): number => Number(`1e${power}`);
