import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../desk/acts.ts';
import type { Work } from '../desk/file/ask.ts';
import type { File } from '../desk/file/look.ts';
import { callHost } from './callHost.ts';
import { texts } from './texts.ts';

/** What this page has read of the file. Views are shown from it at once; whatever the script answers brings it up to date. */
const file: File = { book: undefined };

const secondsUntilStale = 20;

/** Asks the desk for a view or to do something. What was read already is asked of nobody again. */
export const askDesk = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Promise<DeskAnswer<Name>> =>
  run(workFor(file, name, about));

/** The same for a view that is to show the file as it is at this moment. */
export const askAfresh = <Name extends DeskCall>(
  name: Name,
  ...about: DeskArguments<Name>
): Promise<DeskAnswer<Name>> => run(workFor(file, name, about, { afresh: true }));

/** Whether what was read is so old that a view should look again, behind what it shows. */
export const isStale = (): boolean => Date.now() - readAt > secondsUntilStale * 1000;

let readAt = 0;

/** Runs work of the desk: each call goes to the script, and its answer back into the work. Never rejects. */
async function run<T>(work: Work<T>): Promise<T> {
  try {
    let step = work.next();
    while (step.done !== true) {
      const { value: asked } = step;
      const answer = await callHost(asked);
      if (asked.call === 'readBook' && answer.ok) readAt = Date.now();
      step = work.next(answer);
    }
    return step.value;
  } catch (error) {
    // A fault of our own: the page goes on, and whoever looks for it finds it.
    console.error(error);
    return { ok: false, problem: { message: texts.calls.failed } } as T;
  }
}
