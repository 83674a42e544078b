import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { focusHeading } from '../page/heading.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { numbersPreview } from './numbersPreview.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanProblems } from './planProblems.ts';

/** The teams' numbers as they would be built: worked out when asked for, and said to be old after a change. */
export function previewPart(
  editor: PlanEditor,
  { problems, status }: { readonly problems: PlanProblems; readonly status: HTMLElement },
): { readonly root: HTMLElement; show(): Promise<void> } {
  const { plan } = texts;
  const root = element('section', { class: 'preview', hidden: true });
  const stale = element('p', { class: 'hint', role: 'status' });
  let previewed: string | undefined;
  let isAsking = false;
  const tellStale = () => {
    stale.textContent = previewed !== undefined && previewed !== JSON.stringify(editor.draft) ? plan.stale : '';
  };
  editor.follow(tellStale);

  async function show(): Promise<void> {
    const setup = problems.ready();
    const activity = editor.activity();
    if (!setup || !activity || isAsking) return;
    isAsking = true;
    const asked = JSON.stringify(editor.draft);
    const outcome = await waiting(status, plan.previewing, askDesk('draftTeams', setup));
    isAsking = false;
    if (!outcome.ok) return problems.show(outcome.problem, () => void show());
    previewed = asked;
    tellStale();
    root.hidden = false;
    root.replaceChildren(
      element('h2', { tabindex: -1 }, plan.previewTitle),
      element('p', { class: 'hint' }, plan.previewAbout),
      stale,
      ...numbersPreview(outcome.value, { activity, setup }),
      ...(setup.ownNumbers
        ? [element('button', { type: 'button', class: 'act quiet', onclick: otherNumbers }, plan.otherNumbers)]
        : []),
    );
    focusHeading(root);
  }
  const otherNumbers = () => {
    const next = String((Number(editor.draft.settings.seed) % 999_999_999) + 1);
    editor.putSetting('seed', next);
    const control = editor.fields.get('settings.seed')?.control;
    if (control) control.value = next;
    void show();
  };
  return { root, show };
}
