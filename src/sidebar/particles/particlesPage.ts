import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import { waiting } from '../page/waiting.ts';
import type { OpenedPage } from '../pages/openedPage.ts';
import { texts } from '../texts.ts';
import { pictureAsked } from './aboutPicture.ts';
import { pictureOf } from './pictureOf.ts';
import { stepChoice } from './stepChoice.ts';
import { stepsOf } from './stepsOf.ts';

/** The picture of particles to project; `about` says whose and of which dilution, see `aboutPicture`. */
export function particlesPage(about: string): OpenedPage {
  const asked = pictureAsked(about);
  const { particles } = texts;
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  const root = element('div', { class: 'view particles' }, viewHeading(particles.title), status, content);

  async function read(): Promise<void> {
    content.replaceChildren();
    const outcome = await waiting(status, particles.reading, askDesk('readNumbers'));
    if (!outcome.ok) {
      content.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read() }),
      );
      return;
    }
    const numbers = outcome.value;
    const team = numbers.teams.find((one) => one.key === asked.key);
    const steps = stepsOf(numbers.activity);
    const drawn = element('div', {});
    const draw = (step: number) =>
      drawn.replaceChildren(...pictureOf(numbers, { givens: team?.givens ?? numbers.typical, step }));
    const first = Math.min(asked.step, steps);
    draw(first);
    content.replaceChildren(
      element(
        'p',
        { class: 'clock' },
        team === undefined ? particles.typical : particles.numbersOf(team.team, team.className),
      ),
      ...stepChoice({ steps, step: first, chosen: draw }),
      drawn,
    );
  }

  return { root, isProjected: true, enter: () => void read() };
}
