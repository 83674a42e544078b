import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { standsAlready } from './actions.ts';
import { answerOf, buildSetup, call, finish, open, stepRow, typeIn } from './bench.ts';
import { type Change, changesOf, failAtCall, savedBefore, stopsIn } from './hostFailure.ts';
import { undatedText, withoutColours } from './sameFile.ts';
import { setup } from './setup.ts';

/** One class and one team: every kind of step that a build takes, and few enough to stop at each. */
const small: Setup = { ...setup, classes: [{ name: 'Fern class', teams: ['Otter'] }] };
const clock = () => new Date('2026-03-02T10:00:00Z');
const yes = { names: 'other', setAside: true } as const;

/** A workbook with two teams and entries, as its file keeps it: what the second build starts from. */
const savedWithEntries = (() => {
  let saved: string | undefined;
  return (): string => {
    if (saved !== undefined) return saved;
    const host = open({ clock });
    buildSetup(host, { ...small, classes: [{ name: 'Fern class', teams: ['Otter', 'Heron'] }] });
    const row = stepRow(host, { sheet: 'Fern class', key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet: 'Fern class', cells: [[row, 3, '119.0']] });
    typeIn(host, {
      sheet: 'Fern class',
      cells: [
        [row, 8, '2'],
        [row, 9, '=me'],
      ],
    });
    saved = host.save();
    return saved;
  };
})();

/** Presses on until the build is finished, as somebody does who opens the sidebar anew: what stopped goes on, or begins. */
function pressOn(host: StandIn, wanted: Setup): void {
  const { building } = answerOf(call(host, 'readLesson'));
  const first: Outcome<BuildState> =
    building === undefined ? call(host, 'startBuild', wanted, yes) : { ok: true, value: building };
  finish(host, first);
}

/** The workbook as it is left where the same work is ended just before each of these changes. */
function stoppedAt(changes: readonly Change[], host: StandIn, work: (host: StandIn) => unknown): [number, string][] {
  const saved = savedBefore(host, changes);
  work(host);
  expect(saved.size).toBe(changes.length);
  return [...saved].map(([{ place }, text]) => [place, text]);
}

describe('a build that is stopped', () => {
  it.each([
    { from: 'nothing', start: () => open({ clock }) },
    { from: 'a table that it replaces, entries and all', start: () => open({ clock, saved: savedWithEntries() }) },
  ])(
    'gives the same workbook after it was stopped at any change, from $from',
    ({ start }) => {
      const whole = start();
      const changes = changesOf(whole);
      buildSetup(whole, small);
      const expected = undatedText(whole);
      const stops = stopsIn(changes);
      const different: number[] = [];
      for (const [place, saved] of stoppedAt(stops, start(), (host) => buildSetup(host, small))) {
        const host = open({ clock, saved });
        pressOn(host, small);
        // The one who pressed may have been elsewhere by then, but the file is the same.
        if (undatedText(host) !== expected) different.push(place);
      }
      console.log(`stopped at ${stops.length} of ${changes.length} changes`);
      expect(stops.length).toBeGreaterThan(40);
      expect(different).toEqual([]);
    },
    1_800_000,
  );
});

describe('a late team whose build is stopped', () => {
  it('is there after the same press once more, wherever it stopped', () => {
    const start = () => open({ clock, saved: savedWithEntries() });
    const whole = start();
    const changes = changesOf(whole);
    const add = (host: StandIn) => finish(host, call(host, 'addTeam', 'Fern class', 'Wren'));
    add(whole);
    const expected = withoutColours(undatedText(whole));
    const different: (number | string)[] = [];
    for (const [place, saved] of stoppedAt(changes, start(), add)) {
      const host = open({ clock, saved });
      const again = call(host, 'addTeam', 'Fern class', 'Wren');
      if (!again.ok && standsAlready.test(again.problem.message)) {
        // Everything of the team stood already: only what lists all teams may be open.
        if (withoutColours(undatedText(host)) !== expected) different.push(`${place}: ${again.problem.message}`);
        continue;
      }
      finish(host, again);
      if (withoutColours(undatedText(host)) !== expected) different.push(place);
    }
    expect(changes.length).toBeGreaterThan(10);
    expect(different).toEqual([]);
  }, 1_800_000);
});

/** What a page asks for, once, from a page that was just opened. */
interface Deed {
  readonly name: string;
  readonly run: (host: StandIn) => Outcome<unknown>;
  /** What is true once it was done. */
  readonly done: (host: StandIn) => unknown;
}
const proposal = (host: StandIn) => {
  const found = answerOf(call(host, 'readRecord')).classes[0]?.proposal;
  if (found === undefined) throw new Error('Expected a class.');
  return found;
};
const deeds: readonly Deed[] = [
  {
    name: 'building again keeps a number that was typed into the Plan',
    run: (host) => call(host, 'startBuild', { ...small, classes: [{ name: 'Fern class', teams: ['Otter', 'Heron'] }] }),
    done: (host) => answerOf(call(host, 'readNumbers')).teams.map(({ givens }) => givens),
  },
  {
    name: 'a record is written for every class',
    run: (host) =>
      call(host, 'saveRecord', [
        { entry: { ...proposal(open({ clock, saved: host.save() })), notes: 'Calm.' }, base: null },
      ]),
    done: (host) => answerOf(call(host, 'readRecord')).classes.map(({ saved }) => saved),
  },
  {
    name: 'a mark about today is made',
    run: (host) => call(host, 'setAbsent', 'c1-t2', true),
    done: (host) => answerOf(call(host, 'readTeams')).classes,
  },
  {
    name: 'a sample is not built over a lesson',
    run: (host) => {
      const outcome = call(host, 'startSample');
      return outcome.ok ? outcome : { ok: true, value: null };
    },
    done: (host) => answerOf(call(host, 'readLesson')).setup.classes,
  },
  {
    name: 'the Prepare sheet is brought up to the Plan',
    run: (host) => call(host, 'writePrepareSheet', true),
    done: (host) => answerOf(call(host, 'readPreparation')).sheet,
  },
  {
    name: 'a copy is emptied of everything, and of nothing else',
    run: (host) => call(host, 'emptyCopy', { fileName: 'Workbook', keepHints: true, removeOthers: false }),
    done: (host) => [host.book.sheets.map(({ name }) => name), /119\.0|Otter|Heron/.test(host.save())],
  },
];

describe('a call of the script that fails once', () => {
  const saved = (() => {
    let text: string | undefined;
    return (): string => {
      if (text !== undefined) return text;
      const host = open({ clock, saved: savedWithEntries() });
      const line = Array.from({ length: 80 }, (_, index) => index + 1).find(
        (row) => host.book.value(host.book.sheets[0] as never, row, 1) === 'c1-t1',
      );
      typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[line ?? 0, 5, '0.317']] });
      text = host.save();
      return text;
    };
  })();

  it.each(deeds)(
    'is never taken for an answer: $name',
    ({ run, done }) => {
      const whole = open({ clock, saved: saved() });
      const { calls } = failAtCall(whole, Number.POSITIVE_INFINITY);
      answerOf(run(whole));
      const count = calls();
      const expected = JSON.stringify(done(whole));
      const odd: string[] = [];
      for (let place = 1; place <= count; place += 1) {
        const host = open({ clock, saved: saved() });
        const failure = failAtCall(host, place);
        const first = run(host);
        failure.stop();
        // Either it says that it did not work and works at the next press, or it has done all of it.
        const last = first.ok ? first : run(host);
        const found = last.ok ? JSON.stringify(done(host)) : last.problem.message;
        if (found !== expected)
          odd.push(`call ${place} of ${count}, ${first.ok ? 'said to be done' : 'pressed again'}: ${found}`);
      }
      expect(odd).toEqual([]);
    },
    1_800_000,
  );
});
