import { readFormula } from '../chemistry/readFormula.ts';
import { shortCautions } from '../chemistry/shortCautions.ts';
import type { Lesson } from './lesson.ts';
import { words } from './words.ts';

/** What a class reads under its title about each substance of its teams; empty where no formula can be read. */
export function cautionLine({ activity }: Pick<Lesson, 'activity'>, teams: Lesson['teams']): string {
  const formulas = new Set(teams.map(({ givens }) => (givens[activity.numbers.formula] ?? '').trim()));
  const heads: string[] = [];
  const advices = new Set<string>();
  for (const formula of formulas) {
    const read = readFormula(formula);
    if (!read.ok) continue;
    const { listing, signalWord, advice, use } = shortCautions(read.value);
    heads.push(
      listing === 'unlisted' ? words.class.cautionUnlisted(formula) : words.class.caution({ formula, signalWord }),
    );
    for (const told of [use, advice]) if (told !== '') advices.add(told);
  }
  // The line may be longer than the sheet is wide: what stands above all of it comes before what we advise.
  return heads.length === 0 ? '' : [...heads, words.class.deferring, ...advices].join(' ');
}
