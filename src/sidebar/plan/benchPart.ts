import { fold } from '../page/fold.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';
import { type PlanFields, plainOptions } from './planFields.ts';
import { reagentChoice } from './reagentChoice.ts';

/** Time and bench: how many periods, what a dilution is worked from, and who dilutes what is concentrated. */
export function benchPart(
  editor: PlanEditor,
  fields: PlanFields,
): {
  readonly root: HTMLElement;
  /** After another activity was picked: as many periods as it is made for, unless the teacher has picked a number. */
  takePeriods(): void;
} {
  const { plan } = texts;
  // Fewer than the activity is made for were picked earlier.
  let isPicked = Number(editor.draft.settings.periods) < (editor.activity()?.periods ?? 1);
  const periods = fields.setting('periods', plan.periods, plainOptions('1', '2'));
  periods.addEventListener('change', () => {
    isPicked = true;
  });
  const reagents = reagentChoice(editor.draft.settings['concentrated reagents'], (value) =>
    editor.putSetting('concentrated reagents', value),
  );
  editor.fields.set('settings.concentrated reagents', reagents);
  const made = fold(
    plan.bench,
    periods,
    fields.setting(
      'work the dilution from',
      plan.dilutionFrom,
      [
        { value: 'nominal stock', label: plan.dilutionFroms.nominal },
        { value: 'real stock', label: plan.dilutionFroms.real },
      ],
      plan.dilutionFromHint,
    ),
    reagents.root,
  );
  editor.follow(() => {
    const { settings } = editor.draft;
    made.tell(
      plan.benchSet({
        periods: Number(settings.periods),
        staffDilute: settings['concentrated reagents'] !== 'students',
      }),
    );
  });
  return {
    root: made.root,
    takePeriods() {
      const activity = editor.activity();
      if (activity === undefined || isPicked) return;
      const wanted = String(activity.periods);
      editor.putSetting('periods', wanted);
      const control = editor.fields.get('settings.periods')?.control;
      if (control) control.value = wanted;
    },
  };
}
