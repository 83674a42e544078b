/** Each prime to ten, so that one wrong digit always changes the figure. */
const weights = [1, 3, 7, 9] as const;

/**
 * One figure that goes with an answer without giving it away, for a table on paper: with the answer as a.bc × 10^n, the
 * last figure of a + 3·b + 7·c + n. One wrong digit, and a decimal point that is off by fewer than ten places, change it;
 * a wrong answer at random meets it one time in ten. `typed` is a number as people write it, with its figures.
 */
export function checkFigure(typed: string): number {
  const plain = typed.replace(',', '.').replace(/^[-+]/, '');
  const [whole = '', decimals = ''] = plain.split('.');
  const digits = `${whole}${decimals}`.replace(/^0+/, '');
  const leadingZeros = /^0*/.exec(decimals)?.[0].length ?? 0;
  const power = Number(whole) === 0 ? -leadingZeros - 1 : whole.replace(/^0+/, '').length - 1;
  const sum = [...digits].reduce((total, digit, place) => total + Number(digit) * (weights[place % 4] ?? 1), 0);
  return (((sum + (digits === '' ? 0 : power)) % 10) + 10) % 10;
}
