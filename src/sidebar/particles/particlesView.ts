import type { NumbersView } from '../../desk/views.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { aboutPicture } from './aboutPicture.ts';
import { pictureOf } from './pictureOf.ts';
import { stepChoice } from './stepChoice.ts';
import { stepsOf } from './stepsOf.ts';

/** Particles before and after: of one team's own numbers, or of those that the plan starts from. */
export function particlesView(): View {
  const { particles } = texts;
  const status = element('p', { class: 'waiting', role: 'status' });
  const trouble = element('div', {});
  const pick = element('div', {});
  const content = element('div', {});
  const said = element('p', { class: 'field-problem', role: 'status' });
  const root = element(
    'div',
    { class: 'view particles' },
    viewHeading(particles.title),
    status,
    trouble,
    pick,
    content,
    said,
  );
  let key = '';
  let step = 1;
  let numbers: NumbersView | undefined;

  /** A look behind what is shown changes nothing where it fails, or finds the same. */
  async function read(behind = false): Promise<void> {
    trouble.replaceChildren();
    const outcome = await (behind
      ? askAfresh('readNumbers')
      : waiting(status, particles.reading, askDesk('readNumbers')));
    const isNews = outcome.ok && JSON.stringify(outcome.value) !== JSON.stringify(numbers);
    if (behind && !isNews) return;
    if (!outcome.ok) {
      trouble.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read() }),
      );
      return;
    }
    numbers = outcome.value;
    if (!numbers.teams.some((team) => team.key === key)) key = '';
    step = Math.min(step, stepsOf(numbers.activity));
    frame(numbers);
    if (!behind && isStale('readNumbers')) await read(true);
  }

  function frame(of: NumbersView): void {
    const select = element('select', {}, element('option', { value: '', selected: key === '' }, particles.typical));
    for (const className of new Set(of.teams.map((team) => team.className))) {
      select.append(
        element(
          'optgroup',
          { label: className },
          ...of.teams
            .filter((team) => team.className === className)
            .map((team) => element('option', { value: team.key, selected: team.key === key }, team.team)),
        ),
      );
    }
    select.addEventListener('change', () => {
      key = select.value;
      draw(of);
    });
    pick.replaceChildren(
      field({ id: 'particles-team', label: particles.pick, hint: particles.pickHint, control: select }).root,
      ...stepChoice({
        steps: stepsOf(of.activity),
        step,
        chosen: (picked) => {
          step = picked;
          draw(of);
        },
      }),
      element(
        'div',
        { class: 'actions' },
        element('button', { type: 'button', class: 'act', onclick: () => void project() }, particles.project),
      ),
    );
    draw(of);
  }

  function draw(of: NumbersView): void {
    const givens = of.teams.find((team) => team.key === key)?.givens ?? of.typical;
    content.replaceChildren(...pictureOf(of, { givens, step }));
  }

  async function project(): Promise<void> {
    const outcome = await askDesk('openPage', 'particles', aboutPicture({ key, step }));
    said.textContent = outcome.ok ? '' : outcome.problem.message;
  }

  return {
    root,
    enter() {
      focusHeading(root);
      void read();
    },
    leave() {},
  };
}
