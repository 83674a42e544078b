import { sizeFigure } from '../../lab/key/checkFigure.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** Powers of ten that results of these lessons have, smallest first. */
const powers = [-4, -3, -2, -1, 0, 1, 2, 3];

/** How to check a result without its answer: a small table to read off and one sum to do in the head. */
export function checkRule(decimalMark: 'point' | 'comma'): HTMLElement {
  const words = texts.pages.paper;
  const written = (number: string) => withDecimalMark(number, decimalMark);
  const like = (power: number) => written(power < 0 ? (2 * 10 ** power).toFixed(-power) : String(2 * 10 ** power));
  return element(
    'div',
    { class: 'check-rule' },
    element('p', {}, element('b', {}, words.ruleTitle), ` ${words.rule}`),
    element(
      'ul',
      { class: 'sizes' },
      ...powers.map((power) =>
        element('li', {}, `${words.like(like(power))} `, element('b', {}, words.add(sizeFigure(power)))),
      ),
    ),
    element('p', {}, `${words.ruleExample(written('0.0254'), like(-2))} ${words.ruleLimit}`),
  );
}
