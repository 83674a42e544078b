import { type ListedHazards, listedSubstances } from './listedHazards.ts';

/** What the list has for a formula or a name. */
export interface Found {
  readonly listing: 'listed' | 'another hydrate';
  /** A name, or an abbreviation such as KHP, says nothing of the atoms. */
  readonly by: 'formula' | 'name';
  /** More than one where substances share a formula, such as glucose and fructose. */
  readonly substances: readonly ListedHazards[];
}

/** One way to write a formula: brackets, separators and digits of one kind, no spaces, no state behind it. */
export const plainFormula = (text: string): string =>
  text
    .replace(/(\d?)½/g, (_, whole: string) => `${whole || '0'}·5`)
    .normalize('NFKC')
    .replace(/[\s\u200b\ufeff]/g, '')
    .replace(/(\d),(\d)/g, '$1·$2')
    .replace(/\((?:aq|s|l)\)$/, '')
    .replace(/[[{]/g, '(')
    .replace(/[\]}]/g, ')')
    .replace(/[•*.⋅∙‧・]/g, '·');

/** The number before the water may be decimal, its point a separator by now, or a fraction with a slash of its own. */
const withoutWater = (spelling: string): string => spelling.replace(/·(\d+[·,])?[\d⁄]*H2O$/, '');

export const waterOf = (plain: string): string => plain.slice(withoutWater(plain).length);

/** One way to write a name: small letters, single spaces, one spelling of the words that two continents write otherwise. */
const plainName = (text: string): string =>
  text
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/sulph/g, 'sulf')
    .replace(/aluminum/g, 'aluminium');

/**
 * The listed substances that a formula or a name stands for. Both are matched by the list’s spellings, never by
 * composition. Undefined where it has none, not even another hydrate.
 */
export function substancesListed(text: string): Found | undefined {
  const all = listedSubstances();
  const found = (kind: Pick<Found, 'listing' | 'by'>, test: (one: (typeof all)[number]) => boolean) => {
    const substances = all.filter(test).map(({ read }) => read());
    return substances.length === 0 ? undefined : { ...kind, substances };
  };
  const wanted = plainFormula(text);
  const dry = withoutWater(wanted);
  const name = plainName(text);
  const water = waterOf(wanted);
  return (
    found({ listing: 'listed', by: 'formula' }, ({ spellings }) => spellings.includes(wanted)) ??
    // Any spelling of the salt with any of the waters that the list has for it.
    found(
      { listing: 'listed', by: 'formula' },
      ({ spellings }) =>
        spellings.some((spelling) => waterOf(spelling) === water) &&
        spellings.some((spelling) => withoutWater(spelling) === dry),
    ) ??
    found({ listing: 'listed', by: 'name' }, (one) => one.name.toLowerCase() === name || one.names.includes(name)) ??
    found({ listing: 'another hydrate', by: 'formula' }, ({ spellings }) =>
      spellings.some((spelling) => withoutWater(spelling) === dry),
    )
  );
}
