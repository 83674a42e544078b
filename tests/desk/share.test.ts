import { beforeEach, describe, expect, it } from 'vitest';
import { noteIn } from '../../src/desk/building/buildNote.ts';
import { allKinds } from '../../src/desk/file/look.ts';
import { deskWords } from '../../src/desk/words.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, fillRow, moss } from './builtLesson.ts';
import { type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const help = words.help.sheet;
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
  file.state.sheets.push(
    { id: 7, name: 'Marks', tag: null, kept: false, cells: [['Ana']], formulaEntries: [] },
    { id: 8, name: 'Fern class, kept', tag: null, kept: true, cells: [['Ana']], formulaEntries: [] },
  );
});
const helpHeading = () => file.sheetCalled(help).cells.findIndex((line) => line[0] === words.help.step) + 1;
const lastHelp = () => {
  const { cells } = file.sheetCalled(help);
  return cells.findLastIndex((line) => (line[0] ?? '') !== '') + 1;
};
const share = () => valueIn(file.call('readShare'));
const plainWish = { fileName: ' Invented school ', keepHints: false, removeOthers: false };
const empty = (given: unknown) => file.call('emptyCopy', given);
const wish = () => file.asked.flatMap((one) => (one.call === 'emptyFile' ? [one.wish] : []))[0];

describe('what stands in a file that is to be given on', () => {
  it('is its name, and sheets that are not ours but for those that were kept', () => {
    expect(share()).toEqual({ fileName: 'Invented school', entriesToday: 0, otherSheets: ['Marks'] });
  });
  it('counts entries of today and those without a time', () => {
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', time: '2026-03-02T08:00:00Z' });
    fillRow(file, { step: 'moles of solute' }, { entry: '0.06' });
    fillRow(file, { step: 'cautions read' }, { entry: 'yes', time: '2026-03-01T23:00:00Z' });
    fillRow(file, { sheet: moss, key: 'c2-t1', step: 'moles of solute' }, { entry: '', time: '2026-03-02T08:00:00Z' });
    expect(share().entriesToday).toBe(2);
    file.state.timeZone = 'Pacific/Auckland';
    // There it was the second of March already.
    expect(share().entriesToday).toBe(3);
    file.put(moss, 1, at.key, 'moved');
    expect(share().entriesToday).toBe(3);
  });
});

describe('emptying a copy', () => {
  it('hands over the Plan with counted names, and begins to build it anew', () => {
    expect(valueIn(empty(plainWish))).toMatchObject({
      done: 1,
      total: 7,
      label: deskWords.buildLabels.help,
      finished: false,
    });
    expect(wish()).toMatchObject({ fileName: 'Invented school', removeOthers: false, read: { kinds: allKinds } });
    expect(wish()?.anew.map(({ plan, keptName }) => [plan.role.kind, keptName])).toEqual([
      ['plan', deskWords.keptName(words.plan.sheet, '2026-03-02 10.15')],
    ]);
    expect(wish()?.seen).toHaveLength(1);
    const note = noteIn({ note: file.state.note });
    expect(note).toMatchObject({ done: 1, made: true, emptySheet: null, wish: { sample: false, answers: {} } });
    expect(note?.wish.setup.classes).toEqual([
      { name: words.share.className(1), teams: [words.share.team(1), words.share.team(2)] },
      { name: words.share.className(2), teams: [words.share.team(1)] },
    ]);
    expect(JSON.stringify([wish()?.anew, wish()?.note])).not.toMatch(/Otter|Heron|Newt|Fern|Moss/);
  });
  it('is built to the end, beside the sheets of others where they stay', () => {
    const first = empty(plainWish);
    expect(valueIn(first).left).toEqual(['Marks', words.plan.sheet]);
    file.finish(first);
    expect(file.names()).toEqual([
      'Marks',
      words.plan.sheet,
      words.help.sheet,
      words.prepare.sheet,
      words.share.className(1),
      words.share.className(2),
      words.progress.sheet,
      words.poll.sheet,
    ]);
  });
  it('takes the sheets of others as well, where that was asked', () => {
    expect(valueIn(empty({ fileName: 'Invented school', removeOthers: true })).left).toEqual([words.plan.sheet]);
    expect(wish()?.removeOthers).toBe(true);
  });
  it('gives a new sheet another name where a sheet that stays has it', () => {
    file.sheetCalled('Marks').name = words.share.className(1);
    valueIn(empty(plainWish));
    expect(Object.values(noteIn({ note: file.state.note })?.names ?? {})).toContain(`${words.share.className(1)} 2`);
    file = builtLesson();
    file.state.sheets.push({
      id: 7,
      name: words.share.className(1),
      tag: null,
      kept: false,
      cells: [],
      formulaEntries: [],
    });
    valueIn(empty({ fileName: 'x', removeOthers: true }));
    expect(Object.values(noteIn({ note: file.state.note })?.names ?? {})).not.toContain(
      `${words.share.className(1)} 2`,
    );
  });
  it('keeps the wording in Help where that was asked, with lines that were added below', () => {
    const row = lastHelp() + 1;
    for (const [index, text] of ['molar mass', '4', 'Add them all.', 'https://example.org/a'].entries())
      file.put(help, row, index + 1, text);
    for (const [index, text] of ['moles of solute', '4', 'Divide.', ''].entries())
      file.put(help, row + 1, index + 1, text);
    file.put(help, helpHeading() + 1, 3, 'In my words.');
    valueIn(empty({ fileName: 'Invented school', keepHints: true }));
    expect(wish()?.anew.map(({ plan }) => plan.role.kind)).toEqual(['plan', 'help']);
    const kept = wish()?.anew[1];
    expect(kept?.keptName).toBe(deskWords.keptName(words.help.sheet, '2026-03-02 10.15'));
    expect(kept?.firstEntries?.map(({ row: first, column, texts }) => [first - row, column, texts])).toEqual([
      [0, 1, ['molar mass', 'moles of solute']],
      [0, 2, ['4', '4']],
      [0, 3, ['Add them all.', 'Divide.']],
      [0, 4, ['https://example.org/a', '']],
    ]);
  });
  it('keeps as many added lines as Help has room for', () => {
    const row = lastHelp() + 1;
    for (let line = 0; line < 14; line += 1) {
      file.put(help, row + line, 1, `own row ${line}`);
      file.put(help, row + line, 3, 'In my words.');
    }
    valueIn(empty({ fileName: 'x', keepHints: true }));
    const kept = wish()?.anew[1];
    const room = kept?.plan.writable[1]?.rows ?? 0;
    expect(room).toBeLessThan(14);
    expect(kept?.firstEntries?.map(({ texts }) => texts.length)).toEqual([room, room, room, room]);
    expect(kept?.firstEntries?.[0]?.texts[room - 1]).toBe(`own row ${room - 1}`);
  });
  it('has no lines to carry where none was added, nor Help where there is none', () => {
    valueIn(empty({ fileName: 'x', keepHints: true }));
    expect(wish()?.anew[1]?.firstEntries).toEqual([]);
    file = builtLesson();
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== help);
    valueIn(empty({ fileName: 'x', keepHints: true }));
    expect(wish()?.anew).toHaveLength(1);
  });
  it('takes any other wish for the one that leaves least out of sight', () => {
    for (const given of [undefined, null, 'all', { fileName: 7, keepHints: 'yes', removeOthers: 1 }]) {
      file = builtLesson();
      valueIn(empty(given));
      expect(wish()).toMatchObject({ fileName: '', removeOthers: false });
      expect(wish()?.anew).toHaveLength(1);
    }
  });
  it('needs a lesson whose activity is one of ours', () => {
    const say = said(deskWords.share.noLesson);
    expect(problemOf(paperFile().call('emptyCopy', {})).message).toBe(say);
    const row = file.sheetCalled(words.plan.sheet).cells.findIndex(([name]) => name === 'activity') + 1;
    file.put(words.plan.sheet, row, 2, 'brewing');
    expect(problemOf(empty(plainWish)).message).toBe(say);
    expect(wish()).toBeUndefined();
  });
  it('is refused where the Plan is another by now', () => {
    file.before(() => file.put(words.plan.sheet, 30, 20, 'a note'));
    expect(problemOf(empty(plainWish)).reason).toBe('changed');
    expect(file.names()).toContain(fern);
  });
});
