import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { type Field, field } from '../page/field.ts';
import { texts } from '../texts.ts';

/** Who dilutes a concentrated reagent. Staff do, until the teacher has read the warning and says that students may. */
export function reagentChoice(value: string, chosen: (value: string) => void): Field {
  const { plan } = texts;
  const select = choice(
    [
      { value: 'staff', label: plan.reagentMakers.staff },
      { value: 'students', label: plan.reagentMakers.students },
    ],
    value,
  );
  const made = field({
    id: 'setting-concentrated-reagents',
    label: plan.reagentMaker,
    control: select,
    hint: plan.reagentMakerHint,
  });
  const warning = element('div', {});
  select.addEventListener('change', () => {
    const wanted = select.value;
    warning.replaceChildren();
    if (wanted !== 'students') return chosen(wanted);
    select.value = 'staff';
    warning.replaceChildren(
      element(
        'div',
        { class: 'notice problem', role: 'alert' },
        element('p', {}, plan.reagentWarning),
        element(
          'button',
          {
            type: 'button',
            class: 'act two',
            onclick: () => {
              select.value = wanted;
              warning.replaceChildren();
              chosen(wanted);
              select.focus();
            },
          },
          plan.reagentConfirm,
        ),
      ),
    );
  });
  made.root.append(warning);
  return made;
}
