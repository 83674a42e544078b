import { checkbox } from '../page/checkbox.ts';
import { copyText } from '../page/copyText.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';

/** The day as one text to copy. It follows the fields until somebody changes it by hand. */
export function dayTextSection(write: (withNames: boolean) => string): { readonly root: HTMLElement; follow(): void } {
  const { record: say } = texts;
  let withNames = false;
  let byHand: string | undefined;
  const text = field({ id: 'record-text', label: say.text, control: element('textarea', { rows: 12 }) });
  const follow = (): void => {
    again.hidden = byHand === undefined;
    if (byHand === undefined) text.control.value = write(withNames);
  };
  const again = element(
    'div',
    { hidden: true },
    element('p', { class: 'hint' }, say.byHand),
    element(
      'button',
      {
        type: 'button',
        class: 'act quiet',
        onclick: () => {
          byHand = undefined;
          follow();
          text.control.focus();
        },
      },
      say.again,
    ),
  );
  text.control.addEventListener('input', () => {
    byHand = text.control.value;
    again.hidden = false;
  });
  const names = checkbox({ id: 'record-names', label: say.withNames, hint: say.withNamesHint, checked: false });
  names.control.addEventListener('change', () => {
    withNames = names.control.checked;
    follow();
  });
  return {
    root: element(
      'section',
      {},
      element('h2', {}, say.textTitle),
      names.root,
      text.root,
      again,
      copyText(text.control as HTMLTextAreaElement, say.copy),
    ),
    follow,
  };
}
