import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at, layoutVersion, planColumns } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { answerOf, call, finish, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';

/**
 * The small invented lesson of `setup.ts` as it was built on 2 March by the last version of each layout, and saved by the
 * stand-in of that version; today's reads that form as it is. People typed into it then, and the layouts since the second
 * had a Record with a row for each class. Layout 4 is from before a file could hold several lessons.
 */
const savedIn = (layout: 1 | 2 | 4): string =>
  gunzipSync(readFileSync(join(import.meta.dirname, 'fixtures', `layout${layout}.json.gz`))).toString('utf8');
const openIn = (saved: string): StandIn => open({ saved, clock: () => new Date('2026-03-09T10:00:00Z') });

const [fern, moss] = ['Fern class', 'Moss class'] as const;
const old = (letters: string) => `${words.class.lettersBefore}${letters}`;
/** What stands in the file from then, by class, team and step, where it belongs today. */
const typed: readonly (readonly [string, string, string, Partial<Record<'entry' | 'help' | 'who', string>>])[] = [
  [fern, 'c1-t1', 'molar mass', { entry: '119.0', who: 'Ada' }],
  [fern, 'c1-t1', 'moles of solute', { entry: '0.0600', help: '1' }],
  [fern, 'c1-t1', 'mass of solute', { entry: '7.14', who: 'Bo' }],
  [fern, 'c1-t1', 'stock procedure', { entry: 'd, a, b, c' }],
  [fern, 'c1-t1', 'mass weighed', { entry: '7.10' }],
  [fern, 'c1-t1', 'dilution factor', { entry: '2.5' }],
  [fern, 'c1-t1', 'stock volume', { entry: '20.0' }],
  [fern, 'c1-t1', 'dilution procedure', { entry: 'b, a, c' }],
  [fern, 'c1-t1', 'particles', { entry: 'b' }],
  [fern, 'c1-t1', 'in your words', { entry: 'The ions are further apart.' }],
  [fern, 'c1-t2', 'molar mass', { entry: '119' }],
  [fern, 'c1-t2', 'moles of solute', { entry: '0.0700' }],
  [fern, 'c1-t2', 'mass of solute', { entry: '9', help: '2' }],
  [fern, 'c1-t2', 'particles', { entry: 'c' }],
  [moss, 'c2-t1', 'molar mass', { entry: '80' }],
  [moss, 'c2-t1', 'in your words', { entry: '=we do not know' }],
];
const lettered = ['stock procedure', 'dilution procedure', 'particles'];

const cell = (host: StandIn, [sheet, key, step]: readonly [string, string, string], column: number): string =>
  valueAt(host, { sheet, row: stepRow(host, { sheet, key, step }), column });
const who = (host: StandIn, sheet: string, key: string): string =>
  valueAt(host, { sheet, row: stepRow(host, { sheet, key, step: 'cautions read' }) - 1, column: at.who });
const shown = (host: StandIn, name: string): string =>
  JSON.stringify([...sheetState(host, name).cells.values()].map((one) => one.content));
const kept = (host: StandIn) => host.book.sheets.map(({ name }) => name).filter((name) => name.includes(', kept '));

describe.each([1, 2, 4] as const)('a workbook of layout %s', (layout) => {
  it('says that it is older, is brought up to date by one build that asks nothing, and goes on to a next lesson', () => {
    const host = openIn(savedIn(layout));
    expect(host.unreadCells).toEqual([]);
    const { setup, problems, lessons, lesson } = answerOf(call(host, 'readLesson'));
    expect(problems.includes(deskWords.olderSheets)).toBe(layout < layoutVersion);
    expect([lesson, lessons.length, lessons[0]?.classes]).toEqual(['', 1, [fern, moss]]);

    expect(finish(host, call(host, 'startBuild', setup)).finished).toBe(true);
    expect(answerOf(call(host, 'readLesson')).problems).toEqual([]);
    for (const [sheet, key, step, { entry = '', help = '', who: name = '' }] of typed) {
      const place = [sheet, key, step] as const;
      const isOld = layout < layoutVersion && lettered.includes(step);
      expect([...place, cell(host, place, at.entry)]).toEqual([...place, isOld ? old(entry) : entry]);
      expect([...place, cell(host, place, at.help), cell(host, place, at.who)]).toEqual([...place, help, name]);
      expect([...place, cell(host, place, at.tries)]).toEqual([...place, '1']);
    }
    if (layout > 1) expect([who(host, fern, 'c1-t1'), who(host, moss, 'c2-t1')]).toEqual(['Ada: calculates, Bo', 'Cy']);
    const plan = sheetState(host, 'Plan');
    const lines = Array.from({ length: plan.rows }, (_, row) =>
      [planColumns.key, planColumns.team, planColumns.firstGiven + 1].map((column) =>
        valueAt(host, { sheet: 'Plan', row: row + 1, column }),
      ),
    );
    expect(lines.filter(([key = '']) => /^c\d-t\d$/.test(key))).toEqual([
      ['c1-t1', 'Otter', '0.300'],
      // Typed into the Plan by hand.
      ['c1-t2', 'Heron', '0.350'],
      ['c2-t1', 'Newt', '0.300'],
    ]);
    expect(kept(host).filter((name) => !name.startsWith('Plan'))).toHaveLength(layout < layoutVersion ? 2 : 0);
    for (const name of kept(host)) if (!name.startsWith('Plan')) expect(shown(host, name)).toContain('Checks are off');

    // Checks are alive, of what stood there and of what is typed now; letters of then are no answer, right or wrong.
    expect(cell(host, [fern, 'c1-t2', 'moles of solute'], at.check)).toBe('on target');
    expect(cell(host, [fern, 'c1-t2', 'mass of solute'], at.check)).toBe('not yet');
    if (layout < layoutVersion) expect(cell(host, [fern, 'c1-t2', 'particles'], at.check)).toBe('unreadable');
    const row = stepRow(host, { sheet: moss, key: 'c2-t1', step: 'molar mass' });
    typeIn(host, { sheet: moss, cells: [[row, at.entry, '119.0']] });
    expect(valueAt(host, { sheet: moss, row, column: at.check })).toBe('on target');
    expect(valueAt(host, { sheet: moss, row, column: at.tries })).toBe('2');

    // It counts as one lesson, and the next one begins from it.
    const next = {
      ...setup,
      givens: { ...setup.givens, formula: 'KCl', ion: 'Cl-' },
      classes: setup.classes.filter(({ name }) => name === fern),
    };
    expect(finish(host, call(host, 'nextLesson', next)).finished).toBe(true);
    const { inUse, away } = answerOf(call(host, 'readLessons'));
    expect(inUse.map(({ id, substance, classes }) => [id, substance, classes])).toEqual([
      ['', 'KBr', [moss]],
      ['2026-03-09.1', 'KCl', [fern]],
    ]);
    expect(away.map(({ id, classes }) => [id, classes])).toEqual([['', [fern]]]);
    expect(cell(host, [deskWords.awayName(fern, ''), 'c1-t1', 'mass of solute'], at.entry)).toBe('7.14');
    expect(cell(host, [moss, 'c2-t1', 'molar mass'], at.check)).toBe('on target');
    expect(cell(host, [fern, 'c1-t1', 'molar mass'], at.entry)).toBe('');
    // Its Record goes on, with the row of then as somebody worded it.
    if (layout > 1) expect(shown(host, 'Record')).toContain('Went well: invented.');
    expect(host.book.sheets.filter(({ name }) => name.startsWith('Record'))).toHaveLength(1);
    expect(host.triggerErrors).toEqual([]);
  });
});

describe('a workbook of a newer layout', () => {
  /** A copy with the number raised by hand, in the tags and in the sheets. */
  const newer = (): StandIn => {
    const saved = JSON.parse(savedIn(4));
    for (const { metadata, cells } of saved.sheets) {
      for (const tag of metadata) tag.value = tag.value.replace('"layout":4', `"layout":${layoutVersion + 1}`);
      for (const [row, column, one] of cells)
        if (row === 1 && column === at.step && one.content?.text === '4') one.content.text = String(layoutVersion + 1);
    }
    return openIn(JSON.stringify(saved));
  };

  it('is refused in words that say what to do, whatever is asked, with nothing written', () => {
    const host = newer();
    const before = workbookText(host);
    const { setup } = answerOf(call(openIn(savedIn(4)), 'readLesson'));
    const answers = [
      call(host, 'readLesson'),
      call(host, 'readClass', fern),
      call(host, 'startBuild', setup),
      call(host, 'startSample'),
      call(host, 'nextLesson', setup),
      call(host, 'addTeam', fern, 'Wren'),
      call(host, 'addPractice', fern),
      call(host, 'closeClass', fern, true),
      call(host, 'setMembers', fern, 'c1-t1', { names: 'Di', absent: [], base: '' }),
      call(host, 'writePrepareSheet'),
      call(host, 'writeKeySheet', true),
      call(host, 'checkAgain'),
      call(host, 'emptyCopy', { fileName: 'Invented lab', keepHints: false, removeOthers: true }),
    ];
    const { says, advice } = deskWords.newerFile;
    for (const answer of answers) expect(answer).toEqual({ ok: false, problem: { message: `${says} ${advice}` } });
    expect(workbookText(host)).toBe(before);
  });

  it('keeps what a student types, and counts nothing in columns that may be others', () => {
    const host = newer();
    const place = [moss, 'c2-t1', 'moles of solute'] as const;
    typeIn(host, {
      sheet: moss,
      cells: [[stepRow(host, { sheet: moss, key: place[1], step: place[2] }), at.entry, '1']],
    });
    expect([cell(host, place, at.entry), cell(host, place, at.tries)]).toEqual(['1', '']);
    expect(host.triggerErrors).toEqual([]);
  });
});
