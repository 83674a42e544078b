import { concentratedToFlask } from './procedures/concentratedToFlask.ts';
import { dryResidue } from './procedures/dryResidue.ts';
import { pipetteToFlask } from './procedures/pipetteToFlask.ts';
import type { Procedure } from './procedures/procedure.ts';
import { serialFlasks } from './procedures/serialFlasks.ts';
import { solidToFlask } from './procedures/solidToFlask.ts';
import { weighPortion } from './procedures/weighPortion.ts';

/** Every procedure that a step can ask the order of. */
export const allProcedures = (): readonly Procedure[] => [
  solidToFlask,
  pipetteToFlask,
  concentratedToFlask,
  serialFlasks,
  dryResidue,
  weighPortion,
];

/** The procedure of that name; a step that names one that is not there is a mistake in the program. */
export function procedureByName(name: string): Procedure {
  const found = allProcedures().find((procedure) => procedure.name === name);
  if (found === undefined) throw new Error(`No procedure is called “${name}”.`);
  return found;
}
