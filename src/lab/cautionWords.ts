import { cautions } from '../chemistry/cautions.ts';
import { readFormula } from '../chemistry/readFormula.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { isBlank } from '../measurement/cellValue.ts';
import { percent } from '../measurement/quantity.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import { tickTexts } from './texts/ticks.ts';

export interface Bottle {
  readonly formula: CellValue;
  /** Blank for the substance undiluted. */
  readonly massPercent?: CellValue;
  readonly decimalMark: 'point' | 'comma';
}

/**
 * The cautions for what is in a bottle, short enough for a cell: the signal word, what it can do, and each piece of advice
 * once; the last one defers to the safety data sheet and local rules. Never empty, and never says that a thing is safe.
 */
export function cautionWords({ formula, massPercent, decimalMark }: Bottle): string {
  const read = readFormula(formula);
  if (!read.ok) return tickTexts.noFormula;
  const strength = isBlank(massPercent)
    ? undefined
    : readQuantity(massPercent, 'percent', 'mass percent', { decimalMark });
  const found = cautions(read.value, strength?.ok ? percent(strength.value.value) : undefined);
  if (!found.ok) return tickTexts.noFormula;
  const { name, signalWord, statements } = found.value;
  const advice = [...new Set(statements.flatMap((line) => line.advice.split(/(?<=\.) /)))].filter(
    (line) => line !== '',
  );
  const heading = [name, signalWord].filter((word) => word !== '').join(': ');
  const defers = statements[statements.length - 1]?.advice ?? '';
  const toDo = advice.filter((line) => !defers.includes(line)).join(' ');
  return [heading, ...statements.map(({ text }) => text), toDo, defers].filter((line) => line !== '').join('\n');
}
