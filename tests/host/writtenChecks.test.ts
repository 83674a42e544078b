import { describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { Asked } from '../../src/desk/file/ask.ts';
import type { File } from '../../src/desk/file/look.ts';
import { deskWords } from '../../src/desk/words.ts';
import { hostWords } from '../../src/host/words.ts';
import type { Step } from '../../src/lab/lesson/activity.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { tickTexts } from '../../src/lab/texts/ticks.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, countedColumn, layoutVersion } from '../../src/workbook/layout.ts';
import { readClassSheet } from '../../src/workbook/readClassSheet.ts';
import { cases } from '../depth.ts';
import { answerOf, buildSetup, call, finish, open, run, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { checksDirect } from './checksDirect.ts';
import { actAtChange, changesOf } from './hostFailure.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const oneClass: Setup = { ...setup, ownNumbers: true, classes: setup.classes.slice(0, 1) };
const bySidebar: Setup = { ...oneClass, settings: { ...oneClass.settings, 'checks come from': 'sidebar' } };

const opened = (lesson: Setup): StandIn => {
  const host = open({ clock: () => new Date('2026-03-02T10:00:00Z') });
  buildSetup(host, lesson);
  return host;
};
const rowsOf = (host: StandIn) => Array.from({ length: sheetState(host, sheet).rows }, (_, index) => index + 1);
const readingOf = (host: StandIn) => {
  const cells = rowsOf(host).map((row) =>
    Array.from({ length: at.givens + 1 }, (_, index) => valueAt(host, { sheet, row, column: index + 1 })),
  );
  const reading = readClassSheet(cells);
  if (reading === undefined) throw new Error('Expected a class sheet.');
  return reading;
};
const saidIn = (host: StandIn) =>
  rowsOf(host).map((row) => [at.check, at.lookAt, at.hint].map((column) => valueAt(host, { sheet, row, column })));
/** Rows whose check is a formula, and cells with a note. */
const checksIn = (host: StandIn) =>
  rowsOf(host).filter((row) => host.book.cell(sheetState(host, sheet), row, at.check).content?.kind === 'formula');
const notesIn = (host: StandIn) =>
  rowsOf(host).filter((row) =>
    [at.check, at.lookAt, at.hint].some((column) => host.book.cell(sheetState(host, sheet), row, column).note),
  );

const number = (answer: string): string => answer.replace('about ', '');
const rightEntries: Readonly<Record<Step['kind'], (answer: string) => string>> = {
  ticked: () => tickTexts.answer('KBr'),
  calculated: number,
  measured: number,
  ordered: (answer) => answer,
  chosen: (answer) => answer,
  weighing: number,
  safety: (answer) => answer,
  told: () => 'It is clear and even.',
};

describe('checks that the sidebar works out', () => {
  it('say the same words as formulas, over a whole lesson', () => {
    const [formulas, written] = [opened(oneClass), opened(bySidebar)];
    const lines = answerOf(call(formulas, 'readKey')).teams[0]?.lines ?? [];
    const page: File = { book: undefined };
    const workOut = () => answerOf(run(written, workFor(page, 'workOutChecks', [])));
    workOut();
    expect(saidIn(written)).toEqual(saidIn(formulas));
    let rows = 0;
    const { blocks } = readingOf(formulas);
    expect(readingOf(written).blocks.map(({ key: team }) => team)).toEqual(blocks.map(({ key: team }) => team));
    for (const [place, { row, step }] of (blocks[0]?.steps ?? []).entries()) {
      const line = lines[place];
      const right = rightEntries[line?.kind ?? 'told'](line?.answer ?? '');
      for (const cells of [
        [
          [row, at.entry, row % 2 === 0 ? '12.5' : 'about a spoonful'],
          [row, at.help, String(1 + (row % 3))],
        ],
        [[row, at.entry, right]],
      ] as const) {
        for (const host of [formulas, written]) typeIn(host, { sheet, cells });
        rows += workOut().rows;
        expect([step, saidIn(written)]).toEqual([step, saidIn(formulas)]);
      }
    }
    const words = (readingOf(written).blocks[0]?.steps ?? []).map(({ check }) => check);
    console.log(`${rows} rows written by the sidebar; at the end: ${words.join(', ')}`);
    // The last row asks for words, which nobody scores.
    expect(words).toEqual([...words.slice(1).map(() => 'on target'), '']);
  });

  it('touch only the rows that changed, and none where nothing did', () => {
    const host = opened(bySidebar);
    const page: File = { book: undefined };
    const workOut = () => answerOf(run(host, workFor(page, 'workOutChecks', [])));
    workOut();
    const [row = 0] =
      readingOf(host).blocks[0]?.steps.flatMap(({ step, row }) => (step === 'molar mass' ? [row] : [])) ?? [];
    typeIn(host, { sheet, cells: [[row, at.entry, '12.5']] });
    host.resetCounts();
    expect(workOut().rows).toBe(1);
    // The three words, and what is noted about them.
    expect(host.counts.host['Range.setValues']).toBe(2);
    host.resetCounts();
    expect(workOut().rows).toBe(0);
    expect(host.counts.host['Range.setValues']).toBeUndefined();
  });

  it('give way to formulas and come back with a build, and lose no entry and leave no note', () => {
    const host = opened(bySidebar);
    const formulas = opened(oneClass);
    const row = readingOf(host).blocks[0]?.steps[1]?.row ?? 0;
    for (const one of [host, formulas]) typeIn(one, { sheet, cells: [[row, at.entry, '12.5']] });
    const said = saidIn(formulas);
    answerOf(call(host, 'workOutChecks'));
    expect([checksIn(host), saidIn(host)]).toEqual([[], said]);
    buildSetup(host, oneClass);
    expect([checksIn(host).length, saidIn(host)]).toEqual([2, said]);
    // A page that has not heard of it yet writes nothing over a formula.
    expect(answerOf(call(host, 'workOutChecks')).rows).toBe(0);
    buildSetup(host, bySidebar);
    expect(checksIn(host)).toEqual([]);
    answerOf(call(host, 'workOutChecks'));
    expect(saidIn(host)).toEqual(said);
    expect(valueAt(host, { sheet, row, column: at.entry })).toBe('12.5');
    expect(notesIn(host)).toEqual([]);
  });

  it('write nothing where a row moved since the look', () => {
    const host = opened(bySidebar);
    answerOf(call(host, 'workOutChecks'));
    const row = readingOf(host).blocks[0]?.steps[1]?.row ?? 0;
    typeIn(host, { sheet, cells: [[row, at.entry, '12.5']] });
    const before = saidIn(host);
    const work = workFor({ book: undefined }, 'workOutChecks', []);
    const answer = (asked: Asked) =>
      host.run('teacher', asked.call, [layoutVersion, 'wish' in asked ? asked.wish : {}]);
    const look = work.next().value as Asked;
    const write = work.next(answer(look)).value as Asked;
    host.insertRows('teacher', sheetState(host, sheet).id, row, 1);
    expect(answer(write)).toMatchObject({ ok: false, problem: { reason: 'changed' } });
    expect(saidIn(host).filter((_, index) => index !== row - 1)).toEqual(before);
    expect(answerOf(call(host, 'workOutChecks')).rows).toBe(1);
  });

  it('keep what somebody typed over one, name it, and move it into a note with one press, or with a build', () => {
    const host = opened(bySidebar);
    answerOf(call(host, 'workOutChecks'));
    const said = saidIn(host);
    const [one, other] = readingOf(host).blocks[0]?.steps.slice(1) ?? [];
    if (one === undefined || other === undefined) throw new Error('Expected rows.');
    const type = (row: number, column: number, text: string) => typeIn(host, { sheet, cells: [[row, column, text]] });
    const noteAt = (row: number, column: number) =>
      host.book.cell(sheetState(host, sheet), row, column).note?.split('an idea').length ?? 0;
    type(one.row, at.check, 'an idea');
    type(other.row, at.lookAt, 'an idea');
    type(other.row, at.entry, '12.5');
    expect(answerOf(call(host, 'workOutChecks'))).toMatchObject({
      rows: 1,
      inTheWay: [`E${one.row}`, `F${other.row}`],
    });
    expect([saidIn(host)[one.row - 1]?.[0], saidIn(host)[other.row - 1]?.[1]]).toEqual(['an idea', 'an idea']);
    expect(answerOf(call(host, 'readClass', sheet)).inTheWay).toEqual([
      expect.stringMatching(`^E${one.row} holds “an idea”, so a check of `),
      expect.stringMatching(`^F${other.row} holds “an idea”, so a check of `),
    ]);
    expect(answerOf(call(host, 'checkAgain')).moved).toHaveLength(2);
    expect([noteAt(one.row, at.check), noteAt(other.row, at.lookAt)]).toEqual([2, 2]);
    type(other.row, at.entry, '');
    answerOf(call(host, 'workOutChecks'));
    expect(saidIn(host)).toEqual(said);
    type(one.row, at.hint, 'an idea');
    buildSetup(host, oneClass);
    expect(noteAt(one.row, at.hint)).toBe(2);
    expect(checksIn(host)).toHaveLength(2);
  });

  it.each([
    { from: 'the sidebar', lesson: bySidebar },
    { from: 'formulas', lesson: oneClass },
  ])('keep in a note what somebody typed over one from $from while its lesson was put away', ({ lesson }) => {
    const at9 = () => new Date('2026-03-09T10:00:00Z');
    const before = opened(lesson);
    answerOf(call(before, 'workOutChecks'));
    const said = saidIn(before);
    const host = open({ clock: at9, saved: before.save() });
    const { headingRow = 0, closingRow = 0, steps = [] } = readingOf(host).blocks[0] ?? {};
    const [one, other] = steps.slice(1);
    if (one === undefined || other === undefined) throw new Error('Expected rows.');
    // Of the other team somebody has taken out all but the heading.
    const { headingRow: from = 0, closingRow: to = 0 } = readingOf(host).blocks[1] ?? {};
    host.deleteRows('teacher', sheetState(host, sheet).id, from + 1, to - from);
    finish(host, call(host, 'nextLesson', { ...oneClass, givens: { ...setup.givens, formula: 'KCl', ion: 'Cl-' } }));
    const away = deskWords.awayName(sheet, '2026-03-02');
    typeIn(host, {
      sheet: away,
      cells: [
        [headingRow, at.check, 'a word'],
        [one.row, at.check, 'an idea'],
        [other.row, at.lookAt, 'another'],
        [closingRow, at.hint, 'a third'],
      ],
    });
    expect(finish(host, call(host, 'openEarlier', '2026-03-02.1')).late).toContain(
      `E${headingRow}, E${one.row}, F${other.row}, G${closingRow}`,
    );
    const noteAt = (row: number, column: number) => host.book.cell(sheetState(host, sheet), row, column).note;
    expect(noteAt(headingRow, at.check)).toBe(hostWords.movedAside('a word'));
    expect(noteAt(one.row, at.check)).toBe(hostWords.movedAside('an idea'));
    expect(noteAt(other.row, at.lookAt)).toBe(hostWords.movedAside('another'));
    // Only these, and the checks come again as they were.
    expect(notesIn(host)).toEqual([headingRow, one.row, other.row, closingRow]);
    answerOf(call(host, 'workOutChecks'));
    expect(saidIn(host).slice(0, closingRow)).toEqual(said.slice(0, closingRow));
  });

  it('come with the counts that no trigger makes there, and the same ones', () => {
    const counts = (host: StandIn) =>
      readingOf(host).blocks.flatMap(({ steps }) =>
        steps.map(({ row }) => [
          valueAt(host, { sheet, row, column: at.tries }),
          valueAt(host, { sheet, row, column: at.lastEntry }) === '' ? 'no time' : 'a time',
          valueAt(host, { sheet, row, column: countedColumn }),
        ]),
      );
    const [counted, seen] = [opened(oneClass), opened(bySidebar)];
    const quiet = open({
      saved: seen.save(),
      clock: () => new Date('2026-03-02T10:00:00Z'),
      troubles: { triggersOff: true },
    });
    const page: File = { book: undefined };
    const workOut = (host: StandIn) => answerOf(run(host, workFor(page, 'workOutChecks', [])));
    workOut(quiet);
    const rows = readingOf(quiet).blocks.flatMap(({ steps }) => steps.slice(1, 4).map(({ row }) => row));
    for (const [place, text] of ['119', '119', '12.5', '', '12.5', '=1+1'].entries()) {
      for (const host of [counted, quiet, seen])
        typeIn(host, {
          sheet,
          cells: rows.map((row) => [row, at.entry, text === '' ? '' : `${text}${place > 3 ? row : ''}`]),
        });
      workOut(quiet);
      expect([text, counts(quiet)]).toEqual([text, counts(counted)]);
    }
    // Where the trigger has counted, the page writes no count.
    const before = counts(seen);
    workOut(seen);
    expect(counts(seen)).toEqual(before);
    expect(before).toEqual(counts(counted));
  });
});

describe('checks that are being written while somebody moves rows', () => {
  const begun = (() => {
    const host = opened(bySidebar);
    const { blocks } = readingOf(host);
    const [first, second] = blocks.map(({ headingRow }) => headingRow);
    typeIn(host, { sheet, cells: [[(first ?? 0) + 2, at.entry, '119.00'] as const] });
    typeIn(host, { sheet, cells: [[(second ?? 0) + 2, at.entry, '7'] as const] });
    return host.save();
  })();
  const clock = () => new Date('2026-03-02T10:00:00Z');
  const deeds: Readonly<Record<string, (host: StandIn, headingRow: number) => void>> = {
    'puts a row in above them': (host, row) => host.insertRows('teacher', sheetState(host, sheet).id, row, 1),
    'puts a row in between them': (host, row) => host.insertRows('student', sheetState(host, sheet).id, row + 3, 1),
    'takes an empty row out above them': (host, row) =>
      host.deleteRows('teacher', sheetState(host, sheet).id, row - 1, 1),
  };
  it.each(Object.keys(deeds))('stand beside their own steps, and the numbers of teams stay, where one %s', (deed) => {
    const whole = open({ saved: begun, clock });
    const all = changesOf(whole);
    answerOf(call(whole, 'workOutChecks'));
    const count = cases({ short: 3, deep: Number.POSITIVE_INFINITY });
    const every = Math.max(1, Math.floor(all.length / count));
    const odd: string[] = [];
    let moved = 0;
    for (const { place } of all.filter((_, index) => index % every === every - 1)) {
      const host = open({ saved: begun, clock });
      const { stop } = actAtChange(host, place, () => {
        moved += 1;
        deeds[deed]?.(host, readingOf(host).blocks[0]?.headingRow ?? 0);
      });
      call(host, 'workOutChecks');
      stop();
      const { inTheWay = [] } = answerOf(call(host, 'workOutChecks'));
      odd.push(...[...inTheWay, ...checksDirect(host).odd].map((words) => `${place}: ${words}`));
    }
    expect(moved).toBeGreaterThan(1);
    expect(odd).toEqual([]);
  });
});
