import { beforeEach, describe, expect, it } from 'vitest';
import { pollDays, pollSummary } from '../../src/lab/poll/pollSummary.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { cellKey } from '../../src/preview/standin/address.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { pollColumns as at, pollRows } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { answerOf, buildSample, buildSetup, call, finish, open, savedWith, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const saved = savedWith(setup);
let host: StandIn;
beforeEach(() => {
  host = open({ saved });
});

const first = pollRows.firstAnswer;
const cell = (row: number, column: number) => valueAt(host, { sheet: 'Poll', row, column });
const type = (...cells: readonly (readonly [number, number, string])[]) => typeIn(host, { sheet: 'Poll', cells });
const [fully = '', , little = ''] = pollTexts.scale;

describe('the Poll in the built workbook', () => {
  it('stands beside Progress and says what the edit history can show', () => {
    expect(sheetState(host, 'Poll').rows).toBeGreaterThan(200);
    const notes = [1, 2, 3, 4, 5].map((row) => cell(row, 1)).join(' ');
    expect(notes).toContain('edit history');
    expect(notes).toContain('write no names');
    for (const note of words.poll.notes) expect(notes).toContain(note);
    expect(answerOf(call(host, 'readPoll'))).toMatchObject({ sheet: 'Poll', answers: [] });
  });

  it('takes answers with the day noted by the trigger, counts them natively and reads them', () => {
    type([first, at.className, 'Fern class'], [first, at.from, 'a team']);
    type([first, at.firstStatement, fully]);
    type([first + 1, at.firstStatement, little], [first + 1, at.openLine, 'what is a mole?']);
    expect(host.triggerErrors).toEqual([]);
    const { answers, today } = answerOf(call(host, 'readPoll'));
    expect(today).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(answers).toEqual([
      { day: today, className: 'Fern class', from: 'a team', marks: [fully, '', '', ''], openLine: '' },
      { day: today, className: '', from: '', marks: [little, '', '', ''], openLine: 'what is a mole?' },
    ]);
    expect([0, 1, 2, 3].map((word) => cell(pollRows.firstCount + word, at.firstStatement))).toEqual([
      '1',
      '0',
      '1',
      '0',
    ]);
  });

  it('keeps text that looks like a formula as text, and a day that stands there', () => {
    type([first, at.day, '2026-01-05']);
    type([first, at.openLine, '=1+1']);
    expect(cell(first, at.day)).toBe('2026-01-05');
    expect(answerOf(call(host, 'readPoll')).answers).toMatchObject([{ day: '2026-01-05', openLine: '=1+1' }]);
  });

  it('counts rows that are added below', () => {
    const { rows } = sheetState(host, 'Poll');
    host.book.insertRows(sheetState(host, 'Poll'), rows + 1, 1);
    type([rows + 1, at.firstStatement, fully]);
    expect(answerOf(call(host, 'readPoll')).answers).toHaveLength(1);
  });

  it('counts an answer in row 300 natively, far below the rows that were prepared', () => {
    const row = 300;
    expect(cell(row, at.row)).toBe('');
    const agreeFully = () => cell(pollRows.firstCount, at.firstStatement + 3);
    expect(agreeFully()).toBe('0');
    type([row, at.firstStatement + 3, fully]);
    expect(agreeFully()).toBe('1');
    // And still so after rows were put in above it.
    host.book.insertRows(sheetState(host, 'Poll'), pollRows.firstAnswer + 2, 3);
    type([row + 4, at.firstStatement + 3, fully]);
    expect(agreeFully()).toBe('2');
    const { rows } = sheetState(host, 'Poll');
    host.book.insertRows(sheetState(host, 'Poll'), rows + 1, 1);
    type([rows + 1, at.firstStatement + 3, fully]);
    expect(agreeFully()).toBe('3');
    expect(answerOf(call(host, 'readPoll')).answers).toHaveLength(3);
    // Rows put in between make a new sheet; it takes these answers along as well, and again gives the same.
    buildSetup(host, setup);
    expect(host.book.sheets.some(({ name }) => name.startsWith('Poll, kept'))).toBe(true);
    expect(agreeFully()).toBe('3');
    expect(answerOf(call(host, 'readPoll')).answers).toHaveLength(3);
  });

  it('offers a class that is added later in the list that students choose from, and keeps other lists', () => {
    const offered = (row: number, column: number) =>
      sheetState(host, 'Poll').cells.get(cellKey(row, column))?.validation?.options;
    expect(offered(first, at.className)).toEqual(['Fern class', 'Moss class']);
    finish(host, call(host, 'addClass', 'Reed class', ['Carp']));
    for (const row of [first, first + 100, first + 239])
      expect(offered(row, at.className)).toEqual(['Fern class', 'Moss class', 'Reed class']);
    expect(offered(first, at.from)).toEqual(['one student', 'a team']);
    expect(host.book.sheets.filter(({ name }) => name.startsWith('Poll'))).toHaveLength(1);
  });

  it('notes no day for an emptied row, nor in the headings, nor in another sheet', () => {
    type([first, at.openLine, '']);
    expect(cell(first, at.day)).toBe('');
    typeIn(host, { sheet: 'Poll', seat: 'teacher', cells: [[pollRows.headings, at.openLine, 'one thing']] });
    expect(cell(pollRows.headings, at.day)).toBe('Day');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[3, 5, 'x']] });
    expect(valueAt(host, { sheet: 'Plan', row: 3, column: 2 })).toBe('');
    expect(host.triggerErrors).toEqual([]);
  });

  it('is untouched by building again, and keeps its answers when a class is added', () => {
    type([first, at.className, 'Fern class'], [first, at.firstStatement, fully], [first + 3, at.openLine, 'more time']);
    const before = workbookText(host);
    buildSetup(host, setup);
    expect(workbookText(host)).toBe(before);
    buildSetup(host, { ...setup, classes: [...setup.classes, { name: 'Reed class', teams: ['Carp'] }] });
    expect(answerOf(call(host, 'readPoll')).answers).toHaveLength(2);
    expect(cell(first, at.firstStatement)).toBe(fully);
  });

  it('gives the day’s record its line', () => {
    type([first, at.className, 'Fern class']);
    type([first, at.firstStatement, fully], [first, at.firstStatement + 1, little]);
    const text = JSON.stringify(answerOf(call(host, 'readRecord')));
    expect(text).toContain('1 answer. Most agreement with');
  });
});

describe('the Poll of the sample class', () => {
  it('says that it is invented, and has a day before to compare with', () => {
    const sample = open();
    buildSample(sample);
    expect(valueAt(sample, { sheet: 'Poll', row: pollRows.invented, column: 1 })).toBe(words.class.invented);
    const { answers, today } = answerOf(call(sample, 'readPoll'));
    expect([...new Set(answers.map(({ className }) => className))]).toEqual(['Second period', 'Fourth period']);
    expect(pollDays(answers, '')).toHaveLength(2);
    expect(pollDays(answers, '')[0]).toBe(today);
    expect(pollSummary(answers).statements.every(({ other }) => other === 0)).toBe(true);
  });
});

describe('goToPoll', () => {
  it('shows the sheet, whatever it is called by now', () => {
    host.book.renameSheet(sheetState(host, 'Poll'), 'How it went');
    answerOf(call(host, 'goToPoll'));
    const view = host.view('teacher');
    expect(view.sheets.find(({ id }) => id === view.activeSheet)?.name).toBe('How it went');
  });
  it('says what to do where there is none', () => {
    const outcome = call(open(), 'goToPoll');
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(wellSaid);
  });
});

describe('an emptied copy', () => {
  it('holds no answer and no line of the poll', () => {
    type([first, at.className, 'Fern class'], [first, at.openLine, 'Zinnia said so']);
    const fileName = host.book.name;
    finish(host, call(host, 'emptyCopy', { fileName, keepHints: false, removeOthers: false }));
    expect(answerOf(call(host, 'readPoll'))).toMatchObject({ sheet: 'Poll', answers: [] });
    expect(workbookText(host)).not.toContain('Zinnia');
  });
});

describe('readNumbers', () => {
  it('gives every team’s numbers as the Plan has them now', () => {
    const before = workbookText(host);
    const numbers = answerOf(call(host, 'readNumbers'));
    expect(numbers).toMatchObject({ activity: 'stock and dilution', decimalMark: 'point' });
    expect(numbers.typical['stock molarity']).toBe('0.300');
    expect(numbers.teams.map(({ team }) => team)).toEqual(['Otter', 'Heron', 'Newt']);
    expect(workbookText(host)).toBe(before);
  });
  it('has numbers to start from in an empty file', () => {
    const numbers = answerOf(call(open(), 'readNumbers'));
    expect(numbers.teams).toEqual([]);
    expect(numbers.typical.formula).not.toBe('');
  });
});
