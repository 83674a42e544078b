/** The ends of the results that permitted rounding of atomic weights can give; `middle` is the unrounded one. */
export interface Span {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Room for the last bits of binary arithmetic, so that a tie in decimal stays a tie. */
export const relativeSlack = 1e-12;

/** Whether a value lies between two ends widened by `room`, ends included. */
export const isWithin = (value: number, { low, high }: { readonly low: number; readonly high: number }, room = 0) => {
  const slack = relativeSlack * Math.max(Math.abs(value), Math.abs(low), Math.abs(high));
  return value >= low - room - slack && value <= high + room + slack;
};

/** How far a value lies outside two ends; 0 between them. */
export const distanceFrom = (value: number, { low, high }: { readonly low: number; readonly high: number }) =>
  value < low ? low - value : value > high ? value - high : 0;

/** Power of ten of the first digit of a number: 2 for 584, -2 for 0.0584. */
export const leadingPlace = (value: number): number => {
  const size = Math.abs(value);
  const place = Math.floor(Math.log10(size));
  const digits = size / 10 ** place;
  // Well between two powers of ten, where no last bit decides.
  if (digits > 1.001 && digits < 9.99) return place;
  // Thirteen figures first, so that 0.1 reached as 0.09999999999999999 keeps its place.
  const [, exponent] = size.toExponential(12).split('e');
  return Number(exponent);
};

/** 10 to a whole power, exact to the last bit of a double, as `10 ** power` is not. */
export const tenTo = (power: number): number => Number(`1e${power}`);
