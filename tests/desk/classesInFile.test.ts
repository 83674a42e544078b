import { describe, expect, it } from 'vitest';
import { classesInFile } from '../../src/desk/classes/classesInFile.ts';
import { type Book, bookAfter } from '../../src/desk/file/book.ts';
import { dayIn } from '../../src/desk/file/dayIn.ts';
import { type File, noted } from '../../src/desk/file/look.ts';
import type { BookReading, CellSent } from '../../src/host/calls.ts';
import { classColumns as at, classMarker, classRows } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';

type Line = readonly [key: string, className: string, team: string];
const { plan } = words;

const planCells = (lines: readonly Line[]): CellSent[][] => [
  ['Plan', '', ''],
  [plan.setting, plan.value, ''],
  ['activity', 'dilution', ''],
  [plan.key, plan.className, plan.team],
  ...lines.map((line) => [...line]),
];
/** A class sheet with a heading row for each team and no steps: enough to say whose it is. */
function classCells(keys: readonly string[]): CellSent[][] {
  const row = (key: string): CellSent[] =>
    Array.from({ length: at.step }, (_, index) => (index === at.key - 1 ? key : ''));
  return [row(classMarker), ...Array.from({ length: classRows.firstLink }, () => row('')), ...keys.map(row)];
}
function bookOf(lines: readonly Line[], classes: readonly (readonly [name: string, keys: readonly string[]])[]): Book {
  const tag = { layout: 2, state: 'built' } as const;
  const reading: BookReading = {
    fileName: 'Invented',
    decimalMark: 'point',
    timeZone: 'Pacific/Auckland',
    now: 0,
    today: '2026-03-02',
    clock: '10:00',
    activeSheet: 1,
    emptySheet: null,
    note: '',
    sheets: [
      { id: 1, name: 'Plan', kept: false, tag: { ...tag, kind: 'plan' } },
      ...classes.map(([className], index) => ({
        id: index + 2,
        name: className,
        kept: false,
        tag: { ...tag, kind: 'class', className } as const,
      })),
    ],
    read: [
      { id: 1, cells: planCells(lines), formulaEntries: [], mark: 'a' },
      ...classes.map(([, keys], index) => ({ id: index + 2, cells: classCells(keys), formulaEntries: [], mark: 'b' })),
    ],
  };
  return bookAfter(undefined, reading, ['plan', 'class']);
}
const told = (book: Book) => classesInFile(book).map(({ id, name, keys, sheet }) => [id, name, keys.join(), sheet?.id]);

describe('classesInFile', () => {
  it('calls a class as the Plan calls its teams’ class, and finds its sheet by the name it was built with', () => {
    const book = bookOf(
      [
        ['k1', 'Third period', 'Otter'],
        ['k2', 'Moss', 'Newt'],
      ],
      [
        ['Fern', ['k1']],
        ['Moss', ['k2']],
      ],
    );
    expect(told(book)).toEqual([
      ['Fern', 'Third period', 'k1', 2],
      ['Moss', 'Moss', 'k2', 3],
    ]);
  });
  it('lets two classes change names without mixing them up', () => {
    const book = bookOf(
      [
        ['k1', 'Moss', 'Otter'],
        ['k2', 'Fern', 'Newt'],
      ],
      [
        ['Fern', ['k1']],
        ['Moss', ['k2']],
      ],
    );
    expect(told(book)).toEqual([
      ['Fern', 'Moss', 'k1', 2],
      ['Moss', 'Fern', 'k2', 3],
    ]);
  });
  it('names a class that the Plan alone knows, and one that the Plan no longer knows', () => {
    const book = bookOf([['k1', 'Fern', 'Otter']], [['Moss', ['k9']]]);
    expect(told(book)).toEqual([
      ['Moss', 'Moss', 'k9', 2],
      ['Fern', 'Fern', 'k1', undefined],
    ]);
  });
  it('never gives two sheets one name', () => {
    const book = bookOf(
      [
        ['k1', 'Fern', 'Otter'],
        ['k2', 'Fern', 'Newt'],
      ],
      [
        ['Fern', ['k1']],
        ['Moss', ['k2']],
      ],
    );
    expect(told(book).map(([, name]) => name)).toEqual(['Fern', 'Moss']);
  });
});

describe('a book after another reading', () => {
  it('keeps the cells of sheets that were not read again, and forgets those that are gone', () => {
    const before = bookOf(
      [['k1', 'Fern', 'Otter']],
      [
        ['Fern', ['k1']],
        ['Moss', ['k2']],
      ],
    );
    const { kinds: _, sheets, ...rest } = before;
    const listed = sheets.map(({ id, name, kept, tag }) => ({ id, name, kept, tag })).filter(({ id }) => id !== 3);
    const after = bookAfter(before, { ...rest, note: 'x', sheets: listed, read: [] }, ['poll']);
    expect(after.sheets.map(({ id, cells }) => [id, cells?.length])).toEqual(
      sheets.slice(0, 2).map(({ id, cells }) => [id, cells?.length]),
    );
    expect([after.note, after.kinds]).toEqual(['x', ['plan', 'class', 'poll']]);
  });
});

describe('an answer that comes late', () => {
  it('does not take the place of a newer one', () => {
    const book = bookOf([['k1', 'Fern', 'Otter']], [['Fern', ['k1']]]);
    const { kinds: _, sheets, ...rest } = book;
    const file: File = { book: { ...book, now: 2000, note: 'newer' } };
    const listed = sheets.map(({ id, name, kept, tag }) => ({ id, name, kept, tag }));
    expect(noted(file, { ...rest, now: 1000, note: 'older', sheets: listed, read: [] }, ['plan']).note).toBe('newer');
    expect(noted(file, { ...rest, now: 3000, note: 'newest', sheets: listed, read: [] }, ['plan']).note).toBe('newest');
    expect(file.book?.note).toBe('newest');
  });
});

describe('dayIn', () => {
  it.each([
    ['Pacific/Auckland', '2026-03-02T11:30:00Z', '2026-03-03'],
    ['America/Los_Angeles', '2026-03-02T07:30:00Z', '2026-03-01'],
    ['Etc/UTC', '2026-12-31T23:59:59Z', '2026-12-31'],
  ])('is the day in %s', (timeZone, moment, day) => {
    expect(dayIn({ timeZone }, Date.parse(moment))).toBe(day);
  });
});
