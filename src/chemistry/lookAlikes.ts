import type { Result } from '../errors/result.ts';
import { atomsKey } from './atomsKey.ts';
import type { Formula } from './formula.ts';
import { atomsOfListed, ions, isListedSolute } from './ions.ts';

/** Usual substances that the lists of electrolytes and molecular solutes have no need of; common practice, no source. */
const otherSubstances = (
  'Fe2O3 Fe3O4 FeO Al2O3 Cu2O CuO MgO CaO BaO SrO ZnO MnO2 SiO2 TiO2 Cr2O3 CrO3 PbO PbO2 HgO Ag2O Li2O Na2O K2O Na2O2 ' +
  'SO2 SO3 NO NO2 N2O N2O4 N2O5 CO P2O5 P4O10 Cl2 Cl2O O3 CCl4 CHCl3 CH2Cl2 PCl3 PCl5 SiCl4 SOCl2 NCl3 CaC2O4'
).split(' ');

let others: ReadonlySet<string> | undefined;
const otherKeys = (): ReadonlySet<string> =>
  (others ??= new Set(otherSubstances.map((body) => atomsKey({ atoms: atomsOfListed(body) }))));

const commonFactor = (one: number, other: number): number => (other === 0 ? one : commonFactor(other, one % other));
const isSmallest = (counts: readonly { readonly count: number }[]): boolean =>
  counts.reduce((factor, { count }) => commonFactor(count, factor), 0) === 1;

/** Whether a formula is that of a substance which some list here has, or a salt or acid of the usual ions. */
function isListed(formula: Formula): boolean {
  if (formula.charge !== 0) return false;
  if (otherKeys().has(atomsKey(formula)) || isListedSolute(formula)) return true;
  const found = ions(formula);
  // Na2Cl2 and H4Cl4 have the ions of a salt and of an acid, and are neither.
  if (found.ok) return isSmallest(found.value);
  return found.error.code.startsWith('ions-') && found.error.code !== 'ions-unknown' && isSmallest(formula.atoms);
}

/** What may have been typed for what: 0 for O, and 1 or I for the l of Al, Cl and Tl. */
const look = /0|(?<=[ACT])1|(?<=[AC])I(?![a-z])/g;
const meantBy: Readonly<Record<string, string>> = { 0: 'O', 1: 'l', I: 'l' };
/** More places than this are no slip of the finger; then all are taken together. */
const placesMax = 6;
/** Nobody writes the number of one atom. */
const loneOne = /[A-Za-z)\]}]1(?!\d)/;

/** A text with some of its places, one bit for each, read as the letters that look like them. */
const withLetters = (text: string, places: readonly number[], chosen: number): string =>
  places.reduce(
    (written, place, bit) =>
      chosen & (1 << bit) ? written.slice(0, place) + meantBy[text.charAt(place)] + written.slice(place + 1) : written,
    text,
  );

/** Answers by text, since a column often holds one formula many times; forgotten all together when there are many. */
const answers = new Map<string, readonly string[]>();
const answersMax = 200;

/**
 * How a formula was probably meant in which a zero stands for the letter O, or a one (or a capital I) for the letter l:
 * `H20` gives `H2O`. Empty where the formula is that of a listed substance itself, or no such reading is.
 */
export function lookAlikes(
  typed: Result<Formula>,
  text: string,
  read: (text: string) => Result<Formula>,
): readonly string[] {
  const known = answers.get(text);
  if (known !== undefined) return known;
  const places: number[] = [];
  text.replace(look, (mark, place: number) => {
    places.push(place);
    return mark;
  });
  if (places.length === 0) return [];
  const all = (1 << Math.min(places.length, 30)) - 1;
  const choices = places.length > placesMax ? [all] : Array.from({ length: all }, (_, choice) => all - choice);
  const found: string[] = [];
  for (const choice of choices) {
    const written = withLetters(text, places, choice);
    if (loneOne.test(written)) continue;
    const meant = read(written);
    if (meant.ok && isListed(meant.value)) found.push(written);
    if (found.length === 2) break;
  }
  const answer = found.length > 0 && typed.ok && isListed(typed.value) ? [] : found;
  if (answers.size >= answersMax) answers.clear();
  answers.set(text, answer);
  return answer;
}
