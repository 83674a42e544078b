import type { TeamsView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { teamHelp } from './teamHelp.ts';
import { teamPeople } from './teamPeople.ts';

interface PresenceParts {
  /** Place of the class, from 0. */
  readonly place: number;
  /** Year-month-day of today. */
  readonly day: string;
  /** Says something in the status line of the view. */
  readonly say: (words: string) => void;
  /** Reads the classes anew. */
  readonly open: () => Promise<void>;
}

/** Who of a class is here today: a tick for each absent team, and the people of a team folded below it. */
export function classPresence(
  { name, teams, lessonHelp }: TeamsView['classes'][number],
  { place, day, say, open }: PresenceParts,
): HTMLElement {
  async function mark(control: HTMLInputElement, { key, team }: { key: string; team: string }): Promise<void> {
    const absent = control.checked;
    const outcome = await askDesk('setAbsent', key, absent);
    if (!outcome.ok) control.checked = !absent;
    say(outcome.ok ? texts.teams.marked(team, absent) : outcome.problem.message);
  }
  async function passOn(): Promise<void> {
    const outcome = await askDesk('passRoles', name);
    if (!outcome.ok) return say(outcome.problem.message);
    await open();
    say(texts.teams.passed(outcome.value.passed));
  }
  // Offered while roles of another day stand in a team of the class.
  const isOfAnotherDay = teams.some(({ members }) => members && members.members.length > 0 && members.day !== day);
  const about = `pass-on-${place}`;
  return element(
    'fieldset',
    {},
    element('legend', {}, name),
    ...teams.map((team, index) => {
      const control = element('input', { type: 'checkbox', id: `absent-${place}-${index}`, checked: team.absent });
      control.addEventListener('change', () => void mark(control, team));
      return element(
        'div',
        { class: 'team-here' },
        element(
          'div',
          { class: 'tick-line' },
          control,
          element('label', { for: control.id }, team.team, element('span', { class: 'spoken' }, texts.teams.absent)),
        ),
        team.members !== undefined &&
          teamPeople({
            id: `people-${place}-${index}`,
            className: name,
            team: team.team,
            key: team.key,
            members: team.members,
            say,
          }),
        teamHelp({
          id: `help-${place}-${index}`,
          team: team.team,
          key: team.key,
          help: team.help,
          lesson: lessonHelp,
          say,
        }),
      );
    }),
    isOfAnotherDay &&
      element(
        'div',
        {},
        element('p', { class: 'hint', id: about }, texts.teams.passOnAbout),
        element(
          'button',
          { type: 'button', class: 'act two', 'aria-describedby': about, onclick: () => void passOn() },
          texts.teams.passOn(name),
        ),
      ),
  );
}
