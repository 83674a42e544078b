import type { Percent } from '../measurement/quantity.ts';
import type { Cautions } from './cautions.ts';
import { cautionsAt } from './cautionsAt.ts';
import type { Formula } from './formula.ts';
import { gravityOf } from './gravityOf.ts';

/** Cautions for a substance or a solution of it, as short as fits beside its name. */
export interface ShortCautions {
  readonly listing: Cautions['listing'];
  readonly verdict: Cautions['verdict'];
  readonly signalWord: Cautions['signalWord'];
  /** At most three, the gravest first; each has its code and how sure it is. Empty for an unlisted substance. */
  readonly statements: readonly string[];
  /** What to do about the gravest; empty where nothing is known. */
  readonly advice: string;
  /** Where leftovers go; said of an unlisted substance too. */
  readonly waste: string;
  /** What schools commonly allow, or empty. */
  readonly use: string;
  /** Where it is listed in another form only, which one; else empty. */
  readonly otherForm: string;
}

const mostStatements = 3;

/**
 * The gravest of what is known of a substance, and what to do about it.
 * Sources and matching are those of `cautions`. The safety data sheet stays above all of it.
 *
 * @param massPercent - Grams of the substance in 100 g of solution; as it is sold where left out.
 */
export function shortCautions(formula: Formula, massPercent?: Percent): ShortCautions {
  const { listing, verdict, signalWord, statements } = cautionsAt(
    formula,
    massPercent === undefined ? 'undiluted' : { massPercent },
  );
  const first = (about: (typeof statements)[number]['about']) => statements.find((one) => one.about === about);
  const waste = first('waste')?.advice ?? '';
  if (listing === 'unlisted') {
    return { listing, verdict, signalWord, statements: [], advice: '', waste, use: '', otherForm: '' };
  }
  const seen = new Set<string>();
  // Of several substances with one formula each code is told once.
  const worst = statements
    .filter(({ code }) => code !== '' && !seen.has(code) && seen.add(code))
    .sort((one, other) => gravityOf(one.code) - gravityOf(other.code));
  // Without a code, the first note says what is known.
  const shown = worst.length > 0 ? worst : statements.filter(({ about }) => about === 'note').slice(0, 1);
  return {
    listing,
    verdict,
    signalWord,
    statements: shown.slice(0, mostStatements).map(({ text }) => text),
    advice: [shown[0], first('care')]
      .map((one) => one?.advice ?? '')
      .filter((words) => words !== '')
      .join(' '),
    waste,
    use: first('use')?.text ?? '',
    otherForm: first('form')?.text ?? '',
  };
}
