import type { Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { done, type Outcome } from '../outcome.ts';

/** The lesson that this page speaks of from now on. Nothing is written: another page has its own. */
// biome-ignore lint/correctness/useYield: it is done like all that asks the script, and has nothing to ask.
export function* chooseLesson(file: File, id: unknown): Work<Outcome<null>> {
  file.lesson = String(id ?? '');
  return done(null);
}
