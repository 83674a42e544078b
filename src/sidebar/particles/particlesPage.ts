import { callHost } from '../callHost.ts';
import { element } from '../page/element.ts';
import { viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import { waiting } from '../page/waiting.ts';
import type { OpenedPage } from '../pages/openedPage.ts';
import { texts } from '../texts.ts';
import { pictureOf } from './pictureOf.ts';

/** The picture of particles to project. `key` is that of a team, or empty for the numbers that the plan starts from. */
export function particlesPage(key: string): OpenedPage {
  const { particles } = texts;
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  const root = element('div', { class: 'view particles' }, viewHeading(particles.title), status, content);

  async function read(): Promise<void> {
    content.replaceChildren();
    const outcome = await waiting(status, particles.reading, callHost('readNumbers'));
    if (!outcome.ok) {
      content.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read() }),
      );
      return;
    }
    const team = outcome.value.teams.find((one) => one.key === key);
    content.replaceChildren(
      element(
        'p',
        { class: 'clock' },
        team === undefined ? particles.typical : particles.numbersOf(team.team, team.className),
      ),
      ...pictureOf(outcome.value, team?.givens ?? outcome.value.typical),
    );
  }

  return { root, isProjected: true, enter: () => void read() };
}
