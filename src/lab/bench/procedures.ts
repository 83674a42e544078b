import { concentratedToFlask } from './procedures/concentratedToFlask.ts';
import { dryResidue } from './procedures/dryResidue.ts';
import { pipetteToFlask } from './procedures/pipetteToFlask.ts';
import type { Procedure } from './procedures/procedure.ts';
import { serialFlasks } from './procedures/serialFlasks.ts';
import { solidToFlask } from './procedures/solidToFlask.ts';
import { weighPortion } from './procedures/weighPortion.ts';

/** By name, each made when it is asked for: a block needs few of them, and its first answer waits for what is made. */
const procedures: Readonly<Record<string, () => Procedure>> = {
  'solid to flask': solidToFlask,
  'pipette to flask': pipetteToFlask,
  'concentrated to flask': concentratedToFlask,
  'serial dilution': serialFlasks,
  'weighed residue': dryResidue,
  'weighed portion': weighPortion,
};

/** Every procedure that a step can ask the order of. */
export const allProcedures = (): readonly Procedure[] => Object.values(procedures).map((made) => made());

/** The procedure of that name; a step that names one that is not there is a mistake in the program. */
export function procedureByName(name: string): Procedure {
  const found = procedures[name];
  if (found === undefined) throw new Error(`No procedure is called “${name}”.`);
  return found();
}
