import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { type Action, actions, clockOf, emptying, goOn, isUnderWay, savedAs, standsAlready } from './actions.ts';
import { answerOf, call, open } from './bench.ts';
import { workbookText } from './cells.ts';
import { checksDirect } from './checksDirect.ts';
import { asksNothing, callsOf, failAtCall, mayChange } from './hostFailure.ts';

/** Sheets by their places in the file: which number the host gives a sheet hangs on those that were there before. */
function byPlaces(host: StandIn, text: string): string {
  const ids = host.book.sheets.map(({ id }) => String(id)).filter((id) => id.length > 3);
  const places = new Map(ids.map((id, index) => [id, `sheet ${index}`]));
  return ids.length === 0
    ? text
    : text.replace(new RegExp(`\\b(${ids.join('|')})\\b`, 'g'), (id) => places.get(id) ?? id);
}
/**
 * Apart from what is in view, so that a Record which was just made stays in sight, from the moment in dated names, and from
 * the colour of a line that was kept free for a late team.
 */
const alike = (host: StandIn): string =>
  byPlaces(host, workbookText(host))
    .replace(/kept \d{4}-\d\d-\d\d \d\d\.\d\d/g, 'kept')
    .replace(/"color":"#[0-9a-f]{6}",/g, '')
    .replace(/"hidden":(true|false)(?=.*"name":"Record")/g, '');
const firstDifference = (one: string, wanted: string): string => {
  const lines = wanted.split('\n');
  const found = one.split('\n');
  const index = lines.findIndex((line, place) => line !== found[place]);
  const [line = '', other = ''] = [found[index], lines[index]];
  let from = 0;
  while (from < line.length && line[from] === other[from]) from += 1;
  return [line, other].map((text) => `line ${index}: ${text.slice(Math.max(0, from - 60), from + 100)}`).join(' | ');
};
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

describe('every action, with the host failing at a call of its', () => {
  it.each([...actions, emptying].map((action) => ({ from: 'lesson' as const, ...action })))(
    '$name, from $from, says so and is whole after the next press, or is whole at once, and its checks say what the judge says',
    (action) => {
      const { name, from, press, tries = 2, atDelicate = false } = action;
      const count = cases({ short: tries, deep: Number.POSITIVE_INFINITY });
      if (count === 0) return;
      const clock = clockOf(action);
      const start = savedAs(from);
      const whole = open({ saved: start, clock });
      const parts = partsOf(whole, start, action);
      const allCalls = parts.flatMap(({ calls }) => calls);
      const all = allCalls.length;
      /** A file that is emptied begins a lesson, whose number of that day hangs on how often it was pressed. */
      const compared = (host: StandIn): string =>
        name === 'emptyCopy' ? alike(host).replace(/(\d{4}-\d\d-\d\d)\.\d+/g, '$1') : alike(host);
      const expected = compared(whole);
      /** Files from which the way to the end is known: a page that was just opened goes by the file alone. */
      const known = new Set(parts.slice(1).map(({ saved }) => digest(saved)));
      const end = whole.save();
      const direct = checksDirect(whole);
      expect(direct.blocks).toBeGreaterThan(0);
      const odd: string[] = [...direct.odd];
      const every = Math.max(1, Math.floor(all / count));
      let tried = 0;
      let asking = 0;
      /** Whether the file may be another than at the last place. */
      let isOther = false;
      let stopped = 0;
      let pressed = 0;
      /** A host that still holds the file of a part, and need not be opened again. */
      let spare: { readonly host: StandIn; readonly saved: string } | undefined;
      const firstPlace = (seed + name.length * 7919) % every;
      const places = allCalls.flatMap((_, index) =>
        index % every === firstPlace || (atDelicate && isDelicate(allCalls, index)) ? [index + 1] : [],
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
          tried += 1;
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
          // Whoever has not heard that a practice, a second lesson of the day or a key is there gets another by pressing again.
          const isThere = !first.ok && /addPractice|nextLesson|writeKeySheet/.test(name) && compared(host) === expected;
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
        `${name}: ${tried} failures at ${asking} of ${all} calls, ${stopped} said so, ${pressed} pressed again, ${odd.length} odd`,
      );
      expect(odd).toEqual([]);
    },
    3_600_000,
  );
});
