import { element } from './element.ts';

/** A view's title over its scale of marks; focus lands here when the view comes. */
export const viewHeading = (title: string): HTMLElement =>
  element(
    'header',
    { class: 'view-heading' },
    element('h1', { tabindex: -1 }, title),
    element('div', { class: 'marks', 'aria-hidden': 'true' }),
  );

/** Moves focus to a heading, so that a screen reader reads on from there. */
export function focusHeading(within: HTMLElement): void {
  const heading = within.querySelector<HTMLElement>('h1, h2');
  if (!heading) return;
  heading.setAttribute('tabindex', '-1');
  heading.focus();
}

/** Draws a view anew. Where its heading was in focus, or nothing is afterwards, the new heading is. */
export function drawUnderHeading(within: HTMLElement, draw: () => void): void {
  const wasHere = document.activeElement === document.body || document.activeElement?.matches('h1, h2') === true;
  draw();
  if (wasHere && within.isConnected && document.activeElement === document.body) focusHeading(within);
}
