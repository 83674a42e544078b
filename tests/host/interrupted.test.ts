import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/lab/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { buildSetup, call, open, stepRow, typeIn } from './bench.ts';
import { workbookText } from './cells.ts';
import { failAtChange } from './hostFailure.ts';
import { setup } from './setup.ts';

/** One class and one team: every kind of step that a build takes, and few enough to stop at each. */
const small: Setup = { ...setup, classes: [{ name: 'Fern class', teams: ['Otter'] }] };
const clock = () => new Date('2026-03-02T10:00:00Z');

/** A workbook with two teams and entries, as its file keeps it: what the second build starts from. */
function savedWithEntries(): string {
  const host = open({ clock });
  buildSetup(host, { ...small, classes: [{ name: 'Fern class', teams: ['Otter', 'Heron'] }] });
  const row = stepRow(host, { sheet: 'Fern class', key: 'c1-t1', step: 'molar mass' });
  typeIn(host, { sheet: 'Fern class', cells: [[row, 2, '119.0']] });
  typeIn(host, {
    sheet: 'Fern class',
    cells: [
      [row, 7, '2'],
      [row, 8, '=me'],
    ],
  });
  return host.save();
}

/** Presses on until the build is finished: a call that failed is pressed again. */
function pressOn(host: StandIn, wanted: Setup): void {
  let outcome = call(host, 'startBuild', wanted);
  for (let presses = 0; presses < 30; presses += 1) {
    if (outcome.ok && outcome.value.finished) return;
    outcome = outcome.ok ? call(host, 'continueBuild') : call(host, 'startBuild', wanted);
  }
  throw new Error(`Expected the build to finish, received ${JSON.stringify(outcome)}.`);
}

/** Minutes pass while a test runs: the date in a name is not what is compared. */
const compared = (host: StandIn): string => workbookText(host).replace(/kept \d{4}-\d\d-\d\d \d\d\.\d\d/g, 'kept');

interface Stops {
  readonly changes: number;
  readonly stops: readonly number[];
  /** Places after which another workbook came out. */
  readonly different: readonly number[];
}

/**
 * Stops a build at its changes, one after another, each time from the start, and presses on. In a run of one and the
 * same call it stops at the first and the last, since the host is left alike between them.
 */
function stopAtEach(start: () => StandIn, wanted: Setup): Stops {
  const whole = start();
  const { names } = failAtChange(whole, Number.POSITIVE_INFINITY);
  pressOn(whole, wanted);
  const expected = compared(whole);
  const stops = names.flatMap((name, index) =>
    name === names[index - 1] && name === names[index + 1] ? [] : [index + 1],
  );
  const different: number[] = [];
  for (const place of stops) {
    const host = start();
    const interruption = failAtChange(host, place);
    pressOn(host, wanted);
    interruption.stop();
    if (compared(host) !== expected) different.push(place);
  }
  return { changes: names.length, stops, different };
}

describe('a build that the host interrupts', () => {
  it('gives the same workbook after a failure at any change, from nothing', () => {
    const { changes, stops, different } = stopAtEach(() => open({ clock }), small);
    console.log(`stopped at ${stops.length} of ${changes} changes`);
    expect(stops.length).toBeGreaterThan(60);
    expect(different).toEqual([]);
  }, 900_000);

  it('gives the same workbook, entries and all, after a failure at any change of a build that replaces a sheet', () => {
    const saved = savedWithEntries();
    const { changes, stops, different } = stopAtEach(() => open({ clock, saved }), small);
    console.log(`stopped at ${stops.length} of ${changes} changes`);
    expect(stops.length).toBeGreaterThan(60);
    expect(different).toEqual([]);
  }, 900_000);
});
