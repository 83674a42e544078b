import { type DensityLine, densityLines } from '../../chemistry/densityLines.ts';
import { listedFormula } from '../../chemistry/listedFormula.ts';
import { notALine } from '../../chemistry/straightLine.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import { demandTexts, startTexts } from '../texts/numbers.ts';
import { type LinePair, straightLineOf } from './linePair.ts';
import { lineTexts } from './lineTexts.ts';
import type { FillContext, FilledIn, TypedNumbers } from './recipe.ts';
import { tableLines } from './tableLines.ts';

type Line = keyof LinePair;
const lines: readonly Line[] = ['lighterPercent', 'lighterDensity', 'heavierPercent', 'heavierDensity'];

/**
 * The two lines of a table of densities, as typed; where all four values are blank those of our own table are filled in.
 *
 * @returns What is filled in, and the table that it comes from; nothing and none where the lines are typed. Fails with
 * `numbers-start` where some are blank, with `numbers-shelf` where the table ends below the molarity, or as `notALine` does.
 */
export function readTableLines(
  typed: TypedNumbers<Line | 'molarity'>,
  { formula, molarMass, givenOf }: FillContext<Line | 'molarity'>,
): Result<FilledIn<Line>> {
  const value = (name: Line | 'molarity'): number => typed[name]?.value ?? Number.NaN;
  const blank = lines.filter((name) => typed[name] === undefined);
  const [first] = blank;
  if (first === undefined) {
    const error = notALine(
      straightLineOf({
        lighterPercent: value('lighterPercent'),
        lighterDensity: value('lighterDensity'),
        heavierPercent: value('heavierPercent'),
        heavierDensity: value('heavierDensity'),
      }),
    );
    return error
      ? failure({ ...error, argument: error.argument.replace('_', ' ') })
      : success({ filled: {}, table: undefined });
  }
  if (blank.length < lines.length) {
    return failure({ code: 'numbers-start', argument: givenOf(first), ...startTexts.linesTogether });
  }
  const table: readonly DensityLine[] | undefined = densityLines(listedFormula(formula) ?? '');
  const molarity = value('molarity');
  const pair = table && tableLines(table, { molarMass, molarity });
  if (!pair) {
    const found = demandTexts.withinTable({ molarity, formula: formula.text });
    return failure({ code: 'numbers-shelf', argument: givenOf('molarity'), ...found });
  }
  const texts = lineTexts(pair);
  const filled: Partial<Record<Line, TypedQuantity>> = {};
  for (const name of lines) {
    const kind = name === 'lighterPercent' || name === 'heavierPercent' ? 'percent' : 'density';
    const read = readQuantity(texts[name], kind, givenOf(name), { decimalMark: 'point' });
    if (!read.ok) return read;
    filled[name] = read.value;
  }
  return success({ filled, table });
}
