import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { composition } from './composition.ts';
import { elementOf, elements } from './elements.ts';
import type { Formula } from './formula.ts';
import { readFormula } from './readFormula.ts';

/**
 * Percent by mass of one element, all of its isotopes together.
 *
 * @param element - Its symbol, or its English name.
 * @returns %, not rounded; 0 never: an element that is not there fails with `element-not-in-formula`. Fails with
 * `element-unknown` for what is no element, and with `atomic-weight-none`.
 */
export function elementPercent(formula: Formula, element: string): Result<number> {
  const typed = element.trim();
  const named = [...elements().values()].find(({ name }) => name === typed.toLowerCase());
  const wanted = named?.symbol ?? typed;
  if (!elements().has(wanted)) {
    const read = readFormula(typed, 'element');
    if (!read.ok) return read;
    return failure({
      code: 'element-unknown',
      argument: 'element',
      expected: 'the symbol of one element such as N for element',
      received: quoted(element),
      advice: 'Type one symbol, without a number.',
      brief: typed,
    });
  }
  const shares = composition(formula);
  if (!shares.ok) return shares;
  const found = shares.value.filter((share) => elementOf(share.element) === wanted);
  if (found.length > 0) return success(found.reduce((sum, { percent }) => sum + percent, 0));
  const present = [...new Set(shares.value.map((share) => elementOf(share.element)))];
  return failure({
    code: 'element-not-in-formula',
    argument: 'element',
    expected: `one of ${present.join(', ')}`,
    received: quoted(element),
    advice: 'Choose an element that the formula has.',
    brief: wanted,
  });
}
