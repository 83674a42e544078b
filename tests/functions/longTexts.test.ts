import { describe, expect, it } from 'vitest';
import { theArgument } from '../../src/errors/argumentName.ts';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { longestAnswer } from '../../src/lab/judging/judgeStep.ts';
import { longestEntry } from '../../src/lab/judging/readEntry.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';

/** As much as a cell holds. The limits are far below, so that what reads a text never has more than them before it. */
const cellful = 50_000;
const wholes = ['row', 'column', 'table', 'entry'];

const places = catalogue.flatMap(({ name, arguments: taken, examples }) =>
  taken.flatMap(({ name: argument, kind }, place) =>
    wholes.includes(kind) ? [] : [{ name, argument, kind, call: taken.map((_, at) => examples[0].call[at]), place }],
  ),
);
const team = (id: string, step: string, entry: string) =>
  callFunction('CHECKTEAM', [
    [['formula', 'molarity']],
    [['KBr', '0.300']],
    [['activity', id]],
    [[''], [step]],
    [[''], [entry]],
  ]);

describe('a text as long as a cell holds', () => {
  it.each(places)('is refused by its length alone in $argument of $name', ({ name, argument, kind, call, place }) => {
    for (const piece of ['9', ' 1', 'H2', '(', '% ', 'x10-3 ']) {
      const long = piece.repeat(cellful / piece.length);
      expect(() =>
        callFunction(
          name,
          call.map((cell, at) => (at === place ? long : cell)),
        ),
      ).toThrow(
        kind === 'formula'
          ? / is too long: it has \d+ characters, and a formula can have 250\. /
          : new RegExp(`^“.+” is too long for ${theArgument(argument)}\\. It has \\d+ characters; 300 is the most\\.$`),
      );
    }
  });
  it('is read from up to 300 characters, and an error never shows it whole', () => {
    const seen: string[] = [];
    for (const length of [300, 301, cellful]) {
      try {
        callFunction('MOLES', ['KBr', '9'.repeat(length)]);
      } catch (error) {
        seen.push((error as Error).message);
      }
    }
    expect(seen.map((message) => /300 is the most/.test(message))).toEqual([false, true, true]);
    for (const message of seen) expect(message.length).toBeLessThan(260);
  });
  it('is unreadable in an entry beyond 200 characters, whatever stands in it', () => {
    for (const text of ['9', ' 1', '7.14 g ', 'x10-3 ', 'a, b ', '?']) {
      const long = (length: number) => `7.14 g ${text.repeat(length)}`.slice(0, length);
      const tooLong = [['unreadable', expect.stringContaining('too long')]];
      expect(callFunction('CHECKENTRY', [long(longestEntry + 1), 7.14])).toEqual(tooLong);
      expect(callFunction('CHECKENTRY', [long(cellful), 7.14])).toEqual(tooLong);
      const given = [
        ['formula', 'KBr'],
        ['molarity', 0.3],
        ['volume', 200],
      ];
      expect(callFunction('CHECKSTEP', ['mass of solute', given, long(cellful)])).toEqual([
        ['unreadable', expect.stringContaining('too long'), ''],
      ]);
    }
  });
  it('is unreadable in every row of every activity that is judged', () => {
    for (const { id, steps } of allActivities()) {
      for (const { id: step, kind } of steps) {
        if (kind === 'told') continue;
        for (const text of ['b', 'yes, KBr ', '7.14 g ']) {
          const [, row] = team(id, step, text.repeat(cellful / text.length)) as string[][];
          const [check, lookAt = ''] = row ?? [];
          // Without its givens or an earlier row it says so, which takes no look at the entry.
          if (!/⚠|Wait|Fill in|Check “/.test(lookAt)) expect([id, step, check]).toEqual([id, step, 'unreadable']);
          expect(lookAt.length).toBeLessThan(2000);
        }
      }
    }
  });
  it('is looked through for letters up to a limit of its own', () => {
    const [activity] = allActivities();
    const chosen = activity?.steps.find(({ kind }) => kind === 'chosen' || kind === 'ordered');
    const lookAt = (length: number) =>
      (team(activity?.id ?? '', chosen?.id ?? '', 'z'.repeat(length)) as string[][])[1]?.[1];
    expect(lookAt(longestAnswer + 1)).toContain('too long');
    expect(lookAt(longestAnswer)).not.toContain('too long');
  });
  it('is shown by its beginning where nobody knows the step', () => {
    const [, row] = callFunction('CHECKTEAM', [
      [['formula']],
      [['KBr']],
      [['activity', 'dilution']],
      [[''], ['x'.repeat(cellful)]],
      [[''], ['1']],
    ]) as string[][];
    expect(row?.[0]).toBe('unreadable');
    expect(row?.[1]?.length).toBeLessThan(120);
  });
});
