import type { ShareView } from '../../desk/views.ts';
import { askAfresh, askDesk } from '../askDesk.ts';
import { checkbox } from '../page/checkbox.ts';
import { copyText } from '../page/copyText.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import type { Builder } from '../plan/builder.ts';
import { buildHere } from '../plan/buildHere.ts';
import { texts } from '../texts.ts';

/** Leads through copying, emptying and copying again, which the script cannot do by itself. */
export function shareView(builder: Builder): View {
  const { share: say } = texts;
  const root = element('div', { class: 'view share' });
  const empty = element('div', {});
  let emptied: string = say.emptied;
  const give = step(say.giveTitle, say.giveText);
  const build = buildHere({
    root,
    title: say.title,
    builder,
    back: say.back,
    next: (leave) => [
      {
        label: say.toGive,
        run() {
          leave();
          void open(give);
        },
      },
    ],
    done: () => emptied,
    redraw: () => void open(),
  });

  async function open(at: HTMLElement = root): Promise<void> {
    const told = field({
      id: 'share-tell',
      label: say.tell,
      control: element('textarea', { rows: 8 }, say.tellText.join('\n\n')),
    });
    const status = element('p', { class: 'waiting', role: 'status' });
    empty.replaceChildren(status);
    root.replaceChildren(
      viewHeading(say.title),
      element('p', { class: 'hint' }, say.about),
      step(say.copyTitle, say.copyText),
      step(say.openTitle, say.openText),
      step(say.emptyTitle, [], empty),
      give,
      step(say.tellTitle, [], told.root, copyText(told.control as HTMLTextAreaElement, say.copy)),
    );
    focusHeading(at);
    const outcome = await waiting(status, say.reading, askAfresh('readShare'));
    empty.replaceChildren(
      ...(outcome.ok
        ? emptyForm(outcome.value)
        : [problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void open() })]),
    );
  }

  function emptyForm({ fileName, entriesToday, otherSheets }: ShareView): readonly HTMLElement[] {
    const name = field({
      id: 'share-name',
      label: say.typeName,
      control: element('input', { type: 'text', autocomplete: 'off' }),
    });
    const hints = checkbox({ id: 'share-hints', label: say.keepHints, hint: say.keepHintsHint, checked: false });
    const others = checkbox({
      id: 'share-others',
      label: say.removeOthers,
      hint: say.removeOthersHint,
      checked: false,
    });
    const teams = checkbox({ id: 'share-teams', label: say.keepTeams, hint: say.keepTeamsHint, checked: false });
    const isCopy = checkbox({ id: 'share-copy', label: say.isCopy, hint: say.isCopyHint, checked: false });
    const trouble = element('div', {});
    const status = element('p', { class: 'waiting', role: 'status' });
    const send = async (): Promise<void> => {
      trouble.replaceChildren();
      name.setProblem('');
      if (!isCopy.control.checked) {
        trouble.replaceChildren(problemNotice(say.notTicked));
        isCopy.control.focus();
        return;
      }
      const wish = {
        fileName: name.control.value,
        keepHints: hints.control.checked,
        removeOthers: others.control.checked,
        ...(teams.control.checked ? { keepTeams: true } : {}),
      };
      const outcome = await waiting(status, texts.build.first, askDesk('emptyCopy', wish));
      if (outcome.ok) {
        const others = otherSheets.filter((sheet) => outcome.value.left.includes(sheet));
        emptied = others.length === 0 ? say.emptied : `${say.emptied} ${say.left(others)}`;
      }
      const problem = build.start(outcome);
      if (problem === undefined) return;
      if (problem.field === 'fileName') {
        name.setProblem(problem.message);
        name.control.focus();
      } else trouble.replaceChildren(problemNotice(problem.message));
    };
    return [
      element('p', {}, say.thisFile, ' ', element('b', {}, fileName)),
      element('p', { class: 'hint' }, say.goes),
      element('p', { class: 'hint' }, say.stays),
      ...(otherSheets.length > 0 ? [element('p', {}, say.otherSheets(otherSheets)), others.root] : []),
      hints.root,
      teams.root,
      ...(entriesToday > 0 ? [element('p', { class: 'notice problem' }, say.entries(entriesToday))] : []),
      name.root,
      isCopy.root,
      trouble,
      status,
      element('button', { type: 'button', class: 'act', onclick: () => void send() }, say.empty),
    ];
  }

  return {
    root,
    enter() {
      if (build.showing()) focusHeading(root);
      else void open();
    },
    leave() {},
  };
}

const step = (title: string, words: readonly string[], ...more: readonly HTMLElement[]): HTMLElement =>
  element('section', {}, element('h2', {}, title), ...words.map((line) => element('p', {}, line)), ...more);
