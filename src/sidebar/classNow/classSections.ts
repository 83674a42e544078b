import type { ClassView, TeamView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { spreadPicture } from './spreadPicture.ts';
import { talkLines } from './talkLines.ts';

/** What a class shows: whom to talk to and why, how far teams are, the spread of errors, one sentence for everybody. */
export function classSections(
  now: ClassView,
  teamItem: (team: TeamView, index: number) => HTMLElement,
): readonly HTMLElement[] {
  const words = texts.classNow;
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
      now.teams.length > 0
        ? element('ul', { class: 'teams' }, ...now.teams.map(teamItem))
        : element('p', { class: 'hint' }, words.noTeams),
    ),
    ...(now.percentErrors === undefined ? [] : [spreadPicture(now.percentErrors)]),
    ...(now.sayToClass === ''
      ? []
      : [element('p', { class: 'say' }, element('b', {}, words.say), ` ${now.sayToClass}`)]),
    ...(now.notYetKnown > 0 ? [element('p', { class: 'hint' }, words.notYetKnown(now.notYetKnown))] : []),
  ];
}
