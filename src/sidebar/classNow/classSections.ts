import type { ClassView, TeamView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { exitSection } from './exitSection.ts';
import { spreadPicture } from './spreadPicture.ts';
import { talkLines } from './talkLines.ts';

/** What a class shows: whom to talk to and why, how far teams are, the spread of errors, one sentence for everybody. */
export function classSections(
  now: ClassView,
  teamItem: (team: TeamView, index: number) => HTMLElement,
  showExit: (shown: boolean) => void,
): readonly HTMLElement[] {
  const words = texts.classNow;
  const items = now.teams.map((team, index) => ({ practice: team.practice === true, item: teamItem(team, index) }));
  const [teams, practice] = [false, true].map((wanted) =>
    items.filter((one) => one.practice === wanted).map(({ item }) => item),
  );
  const talk = talkLines(now.talkFirst).map(({ heading, reason }, index) =>
    element(
      'li',
      { class: index === 0 ? 'talk first' : 'talk' },
      element('b', {}, heading),
      element('span', {}, reason),
    ),
  );
  return [
    ...(now.closed ? [element('p', { class: 'say' }, words.closedNow)] : []),
    ...(now.inTheWay ?? []).map((sentence) => element('p', { class: 'say' }, sentence)),
    element(
      'section',
      {},
      element('h2', { class: 'spoken' }, words.talkFirst),
      talk.length > 0 ? element('ul', { class: 'cards' }, ...talk) : element('p', { class: 'hint' }, words.nobody),
    ),
    element(
      'section',
      {},
      element('h2', {}, words.teams),
      teams && teams.length > 0
        ? element('ul', { class: 'teams' }, ...teams)
        : element('p', { class: 'hint' }, words.noTeams),
    ),
    ...(practice && practice.length > 0
      ? [element('section', {}, element('h2', {}, words.practice), element('ul', { class: 'teams' }, ...practice))]
      : []),
    ...(now.exit === undefined ? [] : [exitSection(now.className, now.exit, showExit)]),
    ...(now.percentErrors === undefined ? [] : [spreadPicture(now.percentErrors)]),
    ...(now.sayToClass === ''
      ? []
      : [element('p', { class: 'say' }, element('b', {}, words.say), ` ${now.sayToClass}`)]),
    ...(now.notYetKnown > 0 ? [element('p', { class: 'hint' }, words.notYetKnown(now.notYetKnown))] : []),
  ];
}
