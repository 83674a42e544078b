import { beforeEach, describe, expect, it } from 'vitest';
import { absentKeys } from '../../src/desk/teams/absentKeys.ts';
import { deskWords } from '../../src/desk/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { membersTexts } from '../../src/lab/texts/members.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import type { PlanReading } from '../../src/workbook/readLesson.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, moss } from './builtLesson.ts';
import { type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const sheet = words.plan.sheet;
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const cells = () => file.sheetCalled(sheet).cells;
const headingRow = () =>
  cells().findIndex(([key, name]) => key === words.plan.key && name === words.plan.className) + 1;
const column = () => (cells()[headingRow() - 1]?.indexOf('purity') ?? 0) + 2;
const rowOf = (key: string) => cells().findIndex((line, index) => index >= headingRow() && line[0] === key) + 1;
const mark = (key: string) => file.cell(sheet, rowOf(key), column());
const absent = () =>
  valueIn(file.call('readTeams')).classes.flatMap(({ teams }) =>
    teams.flatMap((team) => (team.absent ? [team.team] : [])),
  );
const wishes = () => file.asked.flatMap((one) => (one.call === 'writeCells' ? [one.wish.cells] : []));

describe('a team that is marked absent', () => {
  it('has the day in its line of the Plan, and counts for that day', () => {
    valueIn(file.call('setAbsent', 'c1-t2', true));
    expect(mark('c1-t2')).toBe(`${words.plan.absent} 2026-03-02`);
    expect(absent()).toEqual(['Heron']);
    file.state.today = '2026-03-03';
    expect(absent()).toEqual([]);
  });
  it('is noted beside a column of the teacher’s own, and not over it', () => {
    const line = cells()[headingRow() - 1] ?? [];
    line.splice(column() - 1, line.length, 'seat');
    file.put(sheet, rowOf('c1-t2'), column(), 'window');
    valueIn(file.call('setAbsent', 'c1-t2', true));
    expect([mark('c1-t2'), absent()]).toEqual(['window', ['Heron']]);
  });
  it('is there again when the mark is taken away', () => {
    valueIn(file.call('setAbsent', 'c1-t2', true));
    valueIn(file.call('setAbsent', 'c1-t2', false));
    expect(mark('c1-t2')).toBe('');
    expect(absent()).toEqual([]);
    valueIn(file.call('setAbsent', 'c1-t2', 'yes'));
    expect(mark('c1-t2')).toBe('');
  });
  it('stays where it was marked by hand without a day, while marks of days gone by are taken away', () => {
    file.put(sheet, rowOf('c1-t1'), column(), words.plan.absent);
    file.put(sheet, rowOf('c1-t2'), column(), `${words.plan.absent} 2026-03-01`);
    valueIn(file.call('setAbsent', 'c2-t1', true));
    expect([mark('c1-t1'), mark('c1-t2'), mark('c2-t1')]).toEqual([
      words.plan.absent,
      '',
      `${words.plan.absent} 2026-03-02`,
    ]);
    expect(wishes()[0]).toHaveLength(2);
    valueIn(file.call('setAbsent', 'c1-t1', false));
    // A mark of today stays.
    expect([mark('c1-t1'), mark('c2-t1')]).toEqual(['', `${words.plan.absent} 2026-03-02`]);
    expect(wishes()[1]).toHaveLength(1);
  });
  it('writes its own cell once where its mark is of a day gone by', () => {
    file.put(sheet, rowOf('c1-t2'), column(), `${words.plan.absent} 2026-03-01`);
    valueIn(file.call('setAbsent', 'c1-t2', true));
    expect(wishes()[0]).toEqual([
      {
        sheetId: file.sheetCalled(sheet).id,
        row: rowOf('c1-t2'),
        column: column(),
        was: `${words.plan.absent} 2026-03-01`,
        now: `${words.plan.absent} 2026-03-02`,
      },
    ]);
  });
  it('brings the heading into a Plan that has not got it', () => {
    const taken = column();
    file.put(sheet, headingRow(), taken, '');
    valueIn(file.call('setAbsent', 'c1-t1', true));
    expect(file.cell(sheet, headingRow(), taken)).toBe(words.plan.today);
    expect(absent()).toEqual(['Otter']);
  });
  it('is refused where the key is not in the Plan, in a file without one, and where its column cannot be told', () => {
    expect(problemOf(file.call('setAbsent', 'nobody', true)).message).toBe(
      said({ ...deskWords.teams.unknown, received: '“nobody”' }),
    );
    // The heading of the lines is no team.
    expect(problemOf(file.call('setAbsent', words.plan.key, true)).message).toContain(`“${words.plan.key}”`);
    expect(problemOf(paperFile().call('setAbsent', 'c1-t1', true)).message).toBe(said(deskWords.teams.noLesson));
    expect(wishes()).toEqual([]);
  });
  it('is worked out anew where somebody sorted the Plan meanwhile', () => {
    file.before(() => {
      const [first, second] = [rowOf('c1-t1'), rowOf('c1-t2')];
      const [one = [], other = []] = [cells()[first - 1], cells()[second - 1]];
      cells()[first - 1] = other;
      cells()[second - 1] = one;
    });
    valueIn(file.call('setAbsent', 'c1-t1', true));
    expect(absent()).toEqual(['Otter']);
  });
});

describe('absentKeys', () => {
  it('takes marks of this day and those without one', () => {
    const plan = {
      absent: [
        { key: 'a', day: '' },
        { key: 'b', day: '2026-03-02' },
        { key: 'c', day: '2026-03-01' },
      ],
    } as unknown as PlanReading;
    expect(absentKeys(plan, '2026-03-02')).toEqual(['a', 'b']);
    expect(absentKeys(undefined, '2026-03-02')).toEqual([]);
  });
});

describe('readTeams', () => {
  it('lists classes and teams as the Plan has them, with the people of those that have a block', () => {
    file.put(moss, file.rowOf(moss, 'c2-t1'), at.who, 'Ana\nBen');
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== fern);
    const help = { level: '', extension: '' };
    const lessonHelp = { level: '3', suggestion: activityById('stock and dilution')?.extension };
    expect(valueIn(file.call('readTeams'))).toEqual({
      day: '2026-03-02',
      classes: [
        {
          name: fern,
          lessonHelp,
          practice: [],
          teams: [
            { team: 'Otter', key: 'c1-t1', absent: false, help },
            { team: 'Heron', key: 'c1-t2', absent: false, help },
          ],
        },
        {
          name: moss,
          lessonHelp,
          practice: [],
          teams: [
            {
              team: 'Newt',
              key: 'c2-t1',
              absent: false,
              help,
              members: {
                who: 'Ana\nBen',
                day: '',
                members: [
                  { name: 'Ana', absent: false, roles: [] },
                  { name: 'Ben', absent: false, roles: [] },
                ],
              },
            },
          ],
        },
      ],
    });
  });
  it('ends an absence of a person with its day', () => {
    const text = `Ana: ${membersTexts.absent}\n${membersTexts.rolesOf('2026-03-02')}`;
    file.put(moss, file.rowOf(moss, 'c2-t1'), at.who, text);
    const ana = () => valueIn(file.call('readTeams')).classes[1]?.teams[0]?.members?.members[0]?.absent;
    expect(ana()).toBe(true);
    file.state.today = '2026-03-03';
    expect(ana()).toBe(false);
  });
  it('needs a lesson', () => {
    expect(problemOf(paperFile().call('readTeams')).message).toBe(said(deskWords.teams.noLesson));
  });
});
