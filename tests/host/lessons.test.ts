import { beforeEach, describe, expect, it } from 'vitest';
import { type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { hostWords } from '../../src/host/words.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns as at, classRows } from '../../src/workbook/layout.ts';
import { looks } from '../../src/workbook/looks.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';
import { answerOf, call, finish, open, run, stepRow } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { actAtEveryCall } from './hostFailure.ts';
import { at2, away, chloride, fern, first, moss, next, on, two, typeEntry, worked } from './twoLessons.ts';

describe('two lessons at once', () => {
  let host: StandIn;
  beforeEach(() => {
    host = open({ clock: on('09'), saved: worked() });
    next(host);
  });

  it('check each its own class by its own Plan, and stand together in Progress', () => {
    typeEntry(host, fern, 'c1-t1', 'molar mass', '74.55');
    typeEntry(host, moss, 'c2-t1', 'molar mass', '74.55');
    expect(at2(host, fern, 'c1-t1', 'molar mass', at.check)).toBe('on target');
    expect(at2(host, moss, 'c2-t1', 'molar mass', at.check)).toBe('not yet');
    const { rows } = sheetState(host, 'Progress');
    const names = Array.from({ length: rows }, (_, row) =>
      valueAt(host, { sheet: 'Progress', row: row + 1, column: 1 }),
    );
    expect(names.filter((name) => [fern, moss, 'Otter', 'Newt'].includes(name))).toEqual([fern, 'Otter', moss, 'Newt']);
    expect(
      JSON.stringify(
        Array.from({ length: rows }, (_, row) => valueAt(host, { sheet: 'Progress', row: row + 1, column: 5 })),
      ),
    ).toContain('done');
  });

  it('put the one before away: hidden at the end, at rest, with a link to the one in use, and nothing lost', () => {
    const state = sheetState(host, away(fern));
    expect(state.hidden).toBe(true);
    expect(valueAt(host, { sheet: away(fern), row: classRows.headings, column: at.task })).toBe(
      hostWords.away.withLink,
    );
    expect(at2(host, away(fern), 'c1-t1', 'molar mass', at.entry)).toBe('119.0');
    expect(at2(host, away(fern), 'c1-t1', 'molar mass', at.check)).toBe('then: on target');
    expect(sheetState(host, moss).hidden).toBe(false);
    const record = JSON.stringify([...sheetState(host, 'Record').cells.values()]);
    expect(record).toContain(fern);
    expect(record).not.toMatch(/Ana|Otter/);
    expect(
      valueAt(host, {
        sheet: fern,
        row: stepRow(host, { sheet: fern, key: 'c1-t1', step: 'cautions read' }) - 1,
        column: at.who,
      }),
    ).toBe('Ana, Bo');
  });

  it('wake it from the very page that put it away, which has read its sheets as they were before', () => {
    const page: File = { book: undefined };
    const inUse = open({ clock: on('09'), saved: worked() });
    const press = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>) =>
      run(inUse, workFor(page, name, about)) as Outcome<BuildState>;
    const toTheEnd = (begun: Outcome<BuildState>) => {
      let state = answerOf(begun);
      while (!state.finished) state = answerOf(press('continueBuild'));
    };
    toTheEnd(press('nextLesson', { ...chloride, classes: two.classes }));
    toTheEnd(press('openEarlier', first));
    expect(sheetState(inUse, fern).hidden).toBe(false);
    expect(at2(inUse, fern, 'c1-t1', 'molar mass', at.check)).toBe('on target');
  });

  it('leave the tab of a class where it was, in the next lesson and in one that is opened again', () => {
    const tabs = () => host.book.sheets.filter(({ hidden }) => !hidden).map(({ name }) => name);
    expect(tabs()).toEqual([fern, moss, 'Poll', 'Progress']);
    finish(host, call(host, 'openEarlier', first));
    expect(tabs()).toEqual([fern, moss, 'Poll', 'Progress']);
  });

  it('wake it with entries and checks alive, and what was typed meanwhile in its rows', () => {
    typeEntry(host, away(fern), 'c1-t1', 'moles of solute', '40');
    finish(host, call(host, 'openEarlier', first));
    expect(sheetState(host, fern).hidden).toBe(false);
    expect(sheetState(host, away(fern, '2026-03-09')).hidden).toBe(true);
    expect(at2(host, fern, 'c1-t1', 'molar mass', at.check)).toBe('on target');
    expect(at2(host, fern, 'c1-t1', 'moles of solute', at.entry)).toBe('40');
    expect(at2(host, fern, 'c1-t1', 'moles of solute', at.check)).not.toBe('');
    typeEntry(host, fern, 'c1-t1', 'molar mass', '12');
    expect(at2(host, fern, 'c1-t1', 'molar mass', at.check)).toBe('not yet');
    expect(host.book.sheets.filter(({ name }) => /kept/.test(name))).toEqual([]);
    // Nothing was taken for an obstacle on the way.
    expect(workbookText(host)).not.toContain('Typed in this cell');
  });
});

describe('a tab that gets another name in the very run that puts its sheet away', () => {
  /** The next lesson as far as the step in which the class before is put away. */
  const about = (() => {
    let saved: string | undefined;
    return (): string => {
      if (saved !== undefined) return saved;
      const host = open({ clock: on('09'), saved: worked() });
      answerOf(call(host, 'nextLesson', chloride));
      while (!host.book.sheets.some(({ name }) => name === `${fern} 2`)) answerOf(call(host, 'continueBuild'));
      saved = host.save();
      return saved;
    };
  })();
  /** Gives a tab another name just before the call behind so many of these of the run, and says whether it came to that. */
  const rename = (host: StandIn, tab: string, isPlace: (called: string, count: number) => boolean): boolean => {
    let [isAside, count, done] = [false, 0, false];
    const { run: answer } = host;
    host.run = (seat, called, args) => {
      isAside = called === 'putAside';
      return answer(seat, called, args);
    };
    const { stop } = actAtEveryCall(host, (called) => {
      if (!isAside || done) return;
      count += 1;
      if (!isPlace(called, count)) return;
      done = true;
      host.book.renameSheet(sheetState(host, tab), 'Ferns on Monday');
    });
    answerOf(call(host, 'continueBuild'));
    stop();
    return done;
  };
  it.each([
    { when: 'at its beginning', tab: fern, isPlace: (_: string, count: number) => count === 1, now: 'Ferns on Monday' },
    {
      when: 'as it is looked at for the last time',
      tab: fern,
      isPlace: (called: string) => called === 'Sheet.getName',
      now: 'Ferns on Monday',
    },
    {
      when: 'while it is the new one’s',
      tab: `${fern} 2`,
      isPlace: (called: string) => called === 'Sheet.hideSheet',
      now: fern,
    },
  ])('keeps that: $when', ({ tab, isPlace, now }) => {
    const host = open({ clock: on('09'), saved: about() });
    expect(rename(host, tab, isPlace)).toBe(true);
    expect(host.book.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(['Ferns on Monday', away(now)]));
  });
});

it('says that it is out of use in words that the row of the headings shows whole', () => {
  const host = open({ clock: on('09'), saved: worked() });
  const height = host
    .view('teacher')
    .sheets.find(({ name }) => name === fern)
    ?.rowHeights.find(({ row }) => row === 1);
  const { size, bold } = looks.heading;
  for (const said of [hostWords.away, hostWords.kept].flatMap(({ alone, withLink }) => [alone, withLink]))
    expect(heightOf(said, { width: classWidths[at.task - 1] ?? 0, size, bold })).toBeLessThanOrEqual(
      height?.height ?? 0,
    );
});

it('says what was typed into a lesson while it was being put away, and keeps it there', () => {
  const host = open({ clock: on('09'), saved: worked() });
  let state = answerOf(call(host, 'nextLesson', chloride));
  while (!host.book.sheets.some(({ name }) => name === away(fern))) state = answerOf(call(host, 'continueBuild'));
  typeEntry(host, away(fern), 'c1-t1', 'moles of solute', '0.06');
  expect(finish(host, { ok: true, value: state }).late).toMatch(/^1 cell was typed into the lesson before/);
  expect(at2(host, away(fern), 'c1-t1', 'moles of solute', at.entry)).toBe('0.06');
});

it('are known by what stands in them where a copy of the file has lost its metadata: nothing of them stays in an emptied one', () => {
  const host = open({ clock: on('09'), saved: worked() });
  next(host);
  for (const sheet of host.book.sheets) sheet.metadata.length = 0;
  const bare = open({ clock: on('09'), saved: host.save() });
  const names = () => bare.book.sheets.map(({ name }) => name);
  expect(names()).toContain(away(fern));
  expect(answerOf(call(bare, 'readShare')).otherSheets).toEqual([]);
  finish(bare, call(bare, 'emptyCopy', { fileName: 'Workbook', keepHints: false, removeOthers: false }));
  expect(names().filter((name) => /lesson of/.test(name))).toEqual([]);
  expect(bare.save()).not.toMatch(/Ana|119\.0/);
});
