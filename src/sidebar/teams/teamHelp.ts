import type { OwnHelpView, TeamsView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';

interface TeamHelpParts {
  /** Unique in the page. */
  readonly id: string;
  readonly team: string;
  readonly key: string;
  readonly help: OwnHelpView;
  readonly lesson: TeamsView['classes'][number]['lessonHelp'];
  /** Says something in the status line of the view. */
  readonly say: (words: string) => void;
}

/** What one team has of its own: how far its hints go, set as it is chosen, and a task, suggested or typed. */
export function teamHelp({ id, team, key, help, lesson, say }: TeamHelpParts): HTMLElement {
  const words = texts.teams.ownHelp;
  const summary = element('summary', {});
  const status = element('p', { class: 'waiting', role: 'status' });
  let shown = help;
  let sending = false;
  const level = field({
    id: `${id}-level`,
    label: words.level(team),
    hint: words.levelHint,
    control: choice(
      [
        { value: '', label: words.asLesson(lesson.level) },
        ...texts.plan.helpLevels.map((label, value) => ({ value: String(value), label })),
      ],
      help.level,
    ),
  });
  const task = field({
    id: `${id}-task`,
    label: words.task(team),
    control: element('textarea', { rows: 3, autocomplete: 'off' }, help.extension),
  });
  const tell = () =>
    summary.replaceChildren(
      words.summary({ level: shown.level, hasTask: shown.extension !== '' }),
      element('span', { class: 'spoken' }, words.of(team)),
    );

  async function send(wish: Partial<OwnHelpView>): Promise<boolean> {
    if (sending) return false;
    sending = true;
    const outcome = await waiting(status, words.saving, askDesk('setOwnHelp', key, wish));
    sending = false;
    const about = wish.level === undefined ? task : level;
    about.setProblem(outcome.ok ? '' : outcome.problem.message);
    if (!outcome.ok) {
      say(outcome.problem.message);
      return false;
    }
    shown = outcome.value;
    tell();
    say(wish.level === undefined ? words.savedTask(team, shown.extension !== '') : words.savedLevel(team, shown.level));
    return true;
  }

  level.control.addEventListener('change', async () => {
    if (!(await send({ level: level.control.value }))) level.control.value = shown.level;
  });
  async function keep(): Promise<void> {
    if (await send({ extension: task.control.value })) task.control.value = shown.extension;
    else task.control.focus();
  }
  const form = element(
    'form',
    { novalidate: true },
    task.root,
    lesson.suggestion !== '' &&
      element(
        'button',
        {
          type: 'button',
          class: 'act quiet',
          onclick: () => {
            task.control.value = lesson.suggestion;
            void keep();
          },
        },
        words.suggestion(lesson.suggestion),
      ),
    element('button', { type: 'submit', class: 'act two' }, words.keep(team)),
    status,
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void keep();
  });
  tell();
  return element(
    'details',
    { class: 'people' },
    summary,
    element('p', { class: 'hint' }, words.about(team)),
    level.root,
    form,
  );
}
