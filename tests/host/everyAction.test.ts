import { describe, expect, it } from 'vitest';
import type { DeskArguments, DeskCall } from '../../src/desk/acts.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSample, buildSetup, call, finish, open, stepRow, typeIn } from './bench.ts';
import { workbookText } from './cells.ts';
import { checksDirect } from './checksDirect.ts';
import { failAtCall } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const small: Setup = {
  ...setup,
  settings: { ...setup.settings, 'exit questions': '1' },
  classes: [{ name: sheet, teams: ['Otter', 'Heron'] }],
};
const other: Setup = { ...small, settings: { ...small.settings, seed: '77' } };
const day = (number: number) => () => new Date(`2026-03-0${number}T10:00:00Z`);

/** Files that actions begin from, each made once. */
const files = {
  lesson: () => {
    const host = open({ clock: day(2) });
    buildSetup(host, small);
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    typeIn(host, { sheet, cells: [[row + 1, at.entry, '7']] });
    typeIn(host, { sheet, cells: [[row - 2, at.who, 'Ana, Ben']] });
    return host.save();
  },
  'checks from the sidebar': () => {
    const host = open({ clock: day(2) });
    buildSetup(host, { ...small, settings: { ...small.settings, 'checks come from': 'sidebar' } });
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    return host.save();
  },
  'a lesson put away': () => {
    const host = open({ saved: savedAs('lesson'), clock: day(3) });
    finish(host, call(host, 'nextLesson', other));
    return host.save();
  },
  'the sample and a lesson': () => {
    const host = open({ clock: day(2) });
    buildSample(host);
    finish(host, call(host, 'startBuild', small, { sample: 'keep' }));
    return host.save();
  },
} as const;
const made = new Map<keyof typeof files, string>();
function savedAs(name: keyof typeof files): string {
  const known = made.get(name) ?? files[name]();
  made.set(name, known);
  return known;
}

interface Action {
  readonly name: DeskCall;
  readonly from?: keyof typeof files;
  /** A press; what is under way is left where it is, for the next step. */
  readonly press: (host: StandIn) => Outcome<unknown>;
  /** So many of its calls are tried in the short form, one after each other part. */
  readonly tries?: number;
}
const act = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  press: (host) => call(host, name, ...about) as Outcome<unknown>,
});
/** The same press, or nothing yet where the file says that something is under way. */
const build = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  press: (host) => {
    const lesson = call(host, 'readLesson');
    const under = lesson.ok ? lesson.value.building : undefined;
    return under === undefined ? (call(host, name, ...about) as Outcome<unknown>) : { ok: true, value: under };
  },
});
const isUnderWay = (outcome: Outcome<unknown>): boolean =>
  outcome.ok && (outcome.value as Partial<BuildState> | null)?.finished === false;
/** Goes on as a page does, until the build is finished, a step of it is refused, or its end is known. */
function goOn(host: StandIn, first: Outcome<unknown>, isKnown: () => boolean = () => false): Outcome<unknown> {
  let state = first;
  for (let steps = 0; isUnderWay(state) && steps < 40 && !isKnown(); steps += 1) state = call(host, 'continueBuild');
  return state;
}
const proposal = (host: StandIn) => {
  const shown = answerOf(call(host, 'readRecord')).classes[0];
  if (shown === undefined) throw new Error('Expected a class.');
  return { entry: { ...(shown.saved ?? shown.proposal), notes: 'Calm.' }, base: shown.saved ?? null };
};

const actions: readonly Action[] = [
  act('setAbsent', 'c1-t2', true),
  act('setMembers', sheet, 'c1-t2', { names: 'Cleo, Dov', absent: [], base: '' }),
  act('setOwnHelp', 'c1-t1', { level: '1', extension: 'Make it half as strong.' }),
  act('showExitChecks', sheet, true),
  act('passRoles', sheet),
  act('closeClass', sheet, true),
  act('checkAgain'),
  { ...act('workOutChecks'), from: 'checks from the sidebar' },
  act('writePrepareSheet', true),
  act('writeKeySheet', true),
  act('hideTeachersSheets'),
  act('goToTeam', sheet, 'c1-t2'),
  {
    name: 'saveRecord',
    press: (host) => call(host, 'saveRecord', [proposal(open({ saved: host.save(), clock: day(2) }))]),
  },
  { ...build('startBuild', { ...small, classes: [{ name: sheet, teams: ['Otter'] }] }), tries: 2 },
  { ...build('addTeam', sheet, 'Wren'), tries: 1 },
  { ...build('addClass', 'Reed class', ['Carp']), tries: 1 },
  { ...build('addPractice', sheet), tries: 1 },
  { ...build('nextLesson', other, {}, { sameDay: true }), tries: 1 },
  { ...build('openEarlier', '2026-03-02.1'), from: 'a lesson put away', tries: 1 },
  { ...build('removeSample'), from: 'the sample and a lesson', tries: 0 },
];

/**
 * Apart from what is in view, so that a Record which was just made stays in sight, from the moment in dated names, and from
 * the colour of a line that was kept free for a late team.
 */
const compared = (host: StandIn): string =>
  workbookText(host)
    .replace(/kept \d{4}-\d\d-\d\d \d\d\.\d\d/g, 'kept')
    .replace(/"color":"#[0-9a-f]{6}",/g, '')
    .replace(/"hidden":(true|false)(?=.*"name":"Record")/g, '');
const firstDifference = (one: string, wanted: string): string => {
  const lines = wanted.split('\n');
  const index = one.split('\n').findIndex((line, place) => line !== lines[place]);
  return `${one.split('\n')[index]?.slice(0, 160)} | ${lines[index]?.slice(0, 160)}`;
};
/** Said by a second press of what is all there already. */
const standsAlready =
  /different name for each team|called “|began|begun today|put away in this file|no sample to remove/;

const clockOf = ({ from }: Action) => day(from === 'a lesson put away' ? 4 : 2);

/** A script call's worth of an action, from the file as it stood before: a failure in it needs nothing of what came before. */
interface Part {
  readonly saved: string;
  readonly calls: number;
}
/** Lets an action run through and keeps the file as it stands between its steps. */
function partsOf(host: StandIn, saved: string, { press }: Action): readonly Part[] {
  const { calls } = failAtCall(host, Number.POSITIVE_INFINITY);
  const parts: Part[] = [];
  let before = { saved, calls: 0 };
  let state = press(host);
  const note = () => {
    parts.push({ saved: before.saved, calls: calls() - before.calls });
    before = { saved: host.save(), calls: calls() };
  };
  note();
  for (let steps = 0; isUnderWay(state) && steps < 40; steps += 1) {
    state = call(host, 'continueBuild');
    note();
  }
  answerOf(state);
  return parts;
}

describe('every action, with the host failing at a call of its', () => {
  it.each(actions)(
    '$name says so and is whole after the next press, or is whole at once, and its checks say what the judge says',
    (action) => {
      const { name, from = 'lesson', press, tries = 2 } = action;
      const count = cases({ short: tries, deep: Number.POSITIVE_INFINITY });
      if (count === 0) return;
      const clock = clockOf(action);
      const start = savedAs(from);
      const whole = open({ saved: start, clock });
      const parts = partsOf(whole, start, action);
      const all = parts.reduce((sum, { calls }) => sum + calls, 0);
      const expected = compared(whole);
      /** Files from which the way to the end is known: a page that was just opened goes by the file alone. */
      const known = new Set(parts.slice(1).map(({ saved }) => saved));
      const end = whole.save();
      const direct = checksDirect(whole);
      expect(direct.blocks).toBeGreaterThan(0);
      const odd: string[] = [...direct.odd];
      const every = Math.max(1, Math.floor(all / count));
      let tried = 0;
      let stopped = 0;
      let pressed = 0;
      /** A host that still holds the file of a part, and need not be opened again. */
      let spare: { readonly host: StandIn; readonly saved: string } | undefined;
      for (let place = 1 + ((seed + name.length * 7919) % every); place <= all; place += every) {
        let index = 0;
        let within = place;
        while (within > (parts[index]?.calls ?? 0)) {
          within -= parts[index]?.calls ?? 0;
          index += 1;
        }
        const { saved = start } = parts[index] ?? {};
        const step = index === 0 ? press : (host: StandIn) => call(host, 'continueBuild');
        // Once, or from then on until the script is ended, as where the host has gone.
        for (const isGone of every === 1 ? [false, true] : [place % 2 === 0]) {
          const host = spare?.saved === saved ? spare.host : open({ saved, clock });
          spare = undefined;
          const failure = failAtCall(host, within, isGone);
          const first = step(host);
          failure.stop();
          tried += 1;
          if (tried % 200 === 0)
            console.log(`${name}: ${tried} of ${2 * all} so far, ${pressed} pressed, ${odd.join('; ')}`);
          if (!first.ok) stopped += 1;
          if (!first.ok && !wellSaid.test(first.problem.message)) odd.push(`${place}: ${first.problem.message}`);
          const left = host.save();
          if (left === saved) spare = { host, saved };
          const seen: string[] = [];
          const isKnown = () => {
            const now = host.save();
            if (known.has(now)) return true;
            seen.push(now);
            return false;
          };
          // From here on a second press goes the way that the first one went, or another place before this one.
          if (!first.ok && (left === parts[0]?.saved || known.has(left))) continue;
          if (first.ok && (left === end || known.has(left))) continue;
          // Whoever has not heard that a practice, a second lesson of the day or a key is there gets another by pressing again.
          const isThere = !first.ok && /addPractice|nextLesson|writeKeySheet/.test(name) && compared(host) === expected;
          spare = undefined;
          pressed += 1;
          const again = first.ok || isThere ? first : press(host);
          const last = goOn(host, again, isKnown);
          if (isUnderWay(last)) {
            for (const text of [left, ...seen]) known.add(text);
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
            if (!first.ok && !isThere) for (const text of [left, ...seen]) known.add(text);
          }
        }
      }
      console.log(
        `${name}: ${tried} failures at ${all} calls, ${stopped} said so, ${pressed} pressed again, ${odd.length} odd`,
      );
      expect(odd).toEqual([]);
    },
    3_600_000,
  );
});
