import { beforeEach, describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import { extensionGiven, ownHelpGiven } from '../../src/lab/lesson/teamColumns.ts';
import { closingHeight } from '../../src/workbook/classHeights.ts';
import { mostRowHeight, planColumns } from '../../src/workbook/layout.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const reading = () => {
  const read = readLesson(
    file.sheetCalled('Plan').cells.map((line) => line.map((cell) => (typeof cell === 'object' ? '' : cell))),
  );
  if (!read.ok) throw new Error('Expected a Plan.');
  return read.value;
};
const helpOf = (key: string) => {
  const givens = reading().teams.find((line) => line.key === key)?.givens ?? {};
  return [givens[ownHelpGiven], givens[extensionGiven]];
};
const question = '=Why is "it" warmer?';

describe('setOwnHelp', () => {
  it('writes one team’s level and task as plain text in its line, and makes its closing row as high as they need', () => {
    expect(valueIn(file.call('setOwnHelp', 'c1-t1', { level: '1' }))).toEqual({ level: '1', extension: '' });
    expect(valueIn(file.call('setOwnHelp', 'c1-t1', { extension: `  ${question}\n ` }))).toEqual({
      level: '1',
      extension: question,
    });
    expect(helpOf('c1-t1')).toEqual(['1', question]);
    expect(helpOf('c1-t2')).toEqual(['', '']);
    const written = file.asked.flatMap((one) => (one.call === 'writeCells' ? [one.wish] : []));
    expect(written.map(({ cells }) => cells.length)).toEqual([1, 1]);
    const closing = file.rowOf(fern, 'c1-t1', 'in your words') + 1;
    expect(written.map(({ heights }) => heights?.map(({ row, height }) => [row, height]))).toEqual([
      undefined,
      [[closing, closingHeight({ givens: { [extensionGiven]: question } })]],
    ]);
    const view = valueIn(file.call('readTeams'));
    expect(view.classes[0]?.teams.map(({ help }) => help)).toEqual([
      { level: '1', extension: question },
      { level: '', extension: '' },
    ]);
    expect(view.classes[0]?.lessonHelp.suggestion).toMatch(/\?$/);
  });
  it('takes them away again, and writes nothing where they stand there already', () => {
    file.call('setOwnHelp', 'c1-t1', { level: '0', extension: 'Why?' });
    file.asked.length = 0;
    valueIn(file.call('setOwnHelp', 'c1-t1', { level: '0' }));
    expect(file.asked.map(({ call }) => call)).toEqual(['readBook']);
    valueIn(file.call('setOwnHelp', 'c1-t1', { level: '', extension: '' }));
    expect(helpOf('c1-t1')).toEqual(['', '']);
  });
  it('goes by the key, however the Plan is sorted, and stays through another build, other numbers and a late team', () => {
    file.call('setOwnHelp', 'c1-t2', { level: '2', extension: 'Why?' });
    const { cells } = file.sheetCalled('Plan');
    const first = cells.findIndex((line) => line[planColumns.key - 1] === 'c1-t1');
    cells.splice(first, 2, ...cells.slice(first, first + 2).reverse());
    file.call('setOwnHelp', 'c1-t1', { level: '1' });
    const other = { ...setup, ownNumbers: true, settings: { ...setup.settings, seed: '77' } };
    file.finish(file.call('startBuild', other));
    file.finish(file.call('addTeam', fern, 'Late'));
    expect([helpOf('c1-t1'), helpOf('c1-t2')]).toEqual([
      ['1', ''],
      ['2', 'Why?'],
    ]);
  });
  it('refuses a level that is none, a task that is too long, a team that is gone and a Plan from before', () => {
    const refused = (wish: unknown, key = 'c1-t1') => problemOf(file.call('setOwnHelp', key, wish)).message;
    expect(refused({ level: '7' })).toBe(said({ ...deskWords.ownHelp.level, received: '“7”' }));
    expect(refused({ extension: 'x'.repeat(121) })).toContain('121 characters');
    expect(refused({ level: '1' }, 'c9-t9')).toContain('c9-t9');
    const line = file.sheetCalled('Plan').cells.find((cells) => cells.includes(extensionGiven)) ?? [];
    line[line.indexOf(ownHelpGiven)] = '';
    expect(refused({ level: '1' })).toBe(said(deskWords.ownHelp.noColumns));
    expect(helpOf('c1-t1')).toEqual([undefined, '']);
  });
  it('makes no row higher where the closing row was taken out, and in a later class only its own', () => {
    const heights = () => {
      const wishes = file.asked.flatMap((one) => (one.call === 'writeCells' ? [one.wish.heights] : []));
      return wishes[wishes.length - 1]?.map(({ sheetId, row }) => [sheetId, row]);
    };
    valueIn(file.call('setOwnHelp', 'c2-t1', { extension: 'Why?' }));
    const last = file.rowOf(moss, 'c2-t1', 'in your words');
    expect(heights()).toEqual([[file.sheetCalled(moss).id, last + 1]]);
    file.sheetCalled(fern).cells.splice(file.rowOf(fern, 'c1-t1', 'in your words'), 1);
    valueIn(file.call('setOwnHelp', 'c1-t1', { extension: 'Why?' }));
    expect(heights()).toBeUndefined();
  });
  it('is shown as the lesson’s own in a Plan from before', () => {
    const line = file.sheetCalled('Plan').cells.find((cells) => cells.includes(extensionGiven)) ?? [];
    for (const name of [ownHelpGiven, extensionGiven]) line[line.indexOf(name)] = '';
    expect(valueIn(file.call('readTeams')).classes[0]?.teams[0]?.help).toEqual({ level: '', extension: '' });
  });
  it('never makes a row higher than one that a teacher may add', () => {
    expect(closingHeight({ givens: {} })).toBe(26);
    expect(closingHeight({ givens: { [extensionGiven]: 'wide '.repeat(24) } })).toBeLessThanOrEqual(
      mostRowHeight.added,
    );
  });
});

describe('a level typed in the Plan', () => {
  it('that is none is reported by its team and line, and the lesson’s own counts', () => {
    const plan = reading();
    const column = plan.places.teamColumns[ownHelpGiven] ?? 0;
    const { cells } = file.sheetCalled('Plan');
    const row = cells.findIndex((line) => line[0] === 'c1-t1') + 1;
    file.put('Plan', row, column, '7');
    const { problems } = reading();
    expect(problems).toEqual([
      `Highest help level of Otter in line ${row} of the Plan: can’t be “7”. Choose 0 or 1 or 2 or 3, or clear the cell; until then the lesson’s own counts.`,
    ]);
    file.finish(file.call('startBuild', setup));
    expect(helpOf('c1-t1')).toEqual(['7', '']);
  });
});

describe('what people have put behind the columns of the Plan', () => {
  it('is never written over: that Plan is kept', () => {
    const { cells } = file.sheetCalled('Plan');
    const heading = cells.findIndex((line) => line[0] === words.plan.key && line[1] === words.plan.className) + 1;
    const free = (cells[heading - 1]?.length ?? 0) + 1;
    file.put('Plan', heading, free, 'my notes');
    file.put('Plan', heading + 1, free, 'seat by the window');
    file.finish(file.call('startBuild', { ...setup, settings: { ...setup.settings, 'exit questions': '2' } }));
    const kept = file.state.sheets.filter(({ name }) => name.startsWith('Plan') && name.includes('kept'));
    expect(kept.flatMap((sheet) => sheet.cells.flat())).toContain('seat by the window');
  });
});
