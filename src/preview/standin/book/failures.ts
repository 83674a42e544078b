import { CellError, ErrorType, type HyperFormula } from 'hyperformula';
import { longestText, tooLong } from '../enginePlugins.ts';

/**
 * How far the engine's parser and evaluation go before they run out of stack: some 160 levels and 1,000 signs, less
 * where a call is already deep. What goes further is refused before it is tried, with room to spare.
 */
const mostLevels = 64;
const mostSigns = 500;

/** Says why the engine should not be given a formula at all; undefined for all that are not outlandish. */
export function tooMuch(formula: string): string | undefined {
  let levels = 0;
  let deepest = 0;
  let signs = 0;
  for (const [piece] of formula.slice(1).matchAll(/"(?:[^"]|"")*"?|'(?:[^']|'')*'?|[(){}+\-*/^&=<>%]/g)) {
    if (piece === '(' || piece === '{') {
      levels += 1;
      deepest = Math.max(deepest, levels);
    } else if (piece === ')' || piece === '}') levels -= 1;
    else if (piece.length === 1) signs += 1;
  }
  if (deepest > mostLevels) {
    return `Stand-in: this formula has ${deepest} brackets inside each other, and ${mostLevels} is the most that the preview works out. Split it over several cells.`;
  }
  if (signs > mostSigns) {
    return `Stand-in: this formula has ${signs} signs between its terms, and ${mostSigns} is the most that the preview works out. Split it over several cells, or use SUM.`;
  }
  return formula.length > longestText
    ? `Your input contains more than the maximum of ${longestText} characters in a single cell.`
    : undefined;
}

export const failureWords = (error: unknown): string =>
  `Stand-in: the preview cannot work out this formula (${error instanceof Error ? error.message : String(error)}).`;

interface Evaluator {
  evaluateAstToCellValue(ast: unknown, state: { readonly formulaVertex?: unknown }): unknown;
}

/**
 * Makes an error in its own cell of whatever a formula fails with while it is worked out. Thrown on, it would leave the
 * engine with cells that were never worked out, and every later reading would fail.
 */
export function keepFailuresInTheirCells(engine: HyperFormula): void {
  // The engine offers no place for this; that the member is there is held by a test.
  const evaluator = (engine as unknown as { readonly _evaluator: Evaluator })._evaluator;
  const evaluate = evaluator.evaluateAstToCellValue.bind(evaluator);
  evaluator.evaluateAstToCellValue = (ast, state) => {
    try {
      const value = evaluate(ast, state);
      return typeof value === 'string' && value.length > longestText ? tooLong(state.formulaVertex) : value;
    } catch (error) {
      return new CellError(ErrorType.ERROR, failureWords(error), state.formulaVertex as never);
    }
  };
}
