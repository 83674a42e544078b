import { beforeAll, describe, expect, it } from 'vitest';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { answerOf, buildSetup, call, open, stepRow, typeIn } from './bench.ts';
import { valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const lettered = ['stock procedure', 'dilution procedure', 'particles'] as const;

describe('the letters of a class sheet', () => {
  let host: StandIn;
  const row = (key: string, step: string) => stepRow(host, { sheet, key, step });
  const task = (key: string, step: string) => valueAt(host, { sheet, row: row(key, step), column: at.task });
  const check = (key: string, step: string) => valueAt(host, { sheet, row: row(key, step), column: at.check });
  beforeAll(() => {
    host = open();
    buildSetup(host, setup);
  });

  it('are each team’s own, in the text and in the check alike', () => {
    for (const step of lettered) expect(task('c1-t1', step)).not.toBe(task('c1-t2', step));
    const activity = activityById(setup.activity);
    if (activity === undefined) throw new Error('Expected the everyday activity.');
    for (const key of ['c1-t1', 'c1-t2']) {
      const team = { key, className: sheet, team: key, givens: setup.givens };
      const answers = teamKey({ activity, team, settings: setup.settings, lettersByTeam: true });
      const cells = answers.flatMap(({ step, answer }) =>
        step === 'in your words' ? [] : [[row(key, step), at.entry, answer.replace(/^about /, '')] as const],
      );
      typeIn(host, { sheet, cells });
      for (const step of lettered) expect([key, step, check(key, step)]).toEqual([key, step, 'on target']);
      for (const { title, answer } of answerOf(call(host, 'readKey')).teams.find((one) => one.key === key)?.lines ??
        []) {
        expect([title, answer]).toEqual([title, answers.find((one) => one.title === title)?.answer]);
      }
    }
  });

  it('are not those of another team: one that typed its neighbour’s order is asked to look at it', () => {
    const theirs = valueAt(host, { sheet, row: row('c1-t1', 'stock procedure'), column: at.entry });
    typeIn(host, { sheet, cells: [[row('c1-t2', 'stock procedure'), at.entry, theirs]] });
    expect(check('c1-t2', 'stock procedure')).toBe('not yet');
  });

  it('are told once in words in the key, with the letters of each team beside', () => {
    const { orders } = answerOf(call(host, 'readKey'));
    expect(orders.map(({ title }) => title)).toEqual(['How to make the stock', 'How to dilute']);
    expect(orders[0]?.inWords).toMatch(/^goggles and coat on, then weigh the solid, then /);
  });

  it('say so where a block stands under a key that they were not written for', () => {
    const heading = row('c1-t1', 'cautions read') - 1;
    const plan = Array.from({ length: 80 }, (_, index) => index + 1).find(
      (line) => valueAt(host, { sheet: 'Plan', row: line, column: 1 }) === 'c1-t1',
    );
    const rows = Object.fromEntries(lettered.map((step) => [step, row('c1-t1', step)]));
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[plan ?? 0, 1, 'c9-t9']] });
    typeIn(host, { sheet, seat: 'teacher', cells: [[heading, at.key, 'c9-t9']] });
    for (const step of lettered) {
      expect(valueAt(host, { sheet, row: rows[step] ?? 0, column: at.task })).toBe(words.class.lettersOfOther);
    }
  });
});
