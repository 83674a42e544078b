import { texts } from '../texts.ts';
import { element } from './element.ts';

/** A press that copies the text of a field; where the host refuses, the text is marked for copying by hand. */
export function copyText(control: HTMLTextAreaElement, label: string): HTMLElement {
  const said = element('p', { class: 'said', role: 'status' });
  const copy = async (): Promise<void> => {
    said.textContent = '';
    try {
      await navigator.clipboard.writeText(control.value);
      said.textContent = texts.copy.copied;
    } catch {
      control.focus();
      control.select();
      said.textContent = texts.copy.selected;
    }
  };
  return element(
    'div',
    {},
    element('button', { type: 'button', class: 'act two', onclick: () => void copy() }, label),
    said,
  );
}
