import type { DensityLine } from '../../chemistry/densityLines.ts';
import { densityOnLine, type Label } from './densityOnLine.ts';
import { liesBetween } from './liesBetween.ts';
import type { LinePair } from './linePair.ts';

const pairOf = (one: DensityLine, other: DensityLine): LinePair => {
  // Of most solutes the stronger solution is the heavier; of ammonia it is the lighter.
  const [lighter, heavier] = one.density <= other.density ? [one, other] : [other, one];
  return {
    lighterPercent: lighter.massPercent,
    lighterDensity: lighter.density,
    heavierPercent: heavier.massPercent,
    heavierDensity: heavier.density,
  };
};

/**
 * Share of the density by which a careful team's own may be off: what a pipette of class B, a balance of 0.01 g and the
 * part of the allowance that counts come to for 25 mL.
 */
const room = 0.005;

/** Steps of percent in a table beyond which a straight line bends too much to be widened by one. */
const widest = 2;

/** A percent up to 1 without its sign can mean a share as well, so such lines are passed over. */
const unclearUpTo = 1;

/**
 * The two lines of a table that enclose the label's solution, with room on both sides for a team's own, so that a portion
 * a little stronger or weaker still lies between them. Where the table is coarse, or at its end, the nearest line serves and
 * the straight line goes on. Undefined where the label is stronger than the table.
 */
export function tableLines(table: readonly DensityLine[], label: Label): LinePair | undefined {
  const lines = table.filter(({ massPercent }) => massPercent === 0 || massPercent > unclearUpTo);
  for (let at = 1; at < lines.length; at += 1) {
    const [before, after] = [lines[at - 1], lines[at]];
    if (!before || !after) continue;
    const density = densityOnLine(pairOf(before, after), label);
    if (density === undefined || !liesBetween(density, pairOf(before, after))) continue;
    const further = (from: number, step: 1 | -1): DensityLine | undefined => {
      const [line, next] = [lines[from], lines[from + step]];
      if (!line || !next || Math.abs(line.density - density) >= room * density) return line;
      return Math.abs(next.massPercent - line.massPercent) > widest ? line : further(from + step, step);
    };
    const [weaker, stronger] = [further(at - 1, -1), further(at, 1)];
    return weaker && stronger && pairOf(weaker, stronger);
  }
  return undefined;
}
