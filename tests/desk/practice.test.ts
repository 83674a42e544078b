import { beforeEach, describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import { isPractice } from '../../src/lab/lesson/practice.ts';
import { classColumns as at, planColumns } from '../../src/workbook/layout.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const add = (className: string = fern) => file.finish(file.call('addPractice', className));
const plan = () => {
  const reading = readLesson(
    file.sheetCalled('Plan').cells.map((line) => line.map((cell) => (typeof cell === 'object' ? '' : cell))),
  );
  if (!reading.ok) throw new Error('Expected a Plan.');
  return reading.value;
};
const lines = (className: string = fern) => plan().teams.filter((line) => line.className === className);
const numbers = (className: string = fern) =>
  lines(className).map(({ givens }) =>
    ['stock molarity', 'flask', 'target molarity', 'target volume'].map((name) => givens[name]).join(' '),
  );
const practiceOf = (className: string = fern) => lines(className).filter(isPractice);

describe('addPractice', () => {
  it('adds a line with a key of its own and numbers that nobody of the class has, and a block below the others', () => {
    add();
    add();
    expect(practiceOf().map(({ key, team }) => [key, team])).toEqual([
      ['practice-1', 'Practice 1'],
      ['practice-2', 'Practice 2'],
    ]);
    expect(new Set(numbers().slice(1)).size).toBe(3);
    const view = valueIn(file.call('readClass', fern));
    expect(view.teams.map(({ team, practice }) => [team, practice])).toEqual([
      ['Otter', undefined],
      ['Heron', undefined],
      ['Practice 1', true],
      ['Practice 2', true],
    ]);
    add(moss);
    expect(practiceOf(moss).map(({ key, team }) => [key, team])).toEqual([['practice-3', 'Practice 1']]);
  });
  it('writes the Plan and the sheet of that class, and asks for nothing else', () => {
    file.asked.length = 0;
    add();
    expect(file.asked.map((one) => (one.call === 'applySheet' ? one.wish.plan.name : one.call))).toEqual([
      'readBook',
      'Plan',
      'readBook',
      fern,
    ]);
    const keys = file.sheetCalled('Progress').cells.flat();
    expect(keys).not.toContain('practice-1');
  });
  it('does not take a team for practice that people call so, and finds another name', () => {
    file.finish(file.call('addTeam', fern, 'Practice 1'));
    expect(practiceOf()).toEqual([]);
    expect(valueIn(file.call('readTeams')).classes[0]?.teams.map(({ team }) => team)).toContain('Practice 1');
    add();
    expect(practiceOf().map(({ team }) => team)).toEqual(['Practice 2']);
    const twice = problemOf(file.call('addTeam', fern, 'Practice 2'));
    expect(twice.message).toBe(said({ ...deskWords.setupProblems.teamTwice, where: fern, received: '“Practice 2”' }));
  });
  it('uses no key again that a block still has, after its line was taken out by hand', () => {
    add();
    const { cells } = file.sheetCalled('Plan');
    const row = cells.findIndex((line) => line[0] === 'practice-1');
    cells[row] = (cells[row] ?? []).map(() => '');
    add();
    expect(practiceOf().map(({ key, team }) => [key, team])).toEqual([['practice-2', 'Practice 1']]);
  });
  it('goes on with one that stopped behind the Plan, and makes no second', () => {
    valueIn(file.call('addPractice', fern));
    file.finish(file.call('addPractice', fern));
    expect(practiceOf().map(({ key }) => key)).toEqual(['practice-1']);
    // The note of the build is lost as well: the line without a block says what is missing.
    file.call('addPractice', fern);
    file.state.note = '';
    add();
    expect(practiceOf().map(({ key }) => key)).toEqual(['practice-1', 'practice-2']);
    expect(valueIn(file.call('readClass', fern)).teams).toHaveLength(4);
  });
  it('is refused while a build runs, for a class that is not there, and where the shelf has no more numbers', () => {
    valueIn(file.call('startBuild', { ...setup, classes: [...setup.classes, { name: 'Reed', teams: ['Pike'] }] }));
    const before = JSON.stringify(file.state);
    expect(problemOf(file.call('addPractice', fern)).message).toBe(said(deskWords.practice.building));
    expect(JSON.stringify(file.state)).toBe(before);

    const other = builtLesson();
    expect(problemOf(other.call('addPractice', 'Nobody’s class')).message).toContain('Nobody’s class');

    const narrow = {
      ...setup,
      activity: 'serial dilution',
      givens: { formula: 'KBr', 'stock molarity': '1', portion: '10', flask: '100' },
      shelf: { ...setup.shelf, flasksMl: [100], pipettesMl: [10] },
    };
    other.finish(other.call('startBuild', narrow, { setAside: true }));
    let refused = '';
    for (let more = 0; more < 12 && refused === ''; more += 1) {
      const outcome = other.call('addPractice', fern);
      if (outcome.ok) other.finish(outcome);
      else refused = outcome.problem.message;
    }
    expect(refused).toBe(said({ ...deskWords.practice.noNumbers, where: fern }));
  });
  it('stays through another build, a rename, a sorted Plan and a late team, with what was typed', () => {
    add();
    fillRow(file, { key: 'practice-1', step: 'molar mass' }, { entry: '119.0', check: 'on target' });
    const before = numbers();
    const renamedClasses = [{ name: 'Willow class', teams: ['Otter', 'Heron'] }, ...setup.classes.slice(1)];
    file.finish(file.call('startBuild', { ...setup, classes: renamedClasses }, { names: 'same' }));
    expect(lines('Willow class').map(({ team }) => team)).toEqual(['Otter', 'Heron', 'Practice 1']);
    expect(numbers('Willow class')).toEqual(before);
    const { cells } = file.sheetCalled('Plan');
    const first = cells.findIndex((line) => line[planColumns.key - 1] === 'c1-t1');
    cells.splice(first, 4, ...cells.slice(first, first + 4).reverse());
    file.finish(file.call('addTeam', 'Willow class', 'Late'));
    const [sheet] = file.names().filter((name) => /Fern|Willow/.test(name) && !name.includes('kept'));
    const row = file.rowOf(sheet ?? '', 'practice-1', 'molar mass');
    expect(file.cell(sheet ?? '', row, at.entry)).toBe('119.0');
    expect(practiceOf('Willow class')).toHaveLength(1);
    // Other numbers for all are other numbers for practice.
    const other = { ...setup, ownNumbers: true, settings: { ...setup.settings, seed: '77' } };
    const classes = [{ name: 'Willow class', teams: ['Otter', 'Heron', 'Late'] }, ...setup.classes.slice(1)];
    file.finish(file.call('startBuild', { ...other, classes }, { names: 'same', setAside: true }));
    const now = numbers('Willow class');
    expect(new Set(now).size).toBe(now.length);
    expect(lines('Willow class')).toHaveLength(4);
  });
});

describe('practice whose class has another name in the lines of its teams, by hand', () => {
  const rename = () => {
    const cells = file.sheetCalled('Plan').cells;
    cells.forEach((line, index) => {
      if (/^c1-t/.test(String(line[0]))) file.put('Plan', index + 1, planColumns.className, 'Third period');
    });
  };
  beforeEach(() => {
    add();
    fillRow(file, { key: 'practice-1', step: 'molar mass' }, { entry: '119.00' });
    rename();
  });
  it('goes with it when the lesson is built, with what was typed', () => {
    file.finish(file.call('startBuild', valueIn(file.call('readLesson')).setup));
    expect(practiceOf('Third period').map(({ key }) => key)).toEqual(['practice-1']);
    const row = file.rowOf('Third period', 'practice-1', 'molar mass');
    expect(file.cell('Third period', row, at.entry)).toBe('119.00');
  });
  it('loses nothing where a team joins another class', () => {
    file.finish(file.call('addTeam', moss, 'Vole'));
    expect(file.names().filter((name) => name.includes('kept'))).toEqual([]);
    expect(practiceOf('Third period').map(({ key }) => key)).toEqual(['practice-1']);
  });
});

describe('practice', () => {
  beforeEach(() => {
    add();
    for (const step of ['molar mass', 'moles of solute', 'mass of solute'])
      fillRow(
        file,
        { key: 'practice-1', step },
        {
          entry: '1',
          check: 'not yet',
          lookAt: 'Your value matches a thing. Why?',
          tries: 9,
          time: '2026-03-02T09:00:00Z',
        },
      );
  });
  it('is in no count of the record, no reminder and no name that the Record refuses', () => {
    const [entry] = valueIn(file.call('readRecord')).classes;
    expect(entry?.hasEntriesToday).toBe(false);
    expect(entry?.proposal).toMatchObject({
      present: '2 of 2 teams',
      finished: '0 of 2 teams',
      hard: '',
      wentWell: '',
    });
    expect(valueIn(file.call('recordDue')).due).toEqual([]);
    const row = { ...entry?.proposal, notes: 'Two came for Practice 1 at noon.' };
    expect(file.call('saveRecord', [{ entry: row }]).ok).toBe(true);
  });
  it('is talked to first only where it asks for help', () => {
    expect(valueIn(file.call('readClass', fern)).talkFirst).toEqual([]);
    expect(valueIn(file.call('readClass', fern)).sayToClass).toBe('');
    fillRow(file, { key: 'practice-1', step: 'molar mass' }, { entry: '1', check: 'not yet', help: '2' });
    expect(valueIn(file.call('readClass', fern)).talkFirst.map(({ team }) => team)).toEqual(['Practice 1']);
  });
  it('is in the key and on paper, and marked apart in what to prepare', () => {
    expect(valueIn(file.call('readKey')).teams.map(({ team }) => team)).toContain('Practice 1');
    const { sections } = valueIn(file.call('readPreparation'));
    const without = valueIn(builtLesson().call('readPreparation')).sections;
    expect(sections.filter(({ name }) => name !== 'practice')).toEqual(without);
    const practice = sections.find(({ name }) => name === 'practice');
    expect(practice?.rows.length).toBeGreaterThan(0);
    for (const { note } of practice?.rows ?? []) expect(note).toContain(`Practice 1 (${fern})`);
  });
  it('is no team of the lesson in the sidebar, and is not given on to colleagues', () => {
    const view = valueIn(file.call('readTeams'));
    expect(view.classes[0]?.teams.map(({ team }) => team)).toEqual(['Otter', 'Heron']);
    expect(view.classes[0]?.practice).toEqual(['Practice 1']);
    expect(valueIn(file.call('readLesson')).setup.classes[0]?.teams).toEqual(['Otter', 'Heron']);
    file.finish(file.call('emptyCopy', { fileName: 'Invented school', keepHints: false, removeOthers: false }));
    expect(lines(words.share.className(1)).map(({ key }) => key)).toEqual(['c1-t1', 'c1-t2']);
  });
});
