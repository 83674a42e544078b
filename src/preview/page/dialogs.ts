import { byId, element } from './element.ts';

let lastId = 0;
/** A dialog over the page with a title; the element closes itself by Escape and gives the focus back. */
export function openDialog(options: {
  readonly title: string;
  readonly className?: string;
  readonly content: readonly Node[];
  readonly onClose?: () => void;
}): HTMLDialogElement {
  lastId += 1;
  const id = `dialog-${lastId}`;
  const dialog = element(
    'dialog',
    { class: `dialog ${options.className ?? ''}`, 'aria-labelledby': id },
    element('h2', { id }, options.title),
    ...options.content,
  );
  byId('desk').append(dialog);
  const before = document.activeElement as HTMLElement | null;
  dialog.addEventListener('close', () => {
    dialog.remove();
    if (before?.isConnected) before.focus();
    options.onClose?.();
  });
  dialog.showModal();
  return dialog;
}

/** Asks one question with two answers. */
export function askFirst(question: {
  readonly title: string;
  readonly body: string;
  readonly yes: string;
  readonly no: string;
}): Promise<boolean> {
  return new Promise((settle) => {
    let answer = false;
    const yes = element('button', { type: 'button', class: 'act' }, question.yes);
    const no = element('button', { type: 'button', class: 'act quiet' }, question.no);
    const dialog = openDialog({
      title: question.title,
      className: 'question',
      content: [element('p', {}, question.body), element('div', { class: 'answers' }, no, yes)],
      onClose: () => settle(answer),
    });
    yes.addEventListener('click', () => {
      answer = true;
      dialog.close();
    });
    no.addEventListener('click', () => dialog.close());
    no.focus();
  });
}
