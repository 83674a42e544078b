import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { type Action, actions, clockOf, emptying, goOn, isUnderWay, savedAs, standsAlready } from './actions.ts';
import { answerOf, call, open } from './bench.ts';
import { checksDirect } from './checksDirect.ts';
import { asksNothing, callsOf, failAtCall, mayChange } from './hostFailure.ts';
import { alikeBehind, firstDifference, makesAnother } from './sameFile.ts';

/** A script call's worth of an action, from the file as it stood before: a failure in it needs nothing of what came before. */
interface Part {
  readonly saved: string;
  /** By their names. */
  readonly calls: readonly string[];
}
/** Lets an action run through and keeps the file as it stands between its steps. */
function partsOf(host: StandIn, saved: string, { press }: Action): readonly Part[] {
  const calls = callsOf(host);
  const parts: Part[] = [];
  let before = { saved, calls: 0 };
  let state = press(host);
  const note = () => {
    parts.push({ saved: before.saved, calls: calls.slice(before.calls) });
    before = { saved: host.save(), calls: calls.length };
  };
  note();
  for (let steps = 0; isUnderWay(state) && steps < 40; steps += 1) {
    state = call(host, 'continueBuild');
    note();
  }
  answerOf(state);
  return parts;
}

/**
 * Where the tab of a hidden sheet is shown to be moved, where a row is made as high as the words that come into it, and
 * where sums are noted team by team before the words of checks take the place of their formulas.
 */
const isDelicate = (calls: readonly string[], index: number): boolean =>
  calls[index] === 'Spreadsheet.moveActiveSheet' ||
  calls[index] === 'Sheet.setRowHeightsForced' ||
  (calls[index] === 'Range.setValues' &&
    calls[index - 2] === 'Range.setValues' &&
    calls[index - 4] === 'DeveloperMetadata.setValue');

/** A file is megabytes long, and a long run keeps thousands apart. */
const digest = (text: string): string => createHash('sha1').update(text).digest('base64');

/** So many calls of each are tried, spread over all of them; in the short form none but those that are delicate. */
const count = cases({ short: 0, deep: Number.POSITIVE_INFINITY });
const tried = [...actions, emptying].filter(({ atDelicate }) => count > 0 || atDelicate);

describe('every action, with the host failing at a call of its', () => {
  it.each(tried.map((action) => ({ from: 'lesson' as const, ...action })))(
    '$name, from $from, says so and is whole after the next press, or is whole at once, and its checks say what the judge says',
    (action) => {
      const { name, from, press, atDelicate = false } = action;
      const clock = clockOf(action);
      const start = savedAs(from);
      const whole = open({ saved: start, clock });
      const parts = partsOf(whole, start, action);
      const allCalls = parts.flatMap(({ calls }) => calls);
      const all = allCalls.length;
      const compared = (host: StandIn): string => alikeBehind(name, host);
      const expected = compared(whole);
      /** Files from which the way to the end is known: a page that was just opened goes by the file alone. */
      const known = new Set(parts.slice(1).map(({ saved }) => digest(saved)));
      const end = whole.save();
      const direct = checksDirect(whole);
      expect(direct.blocks).toBeGreaterThan(0);
      const odd: string[] = [...direct.odd];
      const every = Math.max(1, Math.floor(all / Math.max(1, count)));
      let failed = 0;
      let asking = 0;
      /** Whether the file may be another than at the last place. */
      let isOther = false;
      let stopped = 0;
      let pressed = 0;
      /** A host that still holds the file of a part, and need not be opened again. */
      let spare: { readonly host: StandIn; readonly saved: string } | undefined;
      const firstPlace = (seed + name.length * 7919) % every;
      const places = allCalls.flatMap((_, index) =>
        (count > 0 && index % every === firstPlace) || (atDelicate && isDelicate(allCalls, index)) ? [index + 1] : [],
      );
      for (const place of places) {
        let index = 0;
        let within = place;
        while (within > (parts[index]?.calls.length ?? 0)) {
          within -= parts[index]?.calls.length ?? 0;
          index += 1;
        }
        const { saved = start, calls = [] } = parts[index] ?? {};
        const step = index === 0 ? press : (host: StandIn) => call(host, 'continueBuild');
        isOther = isOther || within === 1 || mayChange(calls[within - 2] ?? '');
        if (every === 1 && asksNothing(calls[within - 1] ?? '')) continue;
        asking += 1;
        // Once, or from then on until the script is ended, as where the host has gone: then nothing is put right behind it,
        // and the file is as it was after the last call that changed something.
        const ways = every === 1 ? [false, ...(isOther ? [true] : [])] : [place % 2 === 0];
        isOther = false;
        for (const isGone of ways) {
          const host = spare?.saved === saved ? spare.host : open({ saved, clock });
          spare = undefined;
          const failure = failAtCall(host, within, isGone);
          const first = step(host);
          failure.stop();
          failed += 1;
          if (!first.ok) stopped += 1;
          if (!first.ok && !wellSaid.test(first.problem.message)) odd.push(`${place}: ${first.problem.message}`);
          const left = host.save();
          if (left === saved) spare = { host, saved };
          const seen: string[] = [];
          const isKnown = () => {
            const now = digest(host.save());
            if (known.has(now)) return true;
            seen.push(now);
            return false;
          };
          // From here on a second press goes the way that the first one went, or another place before this one.
          if (!first.ok && (left === parts[0]?.saved || known.has(digest(left)))) continue;
          if (first.ok && (left === end || known.has(digest(left)))) continue;
          const isThere = !first.ok && makesAnother(name) && compared(host) === expected;
          spare = undefined;
          pressed += 1;
          const again = first.ok || isThere ? first : press(host);
          const last = goOn(host, again, isKnown);
          if (isUnderWay(last)) {
            for (const text of [digest(left), ...seen]) known.add(text);
            continue;
          }
          const found = compared(host);
          if (!last.ok && !isThere && !standsAlready.test(last.problem.message))
            odd.push(`call ${place} of ${all}, pressed again: ${last.problem.message}`);
          else if (found !== expected)
            odd.push(
              `call ${place} of ${all}${isGone ? ' and all behind it' : ''}, ${first.ok ? 'said to be done' : 'pressed again'}: ${firstDifference(found, expected)}`,
            );
          else {
            if (every === 1) odd.push(...checksDirect(host).odd.map((words) => `call ${place} of ${all}: ${words}`));
            if (!first.ok && !isThere) for (const text of [digest(left), ...seen]) known.add(text);
          }
        }
      }
      console.log(
        `${name}: ${failed} failures at ${asking} of ${all} calls, ${stopped} said so, ${pressed} pressed again, ${odd.length} odd`,
      );
      expect(odd).toEqual([]);
    },
    3_600_000,
  );
});
