import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { element } from '../page/element.ts';
import { fold } from '../page/fold.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';
import { type PlanFields, plainOptions } from './planFields.ts';

/** The glassware and the balance that teams' numbers are chosen for. */
export function shelfPart(
  editor: PlanEditor,
  { fields, changed }: { readonly fields: PlanFields; readonly changed: () => void },
): HTMLElement {
  const { plan } = texts;
  const { draft } = editor;
  const hint = decimalMarkOf(draft.settings) === 'comma' ? plan.sizesHintComma : plan.sizesHint;
  const made = fold(
    plan.shelf,
    element('p', { class: 'hint' }, plan.shelfHint),
    fields.text('shelf.flasksMl', { label: plan.flasks, value: draft.flasks, hint }, (flasks) => {
      editor.put({ flasks });
      changed();
    }),
    fields.text('shelf.pipettesMl', { label: plan.pipettes, value: draft.pipettes, hint }, (pipettes) =>
      editor.put({ pipettes }),
    ),
    fields.number(
      'shelf.balanceReadabilityG',
      { label: plan.balanceReads, unit: 'g', value: draft.balanceReads },
      (balanceReads) => editor.put({ balanceReads }),
    ),
    fields.number('shelf.balanceMaxG', { label: plan.balanceMax, unit: 'g', value: draft.balanceMax }, (balanceMax) =>
      editor.put({ balanceMax }),
    ),
    fields.setting('glassware class', plan.glasswareClass, [
      { value: 'A', label: plan.glasswareClasses.A },
      { value: 'B', label: plan.glasswareClasses.B },
    ]),
    fields.setting('glassware standard', plan.glasswareStandard, plainOptions('ISO', 'ASTM')),
  );
  editor.follow(() => {
    const { flasks, pipettes, balanceReads, settings } = editor.draft;
    made.tell(plan.shelfSet({ flasks, pipettes, balance: balanceReads, glassware: settings['glassware class'] }));
  });
  return made.root;
}
