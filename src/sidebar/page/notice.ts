import { element } from './element.ts';

/** A problem with the one thing to do about it. Announced when it comes. */
export function problemNotice(
  message: string,
  action?: { readonly label: string; readonly run: () => void },
): HTMLElement {
  return element(
    'div',
    { class: 'notice problem', role: 'alert' },
    element('p', {}, message),
    action && element('button', { type: 'button', class: 'act two', onclick: action.run }, action.label),
  );
}
