import { beforeEach, describe, expect, it } from 'vitest';
import type { MembersWish, TeamMembersView } from '../../src/desk/views.ts';
import { rowName } from '../../src/lab/record/recordEntry.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSample, buildSetup, call, finish, open, savedWith, stepRow, typeIn } from './bench.ts';
import { valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const saved = savedWith(setup);
const onDay = (day: string, state = saved) => open({ saved: state, clock: () => new Date(`${day}T10:00:00Z`) });

let host: StandIn;
beforeEach(() => {
  host = onDay('2026-03-02');
});

const headingRow = (key: string, inSheet = sheet) => stepRow(host, { sheet: inSheet, key, step: 'cautions read' }) - 1;
const who = (key: string, inSheet = sheet) =>
  valueAt(host, { sheet: inSheet, row: headingRow(key, inSheet), column: at.who });
const people = (key = 'c1-t1'): TeamMembersView => {
  const found = answerOf(call(host, 'readTeams'))
    .classes.flatMap(({ teams }) => teams)
    .find((team) => team.key === key)?.members;
  if (found === undefined) throw new Error(`Expected the people of ${key}.`);
  return found;
};
const set = (names: string, absent: readonly string[] = [], parts: Partial<MembersWish> = {}) =>
  call(host, 'setMembers', sheet, 'c1-t1', { names, absent, base: people().who, ...parts });
const nextDay = (day: string) => {
  host = onDay(day, host.save());
};

describe('who is in a team', () => {
  it('is nobody at first: the cell says what it is for, and students may write there', () => {
    expect(who('c1-t1')).toBe('Your names');
    expect(people()).toEqual({ who: '', day: '', members: [] });
    typeIn(host, { sheet, cells: [[headingRow('c1-t1'), at.who, 'Ana: calculates, Ben']] });
    expect(host.triggerErrors).toEqual([]);
    expect(people().members).toEqual([
      { name: 'Ana', absent: false, roles: ['calculates'] },
      { name: 'Ben', absent: false, roles: [] },
    ]);
  });
  it('shares the roles among those who are here, a line for each person in the block', () => {
    answerOf(set('Ana\nBen, Cy', ['Cy']));
    expect(who('c1-t1')).toBe(
      'Ana: calculates, runs the bench\nBen: writes, records\nCy: not here today\nroles of 2026-03-02',
    );
    expect(answerOf(call(host, 'readClass', sheet)).teams[0]?.members?.[2]).toEqual({
      name: 'Cy',
      absent: true,
      roles: [],
    });
  });
  it('passes the roles on from day to day, ends an absence by itself, and not twice a day', () => {
    answerOf(set('Ana\nBen\nCy', ['Cy']));
    nextDay('2026-03-03');
    expect(people().members.map(({ absent }) => absent)).toEqual([false, false, false]);
    expect(answerOf(call(host, 'passRoles', sheet))).toEqual({ passed: 1 });
    expect(who('c1-t1')).toBe('Ana: runs the bench\nBen: calculates, records\nCy: writes\nroles of 2026-03-03');
    expect(answerOf(call(host, 'passRoles', sheet))).toEqual({ passed: 0 });
    nextDay('2026-03-05');
    // Whoever says on a new day who is here passes the roles on with it.
    answerOf(set('Ana\nBen\nCy'));
    expect(who('c1-t1')).toContain('Cy: calculates');
  });
  it('changes that cell only and runs no check; where something else is being written it says so', () => {
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), at.entry, '119.00']] });
    const before = workbookText(host).split('\n');
    host.resetCounts();
    host.holdLock(true);
    expect(set('Ana\nBen')).toMatchObject({ ok: false, problem: { reason: 'busy' } });
    expect(who('c1-t1')).toBe('Your names');
    host.holdLock(false);
    answerOf(set('Ana\nBen'));
    const after = workbookText(host).split('\n');
    expect(host.counts.functions).toEqual({});
    expect(after.filter((line, index) => line !== before[index])).toHaveLength(1);
  });
  it('leaves alone what somebody wrote there since it was read', () => {
    typeIn(host, { sheet, cells: [[headingRow('c1-t1'), at.who, 'Dov']] });
    const outcome = set('Ana', [], { base: '' });
    expect(outcome).toMatchObject({ ok: false, problem: { field: 'names' } });
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
    expect(who('c1-t1')).toBe('Dov');
  });
  it('keeps names that look like formulas as names', () => {
    answerOf(set('=1+1\n@Ana\n-x'));
    expect(who('c1-t1')).toContain('=1+1: calculates');
    expect(people().members.map(({ name }) => name)).toEqual(['=1+1', '@Ana', '-x']);
  });
  it('can be emptied again', () => {
    answerOf(set('Ana'));
    answerOf(set(' \n'));
    expect(who('c1-t1')).toBe('Your names');
    expect(people().members).toEqual([]);
  });
  it.each([
    ['Ana\nAna', 'twice'],
    ['a b c d e f g h i'.split(' ').join('\n'), '9'],
    ['x'.repeat(41), 'xxx'],
  ])('refuses %j with what to do, and changes nothing', (names, received) => {
    const before = host.save();
    const outcome = set(names);
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(/ in Otter[ ;].*\. /);
    expect(outcome.ok ? '' : outcome.problem.message).toContain(received);
    expect(host.save()).toBe(before);
  });
  it.each([
    ['nobody', { names: '', absent: [], base: '' }],
    ['c1-t1', 'Ana'],
    ['c1-t1', { names: 7 }],
  ])('refuses %j, %j', (key, wish) => {
    expect(call(host, 'setMembers', sheet, key, wish)).toMatchObject({ ok: false });
  });
});

describe('the cell of a team when the lesson is built again', () => {
  it('is kept, also where a late team comes', () => {
    answerOf(set('Ana\nBen'));
    const before = workbookText(host);
    buildSetup(host, setup);
    expect(workbookText(host)).toBe(before);
    finish(host, call(host, 'addTeam', sheet, 'Late team'));
    expect(who('c1-t1')).toContain('Ana: calculates');
    expect(valueAt(host, { sheet, row: headingRow('c1-t3'), column: at.who })).toBe('Your names');
  });
  it('goes with its team to a sheet of another layout', () => {
    typeIn(host, {
      sheet,
      cells: [
        [headingRow('c1-t1'), at.who, 'Dov'],
        [headingRow('c1-t2'), at.who, '=Eda'],
      ],
    });
    buildSetup(host, {
      ...setup,
      classes: setup.classes.map((one, index) => (index === 0 ? { ...one, teams: ['Heron'] } : one)),
    });
    expect(host.book.sheets.some(({ name }) => name.startsWith('Fern class, kept'))).toBe(true);
    expect(who('c1-t2')).toBe('=Eda');
    expect(valueAt(host, { sheet, row: headingRow('c1-t2') + 1, column: at.who })).toBe('');
  });
});

describe('names of people in the record', () => {
  it('come into the copied text only, for those who were missing in a team that was here', () => {
    answerOf(set('Ana\nCy', ['Cy']));
    typeIn(host, { sheet, cells: [[stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' }), at.entry, '119.00']] });
    const [fern] = answerOf(call(host, 'readRecord')).classes;
    expect(fern?.names.absentMembers).toEqual([{ team: 'Otter', names: ['Cy'] }]);
    expect(JSON.stringify(fern?.proposal)).not.toMatch(/\bCy\b|\bAna\b/);
  });
  it.each(['Cy was away.', 'Ana had an idea'])('are refused in the Record sheet: %s', (notes) => {
    answerOf(set('Ana\nCy', ['Cy']));
    const proposal = answerOf(call(host, 'readRecord')).classes[0]?.proposal;
    if (proposal === undefined) throw new Error('Expected a class.');
    expect(call(host, 'saveRecord', [{ entry: { ...proposal, notes }, base: null }])).toMatchObject({
      ok: false,
      problem: { field: `${rowName(proposal)}.notes` },
    });
    expect(host.book.sheets.some(({ name }) => name === 'Record')).toBe(false);
  });
});

describe('the invented people of the sample', () => {
  it('stand in their cells, one of them absent, and the others have no names', () => {
    host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
    buildSample(host);
    const [first] = answerOf(call(host, 'readLesson')).classes;
    expect(first).toBe('Second period');
    expect(who('c1-t1', first)).toContain('Cy: not here today');
    expect(who('c1-t2', first)).toContain('Eda: calculates');
    expect(who('c1-t3', first)).toBe('Your names');
  });
});
