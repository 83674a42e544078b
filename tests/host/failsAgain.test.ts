import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { type Action, actions, clockOf, goOn, isUnderWay, savedAs, standsAlready } from './actions.ts';
import { answerOf, call, open } from './bench.ts';
import { checksDirect } from './checksDirect.ts';
import { asksNothing, callsOf, failWhereAsked } from './hostFailure.ts';
import { alikeBehind, firstDifference, makesAnother } from './sameFile.ts';

/** The host fails at one call in so many; a build, which asks it for hundreds, is gone through in longer steps at first. */
const everyOf = ({ isLong }: Action): number => (isLong ? cases({ short: 12, deep: 3 }) : 3);

/** An action as it ends where nothing fails. */
interface Undisturbed {
  readonly expected: string;
  readonly sheets: string;
  /** How many of its calls reach the host. */
  readonly asked: number;
}
function undisturbed(action: Action): Undisturbed {
  const host = open({ saved: savedAs(action.from ?? 'lesson'), clock: clockOf(action) });
  const calls = callsOf(host);
  answerOf(goOn(host, action.press(host)));
  return {
    expected: alikeBehind(action.name, host),
    sheets: sheetsOf(host),
    asked: calls.filter((name) => !asksNothing(name)).length,
  };
}
const sheetsOf = (host: StandIn): string => host.book.sheets.map(({ name }) => name).join('\n');

interface Met {
  failed: number;
  readonly odd: string[];
}

/** A last answer that was not heard: the next press says that all is done. */
const saysDone = (outcome: Outcome<unknown>): boolean =>
  !outcome.ok && (standsAlready.test(outcome.problem.message) || /no unfinished build/.test(outcome.problem.message));

/**
 * Goes through an action step by step. In each the host fails at one call, is asked again and fails some calls later, once
 * or from there on, until a press comes through: what one failure leaves, the next one meets.
 */
function throughFailures(action: Action, { expected, sheets, asked }: Undisturbed, first: number, met: Met): void {
  const { name, press } = action;
  const clock = clockOf(action);
  let host = open({ saved: savedAs(action.from ?? 'lesson'), clock });
  const compare = (where: string) => {
    // A stop may leave another sheet in view than the whole way does, and what is in view is not hidden.
    const inView = host.book.sheets.find(({ id }) => id === host.view('teacher').activeSheet)?.name ?? '';
    const isHidden = new RegExp(`"hidden":(true|false),(?=.*"name":"${inView}")`, 'g');
    const [found, wanted] = [alikeBehind(name, host), expected].map((text) => text.replace(isHidden, ''));
    if (found !== wanted) met.odd.push(`${where}: ${firstDifference(found ?? '', wanted ?? '')}`);
  };
  const every = everyOf(action);
  let step: (on: StandIn) => Outcome<unknown> = press;
  let last: Outcome<unknown>;
  do {
    const before = host.save();
    for (let place = first; ; place += every) {
      // Nothing ends a test that never waits: a press that gathers work with each failure would go on for ever.
      if (place > 2 * asked)
        throw new Error(`Expected ${name} to come through, received ${met.failed} failures in a row.`);
      const failure = failWhereAsked(host, place, ((place - first) / every) % 2 === 1);
      last = step(host);
      if (!failure.stop()) break;
      met.failed += 1;
      if (!last.ok && !wellSaid.test(last.problem.message)) met.odd.push(`call ${place}: ${last.problem.message}`);
      const isThere =
        !last.ok && makesAnother(name) && sheetsOf(host) === sheets && alikeBehind(name, host) === expected;
      if (!last.ok && !isThere) continue;
      // Said to be done, or done and not heard of: that is true, and the next place is tried from where this step began.
      if (last.ok) answerOf(goOn(host, last));
      compare(`call ${place}, said to be done`);
      host = open({ saved: before, clock });
    }
    if (!last.ok && !saysDone(last)) met.odd.push(`after ${met.failed} failures: ${last.problem.message}`);
    step = (on) => call(on, 'continueBuild');
  } while (isUnderWay(last));
  compare(`after ${met.failed} failures`);
  met.odd.push(...checksDirect(host).odd);
}

describe('every action, with the host failing again and again, each time a little later', () => {
  // But for emptying a copy: stopped again and again it begins a Plan with each press, until one comes through.
  it.each(actions.map((action) => ({ from: 'lesson' as const, ...action })))(
    '$name, from $from, says so each time, and ends with the file that it makes undisturbed',
    (action) => {
      const whole = undisturbed(action);
      const met: Met = { failed: 0, odd: [] };
      const every = everyOf(action);
      // Where a press goes on from what the last one left, it is soon done: then the calls between are tried as well.
      for (let round = 0; round < every && met.failed < Math.floor(whole.asked / every); round += 1)
        throughFailures(action, whole, 1 + ((seed + action.name.length + round) % every), met);
      console.log(`${action.name}: ${met.failed} failures, ${whole.asked} calls reach the host, ${met.odd.length} odd`);
      expect(met.odd).toEqual([]);
      expect(met.failed).toBeGreaterThanOrEqual(Math.floor(whole.asked / every));
    },
    1_800_000,
  );
});
