import { element } from './element.ts';

/** A heading that unfolds, with what is set below it said in one line. */
export function fold(
  title: string,
  ...children: readonly (HTMLElement | false)[]
): { readonly root: HTMLElement; tell(words: string): void } {
  const set = element('span', { class: 'fold-set' });
  return {
    root: element('details', { class: 'fold' }, element('summary', {}, element('h2', {}, title), set), ...children),
    tell(words) {
      if (set.textContent !== words) set.textContent = words;
    },
  };
}

/** Opens every fold that a place lies in. */
export function unfold(place: Element): void {
  for (let around = place.closest('details'); around; around = around.parentElement?.closest('details') ?? null) {
    around.open = true;
  }
}
