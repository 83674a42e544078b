import { columnLetters, columnNumber } from './address.ts';

type Kind = 'text' | 'sheet' | 'word' | 'number' | 'mark';
interface Piece {
  readonly kind: Kind;
  readonly text: string;
}

// A quoted sheet name, a text, a word (function, reference, name), a number, or any single mark.
const pieces =
  /("(?:[^"]|"")*"?)|('(?:[^']|'')*'!?)|(\$?[A-Za-z_][\w.$]*!?|\$\d+)|(\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?)|([\s\S])/g;
const localPieces =
  /("(?:[^"]|"")*"?)|('(?:[^']|'')*'!?)|(\$?[A-Za-z_][\w.$]*!?|\$\d+)|(\d+(?:,\d+)?(?:[eE][+-]?\d+)?|,\d+(?:[eE][+-]?\d+)?)|([\s\S])/g;

function piecesOf(formula: string, pattern: RegExp): Piece[] {
  return Array.from(formula.matchAll(pattern), (match): Piece => {
    const text = match[0];
    if (match[1] !== undefined) return { kind: 'text', text };
    if (match[2] !== undefined) return { kind: 'sheet', text };
    if (match[3] !== undefined) return { kind: text.endsWith('!') ? 'sheet' : 'word', text };
    return { kind: match[4] !== undefined ? 'number' : 'mark', text };
  });
}

const joined = (parts: readonly string[]): string => parts.join('');

const cellReference = /^\$?[A-Za-z]{1,3}\$?\d+$/;
const columnReference = /^\$?[A-Za-z]{1,3}$/;
/**
 * How far a range that is open at its end, such as `E14:E`, reaches in the engine, which knows no such range: twice as far
 * as the longest sheet, so that a row past half of it is none of a sheet. In few steps, since the engine keeps every cell
 * of a range and most sheets are short.
 */
export const openEndFor = (rows: number): number => openEnds.find((end) => rows <= end / 2) ?? 40_000;
const openEnds = [2_000, 10_000];

const isOpenEnd = (parts: readonly { readonly kind: string; readonly text: string }[], index: number): boolean =>
  parts[index]?.kind === 'word' &&
  columnReference.test(parts[index].text) &&
  parts[index - 1]?.text === ':' &&
  cellReference.test(parts[index - 2]?.text ?? '');

/** Does a formula name a range that is open at its end? */
export const hasOpenRange = (formula: string): boolean => {
  if (!formula.includes(':')) return false;
  const parts = piecesOf(formula, pieces);
  return parts.some((_, index) => isOpenEnd(parts, index));
};

/** What the engine reads: a capital E in a number stops its parser, and so does a range without an end. */
export const engineFormula = (formula: string, openEnd: number): string => {
  const parts = piecesOf(formula, pieces);
  return joined(
    parts.map(({ kind, text }, index) => {
      if (kind === 'number') return text.replace('E', 'e');
      return isOpenEnd(parts, index) ? `${text}$${openEnd}` : text;
    }),
  );
};

/** A formula as the engine rewrote it when rows moved, with its open ranges open again. */
export const reopenedFormula = (formula: string, openEnd: number): string => {
  const parts = piecesOf(formula, pieces);
  return joined(
    parts.map(({ kind, text }, index) => {
      const [, column = '', row = ''] = /^(\$?[A-Za-z]{1,3})\$(\d+)$/.exec(text) ?? [];
      return kind === 'word' && parts[index - 1]?.text === ':' && Number(row) >= openEnd / 2 ? column : text;
    }),
  );
};

/**
 * A formula as typed, or handed over by a script, in the one form kept inside: commas between arguments, points in
 * numbers. A semicolon separates arguments in every locale; inside braces it separates rows and stays.
 * In a locale with a decimal comma a comma between digits belongs to the number and a backslash separates columns.
 */
export function canonicalFormula(typed: string, decimalComma: boolean): string {
  let braces = 0;
  return joined(
    piecesOf(typed, decimalComma ? localPieces : pieces).map(({ kind, text }) => {
      if (kind === 'number') return decimalComma ? text.replace(',', '.') : text;
      if (kind !== 'mark') return text;
      if (text === '{') braces += 1;
      if (text === '}') braces -= 1;
      if (text === ';' && braces === 0) return ',';
      // Not an argument separator where the comma is the decimal mark: left as something the engine refuses.
      if (decimalComma && text === ',') return '‚';
      if (decimalComma && text === '\\' && braces > 0) return ',';
      return text;
    }),
  );
}

/** The canonical form as the line above the grid shows it in the workbook's locale. */
export function localFormula(canonical: string, decimalComma: boolean): string {
  if (!decimalComma) return canonical;
  let braces = 0;
  return joined(
    piecesOf(canonical, pieces).map(({ kind, text }) => {
      if (kind === 'number') return text.replace('.', ',');
      if (kind !== 'mark') return text;
      if (text === '{') braces += 1;
      if (text === '}') braces -= 1;
      if (text === ',') return braces > 0 ? '\\' : ';';
      return text === '‚' ? ',' : text;
    }),
  );
}

/** Names of the functions a formula calls, in capitals. */
export function functionsIn(formula: string): string[] {
  const parts = piecesOf(formula, pieces).filter(({ text }) => text.trim() !== '');
  return parts.flatMap(({ kind, text }, index) =>
    kind === 'word' && parts[index + 1]?.text === '(' ? [text.toUpperCase()] : [],
  );
}

const reference = /^(\$?)([A-Za-z]{1,3})(\$?)(\d+)$/;

/** The formula as it reads after it was copied by so many rows and columns: references without $ follow. */
export function shiftedFormula(formula: string, by: { readonly rows: number; readonly columns: number }): string {
  const parts = piecesOf(formula, pieces);
  return joined(
    parts.map(({ kind, text }, index) => {
      if (kind !== 'word' || parts[index + 1]?.text === '(') return text;
      const match = reference.exec(text);
      if (!match) return text;
      const [, columnFixed = '', letters = '', rowFixed = '', digits = ''] = match;
      const column = columnNumber(letters) + (columnFixed ? 0 : by.columns);
      const row = Number(digits) + (rowFixed ? 0 : by.rows);
      return row < 1 || column < 1 ? '#REF!' : `${columnFixed}${columnLetters(column)}${rowFixed}${row}`;
    }),
  );
}
