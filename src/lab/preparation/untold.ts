/** A number that some team has to find, in g or mL. */
export interface AnswerKnown {
  readonly value: number;
  readonly unit: 'g' | 'mL';
}

/** How near to an answer a number has to be to tell it, to the three figures that are asked. */
const nearness = 0.005;

/**
 * An amount as everybody may read it: rounded up to one figure and, where that would still come to an answer once it is
 * shared out among teams, with spare or without, further up by as little as will do.
 */
export function untold({
  value,
  unit,
  answers,
  shares,
}: {
  readonly value: number;
  readonly unit: 'g' | 'mL' | 'L';
  readonly answers: readonly AnswerKnown[];
  /** What it may be divided by. */
  readonly shares: readonly number[];
}): number {
  const [scale, kind] = unit === 'L' ? [1000, 'mL'] : [1, unit];
  const own = answers.filter((answer) => answer.unit === kind);
  const tells = (amount: number) =>
    shares.some((share) =>
      own.some((answer) => Math.abs((amount * scale) / share - answer.value) <= answer.value * nearness),
    );
  const place = 10 ** Math.floor(Math.log10(value));
  const first = Math.ceil(Number((value / place).toPrecision(12))) * place;
  for (let step = 0; ; step += 1) {
    const amount = Number((first + (step * place) / 10).toPrecision(step === 0 ? 1 : 3));
    // So many steps are never needed: then the lesson has an answer for every number, and nobody can tell which is meant.
    if (step > 50 || !tells(amount)) return amount;
  }
}
