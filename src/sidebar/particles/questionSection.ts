import { lettered } from '../../lab/bench/lettered.ts';
import { optionReply } from '../../lab/bench/optionReply.ts';
import type { Question } from '../../lab/bench/questions/question.ts';
import type { Shown } from '../../lab/lesson/activity.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** A line with the team's own values in place. */
const filled = (pieces: readonly Shown[], givens: Readonly<Record<string, string>>): string =>
  pieces
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const value = givens[piece.given] ?? '';
      const written = piece.given === 'formula' ? writtenFormula(value) : value;
      return value === '' ? '' : `${piece.before ?? ''}${written}${piece.after ?? ''}`;
    })
    .join('');

/**
 * Questions to ask beside the picture; the reasons stay folded until they are wanted. Options have no letters: in the class
 * sheet each team has its own.
 */
export const questionSection = (
  questions: readonly Question[],
  givens: Readonly<Record<string, string>>,
): HTMLElement => {
  const { particles } = texts;
  return element(
    'section',
    { class: 'questions' },
    element('h2', {}, particles.questionsTitle),
    element('p', { class: 'hint' }, particles.questionsAbout),
    ...questions.map((question) => {
      const options = lettered(question.name, [question.right, ...question.others]).map(({ item }) => item);
      return element(
        'article',
        { class: 'question' },
        element('h3', {}, filled(question.stem, givens)),
        element('ul', { class: 'options' }, ...options.map(({ text }) => element('li', {}, filled(text, givens)))),
        element(
          'details',
          {},
          element('summary', {}, particles.reasons),
          element(
            'ul',
            { class: 'options' },
            ...options.map((option) =>
              element(
                'li',
                {},
                element('b', {}, particles.option(filled(option.text, givens), option.id === question.right.id)),
                optionReply(option, givens.formula),
              ),
            ),
          ),
        ),
      );
    }),
  );
};
