import { readFormula } from '../chemistry/readFormula.ts';
import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { patternOnUse } from '../measurement/patternOnUse.ts';
import { readMeasure } from '../measurement/readMeasure.ts';
import { readNumber, type TypedNumber } from '../measurement/readNumber.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import { significantFigures } from '../measurement/significantFigures.ts';
import type { ArgumentEntry } from './entry.ts';
import { readFactor } from './readFactor.ts';

/**
 * Reads one cell as its argument asks. A blank cell of an optional argument is undefined, as if it were left out.
 *
 * @returns Fails with `cell-missing` for a blank cell of a required one, `cell-holds-error` for a failed formula, or
 * with what the reader of its kind says.
 */
export function readArgument(cell: CellValue, argument: ArgumentEntry): Result<unknown> {
  const { name, kind, optional } = argument;
  if (kind === 'entry') return success(cell);
  if (isBlank(cell)) {
    if (optional) return success(undefined);
    return failure({
      code: 'cell-missing',
      argument: name,
      expected: exampleOf(argument),
    });
  }
  if (typeof cell === 'string' && hostErrors.test(cell.trim())) {
    return failure({
      code: 'cell-holds-error',
      argument: name,
      received: `the error ${quoted(cell)}`,
      advice: 'Mend that one first.',
    });
  }
  if (kind === 'formula') return readFormula(cell, name);
  if (typeof cell === 'string' && cell.length > longestText) return textTooLong(cell, name);
  switch (kind) {
    case 'substance':
      return success(cell);
    case 'volume':
    case 'mass':
    case 'amount':
    case 'concentration':
    case 'density':
    case 'percent':
      return valueIn(readQuantity(cell, kind, name));
    case 'percentage points':
      return valueIn(readNumber(withoutPercentSign(cell), name));
    case 'number':
      return valueIn(readNumber(cell, name));
    case 'measure':
      return readMeasure(cell, name);
    case 'factor':
      return readFactor(cell, name);
    case 'digits':
      return readNumber(cell, name);
    case 'figures':
      return readFigures(cell, name);
    case 'whole number':
      return readWholeNumber(cell, argument);
    case 'yes or no':
      return readYesOrNo(cell, argument);
    case 'text':
      return readText(cell, argument);
    default:
      throw new Error(`Nothing reads ${kind} from one cell.`);
  }
}

/** Longest text that an argument is read from; a formula has a limit of its own, an entry is judged. */
const longestText = 300;

const textTooLong = (cell: string, name: string): Result<never> =>
  failure({
    code: 'text-too-long',
    argument: name,
    received: quoted(cell),
    advice: `It has ${cell.length} characters; ${longestText} is the most.`,
  });

/** How the host writes the result of a formula that failed. */
const hostErrors = /^#(N\/A|REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|ERROR!)/;

const valueIn = (read: Result<{ readonly value: number }>): Result<number> =>
  read.ok ? success(read.value.value) : read;

/** Points and percent of a tolerance may well be below 1, so a bare number is read as printed. */
const withoutPercentSign = (cell: CellValue): CellValue =>
  typeof cell === 'string' ? cell.replace(/\s*%\s*$/, '') : cell;

/** A number that stands apart; digits joined to a letter, as in cm3 or s-1, belong to a unit. */
const anotherNumber = patternOnUse(String.raw`(?<![\p{L}\d]\^?[-−–]?)\d`, 'u');
const unitBegins = patternOnUse(String.raw`^[\p{L}°%‰′″]`, 'u');

/** A unit does not change how many figures there are, so any may follow, known or not. */
function readFigures(cell: CellValue, name: string): Result<TypedNumber> {
  const options = { sameEitherWay: significantFigures };
  const read = readMeasure(cell, name, options);
  if (!read.ok) return read;
  const { number, unit, unitTyped } = read.value;
  const behind = unitTyped.normalize('NFKC');
  const isUnit = unitTyped === '' || unit !== undefined || (unitBegins().test(behind) && !anotherNumber().test(behind));
  return isUnit ? success(number) : readNumber(cell, name, options);
}

function readWholeNumber(cell: CellValue, argument: ArgumentEntry): Result<number> {
  const read = valueIn(readNumber(cell, argument.name));
  if (!read.ok || Number.isInteger(read.value)) return read;
  return failure({
    code: 'whole-number-expected',
    argument: argument.name,
    expected: exampleOf(argument),
    received: quoted(cell),
  });
}

function readYesOrNo(cell: CellValue, argument: ArgumentEntry): Result<boolean> {
  if (typeof cell === 'boolean') return success(cell);
  const word = typeof cell === 'string' ? cell.trim().toLowerCase() : '';
  if (word === 'true' || word === 'yes') return success(true);
  if (word === 'false' || word === 'no') return success(false);
  return failure({
    code: 'yes-or-no-expected',
    argument: argument.name,
    expected: exampleOf(argument),
    received: quoted(cell),
  });
}

const eitherOf = (choices: readonly string[]): string =>
  `${choices.slice(0, -1).join(', ')} or ${choices[choices.length - 1]}`;

function readText(cell: CellValue, argument: ArgumentEntry): Result<string> {
  const { name, oneOf, otherNames = {} } = argument;
  if (typeof cell !== 'string') {
    return failure({
      code: 'text-expected',
      argument: name,
      received: quoted(cell),
      advice: oneOf ? `Type ${eitherOf(oneOf)}.` : 'Type it as text.',
    });
  }
  if (!oneOf) return success(cell.trim());
  const plain = cell.trim().toLowerCase().replace(/\s+/g, ' ');
  const wanted = Object.keys(otherNames).includes(plain) ? otherNames[plain] : plain;
  const chosen = oneOf.find((choice) => choice.toLowerCase() === wanted);
  if (chosen !== undefined) return success(chosen);
  return failure({
    code: 'choice-unknown',
    argument: name,
    expected: eitherOf(oneOf),
    received: quoted(cell),
  });
}

/** What is wanted, with an example, for messages. */
function exampleOf({ name, kind, about }: ArgumentEntry): string {
  switch (kind) {
    case 'formula':
      return 'a formula such as KBr';
    case 'volume':
      return 'a volume such as 200 mL';
    case 'mass':
      return 'a mass such as 2.5 g';
    case 'amount':
      return 'an amount such as 0.25 mol';
    case 'concentration':
      return 'a concentration such as 0.3 mol/L';
    case 'density':
      return 'a density such as 1.05 g/mL';
    case 'percent':
    case 'percentage points':
      return 'a percentage such as 5 %';
    case 'whole number':
      return 'a whole number such as 3';
    case 'yes or no':
      return 'TRUE or FALSE';
    case 'factor':
      return 'a number above 1 such as 10';
    case 'number':
    case 'measure':
    case 'digits':
    case 'figures':
      return 'a number such as 0.25';
    default:
      if (about === undefined) throw new Error(`Nothing says what ${name} is.`);
      return about;
  }
}
