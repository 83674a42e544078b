/** A number that is written with a point, with the decimal mark of the class. */
export const withDecimalMark = (written: string, decimalMark: 'point' | 'comma'): string =>
  decimalMark === 'comma' ? written.replace('.', ',') : written;
