import type { SheetsView } from '../../desk/views.ts';
import type { PageName } from '../../host/pages.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { classLink } from './classLink.ts';

/** What students have in front: the teacher's sheets to open and hide, and the way of each class to its own sheet. */
export function sheetsView(): View {
  const { sheets: say } = texts;
  const status = element('p', { class: 'waiting', role: 'status' });
  const said = element('p', { class: 'said', role: 'status' });
  const content = element('div', {});

  async function read(): Promise<void> {
    const outcome = await waiting(status, say.reading, askDesk('readSheets'));
    content.replaceChildren(
      ...(outcome.ok
        ? drawn(outcome.value)
        : [problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read() })]),
    );
  }
  async function does(words: string, asked: ReturnType<typeof askDesk<'openSheet' | 'openPage'>>): Promise<void> {
    said.textContent = '';
    const outcome = await waiting(status, say.working, asked);
    said.textContent = outcome.ok ? words : outcome.problem.message;
  }
  const openPage = (page: PageName, about = '') => void does('', askDesk('openPage', page, about));

  const drawn = ({ teachers, classes }: SheetsView): readonly HTMLElement[] => [
    element(
      'section',
      {},
      element('h2', {}, say.teachersTitle),
      element('p', { class: 'hint' }, `${say.teachersAbout} ${say.noSecret}`),
      teachers.length === 0
        ? element('p', {}, say.none)
        : element(
            'ul',
            { class: 'press-list' },
            ...teachers.map(({ id, name }) =>
              element(
                'li',
                {},
                element(
                  'button',
                  {
                    type: 'button',
                    class: 'act quiet',
                    onclick: () => void does(say.shown(name), askDesk('openSheet', id)),
                  },
                  say.open(name),
                ),
              ),
            ),
          ),
      teachers.length > 0 &&
        element(
          'button',
          { type: 'button', class: 'act two', onclick: () => void does(say.hidden, askDesk('hideTeachersSheets')) },
          say.hide,
        ),
    ),
    element(
      'section',
      {},
      element('h2', {}, say.linksTitle),
      element('p', { class: 'hint' }, say.linksAbout),
      element('p', { class: 'notice' }, say.sharing),
      ...(classes.length === 0
        ? [element('p', {}, say.none)]
        : [
            ...classes.map((one, place) =>
              classLink(one, { id: `class-link-${place}`, project: () => openPage('links', one.name) }),
            ),
            element('button', { type: 'button', class: 'act two', onclick: () => openPage('links') }, say.printAll),
          ]),
    ),
  ];

  const root = element('div', { class: 'view sheets' }, viewHeading(say.title), status, said, content);
  return {
    root,
    enter() {
      said.textContent = '';
      focusHeading(root);
      void read();
    },
    leave() {},
  };
}
