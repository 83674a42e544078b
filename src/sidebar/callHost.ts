import type { Calls, Outcome, Problem } from '../host/calls.ts';
import { texts } from './texts.ts';

type CallName = keyof Calls;

interface Runner {
  withSuccessHandler(handler: (answer: unknown) => void): Runner;
  withFailureHandler(handler: (error: unknown) => void): Runner;
}
interface HostWindow {
  readonly google?: { readonly script?: { readonly run?: Runner } };
}

/** The host ends a run after six minutes; a build step may need most of them, everything else is quick. */
const slowCalls: readonly CallName[] = [
  'startBuild',
  'continueBuild',
  'startSample',
  'addTeam',
  'addClass',
  'emptyCopy',
];
const secondsToWait = (name: CallName): number => (slowCalls.includes(name) ? 380 : 90);

/**
 * Calls one endpoint of the script. Never rejects: no host, no answer in time and an error on the other side all come
 * back as a problem in words for people.
 */
export function callHost<Name extends CallName>(
  name: Name,
  ...args: Parameters<Calls[Name]>
): Promise<ReturnType<Calls[Name]>> {
  return new Promise((resolve) => {
    const answer = (outcome: unknown) => resolve(outcome as ReturnType<Calls[Name]>);
    const fail = (problem: Problem) => answer({ ok: false, problem });
    const run = (window as unknown as HostWindow).google?.script?.run;
    if (!run) return fail({ message: texts.calls.noHost });
    const seconds = secondsToWait(name);
    const timer = setTimeout(() => fail({ message: texts.calls.timedOut(seconds) }), seconds * 1000);
    const settled =
      <T>(then: (value: T) => void) =>
      (value: T) => {
        clearTimeout(timer);
        then(value);
      };
    const runner = run
      .withSuccessHandler(
        settled((value) => (isOutcome(value) ? answer(value) : fail({ message: texts.calls.oddAnswer }))),
      )
      .withFailureHandler(settled((error) => fail(problemOfFailure(error))));
    try {
      (runner as unknown as Readonly<Record<CallName, (...args: readonly unknown[]) => void>>)[name](...args);
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
