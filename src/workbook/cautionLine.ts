import { readFormula } from '../chemistry/readFormula.ts';
import { shortCautions } from '../chemistry/shortCautions.ts';
import type { TickedStep } from '../lab/lesson/activity.ts';
import { type CautionPiece, cautionPieces } from '../lab/lesson/cautionPieces.ts';
import { type CautionPieceAlso, cautionLanguageOf, cautionPiecesIn } from '../lab/lesson/cautionPiecesIn.ts';
import { handledForms } from '../lab/lesson/handledForms.ts';
import { readLessonSettings } from '../lab/lesson/lessonSettings.ts';
import type { Lesson } from './lesson.ts';
import { words } from './words.ts';

type ClassLesson = Pick<Lesson, 'activity' | 'setup'>;

/** Each substance of a class once, with the team that handles it in its strongest form. */
function strongestOfEach({ activity, setup }: ClassLesson, teams: Lesson['teams']) {
  const name = activity.numbers.formula;
  const ticked = activity.steps.find((step): step is TickedStep => step.kind === 'ticked');
  const substance = ticked?.substance ?? { formula: name };
  const { decimalMark, studentsDilute } = readLessonSettings(Object.entries(setup.settings));
  const written = teams.map(({ givens }) => (givens[name] ?? '').trim());
  return [...new Set(written)].flatMap((formula) => {
    const read = readFormula(formula);
    if (!read.ok) return [];
    const [strongest] = teams
      .filter((_, place) => written[place] === formula)
      .flatMap(({ givens }) =>
        handledForms({ substance, formula: read.value, givens, decimalMark }).map((form) => ({ ...form, givens })),
      )
      .sort((one, other) => (other.massPercent ?? undiluted) - (one.massPercent ?? undiluted));
    const solutions = teams
      .filter((_, place) => written[place] === formula)
      .flatMap(({ givens }) =>
        handledForms({ substance, formula: read.value, givens, decimalMark }).flatMap(({ massPercent }) =>
          massPercent === undefined ? [] : [{ massPercent, givens }],
        ),
      )
      .sort((one, other) => other.massPercent - one.massPercent);
    return strongest === undefined
      ? []
      : [
          {
            formula,
            read: read.value,
            strongest,
            substance,
            decimalMark,
            studentsDilute,
            givens: solutions[0]?.givens ?? strongest.givens,
          },
        ];
  });
}

/**
 * What a class reads under its title about each substance of its teams, in the strongest form that any of them handles;
 * empty where no formula can be read. All of it stands in `classCautions`.
 */
export function cautionLine(lesson: ClassLesson, teams: Lesson['teams']): string {
  const heads = strongestOfEach(lesson, teams).map(({ formula, read, strongest }) => {
    const { listing, verdict, signalWord } = shortCautions(read, strongest.massPercent);
    const isSolution = strongest.massPercent !== undefined;
    const what = isSolution ? words.class.cautionUpTo({ formula, strength: strongest.words }) : formula;
    return listing === 'unlisted'
      ? words.class.cautionUnlisted(formula)
      : words.class.caution({ formula: what, signalWord, isSettled: verdict !== 'unsure' });
  });
  return heads.length === 0 ? '' : [...heads, words.class.deferring, words.class.cautionsBelow].join(' ');
}

/**
 * All cautions of a class, each form once in the strongest that a team handles, and the line that defers to others; also in
 * the second language, form by form, where the lesson wants one.
 */
export function classCautions(
  lesson: ClassLesson,
  teams: Lesson['teams'],
): { readonly blocks: readonly CautionPiece[]; readonly also: readonly CautionPieceAlso[]; readonly last: string } {
  const language = cautionLanguageOf(lesson.setup.settings);
  const handled = strongestOfEach(lesson, teams);
  const pieces = handled.map(cautionPieces);
  return {
    blocks: pieces.flatMap(({ blocks }) => blocks),
    also: language === undefined ? [] : handled.flatMap((handling) => cautionPiecesIn(language, handling)),
    last: [
      ...new Set(pieces.flatMap(({ maker, last }) => [...maker, last])),
      ...(language === undefined || handled.length === 0 ? [] : [language.deferring]),
    ].join(' '),
  };
}

/** Above every share by mass: no solution is stronger than the substance itself. */
const undiluted = 101;
