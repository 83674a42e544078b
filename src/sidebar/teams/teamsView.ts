import type { TeamsView } from '../../desk/views.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { fold } from '../page/fold.ts';
import { drawUnderHeading, focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import type { Builder } from '../plan/builder.ts';
import { buildHere } from '../plan/buildHere.ts';
import { texts } from '../texts.ts';
import { classPresence } from './classPresence.ts';
import { lateTeam } from './lateTeam.ts';
import { newClass } from './newClass.ts';
import { practiceAgain } from './practiceAgain.ts';

/** Who is here, a team that came late, one class more: what changes in mid-lesson, without touching anyone's entries. */
export function teamsView(builder: Builder): View {
  const root = element('div', { class: 'view teams-view' });
  const status = element('p', { class: 'waiting', role: 'status' });
  const said = element('p', { class: 'said', role: 'status' });
  const build = buildHere({
    root,
    title: texts.teams.title,
    builder,
    back: texts.teams.back,
    redraw: () => void open(),
  });

  async function open(): Promise<void> {
    said.textContent = '';
    root.replaceChildren(viewHeading(texts.teams.title), status);
    focusHeading(root);
    const outcome = await waiting(status, texts.teams.reading, askDesk('readTeams'));
    if (build.showing()) return;
    if (!outcome.ok) {
      drawUnderHeading(root, () =>
        root.replaceChildren(
          viewHeading(texts.teams.title),
          problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void open() }),
        ),
      );
      return;
    }
    draw(outcome.value);
    if (!isStale('readTeams')) return;
    // A look behind what is shown draws anew only where it finds something else and nobody has begun to type or tick.
    isTouched = false;
    const later = await askAfresh('readTeams');
    const isNews = later.ok && JSON.stringify(later.value) !== JSON.stringify(outcome.value);
    if (!later.ok || !isNews || isTouched || !root.isConnected || build.showing()) return;
    draw(later.value);
  }
  let isTouched = false;
  for (const event of ['input', 'change', 'focusin', 'pointerdown'])
    root.addEventListener(event, ({ target }) => {
      isTouched ||= target instanceof HTMLElement && target.matches('input, textarea, select, button, summary, label');
    });
  const say = (words: string): void => {
    said.textContent = words;
  };
  const draw = (view: TeamsView): void =>
    drawUnderHeading(root, () =>
      root.replaceChildren(
        viewHeading(texts.teams.title),
        element('p', { class: 'hint' }, texts.teams.absentAbout),
        ...view.classes.map((one, place) => classPresence(one, { place, day: view.day, say, open })),
        said,
        element(
          'div',
          { class: 'folds' },
          practiceAgain(view, build),
          lateTeam(view, build),
          newClass(view, build),
          fold(texts.teams.otherwise, ...texts.teams.otherwiseText.map((words) => element('p', {}, words))).root,
        ),
      ),
    );

  return {
    root,
    enter() {
      if (build.showing()) focusHeading(root);
      else void open();
    },
    leave() {},
  };
}
