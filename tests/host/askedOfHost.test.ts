import { expect, it } from 'vitest';
import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { answerOf, open, run } from './bench.ts';
import { workbookText } from './cells.ts';
import { asksNothing } from './hostFailure.ts';
import { setup } from './setup.ts';

const teamsOf = (name: string) => Array.from({ length: 10 }, (_, index) => `${name} ${index + 1}`);
const threeOfTen: Setup = {
  ...setup,
  ownNumbers: true,
  classes: ['Fern', 'Moss', 'Reed'].map((name) => ({ name: `${name} class`, teams: teamsOf(name) })),
};

/** Calls that read or write something of the file, and one for each search that is run. */
const asked = (host: StandIn): number =>
  Object.entries(host.counts.host)
    .filter(([name]) => name === 'DeveloperMetadataFinder.find' || !asksNothing(name))
    .reduce((sum, [, count]) => sum + count, 0);

/** One page that stays open, as a teacher has it. */
function pageOn(host: StandIn) {
  const page: File = { book: undefined };
  const ask = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): DeskAnswer<Name> =>
    run(host, workFor(page, name, about));
  const toTheEnd = (first: Outcome<BuildState>): BuildState => {
    let state = answerOf(first);
    while (!state.finished) state = answerOf(ask('continueBuild'));
    return state;
  };
  return { ask, toTheEnd };
}

it('asks the host little for three classes of ten, less for building again, and least for a late team', () => {
  const host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
  const { ask, toTheEnd } = pageOn(host);
  toTheEnd(ask('startBuild', threeOfTen));
  const build = asked(host);
  const heights = host.counts.host['Sheet.setRowHeightsForced'] ?? 0;
  const curb = host.counts.host['Protection.canEdit'] ?? 0;

  host.resetCounts();
  toTheEnd(ask('startBuild', threeOfTen));
  const again = asked(host);
  expect(host.counts.host['Range.setValues']).toBeUndefined();

  const before = workbookText(host).split('\n\n');
  host.resetCounts();
  toTheEnd(ask('addTeam', 'Moss class', 'Wren'));
  const late = asked(host);
  const touched = workbookText(host)
    .split('\n\n')
    .filter((text, index) => text !== before[index])
    .map((text) => /"name":"([^"]+)"/.exec(text)?.[1]);
  expect(touched.sort()).toEqual(['Moss class', 'Plan', 'Progress']);

  console.log(`asked of the host: ${build} for a build, ${again} for the same again, ${late} for a late team`);
  // Of a build, heights of rows are 141: four for each of 30 teams, where rows that differ lie apart, and seven for each class.
  expect(heights).toBeLessThanOrEqual(141);
  // Each run asks once who is there.
  expect(curb).toBeLessThanOrEqual(4);
  // What else a build asks: about 40 for each of eight sheets, 15 for each of five runs, and 14 before the empty one is removed.
  expect(build).toBeLessThanOrEqual(555);
  // Names and tags of sheets are half of it: people rename sheets, and formulas name them.
  expect(again).toBeLessThanOrEqual(228);
  // Rows of a team are written beside what others type: each run of columns by itself, and read back.
  expect(late).toBeLessThanOrEqual(138);
});

it('tries out once in a run which separator formulas take', () => {
  const host = open({ locale: 'de_DE' });
  const { ask, toTheEnd } = pageOn(host);
  toTheEnd(ask('startBuild', setup));
  // Two for each of the two runs that enter formulas: to a format that computes, and back.
  expect(host.counts.host['Range.setNumberFormat']).toBe(4);
});
