import { element } from './element.ts';

/** A tick with its label beside it and a hint below. */
export function checkbox({
  id,
  label,
  hint,
  checked,
}: {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly checked: boolean;
}): {
  readonly root: HTMLElement;
  readonly control: HTMLInputElement;
} {
  const control = element('input', { type: 'checkbox', id, checked, 'aria-describedby': `${id}-hint` });
  return {
    root: element(
      'div',
      { class: 'field tick' },
      element('div', { class: 'tick-line' }, control, element('label', { for: id }, label)),
      element('p', { id: `${id}-hint`, class: 'hint' }, hint),
    ),
    control,
  };
}
