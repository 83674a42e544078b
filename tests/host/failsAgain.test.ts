import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import {
  type Action,
  actions,
  clockOf,
  emptying,
  goOn,
  isUnderWay,
  savedAs,
  standsAlready,
  undisturbed,
} from './actions.ts';
import { answerOf, call, open } from './bench.ts';
import { checksDirect } from './checksDirect.ts';
import { asksNothing, failWhereAsked } from './hostFailure.ts';
import { alikeBehind, differenceBehind, makesAnother } from './sameFile.ts';

/** Where an action ends when nothing fails. */
interface End {
  readonly expected: string;
  readonly sheets: string;
  /** How many of its calls reach the host. */
  readonly asked: number;
}
function endOf(action: Action): End {
  const { host, calls } = undisturbed(action);
  return {
    expected: alikeBehind(action.name, host),
    sheets: sheetsOf(host),
    asked: calls.filter((name) => !asksNothing(name)).length,
  };
}
const sheetsOf = (host: StandIn): string => host.book.sheets.map(({ name }) => name).join('\n');

/** The first call of each step at which the host fails, and after how many more it fails again. */
interface Places {
  readonly first: number;
  readonly every: number;
}
interface Met {
  readonly failed: number;
  readonly odd: string[];
}

/** A last answer that was not heard: the next press says that all is done. */
const saysDone = (outcome: Outcome<unknown>): boolean => !outcome.ok && standsAlready.test(outcome.problem.message);

/**
 * Goes through an action step by step. In each the host fails at one call, is asked again and fails some calls later, once
 * or from there on, until a press comes through: what one failure leaves, the next one meets.
 */
function throughFailures(action: Action, { expected, sheets, asked }: End, { first, every }: Places): Met {
  const { name, press } = action;
  const clock = clockOf(action);
  const odd: string[] = [];
  let failed = 0;
  let host = open({ saved: savedAs(action.from ?? 'lesson'), clock });
  const compare = (where: string) => {
    const difference = differenceBehind(name, host, expected);
    if (difference !== undefined) odd.push(`${where}: ${difference}`);
  };
  /** Files from which the end is known: a page that was just opened goes by the file alone. */
  const known = new Set<string>();
  const compareEnd = (where: string, left: Outcome<unknown>) => {
    const file = host.save();
    if (known.has(file)) return;
    known.add(file);
    if (left.ok) answerOf(goOn(host, left));
    compare(where);
  };
  // A Plan and a Help beside those in use, at most: what one press leaves half made, the next does not make once more.
  const mostSheets = 2 + Math.max(host.book.sheets.length, sheets.split('\n').length);
  let most = 0;
  let step: (on: StandIn) => Outcome<unknown> = press;
  let last: Outcome<unknown>;
  do {
    const before = host.save();
    for (let place = first; ; place += every) {
      // Nothing ends a test that never waits: a press that gathers work with each failure would go on for ever.
      if (place > 2 * asked) throw new Error(`Expected ${name} to come through, received ${failed} failures in a row.`);
      const failure = failWhereAsked(host, place, ((place - first) / every) % 2 === 1);
      last = step(host);
      failure.stop();
      most = Math.max(most, host.book.sheets.length);
      if (failure.calls() < place) break;
      failed += 1;
      if (!last.ok && !wellSaid.test(last.problem.message)) odd.push(`call ${place}: ${last.problem.message}`);
      const isThere =
        !last.ok && makesAnother(name) && sheetsOf(host) === sheets && alikeBehind(name, host) === expected;
      if (!last.ok && !isThere) continue;
      // Said to be done, or done and not heard of: that is true, and the next place is tried from where this step began.
      compareEnd(`call ${place}, said to be done`, last);
      host = open({ saved: before, clock });
    }
    if (!last.ok && !saysDone(last)) odd.push(`after ${failed} failures: ${last.problem.message}`);
    step = (on) => call(on, 'continueBuild');
  } while (isUnderWay(last));
  compare(`after ${failed} failures`);
  if (most > mostSheets) odd.push(`${most} sheets after a failure, expected at most ${mostSheets}`);
  odd.push(...checksDirect(host).odd);
  return { failed, odd };
}

describe('every action, with the host failing again and again, each time a little later', () => {
  it.each([...actions, emptying].map((action) => ({ from: 'lesson' as const, ...action })))(
    '$name, from $from, says so each time, and ends with the file that it makes undisturbed',
    (action) => {
      const end = endOf(action);
      const third = Math.floor(end.asked / 3);
      const wanted = cases({ short: third, deep: end.asked });
      const every = Math.max(action.apart ?? 3, Math.floor(end.asked / wanted));
      const odd: string[] = [];
      let failed = 0;
      // Where a press goes on from what the last one left, it is soon done: then the calls between are tried as well.
      for (let round = 0; round < every && failed < wanted; round += 1) {
        const met = throughFailures(action, end, { first: 1 + ((seed + action.name.length + round) % every), every });
        failed += met.failed;
        odd.push(...met.odd);
      }
      console.log(`${action.name}: ${failed} failures, ${end.asked} calls reach the host, ${odd.length} odd`);
      expect(odd).toEqual([]);
      expect(failed).toBeGreaterThanOrEqual(Math.min(wanted, third));
    },
    1_800_000,
  );
});
