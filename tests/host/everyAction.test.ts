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
  readonly run: (host: StandIn) => Outcome<unknown>;
  /** So many of its calls are tried in the short form, one after each other part. */
  readonly tries?: number;
}
const act = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  run: (host) => call(host, name, ...about) as Outcome<unknown>,
});
/** Goes on as a page does, until the build is finished or a step of it is refused. */
function buildOn(host: StandIn, first: Outcome<BuildState>): Outcome<BuildState> {
  let state = first;
  for (let steps = 0; state.ok && !state.value.finished && steps < 40; steps += 1) state = call(host, 'continueBuild');
  return state;
}
/** The same press, or going on where the file says that something is under way. */
const build = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  run: (host) => {
    const lesson = call(host, 'readLesson');
    const under = lesson.ok ? lesson.value.building : undefined;
    const first = under === undefined ? call(host, name, ...about) : { ok: true, value: under };
    return buildOn(host, first as Outcome<BuildState>);
  },
});
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
    run: (host) => call(host, 'saveRecord', [proposal(open({ saved: host.save(), clock: day(2) }))]),
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

describe('every action, with the host failing at a call of its', () => {
  it.each(actions)(
    '$name says so and is whole after the next press, or is whole at once',
    ({ name, from = 'lesson', run, tries = 2 }) => {
      const count = cases({ short: tries, deep: Number.POSITIVE_INFINITY });
      if (count === 0) return;
      const opened = () => open({ saved: savedAs(from), clock: day(from === 'a lesson put away' ? 4 : 2) });
      const whole = opened();
      const { calls } = failAtCall(whole, Number.POSITIVE_INFINITY);
      answerOf(run(whole));
      const all = calls();
      const expected = compared(whole);
      const every = Math.max(1, Math.floor(all / count));
      const odd: string[] = [];
      let tried = 0;
      let stopped = 0;
      for (let place = 1 + ((seed + name.length * 7919) % every); place <= all; place += every) {
        // Once, or from then on until the script is ended, as where the host has gone.
        for (const isGone of every === 1 ? [false, true] : [place % 2 === 0]) {
          const host = opened();
          const failure = failAtCall(host, place, isGone);
          const first = run(host);
          failure.stop();
          tried += 1;
          if (!first.ok) stopped += 1;
          if (!first.ok && !wellSaid.test(first.problem.message)) odd.push(`${place}: ${first.problem.message}`);
          // Whoever has not heard that a practice, a second lesson of the day or a key is there gets another by pressing again.
          const isThere = !first.ok && /addPractice|nextLesson|writeKeySheet/.test(name) && compared(host) === expected;
          const last = first.ok || isThere ? first : run(host);
          const found = compared(host);
          if (!last.ok && !isThere && !standsAlready.test(last.problem.message))
            odd.push(`call ${place} of ${all}, pressed again: ${last.problem.message}`);
          else if (found !== expected)
            odd.push(
              `call ${place} of ${all}${isGone ? ' and all behind it' : ''}, ${first.ok ? 'said to be done' : 'pressed again'}: ${firstDifference(found, expected)}`,
            );
        }
      }
      console.log(`${name}: ${tried} failures at ${all} calls, ${stopped} said so, ${odd.length} odd`);
      expect(odd).toEqual([]);
    },
    3_600_000,
  );
});
