import { readFormula } from '../chemistry/readFormula.ts';
import { shortCautions } from '../chemistry/shortCautions.ts';
import { handledForms } from '../lab/lesson/handledForms.ts';
import type { Lesson } from './lesson.ts';
import { words } from './words.ts';

/**
 * What a class reads under its title about each substance of its teams, in the strongest form that any of them handles;
 * empty where no formula can be read.
 */
export function cautionLine({ activity, setup }: Pick<Lesson, 'activity' | 'setup'>, teams: Lesson['teams']): string {
  const name = activity.numbers.formula;
  const ticked = activity.steps.find((step) => step.kind === 'ticked');
  const substance = ticked?.substance ?? { formula: name };
  const decimalMark = setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point';
  const written = teams.map(({ givens }) => (givens[name] ?? '').trim());
  const heads: string[] = [];
  const advices = new Set<string>();
  for (const formula of new Set(written)) {
    const read = readFormula(formula);
    if (!read.ok) continue;
    const [strongest] = teams
      .filter((_, place) => written[place] === formula)
      .flatMap(({ givens }) => handledForms({ substance, formula: read.value, givens, decimalMark }))
      .sort((one, other) => (other.massPercent ?? undiluted) - (one.massPercent ?? undiluted));
    const { listing, verdict, signalWord, advice, use, waste } = shortCautions(read.value, strongest?.massPercent);
    const isSolution = strongest?.massPercent !== undefined;
    const what = isSolution ? words.class.cautionUpTo({ formula, strength: strongest.words }) : formula;
    heads.push(
      listing === 'unlisted'
        ? words.class.cautionUnlisted(formula)
        : words.class.caution({ formula: what, signalWord, isSettled: verdict !== 'unsure' }),
    );
    for (const told of [use, advice, waste]) if (told !== '') advices.add(told);
  }
  // The line may be longer than the sheet is wide: what stands above all of it comes before what we advise.
  return heads.length === 0 ? '' : [...heads, words.class.deferring, ...advices].join(' ');
}

/** Above every share by mass: no solution is stronger than the substance itself. */
const undiluted = 101;
