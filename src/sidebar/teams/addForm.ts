import { element } from '../page/element.ts';
import type { Field } from '../page/field.ts';
import { fold } from '../page/fold.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';

interface AddFormParts {
  readonly title: string;
  readonly about: string;
  readonly fields: readonly Field[];
  readonly button: string;
  /** False where a field needs another look. */
  readonly send: () => Promise<boolean>;
}

/** A folded form that adds something to the lesson; it is never sent twice at once. */
export function addForm({ title, about, fields, button, send }: AddFormParts): HTMLElement {
  const status = element('p', { class: 'waiting', role: 'status' });
  const form = element(
    'form',
    { novalidate: true },
    element('p', { class: 'hint' }, about),
    ...fields.map(({ root }) => root),
    element('button', { type: 'submit', class: 'act two' }, button),
    status,
  );
  let isSending = false;
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    if (isSending) return;
    isSending = true;
    const sent = await waiting(status, texts.build.first, send());
    isSending = false;
    if (!sent && form.isConnected) fields.find(({ control }) => control.hasAttribute('aria-invalid'))?.control.focus();
  });
  return fold(title, form).root;
}
