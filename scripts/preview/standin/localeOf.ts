import { getLocale } from 'numfmt';

/** How a workbook's locale, such as `en_GB` or `de_DE`, writes numbers. */
export interface Locale {
  readonly name: string;
  /** The same as a BCP 47 tag. */
  readonly tag: string;
  readonly decimalComma: boolean;
}

export function localeOf(name: string): Locale {
  const tag = name.replace('_', '-');
  return { name, tag, decimalComma: (getLocale(tag) ?? getLocale('en'))?.decimal === ',' };
}
