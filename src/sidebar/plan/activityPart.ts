import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';
import { givensAfter } from './planDraft.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanFields } from './planFields.ts';

/** What the lesson is about: one activity of the list, and its aim below. `picked` draws what it asks for. */
export function activityPart(
  editor: PlanEditor,
  { fields, picked }: { readonly fields: PlanFields; readonly picked: () => void },
): HTMLElement {
  const { lesson } = editor;
  const aim = element('p', { class: 'hint' });
  editor.follow(() => {
    aim.textContent = editor.activity()?.aim ?? '';
  });
  const made = field({
    id: 'activity',
    label: texts.plan.activity,
    control: choice(
      lesson.activities.map(({ id, title }) => ({ value: id, label: title })),
      editor.draft.activity,
    ),
  });
  const root = fields.picker('activity', made, (id) => {
    const activity = lesson.activities.find((one) => one.id === id);
    const { givens, otherFormula } = editor.draft;
    const after = activity && givensAfter(activity, { givens, otherFormula, solutes: lesson.solutes });
    editor.put({ activity: id, ...(after ? { givens: after } : {}) });
    picked();
  });
  return element('div', {}, root, aim);
}
