import type { TeamMembersView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { peopleWords } from './peopleWords.ts';

interface TeamPeopleParts {
  /** Unique in the page. */
  readonly id: string;
  readonly className: string;
  readonly team: string;
  readonly key: string;
  readonly members: TeamMembersView;
  /** Says something in the status line of the view. */
  readonly say: (words: string) => void;
}

/** Who is in a team: names, who does what today, and who of them is not here. All of it may be left empty. */
export function teamPeople({ id, className, team, key, members, say }: TeamPeopleParts): HTMLElement {
  const words = texts.teams.people;
  const summary = element('summary', {});
  const today = element('div', {});
  const status = element('p', { class: 'waiting', role: 'status' });
  const names = field({
    id: `${id}-names`,
    label: words.names(team),
    hint: words.namesHint,
    control: element('textarea', { rows: 4, autocomplete: 'off' }),
  });
  let shown = members;
  let sending = false;

  async function send(wanted: { readonly names: string; readonly absent: readonly string[] }): Promise<boolean> {
    if (sending) return false;
    sending = true;
    const outcome = await waiting(
      status,
      words.saving,
      askDesk('setMembers', className, key, { ...wanted, base: shown.who }),
    );
    sending = false;
    names.setProblem(outcome.ok ? '' : outcome.problem.message);
    say(outcome.ok ? words.saved(team) : outcome.problem.message);
    if (!outcome.ok) return false;
    shown = outcome.value;
    draw();
    return true;
  }

  function draw(): void {
    const focused = document.activeElement?.id ?? '';
    summary.replaceChildren(words.summary(shown.members.length), element('span', { class: 'spoken' }, words.of(team)));
    today.replaceChildren(
      ...(shown.members.length === 0 ? [] : [element('p', {}, peopleWords(shown.members))]),
      ...shown.members.map(({ name, absent }, place) => {
        const control = element('input', { type: 'checkbox', id: `${id}-absent-${place}`, checked: absent });
        control.addEventListener('change', () => void markAbsent(control, name));
        return element(
          'div',
          { class: 'tick-line' },
          control,
          element('label', { for: control.id }, words.absent(name)),
        );
      }),
    );
    if (focused.startsWith(`${id}-absent-`)) document.getElementById(focused)?.focus();
  }

  async function markAbsent(control: HTMLInputElement, name: string): Promise<void> {
    const absent = shown.members
      .filter((member) => (member.name === name ? control.checked : member.absent))
      .map((member) => member.name);
    const kept = await send({ names: shown.members.map((member) => member.name).join('\n'), absent });
    if (!kept) control.checked = !control.checked;
  }

  const form = element(
    'form',
    { novalidate: true },
    names.root,
    element('button', { type: 'submit', class: 'act two' }, words.keep(team)),
    status,
  );
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const absent = shown.members.filter((member) => member.absent).map(({ name }) => name);
    const kept = await send({ names: names.control.value, absent });
    if (kept) names.control.value = namesOf(shown);
    else names.control.focus();
  });
  names.control.value = namesOf(shown);
  draw();
  return element('details', { class: 'people' }, summary, today, form);
}

const namesOf = ({ members }: TeamMembersView): string => members.map(({ name }) => name).join('\n');
