import { beforeEach, describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import { withExitSteps } from '../../src/lab/exit/withExitSteps.ts';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { lessonActivity } from '../../src/lab/lesson/lessonActivity.ts';
import { showExitGiven } from '../../src/lab/lesson/teamColumns.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { copyOf, type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const asked = { ...setup, ownNumbers: true, settings: { ...setup.settings, 'exit questions': '2' } };
let built: PaperFile | undefined;
let file: PaperFile;
beforeEach(() => {
  if (built === undefined) {
    built = builtLesson();
    fillRow(built, { step: 'molar mass' }, { entry: '119.00', check: 'on target', who: 'records' });
    built.finish(built.call('startBuild', asked));
  }
  file = copyOf(built);
});
const reading = (of = file) => {
  const read = readLesson(
    of.sheetCalled('Plan').cells.map((line) => line.map((cell) => (typeof cell === 'object' ? '' : cell))),
  );
  if (!read.ok) throw new Error('Expected a Plan.');
  return read.value;
};
const rightOf = (key: string, step: string): string => {
  const { setup: now, teams } = reading();
  const activity = lessonActivity(now.settings);
  const team = teams.find((line) => line.key === key);
  if (activity === undefined || team === undefined) throw new Error(`Expected the team ${key}.`);
  const whole = withExitSteps(activity, now.settings);
  return teamKey({ activity: whole, team, settings: now.settings }).find((line) => line.step === step)?.answer ?? '';
};
const answer = (key: string, step: string, entry: string, sheet = fern) =>
  fillRow(file, { sheet, key, step }, { entry, check: 'kept', time: '2026-03-02T10:14:00Z' });
const exit = () => valueIn(file.call('readClass', fern)).exit;

describe('exit questions in a class', () => {
  it('get a row for each seat at the end of every block, and nothing typed is lost', () => {
    const row = file.rowOf(fern, 'c1-t1', 'molar mass');
    expect([file.cell(fern, row, at.entry), file.cell(fern, row, at.who)]).toEqual(['119.00', 'records']);
    const last = file.rowOf(fern, 'c1-t1', 'in your words');
    expect(['exit 1', 'exit 2'].map((step) => file.rowOf(fern, 'c1-t1', step) - last)).toEqual([1, 2]);
    answer('c1-t1', 'exit 1', '12.3');
    // A late team, practice and the same build again.
    file.finish(file.call('addTeam', fern, 'Late'));
    file.finish(file.call('addPractice', fern));
    file.finish(file.call('startBuild', { ...asked, classes: reading().setup.classes }));
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1', 'exit 1'), at.entry)).toBe('12.3');
    const all = reading().teams.filter(({ className }) => className === fern);
    expect(all).toHaveLength(4);
    for (const { givens } of all) expect(givens['exit 2 molarity']).toMatch(/^0\.\d+$/);
  });
  it('are counted for the teacher before anybody sees a check: right ones, the common slip, formulas', () => {
    expect(exit()).toEqual({ seats: 4, answered: 0, right: 0, formulas: 0, shown: 'no' });
    answer('c1-t1', 'exit 1', rightOf('c1-t1', 'exit 1'));
    answer('c1-t1', 'exit 2', String(Number(rightOf('c1-t1', 'exit 2')) / 1000));
    answer('c1-t2', 'exit 1', String(Number(rightOf('c1-t2', 'exit 1')) / 1000));
    expect(exit()).toEqual({
      seats: 4,
      answered: 3,
      right: 1,
      formulas: 0,
      common: { fits: 'the right volume in litres', count: 2 },
      shown: 'no',
    });
    answer('c1-t2', 'exit 2', rightOf('c1-t2', 'exit 2'));
    Object.assign(file.sheetCalled(fern), { formulaEntries: [file.rowOf(fern, 'c1-t2', 'exit 2')] });
    expect(exit()).toMatchObject({ answered: 3, right: 1, formulas: 1 });
  });
  it('name no slip that one answer alone has', () => {
    answer('c1-t1', 'exit 2', String(Number(rightOf('c1-t1', 'exit 2')) / 1000));
    expect(exit()).not.toHaveProperty('common');
  });
  it('leave the class as counts alone: in the record, in no step of a team and in nobody to talk to', () => {
    answer('c1-t1', 'exit 1', rightOf('c1-t1', 'exit 1'));
    fillRow(file, { key: 'c1-t1', step: 'exit 2' }, { entry: '5', check: 'not yet', lookAt: 'What?', tries: 8 });
    const entry = valueIn(file.call('readRecord')).classes.find(({ proposal }) => proposal.className === fern);
    expect(entry?.proposal.finished).toBe('0 of 2 teams, exit question right: 1 of 2');
    expect(JSON.stringify(entry?.proposal)).not.toContain('seat');
    const view = valueIn(file.call('readClass', fern));
    expect([view.stepCount, view.teams[0]?.done, view.talkFirst]).toEqual([14, 0, []]);
    expect(file.sheetCalled('Progress').cells.flat().join()).not.toContain('Exit');
    expect(valueIn(file.call('readKey')).teams[0]?.lines.filter(({ title }) => title.startsWith('Exit'))).toHaveLength(
      2,
    );
    expect(valueIn(file.call('readPaper')).teams[0]?.steps.at(-1)?.shown).toMatch(/^Volume of 0\.\d+ mol\/L solution/);
  });
});

describe('exit questions in the record', () => {
  const finishedOn = (today: string) => {
    Object.assign(file.state, { today, now: Date.parse(`${today}T10:15:00Z`) });
    const { classes } = valueIn(file.call('readRecord'));
    return classes.find(({ proposal }) => proposal.className === fern)?.proposal.finished;
  };
  it('count on the day on which they were answered, and on no other', () => {
    answer('c1-t1', 'exit 1', rightOf('c1-t1', 'exit 1'));
    expect(finishedOn('2026-03-02')).toBe('0 of 2 teams, exit question right: 1 of 1');
    expect(finishedOn('2026-03-09')).toBe('0 of 2 teams');
    fillRow(
      file,
      { key: 'c1-t2', step: 'exit 1' },
      { entry: rightOf('c1-t2', 'exit 1'), check: 'kept', time: '2026-03-09T10:14:00Z' },
    );
    expect(finishedOn('2026-03-09')).toBe('0 of 2 teams, exit question right: 1 of 1');
    // The class now counts all of the lesson.
    expect(exit()).toMatchObject({ answered: 2, right: 2 });
  });
  it('say nothing where nobody has answered', () => {
    expect(finishedOn('2026-03-02')).toBe('0 of 2 teams');
  });
});

describe('showExitChecks', () => {
  const said1 = () => reading().teams.map(({ className, givens }) => [className, givens[showExitGiven]]);
  it('writes a yes into the lines of that class alone, and takes it away again', () => {
    valueIn(file.call('showExitChecks', fern, true));
    expect(said1()).toEqual([
      [fern, 'yes'],
      [fern, 'yes'],
      [moss, ''],
    ]);
    expect(exit()?.shown).toBe('class');
    valueIn(file.call('showExitChecks', fern, false));
    expect(exit()?.shown).toBe('no');
    expect(said1().map(([, yes]) => yes)).toEqual(['', '', '']);
  });
  it('says so where the Plan shows them to all, where the class is gone and where there are none', () => {
    const { cells } = file.sheetCalled('Plan');
    const row = cells.findIndex((line) => line[0] === 'show exit checks') + 1;
    file.put('Plan', row, 2, 'yes');
    expect(exit()?.shown).toBe('lesson');
    expect(problemOf(file.call('showExitChecks', fern, false)).message).toBe(said(deskWords.exit.forLesson));
    expect(problemOf(file.call('showExitChecks', 'Nobody', true)).message).toContain('Nobody');
    expect(problemOf(builtLesson().call('showExitChecks', fern, true)).message).toBe(said(deskWords.exit.none));
  });
});

describe('fewer seats, or nine', () => {
  it('ask before answers are set aside, and nine are none, said in the Plan', () => {
    answer('c1-t1', 'exit 2', '12.3');
    const fewer = { ...asked, settings: { ...asked.settings, 'exit questions': '1' } };
    expect(problemOf(file.call('startBuild', fewer)).question).toMatchObject({ about: 'typed', cells: 1 });
    const { cells } = file.sheetCalled('Plan');
    file.put('Plan', cells.findIndex((line) => line[0] === 'exit questions') + 1, 2, '9');
    expect(reading().problems).toEqual([
      'The setting “exit questions” can’t be “9”. Choose 0 or 1 or 2 or 3 or 4 in the Plan.',
    ]);
    expect(exit()).toBeUndefined();
  });
});
