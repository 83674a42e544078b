import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, layoutVersion } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { answerOf, buildSetup, call, open, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';

/**
 * The sample as version 3 built it, saved by the stand-in, with entries of the team Pumice, a row of its own in between,
 * help wanted and a role; all letters in it are those that every team had.
 */
const saved = gunzipSync(readFileSync(join(import.meta.dirname, 'fixtures', 'layout3.json.gz'))).toString('utf8');
const sheet = 'Second period';
const pumice = 'c1-t6';
/** In version 3 title and task stood in one column, so that all behind it stood one further left. */
const earlier = (column: number) => (column === at.title ? column : column - 1);

type Row = Readonly<Record<'entry' | 'help' | 'who' | 'tries', string>>;

/** What people typed and the trigger counted, by key and step; a heading row goes by its key and `team`. */
function typed(host: StandIn, name: string, column: (today: number) => number): ReadonlyMap<string, Row> {
  const rows = new Map<string, Row>();
  const { rows: last } = sheetState(host, name);
  for (let row = 1; row <= last; row += 1) {
    const text = (today: number) => valueAt(host, { sheet: name, row, column: column(today) });
    const key = text(at.key);
    if (!/^c\d-t\d+$/.test(key)) continue;
    const step = text(at.step) || 'team';
    if (step === 'team' && rows.has(`${key} team`)) continue;
    rows.set(`${key} ${step}`, {
      entry: step === 'team' ? '' : text(at.entry),
      help: step === 'team' ? '' : text(at.help),
      who: text(at.who),
      tries: step === 'team' ? '' : text(at.tries),
    });
  }
  return rows;
}

const rowOf = (host: StandIn, step: string, column: (today: number) => number = (today) => today) => {
  for (let row = 1; row < 200; row += 1) {
    const text = (today: number) => valueAt(host, { sheet, row, column: column(today) });
    if (text(at.key) === pumice && text(at.step) === step) return row;
  }
  throw new Error(`Expected a row for ${step}.`);
};

describe('a workbook of the layout before', () => {
  let host: StandIn;
  beforeAll(() => {
    host = open({ saved });
  });

  it('is read as it is: teams, entries and who they are', () => {
    const view = answerOf(call(host, 'readClass', sheet));
    expect(view.teams).toHaveLength(6);
    const team = view.teams.find(({ key }) => key === pumice);
    expect(team?.steps.find(({ id }) => id === 'molar mass')).toMatchObject({ entry: '119.0', check: 'on target' });
    expect(team?.steps.find(({ id }) => id === 'in your words')?.entry).toBe('The water spreads them out.');
  });

  it('counts tries where they stood, and marks its orders as right or wrong by the letters that it shows', () => {
    const row = rowOf(host, 'moles of solute', earlier);
    typeIn(host, { sheet, cells: [[row, earlier(at.entry), '0.0200']] });
    expect(valueAt(host, { sheet, row, column: earlier(at.tries) })).toBe('1');
    expect(valueAt(host, { sheet, row, column: earlier(at.check) })).toBe('on target');
    expect(host.triggerErrors).toEqual([]);
  });

  it('is built again with everything that people typed, in its own row', () => {
    const old = typed(host, sheet, earlier);
    buildSetup(host, answerOf(call(host, 'readLesson')).setup);
    expect(valueAt(host, { sheet, row: 1, column: at.step })).toBe(String(layoutVersion));
    const now = typed(host, sheet, (today) => today);
    expect([...now.keys()]).toEqual([...old.keys()]);
    const lettered = ['stock procedure', 'dilution procedure', 'particles'];
    for (const [name, row] of old) {
      const isLettered = lettered.some((step) => name.endsWith(` ${step}`)) && row.entry !== '';
      const who = name.endsWith(' team') && row.who === 'Who' ? 'Your names' : row.who;
      expect([name, now.get(name)]).toEqual([
        name,
        { ...row, who, entry: isLettered ? `${words.class.lettersBefore}${row.entry}` : row.entry },
      ]);
    }
    expect([...old.values()].filter(({ entry }) => entry !== '').length).toBeGreaterThan(40);
    // The old sheet stays, with the row that somebody had put in.
    const kept = host.book.sheets.find(({ name }) => name.startsWith(`${sheet}, kept `));
    expect(kept).toBeDefined();
  });

  it('takes letters of then for no answer of now, right or wrong, and shows them to the team', () => {
    for (const step of ['stock procedure', 'particles']) {
      const row = rowOf(host, step);
      expect(valueAt(host, { sheet, row, column: at.entry })).toMatch(/^old letters: [a-z]/);
      const check = valueAt(host, { sheet, row, column: at.check });
      expect([step, check]).toEqual([
        step,
        step === 'particles' ? 'unreadable' : expect.stringMatching(/unreadable|not yet/),
      ]);
      expect(valueAt(host, { sheet, row, column: at.lookAt })).not.toBe('');
    }
  });

  it('is built once: a second build changes nothing, and no entry gets a second mark', () => {
    const now = typed(host, sheet, (today) => today);
    buildSetup(host, answerOf(call(host, 'readLesson')).setup);
    expect(typed(host, sheet, (today) => today)).toEqual(now);
  });
});
