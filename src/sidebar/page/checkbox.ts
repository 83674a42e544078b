import { element } from './element.ts';

/** A tick with its label beside it and a hint below. */
export function checkbox({
  id,
  label: words,
  hint = '',
  checked,
}: {
  readonly id: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly checked: boolean;
}): {
  readonly root: HTMLElement;
  readonly control: HTMLInputElement;
  readonly label: HTMLElement;
} {
  const control = element('input', { type: 'checkbox', id, checked, 'aria-describedby': `${id}-hint` });
  const label = element('label', { for: id }, words);
  return {
    root: element(
      'div',
      { class: 'field tick' },
      element('div', { class: 'tick-line' }, control, label),
      element('p', { id: `${id}-hint`, class: 'hint' }, hint),
    ),
    control,
    label,
  };
}
