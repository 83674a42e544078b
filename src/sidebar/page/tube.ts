import { element } from './element.ts';

/** A graduated tube, one mark for each step. Decoration: the words beside it say the same. */
export function tube({ done, steps }: { readonly done: number; readonly steps: number }): HTMLElement {
  const drawn = element('span', { class: 'tube', 'aria-hidden': 'true' }, element('span', { class: 'tube-fill' }));
  fillTube(drawn, { done, steps });
  return drawn;
}

export function fillTube(drawn: HTMLElement, { done, steps }: { readonly done: number; readonly steps: number }): void {
  const share = steps > 0 ? Math.min(Math.max(done / steps, 0), 1) : 0;
  drawn.style.setProperty('--fill', `${share * 100}%`);
  drawn.style.setProperty('--mark', `${100 / Math.min(Math.max(steps, 1), 24)}%`);
}
