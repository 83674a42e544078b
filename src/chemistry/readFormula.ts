import { placeInText } from '../errors/placeInText.ts';
import { quoted } from '../errors/quoted.ts';
import { type ChemError, failure, type Result, success } from '../errors/result.ts';
import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { elementBySymbol } from './elements.ts';
import { assembled, atomsOfUnits, type Formula, type FormulaPart, type FormulaUnit, isWater } from './formula.ts';
import { likelySpellings } from './likelySpellings.ts';
import { lookAlikes } from './lookAlikes.ts';
import { chargeText, splitCharge } from './splitCharge.ts';

export type { Formula } from './formula.ts';

/** Longest formula that is read, in characters, and how deep brackets may stand in each other. */
export const formulaLengthMax = 250;
const depthMax = 20;
const numberMax = 99_999;

const opening = '([{';
const closing = ')]}';
const separators = '·•*.×,∙⋅‧・';
const digit = /[0-9₀-₉]/;
const raisedDigit = /[⁰¹²³⁴⁵⁶⁷⁸⁹]/;
const heavyHydrogen: Readonly<Record<string, string>> = { D: '[2H]', T: '[3H]' };
const capitalsExpected = 'a capital letter where each symbol begins';
const fractions: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };
const fractionSign = (value: number): string =>
  Object.keys(fractions).find((sign) => fractions[sign] === value) ?? String(value);

/** Stops the reading of a formula; caught in `readFormula` and nowhere else. */
class Stop {
  readonly error: ChemError;
  constructor(error: ChemError) {
    this.error = error;
  }
}

/** An error as the reader knows it: only where it stands, since text and argument are the same for all. */
type Unplaced<Stopped> = Stopped extends ChemError ? Omit<Stopped, 'argument' | 'at'> & { readonly at: number } : never;

interface OpenBracket {
  readonly parts: FormulaPart[];
  readonly mark: string;
  readonly at: number;
}

/** Reads one formula from left to right; every character is looked at a fixed number of times. */
class FormulaReader {
  private place = 0;
  private readonly units: FormulaUnit[] = [];
  private readonly open: OpenBracket[] = [];
  private parts: FormulaPart[] = [];
  private coefficient = 1;
  /** Where the unit began, and whether a plain point between digits began it. */
  private unitAt = 0;
  private afterPoint = false;
  private afterComma = false;
  /** What else people type for a dot or for ½, and what a formula has there. */
  private readonly replaced: { readonly from: number; readonly to: number; readonly by: string }[] = [];
  private readonly text: string;
  private readonly end: number;
  private readonly argument: string;

  constructor(text: string, end: number, argument: string) {
    this.text = text;
    this.end = end;
    this.argument = argument;
  }

  read(): readonly FormulaUnit[] {
    if (/^\d/.test(this.text)) this.stopAtCoefficient();
    while (this.place < this.end) this.readOne();
    const unclosed = this.open[this.open.length - 1];
    if (unclosed) {
      const wanted = closing.charAt(opening.indexOf(unclosed.mark));
      this.stop({
        code: 'bracket-not-closed',
        at: unclosed.at,
        advice: `Add “${wanted}”, as in Ca(OH)2.`,
        brief: `“${wanted}” missing`,
      });
    }
    this.closeUnit();
    return this.units;
  }

  /** The text with · for every separator and ½ for 1/2, so that one formula has one spelling further on. */
  plainText(): string {
    let plain = this.text;
    for (const { from, to, by } of [...this.replaced].reverse()) plain = plain.slice(0, from) + by + plain.slice(to);
    return plain;
  }

  private stop(error: Unplaced<ChemError>): never {
    throw new Stop({ ...error, argument: this.argument, at: { text: this.text, from: error.at } });
  }

  private stopAtCoefficient(): never {
    return this.stop({
      code: 'coefficient-before-formula',
      at: 0,
      received: quoted(this.text),
      advice: 'Leave it out: in an equation it counts formula units, but here one unit is meant.',
    });
  }

  private readOne(): void {
    const mark = this.text.charAt(this.place);
    if (/\s/.test(mark)) this.place += 1;
    else if (this.isTimesBetweenSpaces()) this.separate(mark);
    else if (/[A-Z]/.test(mark)) this.readSymbol(undefined, this.place);
    else if (mark === '[' && /\d/.test(this.text.charAt(this.place + 1))) this.readIsotopeInBrackets();
    else if (raisedDigit.test(mark)) this.readRaisedNumber();
    else if (opening.includes(mark)) this.openBracket(mark);
    else if (closing.includes(mark)) this.closeBracket(mark);
    else if (separators.includes(mark)) this.separate(mark);
    else if (digit.test(mark)) this.stopAtNumber(this.place);
    else if (/[a-z]/.test(mark)) {
      if (/\s/.test(this.text.charAt(this.place - 1))) this.stopAtLetterForNumber();
      this.stopAtCase(this.place);
    } else {
      const [character = mark] = this.text.slice(this.place);
      this.stop({
        code: 'formula-character',
        at: this.place,
        received: quoted(character),
        advice: 'Type a formula such as KBr or CuSO4·5H2O.',
      });
    }
  }

  /** The x of `CuSO4 x 5H2O`. */
  private isTimesBetweenSpaces(): boolean {
    return (
      /[xX]/.test(this.text.charAt(this.place)) &&
      /\s/.test(this.text.charAt(this.place - 1)) &&
      /[\s\d½¼¾]/.test(this.text.charAt(this.place + 1))
    );
  }

  /** `CuSO4·nH2O` says that nobody knows how much water it holds. */
  private stopAtLetterForNumber(): void {
    const at = this.place;
    if (!/^[nxyz]\s?\(?H/.test(this.text.slice(at, at + 4))) return;
    this.stop({
      code: 'coefficient-out-of-range',
      at,
      expected: 'the number from the label',
      received: quoted(this.text.charAt(at)),
      advice: 'It says how many H2O one formula unit holds, as in CuSO4·5H2O.',
    });
  }

  /** The digits from here on, as plain ones. */
  private digitsHere(shape: RegExp): string {
    const from = this.place;
    while (this.place < this.end && shape.test(this.text.charAt(this.place))) this.place += 1;
    return this.text.slice(from, this.place).normalize('NFKC');
  }

  /** A whole number that counts, from 1. */
  private countFrom(written: string, at: number): number {
    if (written.startsWith('0')) {
      this.stop({
        code: 'subscript-zero',
        at,
        received: quoted(written),
        advice: 'Did you mean the letter O? Otherwise leave out what is not there.',
      });
    }
    if (written.length > String(numberMax).length) {
      this.stop({
        code: 'subscript-too-large',
        at,
        expected: `the most is ${numberMax}`,
        received: quoted(written),
        advice: 'Check the number of atoms.',
      });
    }
    return Number(written);
  }

  private passSpaces(): void {
    while (/\s/.test(this.text.charAt(this.place))) this.place += 1;
  }

  /** The number after a symbol or a bracket; 1 where none is written. */
  private countAfter(): number {
    this.passSpaces();
    const at = this.place;
    const written = this.digitsHere(digit);
    return written === '' ? 1 : this.countFrom(written, at);
  }

  private readSymbol(massNumber: string | undefined, at: number): void {
    let symbol = this.text.charAt(this.place);
    let next = this.place + 1;
    while (/[a-z]/.test(this.text.charAt(next))) {
      symbol += this.text.charAt(next);
      next += 1;
    }
    const label = massNumber === undefined ? this.plainLabel(symbol) : this.isotope(symbol, massNumber, at);
    this.place = next;
    if (this.text.charAt(at) === '[') {
      if (this.text.charAt(this.place) !== ']') {
        this.stop({
          code: 'isotope-shape',
          at,
          received: quoted(this.text.slice(at, at + 12)),
          advice: 'Write the isotope alone in the brackets, as in [13C]H4.',
        });
      }
      this.place += 1;
    }
    this.parts.push({ kind: 'element', element: label, count: this.countAfter() });
  }

  private plainLabel(symbol: string): string {
    const label = heavyHydrogen[symbol] ?? elementBySymbol(symbol)?.symbol;
    return label ?? this.stopAtSymbol(symbol);
  }

  private isotope(symbol: string, massNumber: string, at: number): string {
    const { atomicNumber } = elementBySymbol(symbol) ?? this.stopAtSymbol(symbol);
    const mass = Number(massNumber);
    if (mass < atomicNumber || mass > 3 * atomicNumber + 4) {
      this.stop({
        code: 'isotope-unlikely',
        at,
        received: quoted(`${massNumber}${symbol}`),
        advice: `A mass number counts protons and neutrons, and ${symbol} has ${atomicNumber} ${atomicNumber === 1 ? 'proton' : 'protons'}. Write a number of atoms after the symbol.`,
      });
    }
    return `[${mass}${symbol}]`;
  }

  private readIsotopeInBrackets(): void {
    const at = this.place;
    this.place += 1;
    const massNumber = this.digitsHere(digit);
    if (!/[A-Z]/.test(this.text.charAt(this.place))) {
      this.stop({
        code: 'isotope-shape',
        at,
        received: quoted(this.text.slice(at, at + 12)),
        advice: 'Write the mass number, then the symbol, as in [13C].',
      });
    }
    this.readSymbol(massNumber, at);
  }

  /** Raised digits before a symbol are a mass number; after one they are a number of atoms typed the wrong way up. */
  private readRaisedNumber(): void {
    const at = this.place;
    const written = this.digitsHere(raisedDigit);
    if (/[A-Z]/.test(this.text.charAt(this.place))) this.readSymbol(written, at);
    else this.countLast(this.countFrom(written, at), at);
  }

  private countLast(count: number, at: number): void {
    const last = this.parts.pop();
    if (last?.count !== 1) this.stopAtNumber(at);
    this.parts.push({ ...last, count });
  }

  private stopAtNumber(at: number): never {
    return this.stop({
      code: 'number-out-of-place',
      at,
      advice: 'Write each number after what it counts, as in H2O.',
    });
  }

  private openBracket(mark: string): void {
    if (this.open.length >= depthMax) {
      this.stop({
        code: 'formula-too-deep',
        at: this.place,
        expected: `${depthMax} inside each other are the most`,
        received: `“${mark}”`,
        advice: 'Write the formula with fewer brackets.',
      });
    }
    this.open.push({ parts: this.parts, mark, at: this.place });
    this.parts = [];
    this.place += 1;
  }

  private closeBracket(mark: string): void {
    const at = this.place;
    const bracket = this.open.pop();
    const wanted = bracket && closing.charAt(opening.indexOf(bracket.mark));
    if (!bracket || wanted !== mark) {
      this.stop({
        code: 'bracket-not-opened',
        at,
        received: `“${mark}”`,
        advice: bracket
          ? `The bracket that is open there ends with “${wanted}”.`
          : `Add “${opening.charAt(closing.indexOf(mark))}” where the group begins, or leave “${mark}” out.`,
        brief: `“${mark}”`,
      });
    }
    if (this.parts.length === 0) {
      this.stop({
        code: 'bracket-empty',
        at,
        advice: 'Fill the brackets or leave them out.',
      });
    }
    const inside = this.parts;
    this.stopAtOxidationNumber(bracket.at);
    this.place += 1;
    this.parts = bracket.parts;
    this.parts.push({ kind: 'group', parts: inside, count: this.countAfter() });
  }

  /** `(III)` would count as three atoms of iodine, and `(VI)` as vanadium iodide. */
  private stopAtOxidationNumber(at: number): void {
    const inside = this.text.slice(at + 1, this.place);
    if (at === 0 || !/^(I{1,3}|I?V|VI{1,3})$/.test(inside) || digit.test(this.text.charAt(this.place + 1))) return;
    this.stop({
      code: 'formula-character',
      at,
      received: `the oxidation number ${quoted(`(${inside})`)}`,
      advice: 'Leave it out: the numbers of atoms say it, as in FeCl3.',
    });
  }

  private separate(mark: string): void {
    const at = this.place;
    const bracket = this.open[this.open.length - 1];
    if (bracket) {
      this.stop({
        code: 'separator-in-bracket',
        at,
        received: `“${mark}”`,
        advice: `Close “${bracket.mark}” first, as in Ca(NO3)2·4H2O.`,
      });
    }
    this.closeUnit();
    if (/[x×,]/i.test(mark)) this.replaced.push({ from: at, to: at + 1, by: '·' });
    this.place += 1;
    this.passSpaces();
    this.unitAt = this.place;
    this.afterPoint = mark === '.' && digit.test(this.text.charAt(at - 1));
    this.afterComma = mark === ',';
    this.stopAtLetterForNumber();
    this.coefficient = this.coefficientHere();
  }

  /** The one number after a separator; it may be decimal or a fraction. */
  private coefficientHere(): number {
    const asFraction = /^(?:(\d{1,3})\s)?(\d{1,3})\s?[/⁄]\s?(\d{1,3})/.exec(this.text.slice(this.place, this.end));
    if (asFraction) {
      const [whole, before = '0', over, under] = asFraction;
      const value = Number(before) + Number(over) / Number(under);
      this.replaced.push({ from: this.place, to: this.place + whole.length, by: fractionSign(value) });
      return this.coefficientOf(whole, value);
    }
    const written = /^((?:\d{1,6}(?:[.,]\d{1,6})?)?)\s?([½¼¾]?)/.exec(this.text.slice(this.place, this.end));
    const [whole = '', number = '', fraction = ''] = written ?? [];
    if (whole === '') return 1;
    return this.coefficientOf(whole, Number(number.replace(',', '.')) + (fractions[fraction] ?? 0));
  }

  private coefficientOf(written: string, value: number): number {
    const at = this.place;
    this.place += written.length;
    if (value > 0 && value <= numberMax && !digit.test(this.text.charAt(this.place))) return value;
    return this.stop({
      code: 'coefficient-out-of-range',
      at,
      expected: `a number above 0, ${numberMax} at most`,
      received: quoted(this.text.slice(at, at + 12)),
      advice: 'It says how many of them one formula unit holds, as in CuSO4·5H2O.',
    });
  }

  private closeUnit(): void {
    if (this.end === 0) {
      this.stop({
        code: 'formula-part-missing',
        at: 0,
        advice: 'Write what has the charge, as in SO4^2-.',
      });
    }
    if (this.parts.length === 0) {
      this.stop({
        code: 'formula-part-missing',
        at: Math.min(this.place, this.end - 1),
        advice: 'Write a formula on both sides of the dot, as in CuSO4·5H2O.',
      });
    }
    const unit = { coefficient: this.coefficient, parts: this.parts };
    if (this.afterPoint && atomsOfUnits([unit]).length === 1) {
      this.stop({
        code: 'subscript-not-whole',
        at: this.unitAt - 1,
        advice: 'Count atoms in whole numbers; only water of hydration may have 0.5 before it.',
      });
    }
    if (this.afterComma && !isWater(unit)) {
      this.stop({
        code: 'formula-character',
        at: this.unitAt - 1,
        received: '“,”',
        advice: 'Type one substance in each cell.',
      });
    }
    this.units.push(unit);
    this.parts = [];
  }

  /** A small letter where a symbol should begin. */
  private stopAtCase(at: number): never {
    const [state] = /\((s|l|g|aq)\)$/.exec(this.text) ?? [];
    if (state !== undefined) {
      this.stop({
        code: 'formula-character',
        at: this.text.length - state.length,
        received: `the state of matter ${quoted(state)}`,
        advice: 'Leave it out.',
      });
    }
    this.offerSpellings(at);
    return this.stop({
      code: 'formula-case',
      at,
      expected: capitalsExpected,
      received: quoted(this.text),
      advice: `Look at ${placeInText({ text: this.text, from: at })}, and write symbols as in NaCl.`,
      brief: 'formula: capital letters',
    });
  }

  private stopAtSymbol(symbol: string): never {
    this.offerSpellings(this.place);
    const shown = symbol.length > 12 ? `${symbol.slice(0, 11)}…` : symbol;
    return this.stop({
      code: 'element-unknown',
      at: this.place,
      received: quoted(shown),
      advice: 'Check it on the periodic table.',
      brief: shown,
    });
  }

  /** Stops with what was probably meant, where only the case of letters is wrong. */
  private offerSpellings(at: number): void {
    const meant = likelySpellings(this.text);
    if (meant.length === 0) return;
    const offer = meant.join(' or ');
    this.stop({
      code: 'formula-case',
      at,
      expected: capitalsExpected,
      received: quoted(this.text),
      advice: `Did you mean ${offer}?`,
      brief: `${offer}?`,
    });
  }
}

/** Reads what was typed as it stands, whether or not it was meant so. */
function readAsTyped(text: string, argument: string): Result<Formula> {
  const [reading, other] = splitCharge(text);
  if (other) {
    const both = `${chargeText(reading)} or ${chargeText(other)}`;
    return failure({
      code: 'charge-two-readings',
      argument,
      expected: both,
      received: quoted(text),
      advice: `Write the charge after ^, as in ${chargeText(reading)}.`,
      brief: `${both}?`,
      at: { text, from: text.length - 2 },
    });
  }
  try {
    const reader = new FormulaReader(text, reading.base.length, argument);
    const units = reader.read();
    return success(assembled({ text: reader.plainText(), units, charge: reading.charge }));
  } catch (stopped) {
    if (stopped instanceof Stop) return failure(stopped.error);
    throw stopped;
  }
}

/** What was read, by text, since a block or a column holds one formula many times; forgotten all together when many. */
const formulas = new Map<string, Result<Formula>>();
const formulasMax = 200;

/**
 * A formula as people type it: nested brackets of three kinds, hydrates after a dot, subscript digits, isotopes such as
 * `[13C]`, D and T, and a charge at the end. Reading takes time in proportion to the length of the text.
 *
 * @returns Fails with `formula-expected`, `formula-too-long` (over 250 characters), `formula-too-deep` (over 20
 * brackets), `charge-two-readings`, `formula-look-alike` where a 0 or a 1 stands for a letter, or an error that points at
 * the place.
 * @example readFormula('CuSO4·5H2O')
 */
export function readFormula(cell: CellValue, argument = 'formula'): Result<Formula> {
  if (typeof cell !== 'string' || isBlank(cell)) {
    return failure({
      code: 'formula-expected',
      argument,
      expected: 'a formula as text, such as KBr',
      received: quoted(cell),
    });
  }
  const text = cell.trim();
  if (text.length > formulaLengthMax) {
    return failure({
      code: 'formula-too-long',
      argument,
      expected: `it has ${text.length} characters, and a formula can have ${formulaLengthMax}`,
      received: quoted(text),
      advice: 'Write repeated groups in brackets with a number, as in (CH2)10.',
    });
  }
  const known = formulas.get(text);
  if (known !== undefined) return known;
  const read = readAsTyped(text, argument);
  const meant = lookAlikes(read, text, (other) => readAsTyped(other, argument));
  if (meant.length === 0 && read.ok) {
    if (formulas.size >= formulasMax) formulas.clear();
    formulas.set(text, read);
  }
  if (meant.length === 0) return read;
  return lookAlikeError({ text, meant, argument });
}

const lookOf: Readonly<Record<string, string>> = { 0: 'the digit 0', 1: 'the digit 1', I: 'a capital I' };

function lookAlikeError({
  text,
  meant,
  argument,
}: {
  readonly text: string;
  readonly meant: readonly string[];
  readonly argument: string;
}): Result<never> {
  const [first = text] = meant;
  const places = Array.from(text, (_, place) => place).filter((place) => text.charAt(place) !== first.charAt(place));
  const letters = new Set(places.map((place) => `the letter ${first.charAt(place)}`));
  const typed = new Set(places.map((place) => lookOf[text.charAt(place)]));
  const offer = meant.join(' or ');
  return failure({
    code: 'formula-look-alike',
    argument,
    expected: `${[...typed].join(' and ')} where a formula has ${[...letters].join(' and ')}`,
    received: quoted(text),
    advice: `Did you mean ${offer}? If not, type the number as a subscript such as ₂₀.`,
    brief: `${offer}?`,
    at: { text, from: places[0] ?? 0 },
  });
}
