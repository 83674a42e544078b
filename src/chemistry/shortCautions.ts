import type { Percent } from '../measurement/quantity.ts';
import type { Cautions } from './cautions.ts';
import { cautionsAt } from './cautionsAt.ts';
import { adviceTexts, cautionTexts } from './cautionTexts.ts';
import type { Formula } from './formula.ts';

/** Cautions for a substance or a solution of it, as short as fits beside its name. */
export interface ShortCautions {
  readonly listing: Cautions['listing'];
  readonly signalWord: Cautions['signalWord'];
  /** At most three, the gravest first; each has its code and how sure it is. Empty for an unlisted substance. */
  readonly statements: readonly string[];
  /** What to do about the gravest; empty where nothing is known. */
  readonly advice: string;
  /** What schools commonly allow, or empty. */
  readonly use: string;
  /** Where it is listed in another form only, which one; else empty. */
  readonly otherForm: string;
}

const mostStatements = 3;
/** Which hazards a person should read first where only a few fit: house choice. */
const gravest: readonly RegExp[] = [
  /^H3[013]0$/,
  /^H3[456]0/,
  /^H3[013]1$/,
  /^(H314|H318)$/,
  /^(H334|H370|H372)$/,
  /^H27[12]$/,
  /^H226$/,
];
const last = /^(H290|H4\d\d)$/;

const rank = (code: string): number => {
  const place = gravest.findIndex((family) => family.test(code));
  return place >= 0 ? place : last.test(code) ? gravest.length + 1 : gravest.length;
};

/**
 * The gravest of what is known of a substance, and what to do about it.
 * Sources and matching are those of `cautions`. The safety data sheet stays above all of it.
 *
 * @param massPercent - Grams of the substance in 100 g of solution; as it stands in the bottle where left out.
 */
export function shortCautions(formula: Formula, massPercent?: Percent): ShortCautions {
  const { listing, signalWord, statements } = cautionsAt(
    formula,
    massPercent === undefined ? 'undiluted' : { massPercent },
  );
  if (listing === 'unlisted') return { listing, signalWord, statements: [], advice: '', use: '', otherForm: '' };
  const [otherForm = ''] = listing === 'listed' ? [] : statements.map(({ text }) => text);
  const worst = statements.filter(({ code }) => code !== '').sort((one, other) => rank(one.code) - rank(other.code));
  // How to dilute or dissolve it comes without a code and without a text of its own.
  const care = statements.find(
    ({ advice }) => advice === adviceTexts.acidToWater || advice === adviceTexts.heatOfSolution,
  );
  const use = statements.find(({ advice }) => advice === cautionTexts.schoolAdvice);
  // Without a code, the first line after that of the other form says what is known.
  const shown = worst.length > 0 ? worst : statements.filter(({ text }) => text !== otherForm).slice(0, 1);
  return {
    listing,
    signalWord,
    statements: shown.slice(0, mostStatements).map(({ text }) => text),
    advice: [shown[0], care]
      .map((one) => one?.advice ?? '')
      .filter((words) => words !== '')
      .join(' '),
    use: use?.text ?? '',
    otherForm,
  };
}
