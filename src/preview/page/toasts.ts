import { announce } from './announce.ts';
import { byId, element } from './element.ts';
import { texts } from './texts.ts';

export interface Toasts {
  /** A word that goes by itself; with `back` it offers to take back what it speaks of. */
  show(title: string, message: string, back?: boolean): void;
  /** A word about what was refused, told at once to who listens. */
  warn(said: string): void;
  complain(error: unknown): void;
}

const staysMs = 12_000;

/** Words at the edge of the window, one at a time. */
export function createToasts(undo: () => void): Toasts {
  function show(title: string, message: string, back = false): void {
    const again = element('button', { type: 'button', class: 'close' }, texts.undo);
    const close = element('button', { type: 'button', class: 'close' }, texts.dismiss);
    const box = element(
      'div',
      { class: 'toast' },
      element('p', {}, element('b', {}, title), title ? ' ' : '', message),
      ...(back ? [again] : []),
      close,
    );
    again.addEventListener('click', () => {
      box.remove();
      undo();
    });
    close.addEventListener('click', () => box.remove());
    document.querySelector('.toast')?.remove();
    byId('desk').append(box);
    window.setTimeout(() => box.remove(), staysMs);
    announce(`${title} ${message}`.trim());
  }
  function warn(said: string): void {
    show('', said);
    announce(said, 'urgent');
  }
  return { show, warn, complain: (error) => warn(error instanceof Error ? error.message : String(error)) };
}
