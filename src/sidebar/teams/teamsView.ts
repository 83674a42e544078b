import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { Problem } from '../../desk/outcome.ts';
import type { TeamsView } from '../../desk/views.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import type { Builder } from '../plan/builder.ts';
import { buildHere } from '../plan/buildHere.ts';
import { texts } from '../texts.ts';
import { teamPeople } from './teamPeople.ts';

const firstTeams = 6;

/** Who is here, a team that came late, one class more: what changes in mid-lesson, without touching anyone's entries. */
export function teamsView(page: Page, builder: Builder): View {
  const root = element('div', { class: 'view teams-view' });
  const status = element('p', { class: 'waiting', role: 'status' });
  const said = element('p', { class: 'said', role: 'status' });
  const build = buildHere({
    root,
    title: texts.teams.title,
    builder,
    words: { back: texts.teams.back },
    toClass: () => page.show('classNow'),
    redraw: () => void open(),
  });

  async function open(): Promise<void> {
    said.textContent = '';
    root.replaceChildren(viewHeading(texts.teams.title), status);
    focusHeading(root);
    const outcome = await waiting(status, texts.teams.reading, askDesk('readTeams'));
    if (build.showing()) return;
    if (!outcome.ok) {
      root.replaceChildren(
        viewHeading(texts.teams.title),
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void open() }),
        otherwise(),
      );
      return;
    }
    draw(outcome.value);
    if (!isStale('readTeams')) return;
    // A look behind what is shown draws anew only where it finds something else and nobody has begun to type or tick.
    touched = false;
    const later = await askAfresh('readTeams');
    const isNews = later.ok && JSON.stringify(later.value) !== JSON.stringify(outcome.value);
    if (!later.ok || !isNews || touched || !root.isConnected || build.showing()) return;
    draw(later.value);
  }
  let touched = false;
  for (const event of ['input', 'change', 'focusin'])
    root.addEventListener(event, ({ target }) => {
      touched ||= target instanceof HTMLElement && target.matches('input, textarea, select, button, summary');
    });
  function draw(view: TeamsView): void {
    root.replaceChildren(viewHeading(texts.teams.title), here(view), late(view), another(), otherwise());
  }

  const here = ({ classes, day }: TeamsView): HTMLElement =>
    element(
      'section',
      {},
      element('h2', {}, texts.teams.today),
      element('p', { class: 'hint' }, texts.teams.absentAbout),
      ...classes.map(({ name, teams }, place) =>
        element(
          'fieldset',
          {},
          element('legend', {}, name),
          ...teams.map((team, index) => {
            const control = element('input', {
              type: 'checkbox',
              id: `absent-${place}-${index}`,
              checked: team.absent,
            });
            control.addEventListener('change', () => void mark(control, team));
            return element(
              'div',
              {},
              element(
                'div',
                { class: 'tick-line' },
                control,
                element('label', { for: control.id }, texts.teams.absent(team.team)),
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
            );
          }),
          passOn({ name, place, teams, day }),
        ),
      ),
      said,
    );

  const say = (words: string): void => {
    said.textContent = words;
  };

  /** Offered while roles of another day stand in a team of the class. */
  function passOn({
    name,
    place,
    teams,
    day,
  }: TeamsView['classes'][number] & { readonly place: number; readonly day: string }): HTMLElement | false {
    const isOfAnotherDay = teams.some(({ members }) => members && members.members.length > 0 && members.day !== day);
    if (!isOfAnotherDay) return false;
    const about = `pass-on-${place}`;
    const press = async () => {
      const outcome = await askDesk('passRoles', name);
      if (!outcome.ok) return say(outcome.problem.message);
      await open();
      say(texts.teams.passed(outcome.value.passed));
    };
    return element(
      'div',
      {},
      element('p', { class: 'hint', id: about }, texts.teams.passOnAbout),
      element(
        'button',
        { type: 'button', class: 'act two', 'aria-describedby': about, onclick: () => void press() },
        texts.teams.passOn(name),
      ),
    );
  }

  async function mark(control: HTMLInputElement, { key, team }: { key: string; team: string }): Promise<void> {
    const absent = control.checked;
    const outcome = await askDesk('setAbsent', key, absent);
    if (outcome.ok) said.textContent = texts.teams.marked(team, absent);
    else {
      control.checked = !absent;
      said.textContent = outcome.problem.message;
    }
  }

  function late({ classes }: TeamsView): HTMLElement {
    const pick = field({
      id: 'late-class',
      label: texts.teams.forClass,
      control: choice(
        classes.map(({ name }) => ({ value: name, label: name })),
        classes[0]?.name ?? '',
      ),
    });
    const name = field({
      id: 'late-team',
      label: texts.teams.teamName,
      control: element('input', { type: 'text', autocomplete: 'off' }),
    });
    return form({
      title: texts.teams.late,
      about: texts.teams.lateAbout,
      fields: [pick, name],
      button: texts.teams.addTeam,
      send: async () => {
        const join = (answers: BuildAnswers) => askDesk('addTeam', pick.control.value, name.control.value, answers);
        return tell(name, build.start(await join({}), join));
      },
    });
  }

  function another(): HTMLElement {
    const name = field({
      id: 'new-class',
      label: texts.plan.className,
      control: element('input', { type: 'text', autocomplete: 'off' }),
    });
    const names = Array.from({ length: firstTeams }, (_, index) => texts.plan.teamNumber(index + 1)).join('\n');
    const teams = field({
      id: 'new-class-teams',
      label: texts.plan.teamNames,
      control: element('textarea', { rows: firstTeams }, names),
    });
    return form({
      title: texts.teams.newClass,
      about: texts.teams.newClassAbout,
      fields: [name, teams],
      button: texts.teams.addClass,
      send: async () => {
        const lines = teams.control.value
          .split('\n')
          .map((line) => line.trim())
          .filter((line) => line !== '');
        const join = (answers: BuildAnswers) => askDesk('addClass', name.control.value, lines, answers);
        return tell(name, build.start(await join({}), join));
      },
    });
  }

  const tell = (name: ReturnType<typeof field>, problem: Problem | undefined): boolean => {
    name.setProblem(problem?.message ?? '');
    return problem === undefined;
  };

  const otherwise = (): HTMLElement =>
    element(
      'section',
      {},
      element('h2', {}, texts.teams.otherwise),
      ...texts.teams.otherwiseText.map((words) => element('p', {}, words)),
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

function form({
  title,
  about,
  fields,
  button,
  send,
}: {
  readonly title: string;
  readonly about: string;
  readonly fields: readonly ReturnType<typeof field>[];
  readonly button: string;
  /** False where a field needs another look. */
  readonly send: () => Promise<boolean>;
}): HTMLElement {
  const status = element('p', { class: 'waiting', role: 'status' });
  const made = element(
    'form',
    { novalidate: true },
    element('h2', {}, title),
    element('p', { class: 'hint' }, about),
    ...fields.map(({ root }) => root),
    element('button', { type: 'submit', class: 'act two' }, button),
    status,
  );
  let sending = false;
  made.addEventListener('submit', async (event) => {
    event.preventDefault();
    if (sending) return;
    sending = true;
    const sent = await waiting(status, texts.build.first, send());
    sending = false;
    if (!sent && made.isConnected) fields.find(({ control }) => control.hasAttribute('aria-invalid'))?.control.focus();
  });
  return element('section', {}, made);
}
