import { describe, expect, it } from 'vitest';
import { type Book, type BookSheet, bookAfter } from '../../src/desk/file/book.ts';
import { cellWas } from '../../src/desk/file/cellWas.ts';
import { stampOf } from '../../src/desk/file/dayIn.ts';
import { type File, known, look, noted } from '../../src/desk/file/look.ts';
import { sheetInUse, sheetsInUse, sheetToRead } from '../../src/desk/file/sheets.ts';
import { attempt, seenOf } from '../../src/desk/file/writing.ts';
import { done, numbersProblem, problem } from '../../src/desk/outcome.ts';
import { errorText } from '../../src/errors/errorText.ts';
import type { BookReading, CellSent } from '../../src/host/calls.ts';
import { paperFile } from './paperFile.ts';

type State = NonNullable<BookSheet['tag']>['state'];
const sheet = (id: number, state: State | null, className?: string, mark?: string): BookSheet => ({
  id,
  name: `Sheet ${id}`,
  kept: false,
  tag:
    state === null
      ? null
      : {
          kind: className === undefined ? 'plan' : 'class',
          layout: 3,
          state,
          ...(className === undefined ? {} : { className }),
        },
  ...(mark === undefined ? {} : { mark, cells: [], formulaEntries: [] }),
});
const bookOf = (...sheets: readonly BookSheet[]) => ({ sheets }) as unknown as Book;

describe('sheets of ours that are in use', () => {
  it('are those that are built or being built', () => {
    const book = bookOf(sheet(1, 'built'), sheet(2, 'building'), sheet(3, 'leaving'), sheet(4, 'kept'), sheet(5, null));
    expect(sheetsInUse(book).map(({ id }) => id)).toEqual([1, 2]);
  });
  it('are found by what they are, a class by its name', () => {
    const book = bookOf(sheet(1, 'built', 'Fern'), sheet(2, 'built', 'Moss'), sheet(3, 'built'));
    expect(sheetInUse(book, { kind: 'class', className: 'Moss' })?.id).toBe(2);
    expect(sheetInUse(book, { kind: 'plan' })?.id).toBe(3);
    expect(sheetInUse(book, { kind: 'class' })).toBeUndefined();
    expect(sheetInUse(book, { kind: 'help' })).toBeUndefined();
  });
  it('are read from the one that is leaving while the new one is being made', () => {
    expect(sheetToRead(bookOf(sheet(1, 'leaving'), sheet(2, 'building')), { kind: 'plan' })?.id).toBe(1);
    expect(sheetToRead(bookOf(sheet(1, 'leaving'), sheet(2, 'built')), { kind: 'plan' })?.id).toBe(2);
    expect(sheetToRead(bookOf(sheet(2, 'building')), { kind: 'plan' })?.id).toBe(2);
    expect(sheetToRead(bookOf(sheet(1, 'leaving', 'Fern'), sheet(2, 'building')), { kind: 'plan' })?.id).toBe(2);
    expect(sheetToRead(bookOf(sheet(1, 'kept')), { kind: 'plan' })).toBeUndefined();
  });
});

describe('what was seen', () => {
  it('names sheets by number and mark, those that were read', () => {
    expect(
      seenOf(sheet(1, 'built', undefined, 'a'), undefined, sheet(2, 'built'), sheet(3, 'built', 'Fern', 'b')),
    ).toEqual([
      { id: 1, mark: 'a' },
      { id: 3, mark: 'b' },
    ]);
  });
  it('is what a cell held, a date as milliseconds and a cell beyond the sheet as blank', () => {
    const moment = new Date('2026-03-02T10:00:00Z');
    const held: BookSheet = {
      ...sheet(1, 'built'),
      cells: [
        ['a', 7],
        [true, moment],
      ],
    };
    const was = (row: number, column: number) => cellWas(held, { row, column });
    expect([was(1, 1), was(1, 2), was(2, 1), was(2, 2), was(3, 1), was(1, 3)]).toEqual([
      'a',
      7,
      true,
      { date: moment.getTime() },
      '',
      '',
    ]);
  });
});

const reading = (now: number, mark: string, cells: readonly (readonly CellSent[])[] = [['x']]): BookReading => ({
  fileName: 'Invented',
  decimalMark: 'point',
  timeZone: 'Etc/UTC',
  now,
  today: '2026-03-02',
  clock: '10:15',
  activeSheet: 1,
  emptySheet: null,
  note: '',
  sheets: [{ id: 1, name: 'Plan', kept: false, tag: { kind: 'plan', layout: 3, state: 'built' } }],
  read: [{ id: 1, cells, formulaEntries: [4], mark }],
});

describe('reading a file', () => {
  it('turns moments into dates, and knows which kinds were read, each once', () => {
    const first = bookAfter(undefined, reading(1, 'a', [[{ date: 5 }, 'x', 2]]), ['plan']);
    expect(first.sheets[0]).toMatchObject({ mark: 'a', formulaEntries: [4], cells: [[new Date(5), 'x', 2]] });
    expect(bookAfter(first, reading(2, 'b'), ['plan', 'class']).kinds).toEqual(['plan', 'class']);
  });
  it('asks only for what was not read yet, and looks again where that is wanted', () => {
    const file = paperFile();
    const page: File = { book: undefined };
    const calls = () => file.asked.map(({ wish }) => wish);
    file.run(known(page, ['plan', 'class']));
    file.run(known(page, ['class']));
    expect(calls()).toEqual([{ kinds: ['plan', 'class'], ids: [] }]);
    file.run(known(page, ['class', 'poll']));
    file.run(look(page, ['plan'], [3]));
    expect(calls().slice(1)).toEqual([
      { kinds: ['class', 'poll'], ids: [] },
      { kinds: ['plan'], ids: [3] },
    ]);
  });
  it('does not go back to what is older, unless that is of other sheets', () => {
    const page: File = { book: undefined };
    noted(page, reading(1000, 'new'), ['plan']);
    expect(noted(page, reading(999, 'old'), ['plan']).sheets[0]?.mark).toBe('new');
    expect(noted(page, reading(1000, 'same'), ['plan']).sheets[0]?.mark).toBe('same');
    expect(noted(page, reading(500, 'other'), ['plan', 'class']).sheets[0]?.mark).toBe('other');
  });
  it('has a stamp of day and time for names of sheets', () => {
    expect(stampOf({ today: '2026-03-02', clock: '09:05' })).toBe('2026-03-02 09.05');
  });
});

describe('work that writes', () => {
  const changed = { ok: false, problem: { message: 'Changed.', reason: 'changed' } } as const;
  const tries = (...answers: readonly ReturnType<typeof done<string> | typeof problem>[]) => {
    const file = paperFile();
    let count = 0;
    const outcome = file.run(
      // biome-ignore lint/correctness/useYield: nothing is asked here
      attempt({ book: undefined }, ['plan'], function* () {
        count += 1;
        return answers[count - 1] as ReturnType<typeof done<string>>;
      }),
    );
    return { outcome, count, reads: file.asked.length };
  };
  it('is done once where it succeeds or cannot be', () => {
    expect(tries(done('a'))).toEqual({ outcome: done('a'), count: 1, reads: 1 });
    const busy = { ok: false, problem: { message: 'Busy.', reason: 'busy' } } as never;
    expect(tries(busy)).toEqual({ outcome: busy, count: 1, reads: 1 });
  });
  it('is worked out once more from a new reading where somebody was quicker, and no third time', () => {
    expect(tries(changed as never, done('b'))).toEqual({ outcome: done('b'), count: 2, reads: 2 });
    expect(tries(changed as never, changed as never, done('c'))).toEqual({ outcome: changed, count: 2, reads: 2 });
  });
});

describe('a problem', () => {
  const parts = { says: '{received} is no {where}.', where: 'b', received: 'c', advice: 'Do d.' };
  it('names its field only where it has one', () => {
    expect(problem(parts)).toEqual({ ok: false, problem: { message: 'C is no b. Do d.' } });
    expect(problem(parts, 'x')).toEqual({ ok: false, problem: { message: 'C is no b. Do d.', field: 'x' } });
  });
  it('of numbers shows at the given that they were to be made from', () => {
    const error = {
      code: 'plan-line',
      argument: 'flask',
      expected: 'a',
      received: 'b',
      advice: 'c',
    } as unknown as Parameters<typeof numbersProblem>[0];
    expect(numbersProblem(error)).toEqual({ ok: false, problem: { message: errorText(error), field: 'givens.flask' } });
    expect(numbersProblem({ ...error, argument: 'activity' })).toMatchObject({ problem: { field: 'activity' } });
  });
});
