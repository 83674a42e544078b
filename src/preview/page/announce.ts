import { byId } from './element.ts';

let clearing: number | undefined;

/** Says something to whoever listens rather than looks; said twice, it is read twice. */
export function announce(text: string, urgency: 'calm' | 'urgent' = 'calm'): void {
  if (text === '') return;
  const region = byId(urgency === 'urgent' ? 'warned' : 'said');
  region.textContent = '';
  // The same text again is no change to a live region unless it was empty in between.
  requestAnimationFrame(() => {
    region.textContent = text;
  });
  window.clearTimeout(clearing);
  clearing = window.setTimeout(() => {
    byId('said').textContent = '';
    byId('warned').textContent = '';
  }, 12_000);
}
