import { getLocale } from 'numfmt';

/** How a workbook's locale, such as `en_GB` or `de_DE`, writes numbers. */
export interface Locale {
  readonly name: string;
  /** The same as a BCP 47 tag. */
  readonly tag: string;
  readonly decimalComma: boolean;
  /** Whether a plain-text cell keeps the apostrophe before a text is not known of the host; both are tried. */
  readonly plainTextKeepsApostrophe: boolean;
}

export function localeOf(name: string, plainTextKeepsApostrophe = false): Locale {
  const tag = name.replace('_', '-');
  return { name, tag, decimalComma: (getLocale(tag) ?? getLocale('en'))?.decimal === ',', plainTextKeepsApostrophe };
}
