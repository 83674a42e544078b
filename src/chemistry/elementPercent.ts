import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { composition } from './composition.ts';
import { allElements, elementBySymbol, elementOf } from './elements.ts';
import type { Formula } from './formula.ts';
import { readFormula } from './readFormula.ts';

/**
 * Percent by mass of one element, all of its isotopes together, or of one isotope.
 *
 * @param element - Its symbol or its English name; D, T or an isotope such as `[13C]` for that isotope alone.
 * @returns %, not rounded; 0 never: an element that is not there fails with `element-not-in-formula`. Fails with
 * `element-unknown` for what is no element, and with `atomic-weight-none`.
 */
export function elementPercent(formula: Formula, element: string): Result<number> {
  const typed = element.trim();
  const isotope = isotopeNamed(typed);
  if (isotope !== undefined)
    return shareOf(formula, { element, wanted: isotope, isWanted: (label) => label === isotope });
  const named = allElements().find(({ name }) => name === typed.toLowerCase());
  const wanted = named?.symbol ?? typed;
  if (elementBySymbol(wanted) === undefined) {
    const read = readFormula(typed, 'element');
    if (!read.ok) return read;
    return failure({
      code: 'element-unknown',
      argument: 'element',
      received: quoted(element),
      advice: 'Type one symbol without a number, such as N.',
      brief: typed,
    });
  }
  return shareOf(formula, { element, wanted, isWanted: (label) => elementOf(label) === wanted });
}

/** The label of an isotope that was typed as such; undefined for anything else. */
function isotopeNamed(typed: string): string | undefined {
  const read = readFormula(typed, 'element');
  const [only, ...others] = read.ok ? read.value.atoms : [];
  return only?.element.startsWith('[') && only.count === 1 && others.length === 0 ? only.element : undefined;
}

function shareOf(
  formula: Formula,
  {
    element,
    wanted,
    isWanted,
  }: { readonly element: string; readonly wanted: string; readonly isWanted: (label: string) => boolean },
): Result<number> {
  const shares = composition(formula);
  if (!shares.ok) return shares;
  const found = shares.value.filter((share) => isWanted(share.element));
  if (found.length > 0) return success(found.reduce((sum, { percent }) => sum + percent, 0));
  const present = [...new Set(shares.value.map((share) => elementOf(share.element)))];
  return failure({
    code: 'element-not-in-formula',
    argument: 'element',
    expected: `one of ${present.join(', ')}`,
    received: quoted(element),
    brief: wanted,
  });
}
