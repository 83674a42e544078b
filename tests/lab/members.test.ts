import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roles } from '../../src/lab/lesson/roles.ts';
import { membersOn } from '../../src/lab/members/membersOn.ts';
import { membersText } from '../../src/lab/members/membersText.ts';
import { readMembers } from '../../src/lab/members/readMembers.ts';
import { shareRoles } from '../../src/lab/members/shareRoles.ts';
import type { TeamMembers } from '../../src/lab/members/teamMembers.ts';
import { cases } from '../depth.ts';

const person = (name: string, said: readonly string[] = [], absent = false) => ({ name, absent, roles: said });
const nobody: TeamMembers = { members: [], day: '' };
const named = (...names: readonly string[]) => names.map((name) => ({ name, absent: false }));

describe('readMembers', () => {
  it.each([
    ['', []],
    ['Who', []],
    ['Ana, Ben; Cy', [person('Ana'), person('Ben'), person('Cy')]],
    ['Ana: calculates\nCy: not here today', [person('Ana', ['calculates']), person('Cy', [], true)]],
    ['Ana: writes, records\r\nBen', [person('Ana', ['writes', 'records']), person('Ben')]],
    ['Ana calculates, Ben – bench', [person('Ana', ['calculates']), person('Ben', ['runs the bench'])]],
    ['Ana (Writer), Cy (absent)', [person('Ana', ['writes']), person('Cy', [], true)]],
    ['Mary Lou: calc and recording', [person('Mary Lou', ['calculates', 'records'])]],
    ['Cy is away', [person('Cy', [], true)]],
    ['A: draws the flask', [person('A', ['draws the flask'])]],
    ['Who\nAna', [person('Ana')]],
    ['=1+1: calculates', [person('=1+1', ['calculates'])]],
    ['Jean-Luc: writes', [person('Jean-Luc', ['writes'])]],
  ])('reads %j', (cell, members) => {
    expect(readMembers(cell)).toEqual({ members, day: '' });
  });
  it('reads of which day the roles are, with or without the words', () => {
    expect(readMembers('Ana\nroles of 2026-03-02').day).toBe('2026-03-02');
    expect(readMembers('2026-03-02\nAna')).toEqual({ members: [person('Ana')], day: '2026-03-02' });
  });
  it('reads any text, and the same again from what it would write', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (cell) => {
        const read = readMembers(cell);
        for (const { name } of read.members) expect(name).not.toBe('');
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('reads back what is written, whoever is there', () => {
    const name = fc.stringMatching(/^[A-Z][a-z]{0,6}( [A-Z])?$/).filter((typed) => !/^(Who|Away|Absent)$/.test(typed));
    const team = fc.record({
      members: fc.uniqueArray(fc.record({ name, absent: fc.boolean(), roles: fc.subarray([...roles]) }), {
        selector: (member) => member.name,
        minLength: 1,
        maxLength: 6,
      }),
      day: fc.constantFrom('', '2026-03-02'),
    });
    const isRole = ({ members }: TeamMembers) =>
      members.some((one) => readMembers(`X, ${one.name}`).members.length < 2);
    fc.assert(
      fc.property(team, (one) => {
        fc.pre(!isRole(one));
        expect(readMembers(membersText(one))).toEqual(one);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('shareRoles', () => {
  const day = (number: number) => `2026-03-0${number}`;
  it('gives four people a role each, and fewer all four between them', () => {
    const four = shareRoles({ before: nobody, members: named('A', 'B', 'C', 'D'), day: day(1), passOn: false });
    expect(four.members.map((member) => member.roles)).toEqual(roles.map((role) => [role]));
    const two = shareRoles({ before: nobody, members: named('A', 'B'), day: day(1), passOn: false });
    expect(two.members.map((member) => member.roles)).toEqual([
      ['calculates', 'runs the bench'],
      ['writes', 'records'],
    ]);
    const five = shareRoles({ before: nobody, members: named('A', 'B', 'C', 'D', 'E'), day: day(1), passOn: false });
    expect(five.members[4]?.roles).toEqual(['helps where needed']);
  });
  it('shares the role of somebody absent among the others, and gives it back when they come', () => {
    const first = shareRoles({ before: nobody, members: named('A', 'B', 'C', 'D'), day: day(1), passOn: false });
    const without = shareRoles({
      before: first,
      members: named('A', 'B', 'C', 'D').map((one) => ({ ...one, absent: one.name === 'C' })),
      day: day(1),
      passOn: false,
    });
    expect(membersText(without)).toBe(
      'A: calculates, records\nB: writes\nC: not here today\nD: runs the bench\nroles of 2026-03-01',
    );
    expect(
      shareRoles({ before: without, members: named('A', 'B', 'C', 'D'), day: day(1), passOn: false }).members,
    ).toEqual(first.members);
  });
  it('keeps words of the team’s own beside the roles', () => {
    const before = readMembers('Ana: draws the flask, calculates\nBen: helps where needed');
    const { members } = shareRoles({ before, members: named('Ana', 'Ben'), day: day(1), passOn: false });
    expect(members[0]?.roles).toEqual(['calculates', 'runs the bench', 'draws the flask']);
    expect(members[1]?.roles).toEqual(['writes', 'records']);
  });
  it('gives every role to somebody here, never to somebody absent, and each once', () => {
    const members = fc.uniqueArray(fc.record({ name: fc.stringMatching(/^[A-Z]$/), absent: fc.boolean() }), {
      selector: ({ name }) => name,
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(members, fc.boolean(), (wanted, passOn) => {
        const shared = shareRoles({ before: nobody, members: wanted, day: day(1), passOn }).members;
        const given = shared.flatMap((member) => (member.absent ? member.roles.map(() => 'absent') : member.roles));
        const someoneHere = wanted.some(({ absent }) => !absent);
        expect(given.filter((role) => role !== 'helps where needed').sort()).toEqual(
          someoneHere ? [...roles].sort() : [],
        );
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it.each([2, 3, 4, 5])('passes on from day to day, so that each of %i calculates in turn', (size) => {
    const names = ['A', 'B', 'C', 'D', 'E'].slice(0, size);
    let team = shareRoles({ before: nobody, members: named(...names), day: day(1), passOn: false });
    const calculated: string[] = [];
    for (let turn = 0; turn < size * 2; turn += 1) {
      calculated.push(team.members.find((member) => member.roles.includes('calculates'))?.name ?? '');
      // As from the cell, where nothing else is kept.
      team = shareRoles({
        before: readMembers(membersText(team)),
        members: named(...names),
        day: day(2),
        passOn: true,
      });
    }
    expect(calculated).toEqual([...names, ...names]);
  });
  it('steps over somebody absent, and goes on when the one who calculated has left the team', () => {
    const before = readMembers('Ana: calculates\nBen: writes\nCy: records');
    const next = shareRoles({
      before,
      members: [...named('Ana'), { name: 'Ben', absent: true }, ...named('Cy')],
      day: day(2),
      passOn: true,
    });
    expect(next.members[2]?.roles).toContain('calculates');
    const left = shareRoles({ before, members: named('Ben', 'Cy'), day: day(2), passOn: false });
    expect(left.members[0]?.roles).toContain('calculates');
  });
});

describe('membersOn', () => {
  const team = readMembers('Ana\nCy: not here today\nroles of 2026-03-02');
  it('counts an absence on its own day, and not on the next', () => {
    expect(membersOn(team, '2026-03-02').members[1]?.absent).toBe(true);
    expect(membersOn(team, '2026-03-03').members[1]?.absent).toBe(false);
  });
  it('counts one typed without a day', () => {
    expect(membersOn(readMembers('Cy: not here'), '2026-03-03').members[0]?.absent).toBe(true);
  });
});
