import { type Millilitres, millilitres } from '../../measurement/quantity.ts';
import { rinseMl } from './staffSolutions.ts';
import type { TeamUse } from './teamUse.ts';

/**
 * All that a team has to pour away in the end, in mL: what it made and did not use up, its weaker solutions, and what a
 * pipette was rinsed with. What goes from one flask of a row into the next counts once, and a dried portion leaves none.
 */
export function liquidLeft({ made, taken, takenFromOwn, diluted, driedCount }: TeamUse): Millilitres {
  const filled = diluted.reduce((sum, { volume }) => sum + volume, 0);
  const passedOn = taken === undefined ? 0 : Math.max(0, diluted.length - 1) * taken.volume;
  const rinsed = taken === undefined ? 0 : rinseMl;
  const portion = taken !== undefined && diluted.length === 0 && driedCount === 0 ? taken.volume : 0;
  const own = (made?.volume ?? 0) - (takenFromOwn?.volume ?? 0);
  return millilitres(own + filled - passedOn + rinsed + portion);
}
