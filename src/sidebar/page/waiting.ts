import { texts } from '../texts.ts';

const slowMs = 8000;

/** Says in a status line what is waited for, and after a while that it is still going. Clears it at the end. */
export async function waiting<T>(line: HTMLElement, words: string, answer: Promise<T>): Promise<T> {
  line.textContent = words;
  const timer = setTimeout(() => {
    line.textContent = texts.stillWaiting;
  }, slowMs);
  try {
    return await answer;
  } finally {
    clearTimeout(timer);
    line.textContent = '';
  }
}
