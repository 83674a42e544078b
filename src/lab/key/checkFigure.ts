/**
 * One figure that goes with an answer without giving it away, for a table on paper: the last figure of the sum of its
 * digits and of the places that its point moves to stand behind the first of them. Small enough to do in the head; one
 * wrong digit, and a decimal point that is off by fewer than ten places, change it; a wrong answer at random meets it one
 * time in ten. `typed` is a number as people write it, with its figures; zeros at its end change nothing.
 */
export function checkFigure(typed: string): number {
  const plain = typed.replace(',', '.').replace(/^[-+]/, '');
  const [whole = '', decimals = ''] = plain.split('.');
  const digits = `${whole}${decimals}`.replace(/^0+/, '');
  if (digits === '') return 0;
  const zerosAfterPoint = /^0*/.exec(decimals)?.[0].length ?? 0;
  const power = Number(whole) === 0 ? -zerosAfterPoint - 1 : whole.replace(/^0+/, '').length - 1;
  const sum = [...digits].reduce((total, digit) => total + Number(digit), 0);
  return (sum + sizeFigure(power)) % 10;
}

/** What is added for the size of a number: 2 where its first digit stands for hundredths (10⁻²), 9 where for tens. */
export const sizeFigure = (power: number): number => ((-power % 10) + 10) % 10;
