import { byId, element } from './element.ts';
import { messageParts } from './messageParts.ts';

/** A note or an error's message beside its cell. It can be read with the pointer on it, and Escape sends it away. */
export function createCellTip(): {
  show(cell: HTMLElement | undefined, text: string | undefined, wrong: boolean): void;
  hide(): void;
  readonly shown: boolean;
} {
  // The cell itself carries the same words as its description, so a screen reader needs no second copy.
  const tip = element('div', { class: 'cell-tip', 'aria-hidden': 'true', hidden: true });
  byId('desk').append(tip);
  return {
    get shown() {
      return !tip.hidden;
    },
    show(cell, text, wrong) {
      tip.hidden = !cell || !text;
      if (!cell || !text) return;
      tip.replaceChildren(...messageParts(text));
      tip.classList.toggle('wrong', wrong);
      const at = cell.getBoundingClientRect();
      const sheet = byId('sheet').getBoundingClientRect();
      if (at.bottom < sheet.top || at.top > sheet.bottom || at.right < sheet.left || at.left > sheet.right) {
        tip.hidden = true;
        return;
      }
      const { width, height } = tip.getBoundingClientRect();
      const beside = at.right + 6 + width <= window.innerWidth - 6;
      const left = beside ? at.right + 6 : Math.max(6, Math.min(at.left, window.innerWidth - width - 6));
      const below = beside ? at.top : at.bottom + 4;
      tip.style.left = `${left}px`;
      tip.style.top = `${below + height > window.innerHeight - 6 ? Math.max(6, at.top - height - 4) : below}px`;
    },
    hide() {
      tip.hidden = true;
    },
  };
}
