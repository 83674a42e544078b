import type { ClassView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** The exit questions of a class in counts, and the one press that shows the students their checks or keeps them again. */
export function exitSection(
  className: string,
  exit: NonNullable<ClassView['exit']>,
  toggle: (shown: boolean) => void,
): HTMLElement {
  const words = texts.classNow.exit;
  const { answered, seats, formulas, common, shown } = exit;
  const empty = seats - answered - formulas;
  const said = { no: words.kept, class: words.seen, lesson: words.seenByLesson }[shown];
  return element(
    'section',
    {},
    element('h2', {}, words.title),
    element(
      'p',
      {},
      [
        words.counts(exit),
        answered > 0 && empty > 0 ? words.open(empty) : '',
        common === undefined ? '' : words.common(common),
        formulas > 0 ? words.formulas(formulas) : '',
      ]
        .filter((part) => part !== '')
        .join(' '),
    ),
    element('p', { class: 'hint' }, said),
    shown !== 'lesson' &&
      element(
        'button',
        { type: 'button', class: 'act two', id: 'exit-checks', onclick: () => toggle(shown === 'no') },
        shown === 'no' ? words.show(className) : words.keep(className),
      ),
  );
}
