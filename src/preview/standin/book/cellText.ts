import { format as formatNumber, isDateFormat, isTextFormat } from 'numfmt';
import { localFormula } from '../formulaText.ts';
import { HostError } from '../hostError.ts';
import type { Locale } from '../localeOf.ts';
import type { CellState } from '../sheetState.ts';
import { needsApostrophe } from '../typed.ts';
import { loading, type Value } from './engine.ts';

/** A value as its cell displays it under a number format. */
export function displayText(value: Value, numberFormat: string, locale: Locale): string {
  if (value === loading) return 'Loading...';
  if (value instanceof HostError) return value.code;
  if (value === '') return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') {
    return isTextFormat(numberFormat) ? formatNumber(numberFormat, value) : textPart(numberFormat, value);
  }
  return formatNumber(numberFormat, value, { locale: locale.tag, throws: false } as object);
}

/** A text under a number format shows by the format's fourth part, if it has one. */
function textPart(format: string, text: string): string {
  return format.includes(';') ? formatNumber(format, text) : text;
}

/** What the line above the grid shows of a cell: its formula, or what was typed. */
export function inputText(
  { content, format }: CellState,
  shown: { readonly numberFormat: string; readonly display: () => string; readonly locale: Locale },
): string {
  const { locale, numberFormat } = shown;
  const plainNumber = (value: number): string =>
    locale.decimalComma ? String(value).replace('.', ',') : String(value);
  if (!content) return '';
  if (content.kind === 'formula') return localFormula(content.formula, locale.decimalComma);
  if (content.kind === 'text') {
    return needsApostrophe(content.text, { numberFormat: format?.numberFormat, locale })
      ? `'${content.text}`
      : content.text;
  }
  if (content.kind === 'boolean') return content.value ? 'TRUE' : 'FALSE';
  if (isDateFormat(numberFormat)) return shown.display();
  if (numberFormat.includes('%')) return `${plainNumber(Number((content.value * 100).toPrecision(15)))}%`;
  return plainNumber(content.value);
}
