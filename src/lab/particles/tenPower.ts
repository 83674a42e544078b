import { withDecimalMark } from '../../measurement/withDecimalMark.ts';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A large number as the trade writes it: `3.61 × 10²¹`. */
export function tenPower(
  value: number,
  { figures, decimalMark }: { readonly figures: number; readonly decimalMark: 'point' | 'comma' },
): string {
  const [digits = '', exponent = '0'] = value.toExponential(figures - 1).split('e');
  const power = String(Math.abs(Number(exponent))).replace(/\d/g, (digit) => raised.charAt(Number(digit)));
  return `${withDecimalMark(digits, decimalMark)} × 10${Number(exponent) < 0 ? '⁻' : ''}${power}`;
}
