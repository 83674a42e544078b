import { type DeskAnswer, type DeskArguments, type DeskCall, kindsFor, type ViewCall, workFor } from '../desk/acts.ts';
import type { Asked, Work } from '../desk/file/ask.ts';
import type { File } from '../desk/file/look.ts';
import type { SheetKind } from '../host/calls.ts';
import { callHost } from './callHost.ts';
import { openedWith } from './openedWith.ts';
import { texts } from './texts.ts';

/** What this page has read of the file. Views are shown from it at once; whatever the script answers brings it up to date. */
const file: File = { book: undefined, lesson: openedWith().lesson };

const secondsUntilStale = 0.5;

/** Asks the desk for a view or to do something. What was read already is asked of nobody again. */
export const askDesk = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Promise<DeskAnswer<Name>> =>
  run(workFor(file, name, about));

/** The same for a view that is to show the file as it is at this moment. */
export const askAfresh = <Name extends DeskCall>(
  name: Name,
  ...about: DeskArguments<Name>
): Promise<DeskAnswer<Name>> => run(workFor(file, name, about, { afresh: true }));

/** Whether what a view is made from was read so long ago that it should look again, behind what it shows. */
export const isStale = (name: ViewCall): boolean =>
  kindsFor(name).some((kind) => Date.now() - (readAt.get(kind) ?? 0) > secondsUntilStale * 1000);

const readAt = new Map<SheetKind, number>();

/** Notes what an answer has read: on its own, or after what it wrote. */
function noteRead(asked: Asked): void {
  const wish =
    asked.call === 'readBook'
      ? asked.wish
      : 'wish' in asked && asked.wish !== undefined && 'read' in asked.wish
        ? asked.wish.read
        : undefined;
  for (const kind of wish?.kinds ?? []) readAt.set(kind, Date.now());
}

/** Runs work of the desk: each call goes to the script, and its answer back into the work. Never rejects. */
async function run<T>(work: Work<T>): Promise<T> {
  try {
    let step = work.next();
    while (step.done !== true) {
      const { value: asked } = step;
      const answer = await callHost(asked);
      if (answer.ok) noteRead(asked);
      step = work.next(answer);
    }
    return step.value;
  } catch (error) {
    // A fault of our own: the page goes on, and whoever looks for it finds it.
    console.error(error);
    return { ok: false, problem: { message: texts.calls.failed } } as T;
  }
}
