import type { FunctionName } from '../functions/catalogue.ts';

/** A call of one of our public functions; a name outside the catalogue does not compile. */
export const formula = (name: FunctionName, ...cells: readonly string[]): string => `=${name}(${cells.join(',')})`;

/**
 * Native functions that the host and the engine of the local preview both know and read the same way.
 * Kept short on purpose: whatever a planned formula needs besides has to be looked up on both sides first.
 */
export const nativeFunctions = [
  'CHAR',
  'COUNTIF',
  'COUNTIFS',
  'DAY',
  'EXACT',
  'FIND',
  'HYPERLINK',
  'IF',
  'IFERROR',
  'INDEX',
  'ISNUMBER',
  'MATCH',
  'MONTH',
  'NOW',
  'REPT',
  'RIGHT',
  'ROW',
  'TEXTJOIN',
  'YEAR',
] as const;
export type NativeFunction = (typeof nativeFunctions)[number];

/** A call of a native function, to stand inside a formula. */
export const native = (name: NativeFunction, ...cells: readonly string[]): string => `${name}(${cells.join(',')})`;

/**
 * The same formula with another separator between arguments, for locales where the comma belongs to numbers.
 * Text in quotes and sheet names in apostrophes stay as they are.
 */
export function withSeparator(formulaText: string, separator: ',' | ';'): string {
  if (separator === ',') return formulaText;
  let quote = '';
  let written = '';
  for (const character of formulaText) {
    if (quote === '' && (character === '"' || character === "'")) quote = character;
    else if (character === quote) quote = '';
    written += character === ',' && quote === '' ? separator : character;
  }
  return written;
}
