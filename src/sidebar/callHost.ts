import type { Asked } from '../desk/file/ask.ts';
import type { Calls, Outcome, Problem } from '../host/calls.ts';
import { layoutVersion } from '../workbook/layout.ts';
import { texts } from './texts.ts';

interface Runner {
  withSuccessHandler(handler: (answer: unknown) => void): Runner;
  withFailureHandler(handler: (error: unknown) => void): Runner;
}
interface HostWindow {
  readonly google?: { readonly script?: { readonly run?: Runner } };
}

/** The host ends a run after six minutes; a whole sheet may need most of them, everything else is quick. */
const slowCalls: readonly (keyof Calls)[] = ['applySheet', 'putAside', 'emptyFile'];
export const patience = { slow: 380, quick: 90 } as const;

/** Makes one call of the desk. Each says of which version this page is: a newer script asks to open it again. */
export const callHost = ({ call, wish }: Asked): Promise<Outcome<unknown>> =>
  sendToScript(
    call,
    // What is left out of a value must not cross as `undefined`, which the bridge does not list as legal.
    wish === undefined ? [layoutVersion] : [layoutVersion, JSON.parse(JSON.stringify(wish))],
    slowCalls.includes(call) ? patience.slow : patience.quick,
  );

/**
 * Calls a function of the script. Never rejects: no host, no answer in time and an error on the other side all come back
 * as a problem in words for people.
 */
export function sendToScript(name: string, args: readonly unknown[], seconds: number): Promise<Outcome<unknown>> {
  return new Promise((resolve) => {
    const fail = (problem: Problem) => resolve({ ok: false, problem });
    const run = (window as unknown as HostWindow).google?.script?.run;
    if (!run) return fail({ message: texts.calls.noHost });
    const timer = setTimeout(() => fail({ message: texts.calls.timedOut(seconds) }), seconds * 1000);
    const settled =
      <T>(then: (value: T) => void) =>
      (value: T) => {
        clearTimeout(timer);
        then(value);
      };
    const runner = run
      .withSuccessHandler(
        settled((value) => (isOutcome(value) ? resolve(value) : fail({ message: texts.calls.oddAnswer }))),
      )
      .withFailureHandler(settled((error) => fail(problemOfFailure(error))));
    try {
      (runner as unknown as Readonly<Record<string, (...args: readonly unknown[]) => void>>)[name]?.(...args);
    } catch (error) {
      settled(() => fail(problemOfFailure(error)))(undefined);
    }
  });
}

const isOutcome = (value: unknown): value is Outcome<unknown> =>
  typeof value === 'object' && value !== null && typeof (value as { ok?: unknown }).ok === 'boolean';

/** The host's own error words are for programmers; only what people can act on is told apart. */
export function problemOfFailure(error: unknown): Problem {
  const words =
    typeof error === 'object' && error !== null ? String((error as { message?: unknown }).message) : String(error);
  if (/PERMISSION_DENIED|permission|authori[sz]ation/i.test(words)) return { message: texts.calls.severalAccounts };
  if (/too many|simultaneous|rate limit/i.test(words)) return { message: texts.calls.tooBusy };
  if (/maximum execution time|timed? ?out/i.test(words)) return { message: texts.calls.tooLong };
  return { message: texts.calls.failed };
}
