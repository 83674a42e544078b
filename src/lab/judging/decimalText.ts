import { withDecimalMark } from '../../measurement/withDecimalMark.ts';

/** A number for people, in plain digits with at most 6 figures and the class's own decimal mark. */
export function decimalText(value: number, decimalMark: 'point' | 'comma'): string {
  const rounded = Number(value.toPrecision(6));
  const plain = Math.abs(rounded) >= 1e-6 || rounded === 0 ? String(rounded) : rounded.toFixed(9);
  return withDecimalMark(plain, decimalMark);
}
