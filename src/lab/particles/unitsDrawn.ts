/** Formula units in two samples of equal volume. */
export interface UnitsDrawn {
  readonly before: number;
  readonly after: number;
  /** False where no small whole numbers stand in the true ratio and near ones are drawn. */
  readonly exact: boolean;
}

/** Particles in one box that a class still counts with patience, and that a picture can hold at all. */
const countable = 48;
const most = 120;
/** A sparse box should not be a box with a single particle in it, where there is room for more. */
const enough = 12;

const offBy = (drawn: number, ratio: number): number => Math.abs(drawn / ratio - 1);
/** Equal but for the last bits of binary arithmetic. */
const sameRatio = 1e-9;

/**
 * The smallest whole numbers of formula units that stand in the ratio of two molarities, exactly where that is possible
 * with few enough particles and otherwise within 1 %, then 2 %, then 5 %.
 *
 * @returns Undefined where the two are so far apart that no picture could hold both.
 */
export function unitsDrawn({
  ratio,
  perUnit,
}: {
  /** Molarity before over molarity after, at least 1. */
  readonly ratio: number;
  /** Particles from one formula unit. */
  readonly perUnit: number;
}): UnitsDrawn | undefined {
  const levels = [
    { within: sameRatio, particles: countable },
    { within: 0.01, particles: countable },
    { within: 0.02, particles: countable },
    { within: sameRatio, particles: most },
    { within: 0.02, particles: most },
    { within: 0.05, particles: most },
  ];
  for (const { within, particles } of levels) {
    for (let before = 1; before * perUnit <= particles; before += 1) {
      const after = Math.round(before / ratio);
      if (after >= 1 && offBy(before / after, ratio) <= within) {
        return fuller({ before, after, exact: offBy(before / after, ratio) <= sameRatio }, perUnit);
      }
    }
  }
  return undefined;
}

/** The same ratio with more of both, so long as the fuller box stays easy to count. */
function fuller({ before, after, exact }: UnitsDrawn, perUnit: number): UnitsDrawn {
  const times = (factor: number) => ({ before: before * factor, after: after * factor, exact });
  let factor = 1;
  while (before * factor * perUnit < enough && before * (factor + 1) * perUnit <= 2 * enough) factor += 1;
  return times(factor);
}
