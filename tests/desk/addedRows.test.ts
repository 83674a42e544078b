import { describe, expect, it } from 'vitest';
import type { Settings } from '../../src/lab/lesson/setup.ts';
import { cellText } from '../../src/workbook/cellText.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';

const added: Partial<Settings> = { 'safety questions': 'always', evidence: 'yes', 'cautions also in': 'Spanish' };
const build = (file: PaperFile, settings: Partial<Settings>) =>
  file.finish(file.call('startBuild', { ...setup, settings: { ...setup.settings, ...settings } }));
const type = (file: PaperFile, step: string, entry: string, key = 'c1-t1') =>
  file.put(fern, file.rowOf(fern, key, step), at.entry, entry);
const typed = (file: PaperFile, step: string, key = 'c1-t1') => file.cell(fern, file.rowOf(fern, key, step), at.entry);
const anywhere = (file: PaperFile, text: string) =>
  file.state.sheets.some(({ cells }) => cells.some((line) => line.some((cell) => cell === text)));
const steps = (file: PaperFile) =>
  file
    .sheetCalled(fern)
    .cells.flatMap((line) => (line[at.key - 1] === 'c1-t1' ? [cellText(line[at.step - 1] as string)] : []));

describe('rows that a teacher adds after the class has begun', () => {
  it('come with everything that was typed, and go without losing what was typed in them', () => {
    const file = builtLesson();
    type(file, 'molar mass', '119.00');
    type(file, 'mass weighed', '7.16');
    build(file, added);
    expect(steps(file).slice(0, 5)).toEqual(['', 'cautions read', 'splash', 'waste', 'molar mass']);
    expect([typed(file, 'molar mass'), typed(file, 'mass weighed'), typed(file, 'splash')]).toEqual([
      '119.00',
      '7.16',
      '',
    ]);
    type(file, 'splash', 'b');
    type(file, 'mass weighed loaded', '10,43');
    type(file, 'picture', 'https://school.example/otter');
    // The same again changes nothing.
    const before = file.sheetCalled(fern).id;
    build(file, added);
    expect(file.sheetCalled(fern).id).toBe(before);
    expect([typed(file, 'splash'), typed(file, 'mass weighed loaded')]).toEqual(['b', '10,43']);
    // Rows that go would leave entries behind: it is asked first, and what was typed stays in the sheet that is kept.
    const without = { ...setup, settings: { ...setup.settings, 'safety questions': 'never' } };
    expect(problemOf(file.call('startBuild', without)).message).toContain('Otter: 3 cells');
    file.finish(file.call('startBuild', without, { setAside: true }));
    expect([typed(file, 'molar mass'), typed(file, 'mass weighed')]).toEqual(['119.00', '7.16']);
    expect(steps(file)).not.toContain('splash');
    for (const entry of ['10,43', 'https://school.example/otter']) expect(anywhere(file, entry)).toBe(true);
  });

  it('are there for a late team, and where decimals have a comma', () => {
    const file = builtLesson({ decimalMark: 'comma' });
    build(file, { ...added, 'decimal mark': 'comma' });
    type(file, 'mass weighed empty', '3,27');
    file.finish(file.call('addTeam', fern, 'Mole'));
    expect(typed(file, 'mass weighed empty')).toBe('3,27');
    expect(typed(file, 'mass weighed loaded', 'c1-t3')).toBe('');
  });

  it('are shown in the views of the day, on paper and in the key', () => {
    const file = builtLesson();
    build(file, added);
    type(file, 'seen', 'It fizzed.');
    const view = valueIn(file.call('readClass', fern));
    expect(view.teams[0]?.steps.find(({ id }) => id === 'seen')).toMatchObject({
      title: 'What you saw',
      entry: 'It fizzed.',
    });
    const paper = valueIn(file.call('readPaper'));
    expect(paper.teams[0]?.steps.find(({ title }) => title === 'If it splashes')?.shown).toMatch(/mild: rinse at once/);
    const key = valueIn(file.call('readKey')).teams[0]?.lines ?? [];
    expect(key.find(({ title }) => title === 'Where it goes')).toMatchObject({
      answer: expect.stringMatching(/^[a-d]$/),
    });
    expect(key.find(({ title }) => title === 'Empty')?.answer).toBe('');
    const { labels } = valueIn(file.call('readPreparation'));
    expect(labels[0]?.also).toMatchObject({
      tag: 'es',
      signalWord: 'Atención',
      statements: ['Provoca irritación ocular grave.'],
    });
  });

  it('are none in a file that was built before they were thought of, until the teacher asks', () => {
    const file = builtLesson();
    const plan = file.sheetCalled(words.plan.sheet);
    plan.cells = plan.cells.filter(([name]) => !Object.keys(added).includes(String(name)));
    const { setup: read, problems } = valueIn(file.call('readLesson'));
    expect(problems).toEqual([]);
    expect(read.settings).toMatchObject({ 'safety questions': 'never', evidence: 'no', 'cautions also in': 'none' });
  });
});
