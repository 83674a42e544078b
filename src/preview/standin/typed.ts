import { getFormatFromId, isTextFormat, parseValue } from 'numfmt';
import { canonicalFormula } from './formulaText.ts';
import type { Locale } from './localeOf.ts';

/** What a cell holds. Dates are numbers with a date format, as on the host. */
export type Content =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'boolean'; readonly value: boolean }
  /** Canonical: commas between arguments and points in numbers, whatever the locale. */
  | { readonly kind: 'formula'; readonly formula: string };

export interface Reading {
  /** Undefined clears the cell. */
  readonly content: Content | undefined;
  /** A format that the way of typing asks for, such as 0% after `5%`. */
  readonly numberFormat?: string;
}

const dateFormats: Readonly<Record<number, string>> = { 14: 'yyyy-mm-dd', 22: 'yyyy-mm-dd h:mm' };
const fractions = [12, 13];

/** Is this number format plain text, in which nothing typed is read as anything else? */
export const isPlainText = (numberFormat: string | undefined): boolean => numberFormat === '@';

/** Reads what was typed as the host does: by locale, unless the cell is plain text. */
export function readTyped(
  typed: string,
  cell: { readonly numberFormat: string | undefined; readonly locale: Locale },
): Reading {
  if (typed === '') return { content: undefined };
  if (isPlainText(cell.numberFormat)) {
    const text = cell.locale.plainTextKeepsApostrophe || !typed.startsWith("'") ? typed : typed.slice(1);
    return { content: { kind: 'text', text } };
  }
  if (typed.startsWith("'")) return { content: { kind: 'text', text: typed.slice(1) } };
  if (typed.startsWith('=') && typed.length > 1) return { content: formulaContent(typed, cell.locale) };
  const value = parseValue(typed, { locale: cell.locale.tag });
  if (value && !fractions.includes(value.formatId ?? 0)) {
    if (typeof value.value === 'boolean') return { content: { kind: 'boolean', value: value.value } };
    const content: Content = { kind: 'number', value: value.value };
    const keepsOwn = cell.numberFormat !== undefined && cell.numberFormat !== 'General';
    if (value.formatId === undefined || keepsOwn) return { content };
    return { content, numberFormat: dateFormats[value.formatId] ?? getFormatFromId(value.formatId, cell.locale.tag) };
  }
  // A plus sign before a reference, a function or a bracket begins a formula too.
  if (/^\+[A-Za-z$(]/.test(typed)) return { content: formulaContent(`=${typed}`, cell.locale) };
  return { content: { kind: 'text', text: typed } };
}

const formulaContent = (typed: string, locale: Locale): Content => ({
  kind: 'formula',
  formula: canonicalFormula(typed, locale.decimalComma),
});

/** True where a text would become something else if it were typed again as it stands. */
export function needsApostrophe(
  text: string,
  cell: { readonly numberFormat: string | undefined; readonly locale: Locale },
): boolean {
  if (isPlainText(cell.numberFormat) || isTextFormat(cell.numberFormat ?? 'General')) return false;
  const again = readTyped(text, cell).content;
  return again?.kind !== 'text' || again.text !== text;
}
