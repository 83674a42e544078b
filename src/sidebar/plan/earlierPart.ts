import type { LessonsView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { lessonWords } from './lessonWords.ts';

/** Lessons that were put away, each with one press that opens it again. */
export const earlierPart = (
  { away }: LessonsView,
  { open }: { readonly open: (id: string) => void },
): readonly HTMLElement[] => [
  element('p', { class: 'hint' }, away.length === 0 ? texts.next.none : texts.next.earlierAbout),
  ...away.map((line) =>
    element(
      'section',
      { class: 'notice' },
      element('p', {}, `${lessonWords(line)}: ${texts.next.count(line.entries)}`),
      element(
        'button',
        { type: 'button', class: 'act two', onclick: () => open(line.id) },
        texts.next.open(line.classes),
      ),
    ),
  ),
];
