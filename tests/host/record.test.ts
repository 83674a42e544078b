import { beforeEach, describe, expect, it } from 'vitest';
import type { RecordEntry } from '../../src/lab/record/recordEntry.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { answerOf, buildSetup, call, open, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const saved = savedWith(setup);

let host: StandIn;
let now: number;
beforeEach(() => {
  now = Date.parse('2026-03-02T10:00:00Z');
  host = open({ saved, clock: () => new Date(now) });
});
const type = (key: string, step: string, entry: string) =>
  typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key, step }), 3, entry]] });
const fern = () => {
  const found = answerOf(call(host, 'readRecord')).classes.find(({ proposal }) => proposal.className === sheet);
  if (found === undefined) throw new Error('Expected the class in the record.');
  return found;
};
const row = (number: number) =>
  Array.from({ length: 13 }, (_, index) => valueAt(host, { sheet: 'Record', row: number, column: index + 1 }));
const cell = (number: number, column: number) => valueAt(host, { sheet: 'Record', row: number, column });
const save = (words: Partial<RecordEntry> = {}) => {
  const { proposal, saved: base } = fern();
  return call(host, 'saveRecord', [{ entry: { ...(base ?? proposal), ...words }, base: base ?? null }]);
};

describe('readRecord', () => {
  it('writes the entry from what happened, without a name, and writes nothing into the file', () => {
    const before = host.book.sheets.length;
    for (const entry of ['64', '65', '66', '119.00']) type('c1-t1', 'molar mass', entry);
    type('c1-t1', 'moles of solute', '60');
    const { proposal, names, hasEntriesToday } = fern();
    expect(hasEntriesToday).toBe(true);
    expect(proposal).toMatchObject({
      day: '2026-03-02',
      className: sheet,
      present: '2 of 2 teams',
      finished: '0 of 2 teams',
      next: '1 team continues at “Moles of solute”. 1 team still has to read the cautions.',
      notes: '',
    });
    expect(proposal.hard).toBe(
      '1 team left the volume in mL where litres belong. Most attempts: “Molar mass”, 4 in 1 team.',
    );
    expect(names).toEqual({ present: ['Otter', 'Heron'], absent: [], finished: [], absentMembers: [] });
    expect(JSON.stringify(proposal)).not.toMatch(/Otter|Heron/);
    expect(host.book.sheets.length).toBe(before);
  });
});

describe('saveRecord', () => {
  it('makes the Record on the first save and keeps one row for each class and day', () => {
    type('c1-t1', 'molar mass', '119.00');
    answerOf(save());
    answerOf(save({ notes: 'A calm hour.' }));
    expect(row(5).slice(0, 3)).toEqual(['2026-03-02', sheet, expect.stringContaining('dilution')]);
    expect(cell(5, 11)).toBe('A calm hour.');
    expect(row(6).join('')).toBe('');
  });
  it('changes that row only', () => {
    answerOf(save({ notes: 'First.' }));
    typeIn(host, {
      sheet: 'Record',
      seat: 'teacher',
      cells: [
        [6, 1, '2026-03-01'],
        [6, 2, sheet],
        [6, 11, 'Sunday'],
      ],
    });
    answerOf(save({ notes: 'Second.' }));
    expect(cell(5, 11)).toBe('Second.');
    expect(row(6)).toEqual(['2026-03-01', sheet, '', '', '', '', '', '', '', '', 'Sunday', '', '']);
  });
  it('keeps what the teacher wrote in the sheet after the sidebar had read it', () => {
    answerOf(save({ notes: 'Calm.', hard: 'Units.' }));
    const { saved: base } = fern();
    typeIn(host, {
      sheet: 'Record',
      seat: 'teacher',
      cells: [
        [5, 8, 'Units and rounding.'],
        [5, 11, 'Loud.'],
      ],
    });
    if (base === undefined) throw new Error('Expected a row.');
    answerOf(call(host, 'saveRecord', [{ entry: { ...base, notes: 'Busy.' }, base }]));
    expect(cell(5, 8)).toBe('Units and rounding.');
    expect(cell(5, 11)).toBe('Loud.\nBusy.');
  });
  it.each(['Otter was quick.', 'Ask Mirabelle again'])('refuses names: %s', (notes) => {
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), 9, 'Mirabelle']] });
    const outcome = save({ notes });
    expect(outcome).toMatchObject({ ok: false, problem: { field: expect.stringMatching(/^Fern class, .*\.notes$/) } });
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(
      /^“.+” of .+ has the name “.+” in it, .+ Say “one team” instead/,
    );
    expect(host.book.sheets.some(({ name }) => name === 'Record')).toBe(false);
  });
  it('keeps words that begin like a formula as words', () => {
    answerOf(save({ notes: '=1+1' }));
    expect(cell(5, 11)).toBe('=1+1');
    expect(sheetState(host, 'Record').metadata).toHaveLength(1);
  });
  it('goes by the headings where a column was moved in, and asks for them where one is gone', () => {
    answerOf(save());
    typeIn(host, { sheet: 'Record', seat: 'teacher', cells: [[4, 11, 'remarks']] });
    expect(save({ notes: 'x' })).toMatchObject({ ok: false });
    typeIn(host, {
      sheet: 'Record',
      seat: 'teacher',
      cells: [
        [4, 11, ''],
        [4, 12, 'in your own words'],
      ],
    });
    answerOf(save({ notes: 'Moved.' }));
    expect(cell(5, 12)).toBe('Moved.');
  });
  it.each([null, [], 'x', [{}], [{ entry: { day: 'today' } }]])('refuses %j', (given) => {
    expect(call(host, 'saveRecord', given)).toMatchObject({ ok: false });
  });
  it('is not touched when the lesson is built again', () => {
    answerOf(save({ notes: 'Kept.' }));
    buildSetup(host, setup);
    expect(cell(5, 11)).toBe('Kept.');
  });
});

describe('recordDue', () => {
  const due = () => answerOf(call(host, 'recordDue'));
  const pass = (minutes: number) => {
    now += minutes * 60_000;
  };
  it('goes on naming a class that got a new sheet since, since times come along', () => {
    type('c1-t1', 'molar mass', '119.00');
    pass(20);
    const classes = setup.classes.map(({ name, teams }) => ({ name, teams: teams.slice(0, 1) }));
    buildSetup(host, { ...setup, classes });
    expect(host.book.sheets.some(({ name }) => name.startsWith(`${sheet}, kept`))).toBe(true);
    expect(due()).toEqual({ due: [sheet] });
  });
  it('names a class twenty minutes after its last entry of today, until its row is there', () => {
    expect(due()).toEqual({ due: [] });
    type('c1-t1', 'molar mass', '119.00');
    expect(due()).toEqual({ due: [], nextInMinutes: 20 });
    pass(15);
    expect(due()).toEqual({ due: [], nextInMinutes: 5 });
    // Somebody types again: the class is still there.
    type('c1-t1', 'moles of solute', '60');
    pass(19);
    expect(due()).toEqual({ due: [], nextInMinutes: 1 });
    pass(1);
    expect(due()).toEqual({ due: [sheet] });
    answerOf(save());
    expect(due()).toEqual({ due: [] });
  });
});

describe('a class that is closed at the bell', () => {
  const checkOf = (key: string, step: string, name = sheet) =>
    valueAt(host, { sheet: name, row: stepRow(host, { sheet: name, key, step }), column: 5 });
  const progressOf = (team: string) => {
    const rows = sheetState(host, 'Progress').rows;
    const row = Array.from({ length: rows }, (_, index) => index + 1).find(
      (one) => valueAt(host, { sheet: 'Progress', row: one, column: 1 }) === team,
    );
    return [4, 5, 6].map((column) => valueAt(host, { sheet: 'Progress', row: row ?? 0, column }));
  };
  it('stops asking at once, loses nothing, costs few calls, and asks again after a second press', () => {
    type('c1-t1', 'molar mass', '119.00');
    type('c1-t1', 'moles of solute', '60');
    answerOf(call(host, 'writePrepareSheet'));
    const before = progressOf('Otter');
    host.resetCounts();
    expect(answerOf(call(host, 'closeClass', sheet, true))).toEqual({ noted: true });
    const asked = Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
    console.log(`closing a class asks ${asked} things of the host, the Record made among them`);
    expect(checkOf('c1-t1', 'molar mass')).toBe('on target');
    expect(checkOf('c1-t1', 'moles of solute')).toBe('next time');
    expect(checkOf('c1-t2', 'molar mass')).toBe('next time');
    expect(checkOf('c2-t1', 'molar mass', 'Moss class')).toBe('blank');
    expect(progressOf('Otter')).toEqual(['→ next time', '✓ done', '→ next time']);
    expect(progressOf('Newt')[1]).toBe('· to come');
    expect(valueAt(host, { sheet: 'Prepare', row: 2, column: 1 })).toBe('Up to date with the Plan.');
    expect(answerOf(call(host, 'recordDue'))).toEqual({ due: [] });
    // Whoever goes on typing is heard all the same.
    type('c1-t1', 'moles of solute', '0.0600');
    expect(checkOf('c1-t1', 'moles of solute')).toBe('on target');
    type('c1-t1', 'moles of solute', '60');

    buildSetup(host, setup);
    expect(checkOf('c1-t1', 'moles of solute')).toBe('next time');
    expect(host.book.sheets.some(({ name }) => name.includes('kept'))).toBe(false);

    host.resetCounts();
    answerOf(call(host, 'closeClass', sheet, false));
    const again = Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
    console.log(`opening it again asks ${again}`);
    expect(checkOf('c1-t1', 'moles of solute')).toBe('not yet');
    expect(progressOf('Otter')).toEqual(before);
    expect(again).toBeLessThan(asked);
  });
});
