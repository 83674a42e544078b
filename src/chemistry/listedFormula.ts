import { atomsKey } from './atomsKey.ts';
import { densityFormulas } from './densityLines.ts';
import type { Formula } from './formula.ts';
import { readFormula } from './readFormula.ts';

/** As the table of densities writes a formula, by the atoms in it; undefined for a hydrate and for what it does not have. */
export function listedFormula(formula: Formula): string | undefined {
  if (formula.hydrate) return undefined;
  const wanted = atomsKey(formula);
  return densityFormulas().find((written) => {
    const read = readFormula(written);
    return read.ok && atomsKey(read.value) === wanted;
  });
}
