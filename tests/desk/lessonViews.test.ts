import { beforeEach, describe, expect, it } from 'vitest';
import { firstSetup } from '../../src/desk/lesson/firstSetup.ts';
import { solutesFor } from '../../src/desk/lesson/solutesFor.ts';
import { deskWords } from '../../src/desk/words.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { proposedSolutes } from '../../src/lab/lesson/solutes.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';

const plan = words.plan.sheet;
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const setting = (name: string, value: string) =>
  file.put(plan, file.sheetCalled(plan).cells.findIndex(([one]) => one === name) + 1, 2, value);
const spoilPlan = () => {
  for (const line of file.sheetCalled(plan).cells) if (line[0] === words.plan.key) line[0] = 'number';
};
const activityOf = (id: string) => activityById(id) as Activity;

describe('the lesson', () => {
  it('begins with a first plan in a file that has none', () => {
    const empty = paperFile({ decimalMark: 'comma' });
    const lesson = valueIn(empty.call('readLesson'));
    expect(lesson).toMatchObject({ built: false, decimalMark: 'comma', classes: [], problems: [] });
    expect(lesson.setup).toEqual(firstSetup('comma'));
    expect(lesson).not.toHaveProperty('building');
    expect(lesson.solutes).toEqual(proposedSolutes());
    expect(lesson.activities.map(({ id }) => id)).toEqual(allActivities().map(({ id }) => id));
  });
  it('is the Plan as it stands, with the classes that have their sheets', () => {
    const lesson = valueIn(file.call('readLesson'));
    expect(lesson).toMatchObject({ built: true, decimalMark: 'point', classes: [fern, moss], problems: [] });
    expect(lesson.setup).toEqual({ ...setup, settings: { ...setup.settings } });
    const sheet = file.sheetCalled(moss);
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'building' };
    setting('decimal mark', 'comma');
    expect(valueIn(file.call('readLesson'))).toMatchObject({ built: true, decimalMark: 'comma', classes: [fern] });
  });
  it('is not built while no class has its sheet', () => {
    const begun = paperFile();
    valueIn(begun.call('startBuild', setup));
    expect(valueIn(begun.call('readLesson'))).toMatchObject({
      built: false,
      classes: [],
      building: { done: 1, total: 7, finished: false },
    });
  });
  it('tells what is odd in the Plan, and links in Help that are none', () => {
    setting('periods', '3');
    const { cells } = file.sheetCalled(words.help.sheet);
    const row = cells.findIndex((line) => line[0] === 'molar mass') + 1;
    file.put(words.help.sheet, row, 4, 'see the board');
    const { problems } = valueIn(file.call('readLesson'));
    expect(problems).toHaveLength(2);
    expect(problems[0]).toContain('periods');
    expect(problems[1]).toContain('see the board');
  });
  it('is refused where the Plan cannot be read, and taken as none while the Plan is still being made', () => {
    spoilPlan();
    for (const name of ['readLesson', 'readNumbers', 'readRecord', 'readPreparation'] as const)
      expect(problemOf(file.call(name)).message).toContain(words.plan.key);
    const sheet = file.sheetCalled(plan);
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'building' };
    expect(valueIn(file.call('readLesson')).setup).toEqual(firstSetup('point'));
  });
});

describe('the numbers of the teams', () => {
  it('are those of the Plan, edits by hand included', () => {
    const row = file.sheetCalled(plan).cells.findIndex(([key]) => key === 'c1-t2') + 1;
    file.put(plan, row, 5, '0.450');
    setting('decimal mark', 'comma');
    const numbers = valueIn(file.call('readNumbers'));
    expect(numbers).toMatchObject({ activity: setup.activity, decimalMark: 'comma' });
    expect(numbers.typical).toEqual(setup.givens);
    expect(numbers.teams.map(({ key, givens }) => [key, givens['stock molarity']])).toEqual([
      ['c1-t1', '0.300'],
      ['c1-t2', '0.450'],
      ['c2-t1', '0.300'],
    ]);
  });
  it('are those that a first plan starts from in a file without one', () => {
    const empty = paperFile({ decimalMark: 'comma' });
    const { activity, givens } = firstSetup('comma');
    expect(valueIn(empty.call('readNumbers'))).toEqual({ activity, decimalMark: 'comma', typical: givens, teams: [] });
    expect(valueIn(paperFile().call('readNumbers')).decimalMark).toBe('point');
  });
  it('are drafted without writing anything, and keep the keys that teams have', () => {
    const draft = valueIn(file.call('draftTeams', setup));
    expect(draft.givenNames).toEqual(activityOf(setup.activity).givens.map(({ name }) => name));
    expect(draft.teams.map(({ key, team }) => `${key} ${team}`)).toEqual(['c1-t1 Otter', 'c1-t2 Heron', 'c2-t1 Newt']);
    expect(draft.teams[0]?.givens).toMatchObject({ 'stock molarity': '0.300' });
    expect(file.asked.map(({ call }) => call)).toEqual(['readBook']);
    const row = file.sheetCalled(plan).cells.findIndex(([key]) => key === 'c1-t1') + 1;
    file.put(plan, row, 5, '0.450');
    expect(valueIn(file.call('draftTeams', setup)).teams[0]?.givens['stock molarity']).toBe('0.450');
    expect(valueIn(paperFile().call('draftTeams', setup)).teams).toHaveLength(3);
  });
  it('cannot be drafted from a plan that is none, or from numbers that the shelf cannot make', () => {
    expect(problemOf(file.call('draftTeams', 'x')).message).toContain(deskWords.setupProblems.shape.says);
    const wrong = { ...setup, givens: { ...setup.givens, formula: 'Qq' } };
    expect(problemOf(file.call('draftTeams', wrong)).field).toBe('givens.formula');
    expect(problemOf(file.call('startBuild', wrong)).field).toBe('givens.formula');
  });
});

describe('the substances of an activity', () => {
  const formulas = (id: string) => solutesFor(activityOf(id))?.map(({ formula }) => formula);

  it('are all that the planner proposes where any will do', () => {
    expect(formulas('stock and dilution')).toBeUndefined();
    expect(formulas('serial dilution')).toBeUndefined();
  });
  it('are hydrates where crystals that hold water are weighed', () => {
    const found = formulas('solution from a hydrate') ?? [];
    expect(found).toContain('CuSO4·5H2O');
    expect(found.every((formula) => formula.includes('·'))).toBe(true);
  });
  it('are those of a table where the activity has its own', () => {
    expect(formulas('concentrated reagent')).toEqual(['HCl', 'H2SO4', 'HNO3', 'H3PO4', 'CH3COOH', 'HCOOH']);
    expect(formulas('measured density')).toContain('C12H22O11');
    expect(formulas('weighed residue')).not.toContain('CuSO4·5H2O');
  });
});
