import { beforeEach, describe, expect, it } from 'vitest';
import { runWork } from '../../src/desk/runWork.ts';
import { setMembers } from '../../src/desk/teams/setMembers.ts';
import { deskWords } from '../../src/desk/words.ts';
import { roles } from '../../src/lab/lesson/roles.ts';
import { membersTexts } from '../../src/lab/texts/members.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { builtLesson, fern, moss } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const say = deskWords.members;
const [calculates, writes, bench, records] = roles;
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const cell = (key = 'c1-t1', sheet: string = fern) => String(file.cell(sheet, file.rowOf(sheet, key), at.who));
const typed = (text: string, key = 'c1-t1', sheet: string = fern) =>
  file.put(sheet, file.rowOf(sheet, key), at.who, text);
const set = (names: string, absent: readonly string[] = [], base = '') =>
  file.call('setMembers', fern, 'c1-t1', { names, absent, base });
const writeCount = () => file.asked.filter(({ call }) => call === 'writeCells').length;
const refused = (parts: { readonly says: string; readonly advice: string }, received: string, where: string) => ({
  field: 'names',
  message: said({ ...parts, where, received }),
});
const inOtter = say.namesIn('Otter');

describe('saying who is in a team', () => {
  it('shares the roles in the order of the names and hands back who does what', () => {
    expect(valueIn(set('Ana, Ben\nCy; Dov'))).toEqual({
      who: `Ana: ${calculates}\nBen: ${writes}\nCy: ${bench}\nDov: ${records}\n${membersTexts.rolesOf('2026-03-02')}`,
      day: '2026-03-02',
      members: [
        { name: 'Ana', absent: false, roles: [calculates] },
        { name: 'Ben', absent: false, roles: [writes] },
        { name: 'Cy', absent: false, roles: [bench] },
        { name: 'Dov', absent: false, roles: [records] },
      ],
    });
    expect(cell()).toBe(
      `Ana: ${calculates}\nBen: ${writes}\nCy: ${bench}\nDov: ${records}\n${membersTexts.rolesOf('2026-03-02')}`,
    );
  });
  it('writes one cell, and says what it was and what it was worked out from', () => {
    valueIn(set('Ana'));
    const asked = file.asked.flatMap((one) => (one.call === 'writeCells' ? [one.wish] : []));
    const { id } = file.sheetCalled(fern);
    expect(asked).toHaveLength(1);
    expect(asked[0]?.cells).toMatchObject([
      { sheetId: id, row: file.rowOf(fern, 'c1-t1'), column: at.who, was: membersTexts.heading },
    ]);
    expect(asked[0]?.seen.map((seen) => seen.id)).toEqual([id]);
    expect(asked[0]?.read).toEqual({ kinds: ['plan', 'class'] });
  });
  it('gives nobody a role who is absent', () => {
    const { members } = valueIn(set('Ana, Ben', ['Ana']));
    expect(members).toEqual([
      { name: 'Ana', absent: true, roles: [] },
      { name: 'Ben', absent: false, roles: [calculates, writes, bench, records] },
    ]);
  });
  it('passes the roles on with a new day and not within one, nor where no day is written', () => {
    const first = valueIn(set('Ana, Ben, Cy, Dov')).who;
    expect(valueIn(set('Ana, Ben, Cy, Dov', [], first)).who).toBe(first);
    file.state.today = '2026-03-03';
    const second = valueIn(set('Ana, Ben, Cy, Dov', [], first));
    expect(second.members.map(({ roles: [role] }) => role)).toEqual([records, calculates, writes, bench]);
    typed(`Ana: ${calculates}, Ben: ${writes}`);
    const undated = valueIn(set('Ana, Ben', [], `Ana: ${calculates}, Ben: ${writes}`));
    expect(undated.members[0]?.roles[0]).toBe(calculates);
  });
  it('is emptied to the word that says what the cell is for', () => {
    const { who } = valueIn(set('Ana'));
    expect(valueIn(set(' ', [], who))).toEqual({ who: '', day: '', members: [] });
    expect(cell()).toBe(membersTexts.heading);
  });
  it('takes eight people and names of forty letters, and no more', () => {
    const people = Array.from({ length: 9 }, (_, index) => `P${index}`);
    expect(valueIn(set(people.slice(0, 8).join('\n'))).members).toHaveLength(8);
    file = builtLesson();
    expect(valueIn(set('x'.repeat(40))).members).toHaveLength(1);
    file = builtLesson();
    expect(problemOf(set(people.join('\n')))).toEqual(refused(say.tooMany(8), '9', inOtter));
    expect(problemOf(set(`Ana\n${'x'.repeat(41)}`))).toEqual(refused(say.long(40), `“${'x'.repeat(41)}”`, inOtter));
    expect(writeCount()).toBe(0);
  });
  it('refuses one name for two people', () => {
    expect(problemOf(set('Ben, Ana, Ben'))).toEqual(refused(say.twice, say.sameTwice('Ben'), inOtter));
    expect(writeCount()).toBe(0);
  });
  it('leaves alone what somebody wrote there since it was shown', () => {
    typed('Eda');
    expect(problemOf(set('Ana'))).toEqual({ field: 'names', message: said(say.changed) });
    expect(cell()).toBe('Eda');
    expect(writeCount()).toBe(0);
  });
  it('takes the same press once more for what it is, where its answer was lost', () => {
    const first = valueIn(set('Ana, Ben'));
    expect(valueIn(set('Ana, Ben'))).toEqual(first);
    expect(writeCount()).toBe(1);
    expect(problemOf(set('Ana, Cy')).field).toBe('names');
  });
  it('takes a press again that emptied the cell for the same press, and no other words', () => {
    typed('Ana');
    const emptied = () => file.call('setMembers', fern, 'c1-t1', { names: '', absent: [], base: 'Ana' });
    expect(valueIn(emptied())).toEqual(valueIn(emptied()));
    expect(writeCount()).toBe(1);
    typed('Ben');
    expect(problemOf(emptied()).message).toBe(said(say.changed));
  });
  it('leaves alone what somebody writes while it is being sent, and knows those words at once', () => {
    const page = { book: undefined };
    file.before(() => typed('Eda'));
    const outcome = file.run(setMembers(page, fern, 'c1-t1', { names: 'Ana', absent: [], base: '' }));
    expect(problemOf(outcome)).toEqual({ field: 'names', message: said(say.changed) });
    expect(cell()).toBe('Eda');
    expect(file.asked.map(({ call }) => call)).toEqual(['readBook', 'writeCells', 'readBook']);
    expect(valueIn(file.run(setMembers(page, fern, 'c1-t1', { names: 'Ana', absent: [], base: 'Eda' }))).who).toContain(
      'Ana',
    );
  });
  it.each([
    undefined,
    null,
    'Ana',
    {},
    { names: 7, base: '', absent: [] },
    { names: 'Ana', absent: [] },
    { names: 'Ana', base: '', absent: 'Ana' },
  ])('refuses the wish %j, and asks for nothing', (wish) => {
    expect(problemOf(file.call('setMembers', fern, 'c1-t1', wish)).message).toBe(
      said({ ...say.shape, received: typeof wish }),
    );
    expect(file.asked).toEqual([]);
  });
  it('refuses a team that the class has not, and a class that is not there', () => {
    const wish = { names: 'Ana', absent: [], base: '' };
    expect(problemOf(file.call('setMembers', fern, 'c2-t1', wish)).message).toBe(
      said({ ...deskWords.teamUnknown, received: '“c2-t1”' }),
    );
    expect(problemOf(file.call('setMembers', 'Reed class', 'c1-t1', wish)).message).toBe(
      said({ ...deskWords.classUnknown, received: '“Reed class”' }),
    );
    expect(problemOf(file.call('setMembers', 7, 'c1-t1', wish)).message).toBe(
      said({ ...deskWords.classUnknown, received: 'number' }),
    );
  });
  it('hands on that the script is at work', () => {
    const busy = { ok: false, problem: { message: 'Another is at work.', reason: 'busy' } } as const;
    const work = setMembers({ book: undefined }, fern, 'c1-t1', { names: 'Ana', absent: [], base: '' });
    const script = builtLesson();
    expect(
      runWork(work, (asked) => {
        if (asked.call === 'writeCells') return busy;
        return script.answer(asked);
      }),
    ).toEqual(busy);
  });
});

describe('passing the roles on', () => {
  it('does so in teams of the class whose roles are of another day, and in no other', () => {
    typed(`Ana: ${calculates}\nBen: ${writes}, ${membersTexts.absent}\n${membersTexts.rolesOf('2026-03-01')}`);
    typed(`Cy: ${calculates}\nDov: ${writes}\n${membersTexts.rolesOf('2026-03-02')}`, 'c1-t2');
    typed(`Eda: ${calculates}\nFay: ${writes}\n${membersTexts.rolesOf('2026-03-01')}`, 'c2-t1', moss);
    expect(valueIn(file.call('passRoles', fern))).toEqual({ passed: 1 });
    // Ben calculates now: an absence of yesterday is over.
    expect(cell()).toBe(
      `Ana: ${writes}, ${records}\nBen: ${calculates}, ${bench}\n${membersTexts.rolesOf('2026-03-02')}`,
    );
    expect(cell('c1-t2')).toContain(`Cy: ${calculates}`);
    expect(cell('c2-t1', moss)).toContain('2026-03-01');
    expect(writeCount()).toBe(1);
  });
  it('changes nothing when pressed twice, and nothing in a team without names', () => {
    expect(valueIn(file.call('passRoles', fern))).toEqual({ passed: 0 });
    typed('Ana\nBen');
    expect(valueIn(file.call('passRoles', fern))).toEqual({ passed: 1 });
    expect(valueIn(file.call('passRoles', fern))).toEqual({ passed: 0 });
    expect(writeCount()).toBe(1);
  });
  it('works it out anew where somebody was quicker', () => {
    typed('Ana\nBen');
    file.before(() => typed('Ana\nBen\nCy'));
    expect(valueIn(file.call('passRoles', fern))).toEqual({ passed: 1 });
    expect(cell()).toContain('Cy');
  });
  it('needs a class that is there', () => {
    expect(problemOf(file.call('passRoles', 'Reed class')).message).toContain('“Reed class”');
  });
});
