import type { DeskCall } from '../../src/desk/acts.ts';

/** One answer: a value handed over, at once or once the test lets it go, an error on the other side, or no answer at all. */
export type FakeAnswer =
  | { readonly value: unknown; readonly held?: true }
  | { readonly fails: string }
  | { readonly silent: true };
export type FakeAnswers = Partial<Record<DeskCall, readonly FakeAnswer[]>>;

interface FakeWindow {
  fake: {
    /** Answers by name, in turn; the last one repeats. */
    answers: Record<string, FakeAnswer[]>;
    calls: { name: string; args: unknown[] }[];
    /** Milliseconds before an answer. */
    delay: number;
    /** Gives the answers that are held. */
    letGo: (() => void)[];
    /** Whether views look again behind what they show. */
    stale: boolean;
  };
  google: unknown;
}

/**
 * Runs in the page before its own script. Hands over copies, as the host does, and refuses what the host refuses, so
 * that a page which sends a date or a function fails here too.
 */
export function installFakeHost({
  answers,
  delay,
  stale,
}: {
  readonly answers: FakeAnswers;
  readonly delay: number;
  readonly stale: boolean;
}): void {
  const frame = window as unknown as FakeWindow;
  frame.fake = { answers: JSON.parse(JSON.stringify(answers)), calls: [], delay, letGo: [], stale };
  const legal = (value: unknown): boolean => {
    if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return true;
    if (Array.isArray(value)) return value.every(legal);
    return (
      typeof value === 'object' &&
      Object.getPrototypeOf(value) === Object.prototype &&
      Object.values(value).every(legal)
    );
  };
  type Handler = ((value: unknown) => void) | undefined;
  const runner = (success: Handler, failure: Handler): unknown =>
    new Proxy(
      {},
      {
        get(_target, name: string) {
          if (name === 'withSuccessHandler') return (handler: Handler) => runner(handler, failure);
          if (name === 'withFailureHandler') return (handler: Handler) => runner(success, handler);
          return (...args: unknown[]) => {
            if (!args.every(legal)) throw new Error(`${name} was given a value that may not cross to the host`);
            frame.fake.calls.push({ name, args: JSON.parse(JSON.stringify(args)) });
            const queue = frame.fake.answers[name] ?? [];
            const answer = queue.length > 1 ? queue.shift() : queue[0];
            if (!answer) throw new Error(`The test gave no answer for ${name}`);
            const give = (): void => {
              if ('value' in answer) success?.(JSON.parse(JSON.stringify(answer.value)));
              else if ('fails' in answer) failure?.(new Error(answer.fails));
            };
            if ('held' in answer) frame.fake.letGo.push(give);
            else setTimeout(give, frame.fake.delay);
          };
        },
      },
    );
  frame.google = { script: { run: runner(undefined, undefined), host: { close() {}, editor: { focus() {} } } } };
}
