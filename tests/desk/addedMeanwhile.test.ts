import { beforeEach, describe, expect, it } from 'vitest';
import type { BuildAnswers } from '../../src/desk/building/buildNote.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';

let file: PaperFile;
/** Keys that stood in the Plan when a window began to type its plan. */
let knows: readonly string[];
beforeEach(() => {
  file = builtLesson();
  knows = valueIn(file.call('readLesson')).keys;
});
const classesAre = (...classes: readonly (readonly [name: string, ...teams: string[]])[]) => ({
  ...setup,
  classes: classes.map(([name, ...teams]) => ({ name, teams })),
});
const build = (wanted: typeof setup, answers: BuildAnswers = {}) =>
  file.finish(file.call('startBuild', wanted, answers, knows));
const classes = () =>
  valueIn(file.call('readLesson')).setup.classes.map(({ name, teams }) => [name, ...teams].join(' '));
const kept = () => file.names().filter((name) => /^(Fern|Moss|Plan).*kept/.test(name));
const addTeam = (team = 'Wren', name: string = fern) => file.finish(file.call('addTeam', name, team));
const type = (key: string, text: string, sheet: string = fern) =>
  file.put(sheet, file.rowOf(sheet, key, 'molar mass'), at.entry, text);
const entry = (key: string, sheet: string = fern) => file.cell(sheet, file.rowOf(sheet, key, 'molar mass'), at.entry);

describe('a team that another window added while a plan was typed', () => {
  it('stays with its rows and entries when that plan is built, and nothing is put aside', () => {
    addTeam();
    type('c1-t3', '119.00');
    build(setup);
    expect(classes()).toEqual([`${fern} Otter Heron Wren`, `${moss} Newt`]);
    expect(entry('c1-t3')).toBe('119.00');
    expect(kept()).toEqual([]);
  });
  it('stays in its class where that goes on under another name, and is nobody else’s new name', () => {
    addTeam();
    type('c1-t3', '119.00');
    build(classesAre(['Third period', 'Otter', 'Heron', 'Pike'], [moss, 'Newt']));
    expect(classes()).toEqual(['Third period Otter Heron Wren Pike', `${moss} Newt`]);
    expect(entry('c1-t3', 'Third period')).toBe('119.00');
    expect(kept()).toEqual([]);
  });
  it('is the one that this plan adds under the same name', () => {
    addTeam();
    build(classesAre([fern, 'Otter', 'Heron', 'wren'], [moss, 'Newt']));
    expect(classes()).toEqual([`${fern} Otter Heron wren`, `${moss} Newt`]);
    expect(valueIn(file.call('readLesson')).keys).toEqual(['c1-t1', 'c1-t2', 'c2-t1', 'c1-t3']);
  });
  it('is told where this plan gives its name to another team', () => {
    addTeam();
    expect(
      problemOf(file.call('startBuild', classesAre([fern, 'Otter', 'Wren'], [moss, 'Newt']), {}, knows)).message,
    ).toContain('“Wren”');
  });
  it('keeps its class in the file where this plan takes that out', () => {
    addTeam('Vole', moss);
    build(classesAre([fern, 'Otter', 'Heron']));
    expect(classes()).toEqual([`${fern} Otter Heron`, `${moss} Vole`]);
  });
  it('does not stay where the plan knew it and leaves it out', () => {
    addTeam();
    knows = valueIn(file.call('readLesson')).keys;
    build(setup);
    expect(classes()).toEqual([`${fern} Otter Heron`, `${moss} Newt`]);
  });
  it('goes along to the next lesson of its class', () => {
    addTeam();
    const seed = { settings: { ...setup.settings, seed: '77' } };
    file.finish(file.call('nextLesson', { ...setup, ...seed }, { knows }, { sameDay: true }));
    expect(classes()).toEqual([`${fern} Otter Heron Wren`, `${moss} Newt`]);
  });
});

describe('a class that another window added while a plan was typed', () => {
  it('stays', () => {
    file.finish(file.call('addClass', 'Reed class', ['Carp']));
    build(classesAre([fern, 'Otter', 'Heron'], [moss, 'Newt', 'Vole']));
    expect(classes()).toEqual([`${fern} Otter Heron`, `${moss} Newt Vole`, 'Reed class Carp']);
    expect(kept()).toEqual([]);
  });
});

describe('a yes to setting cells aside', () => {
  const gone = classesAre([fern, 'Heron'], [moss, 'Newt']);
  it('holds for as many as it was told of: what is typed after the question is asked about as well', () => {
    type('c1-t1', '119.00');
    const asked = () => problemOf(file.call('startBuild', gone, { setAside: 1 }, knows)).question;
    expect(problemOf(file.call('startBuild', gone, {}, knows)).question).toMatchObject({ about: 'typed', cells: 1 });
    file.put(fern, file.rowOf(fern, 'c1-t1', 'molar mass') + 1, at.entry, '0.06');
    expect(asked()).toMatchObject({ about: 'typed', cells: 2 });
    build(gone, { setAside: 2 });
    expect(kept()).toHaveLength(2);
  });
  it('is not asked for again by a build that was stopped in the Plan and goes on', () => {
    type('c1-t1', '119.00');
    valueIn(file.call('startBuild', gone, { setAside: 1 }, knows));
    const note = JSON.parse(file.state.note) as { done: number };
    file.state.note = JSON.stringify({ ...note, done: 0 });
    file.put(fern, file.rowOf(fern, 'c1-t1', 'molar mass') + 1, at.entry, '0.06');
    expect(file.finish(file.call('continueBuild')).finished).toBe(true);
  });
});

describe('a late team for which the Plan has to be written anew', () => {
  it('is asked about with all classes that this touches, and nothing is written before', () => {
    type('c2-t1', '119.00', moss);
    const cells = file.sheetCalled('Plan').cells;
    const row = cells.findIndex((line) => line[0] === 'c2-t1');
    // Taken out of the Plan by hand, with a number behind the columns that is nobody else's.
    for (const column of [1, 2, 3]) file.put('Plan', row + 1, column, '');
    file.put('Plan', cells.findIndex((line) => line[0] === 'key') + 1, 30, 'my own column');
    const before = JSON.stringify(file.state);
    const question = problemOf(file.call('addTeam', fern, 'Wren')).question;
    expect(question).toMatchObject({ about: 'typed', cells: 1, where: [{ team: 'Newt' }] });
    expect(JSON.stringify(file.state)).toBe(before);
    file.finish(file.call('addTeam', fern, 'Wren', { setAside: 1 }));
    expect(classes()).toEqual([`${fern} Otter Heron Wren`]);
  });
});
