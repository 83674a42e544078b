import { texts } from '../texts.ts';
import { copyOut } from './copyOut.ts';
import { element } from './element.ts';

/** A press that copies the text of a field; where the host refuses, the text is marked for copying by hand. */
export function copyText(control: HTMLTextAreaElement, label: string): HTMLElement {
  const said = element('p', { class: 'said', role: 'status' });
  const copy = async (): Promise<void> => {
    said.textContent = '';
    said.textContent = (await copyOut(control)) === 'nothing' ? texts.copy.selected : texts.copy.copied;
  };
  return element(
    'div',
    {},
    element('button', { type: 'button', class: 'act two', onclick: () => void copy() }, label),
    said,
  );
}
