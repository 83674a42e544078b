import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { type RecordEntry, recordFields } from '../../src/lab/record/recordEntry.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { preparationTexts } from '../../src/lab/texts/preparation.ts';
import { addedHints } from '../../src/workbook/addedHints.ts';
import { cellText } from '../../src/workbook/cellText.ts';
import { pollColumns, pollRows } from '../../src/workbook/layout.ts';
import { looks, plainLook, stateLooks } from '../../src/workbook/looks.ts';
import { percentErrors } from '../../src/workbook/percentErrors.ts';
import { planHelpSheet } from '../../src/workbook/planHelpSheet.ts';
import { planKeySheet } from '../../src/workbook/planKeySheet.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { planPollSheet } from '../../src/workbook/planPollSheet.ts';
import { planPrepareSheet } from '../../src/workbook/planPrepareSheet.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import type { StepReading } from '../../src/workbook/readClassSheet.ts';
import { readPollSheet } from '../../src/workbook/readPollSheet.ts';
import { rowFor } from '../../src/workbook/readRecordSheet.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { words } from '../../src/workbook/words.ts';
import { lesson } from './lesson.ts';

describe('the key on a sheet of its own', () => {
  it('has the warning on top, headings below it, and a line for each answer', () => {
    const rows = [
      ['Fern class', 'Otter', 'Mass', '7.14', 'g', ''],
      ['Moss class', 'Newt', 'Mass', '3.57', 'g', 'about'],
    ];
    const name = 'Key 2026-03-02';
    const plan = planKeySheet({ name, rows });
    const shown = plan.blocks.flatMap(({ row, column, cells }) =>
      cells.map((line, down) => [
        row + down,
        column,
        ...line.map((content) => (content.kind === 'text' ? content.text : content.kind)),
      ]),
    );
    const { warning, headings } = words.keySheet;
    expect(shown).toEqual([
      [1, 1, warning, 'blank', 'blank', 'blank', 'blank', 'blank'],
      [2, 1, ...headings],
      [3, 1, 'Fern class', 'Otter', 'Mass', '7.14', 'g', 'blank'],
      [4, 1, 'Moss class', 'Newt', 'Mass', '3.57', 'g', 'about'],
    ]);
    expect(plan).toMatchObject({
      name,
      role: { kind: 'key', className: name },
      rowCount: 4,
      columnCount: 6,
      frozenRows: 2,
      identity: {
        firstRow: 2,
        columns: [1, 2],
        rows: [headings.slice(0, 2), ['Fern class', 'Otter'], ['Moss class', 'Newt']],
      },
    });
    expect(plan.looks).toEqual([
      { row: 1, column: 1, rows: 1, columns: 6, look: 'caution' },
      { row: 2, column: 1, rows: 1, columns: 6, look: 'heading' },
    ]);
  });
  it('has nothing that computes, and nowhere to write', () => {
    const { checks, formats, states, choices, writable, unprotected, spill, carried } = planKeySheet({
      name: 'Key',
      rows: [],
    });
    expect([checks, formats, states, choices, writable, unprotected, spill, carried].flat()).toEqual([]);
  });
});

describe('the Record', () => {
  it('keeps its headings and the first two columns in view, and everything below is for people to write in', () => {
    const { role, frozenRows, frozenColumns, identity, writable, rowCount, columnCount, unprotected, spill } =
      planRecordSheet();
    expect(role).toEqual({ kind: 'record' });
    expect([frozenRows, frozenColumns]).toEqual([identity.firstRow, 2]);
    expect(writable).toEqual([{ row: frozenRows + 1, column: 1, rows: rowCount - frozenRows, columns: columnCount }]);
    expect([unprotected, spill].flat()).toEqual([]);
  });
  it('has the row of a class on a day, and no other', () => {
    const rows = [
      ['2026-03-01', 'Fern'],
      ['2026-03-02', 'Moss'],
      ['2026-03-02', 'Fern'],
      ['2026-03-02', 'Fern'],
    ].map(([day, className], index) => ({ row: index + 5, entry: { day, className } as RecordEntry }));
    expect(rowFor({ rows }, { day: '2026-03-02', className: 'Fern' })?.row).toBe(7);
    expect(rowFor({ rows }, { day: '2026-03-01', className: 'Moss' })).toBeUndefined();
    expect(recordFields.slice(0, 2)).toEqual(['day', 'className']);
  });
});

describe('Help', () => {
  const plan = planHelpSheet(lesson, newSheetNames([]));
  const { step, level } = words.help;
  const above = [['Help'], ['a note', '', 'x'], [step, level, words.help.wording, words.help.link]];

  it('gives back the lines that a teacher added, and none of the planned ones', () => {
    expect(
      addedHints(
        [
          ...above,
          ['molar mass', '1', 'In my words.', ''],
          ['molar mass', '4', 'Add them all.', ''],
          ['', '1', 'for no row', ''],
          ['my own row', '1', '', ''],
          [' my own row ', 2, '', 'https://example.org/a', 'x'],
        ],
        plan,
      ),
    ).toEqual([
      ['molar mass', '4', 'Add them all.', ''],
      ['my own row', '2', '', 'https://example.org/a'],
    ]);
  });
  it('has none to give back where its headings are gone', () => {
    const added = ['my own row', '1', 'In my words.', ''];
    expect(addedHints([...above.slice(0, 2), added], plan)).toEqual([]);
    expect(addedHints([[step, 'x'], ['x', level], added], plan)).toEqual([]);
    expect(addedHints([...above, added], plan)).toEqual([added]);
  });
});

describe('the Poll', () => {
  const marks = pollTexts.statements.map(() => '');
  const line = (day: string, className: string, from: string, first: string, open: string) => {
    const cells: (string | number)[] = Array.from({ length: pollColumns.openLine }, () => '');
    cells[pollColumns.day - 1] = day;
    cells[pollColumns.className - 1] = className;
    cells[pollColumns.from - 1] = from;
    cells[pollColumns.firstStatement - 1] = first;
    cells[pollColumns.openLine - 1] = open;
    return cells;
  };
  it('is read from the first row of answers on, and only rows with an answer', () => {
    const above = Array.from({ length: pollRows.firstAnswer - 1 }, () => line('d', 'c', 'f', 'yes', 'above'));
    const cells = [
      ...above,
      line('2026-03-02', ' Fern ', 'student', pollTexts.scale[0] ?? '', ''),
      line('2026-03-02', 'Fern', 'student', '', ''),
      line('2026-03-02', 'Moss', 'team', '', 'More time.'),
    ];
    expect(readPollSheet(cells)).toEqual([
      {
        day: '2026-03-02',
        className: 'Fern',
        from: 'student',
        marks: [pollTexts.scale[0], ...marks.slice(1)],
        openLine: '',
      },
      { day: '2026-03-02', className: 'Moss', from: 'team', marks, openLine: 'More time.' },
    ]);
    expect(readPollSheet(above)).toEqual([]);
  });
  it('takes rows that were added below to a sheet of another layout', () => {
    expect(planPollSheet(lesson, newSheetNames([])).carriesAddedRows).toBe(true);
  });
});

describe('Prepare', () => {
  const names = { prepare: 'Prepare', plan: 'Plan' };
  const lines = (teamCount: number) => {
    const [first] = lesson.teams;
    if (first === undefined) throw new Error('The lesson has no team.');
    // A substance of its own for each team, so that each needs lines of its own.
    const salts = ['KBr', 'KCl', 'NaCl', 'KI', 'NaBr', 'CaCl2', 'MgCl2', 'Na2SO4', 'K2SO4', 'NaNO3', 'KNO3', 'MgSO4'];
    const teams = Array.from({ length: teamCount }, (_, index) => ({
      ...first,
      key: `k${index}`,
      givens: {
        ...first.givens,
        formula: salts[index % salts.length] ?? 'KBr',
        'stock molarity': `0.${300 + index}`,
        flask: String(100 + index),
      },
    }));
    const plan = planPrepareSheet({ ...lesson, teams }, names, planPlaces(lesson));
    const list = plan.blocks.find(({ row }) => row === plan.identity.firstRow + 1);
    return { plan, cells: list?.cells ?? [] };
  };
  const text = (cell: unknown) => (cell as { text?: string } | undefined)?.text ?? '';

  it('fills the rest of its lines with blanks, so that nothing of a longer list is left', () => {
    const { plan, cells } = lines(2);
    expect(cells).toHaveLength(plan.rowCount - plan.identity.firstRow);
    expect(cells[cells.length - 1]).toHaveLength(6);
    expect(cells[cells.length - 1]?.every(({ kind }) => kind === 'blank')).toBe(true);
  });
  it('says in its last line how many more there are, where they do not fit', () => {
    const { plan, cells } = lines(120);
    const room = plan.rowCount - plan.identity.firstRow;
    expect(cells).toHaveLength(room);
    const last = cells[cells.length - 1] ?? [];
    const more = Array.from({ length: 2000 }, (_, index) => index).find(
      (count) => preparationTexts.more(count) === text(last[1]),
    );
    expect(more).toBeGreaterThan(1);
    expect(last.map(({ kind }) => kind)).toEqual(['blank', 'text', 'blank', 'blank', 'blank', 'blank']);
    expect(text(cells[cells.length - 2]?.[1])).not.toBe('');
  });
});

/** Contrast of two colours by WCAG 2.2, success criterion 1.4.3: relative luminance of sRGB. */
function contrast(one: string, other: string): number {
  const luminance = (color: string) => {
    if (!/^#[0-9a-f]{6}$/.test(color)) throw new Error(`Expected a colour such as #17212b, received “${color}”.`);
    const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((place) => {
      const part = Number.parseInt(color.slice(place, place + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((first, second) => second - first);
  return (light + 0.05) / (dark + 0.05);
}

describe('the percent errors of a class', () => {
  it('leave out a row that stands while its entry holds no number', () => {
    const step: StepReading = {
      row: 2,
      key: 'k',
      step: 'percent error',
      entry: 'see below',
      check: 'on target',
      lookAt: '',
      hint: '',
      helpWanted: 0,
      who: '',
      tries: 1,
      lastEntry: undefined,
    };
    const block = {
      key: 'k',
      team: 'Otter',
      who: '',
      whoColumn: 9,
      checkColumn: 5,
      headingRow: 1,
      closingRow: 4,
      known: true,
    };
    const reading = { linkRows: 1, blocks: [{ ...block, steps: [step, { ...step, row: 3, entry: '-2.5' }] }] };
    const steps = activityById('bench reading')?.steps ?? [];
    expect(percentErrors(reading, { steps, decimalMark: 'point' })).toEqual([2.5]);
  });
});

describe('looks', () => {
  it.each([...Object.entries(looks), ...Object.entries(stateLooks), ['plain', plainLook] as const])(
    'can be read: %s',
    (_, { color, background }) => {
      expect(contrast(color, background)).toBeGreaterThanOrEqual(4.5);
    },
  );
  it('set headings apart in bold, and wrap what people write and read in their rows', () => {
    for (const name of ['title', 'heading', 'team heading', 'setting name'] as const)
      expect(looks[name].bold).toBe(true);
    for (const name of ['question', 'entry', 'helper', 'spilled'] as const)
      expect(looks[name]).toMatchObject({ wrap: true, bold: false, align: 'left' });
    for (const name of ['title', 'note', 'caution', 'link'] as const) expect(looks[name].wrap).toBe(false);
    expect(looks.mark.clip).toBe(true);
    expect(looks.title.size).toBeGreaterThan(looks.note.size);
  });
});

describe('cellText', () => {
  it('is what stands in a cell, and nothing for a date or a cell that is not there', () => {
    expect([' a ', 7, true, null, undefined, new Date(0), ''].map(cellText)).toEqual([
      'a',
      '7',
      'true',
      '',
      '',
      '',
      '',
    ]);
  });
});
