import type { Asked, Work } from './file/ask.ts';

/** Runs work straight on, where the script answers at once: in tests, and where the preview builds its sample. */
export function runWork<T>(work: Work<T>, answer: (asked: Asked) => unknown): T {
  let step = work.next();
  while (step.done !== true) step = work.next(answer(step.value));
  return step.value;
}
