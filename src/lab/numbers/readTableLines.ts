import { type DensityLine, densityLines } from '../../chemistry/densityLines.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { listedFormula } from '../../chemistry/listedFormula.ts';
import { notALine } from '../../chemistry/straightLine.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import type { Activity } from '../activity.ts';
import { demandTexts, startTexts } from '../texts/numbers.ts';
import { straightLineOf } from './linePair.ts';
import { lineTexts } from './lineTexts.ts';
import { tableLines } from './tableLines.ts';

type Typed = Readonly<Record<string, TypedQuantity>>;

/**
 * The two lines of a table of densities, as typed; where all four values are blank those of our own table are filled in.
 *
 * @param typed - What was typed, by name of the given.
 * @returns What is filled in, by name of the given, and the table that it comes from; nothing and none where the lines are
 * typed. Fails with `numbers-start` where some are blank, with `numbers-shelf` where the table ends below the molarity, or
 * as `notALine` does.
 */
export function readTableLines(
  { numbers: { density } }: Activity,
  {
    typed,
    formula,
    molarMass: mass,
  }: {
    readonly typed: Typed;
    readonly formula: Formula;
    readonly molarMass: number;
  },
): Result<{ readonly filled: Typed; readonly table: readonly DensityLine[] | undefined }> {
  if (density === undefined) return success({ filled: {}, table: undefined });
  const names = [density.lighterPercent, density.lighterDensity, density.heavierPercent, density.heavierDensity];
  const blank = names.filter((name) => typed[name] === undefined);
  const value = (name: string): number => typed[name]?.value ?? Number.NaN;
  if (blank.length === 0) {
    const error = notALine(
      straightLineOf({
        lighterPercent: value(density.lighterPercent),
        lighterDensity: value(density.lighterDensity),
        heavierPercent: value(density.heavierPercent),
        heavierDensity: value(density.heavierDensity),
      }),
    );
    return error
      ? failure({ ...error, argument: error.argument.replace('_', ' ') })
      : success({ filled: {}, table: undefined });
  }
  if (blank.length < names.length) {
    return failure({ code: 'numbers-start', argument: blank[0] ?? '', ...startTexts.linesTogether });
  }
  const table = densityLines(listedFormula(formula) ?? '');
  const molarity = value(density.molarity);
  const pair = table && tableLines(table, { molarMass: mass, molarity });
  if (!pair) {
    const found = demandTexts.withinTable({ molarity, formula: formula.text });
    return failure({ code: 'numbers-shelf', argument: density.molarity, ...found });
  }
  const filled: Record<string, TypedQuantity> = {};
  for (const [name, text] of Object.entries(lineTexts(density, pair))) {
    const isPercent = name === density.lighterPercent || name === density.heavierPercent;
    const read = readQuantity(text, isPercent ? 'percent' : 'density', name, { decimalMark: 'point' });
    if (!read.ok) return read;
    filled[name] = read.value;
  }
  return success({ filled, table });
}
