import { densityFormulas } from './densityLines.ts';
import type { Formula } from './formula.ts';
import { readFormula } from './readFormula.ts';

const atomsOf = ({ atoms }: Formula): string =>
  atoms
    .map(({ element, count }) => `${element}${count}`)
    .sort()
    .join(' ');

/** As the table of densities writes a formula, by the atoms in it; undefined for a hydrate and for what it does not have. */
export function listedFormula(formula: Formula): string | undefined {
  if (formula.hydrate) return undefined;
  const wanted = atomsOf(formula);
  return densityFormulas().find((written) => {
    const read = readFormula(written);
    return read.ok && atomsOf(read.value) === wanted;
  });
}
