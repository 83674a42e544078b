import { beforeEach, describe, expect, it } from 'vitest';
import { allKinds, look } from '../../src/desk/file/look.ts';
import { namesInFile } from '../../src/desk/record/namesInFile.ts';
import { readRows } from '../../src/desk/record/readRows.ts';
import { deskWords } from '../../src/desk/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { roles } from '../../src/lab/lesson/roles.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { firstRecordFields, type RecordEntry, recordFields, rowName } from '../../src/lab/record/recordEntry.ts';
import { membersTexts } from '../../src/lab/texts/members.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { recordWords } from '../../src/lab/texts/record.ts';
import { classColumns as at, planColumns, pollColumns, pollRows } from '../../src/workbook/layout.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import { recognisedSheet } from '../../src/workbook/recognisedSheet.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { copyOf, type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const { record: say } = deskWords;
const record = planRecordSheet().name;
const activity = activityById('stock and dilution');
const today = '2026-03-02T09:30:00Z';
const yesterday = '2026-03-01T09:30:00Z';
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const entryOf = (className: string, given: Partial<RecordEntry> = {}): RecordEntry => ({
  ...(Object.fromEntries(recordFields.map((field) => [field, ''])) as RecordEntry),
  day: '2026-03-02',
  className,
  ...given,
});
const save = (...rows: readonly (readonly [entry: RecordEntry, base?: RecordEntry | null])[]) =>
  file.call(
    'saveRecord',
    rows.map(([entry, base = null]) => ({ entry, base })),
  );
const headings = () =>
  file
    .sheetCalled(record)
    .cells.findIndex((line) => recordFields.every((field) => line.includes(recordWords.labels[field])));
const column = (field: (typeof recordFields)[number]) =>
  (file.sheetCalled(record).cells[headings()]?.indexOf(recordWords.labels[field]) ?? 0) + 1;
const rows = () =>
  file
    .sheetCalled(record)
    .cells.slice(headings() + 1)
    .map((line) => recordFields.map((field) => line[column(field) - 1] ?? '').join('|'))
    .filter((text) => /[^|]/.test(text));
const line = (entry: RecordEntry) => recordFields.map((field) => entry[field]).join('|');
const written = () => file.asked.flatMap((one) => (one.call === 'writeCells' ? one.wish.cells : []));

describe('saving the record of a day', () => {
  it('makes the Record once and writes the row of each class in one piece', () => {
    const [one, other] = [entryOf(fern, { notes: 'Windy.' }), entryOf(moss, { wentWell: 'All of it.' })];
    expect(valueIn(save([one], [other])).saved).toEqual([one, other]);
    expect(rows()).toEqual([line(one), line(other)]);
    // Cells beside each other go with one call of the host, so that no stop leaves half a row.
    const columns = recordFields.map((_, at) => column('day') + at);
    expect(written().map((cell) => [cell.row - headings(), cell.column])).toEqual(
      [2, 3].flatMap((row) => columns.map((at) => [row, at])),
    );
    for (const cell of written()) expect(cell.was).toBe('');
    const made = file.asked.filter(({ call }) => call === 'applySheet').length;
    valueIn(save([entryOf(fern, { day: '2026-03-03' })]));
    expect(file.asked.filter(({ call }) => call === 'applySheet')).toHaveLength(made);
    expect(rows()).toHaveLength(3);
  });
  it('rewrites the row of a class and day, and only what changed', () => {
    const first = entryOf(fern, { notes: 'Windy.', hard: 'The flask.' });
    valueIn(save([first]));
    const before = written().length;
    const second = { ...first, notes: 'Calm.' };
    expect(valueIn(save([second, first])).saved).toEqual([second]);
    expect(rows()).toEqual([line(second)]);
    expect(written().slice(before)).toMatchObject([{ column: column('notes'), was: 'Windy.', now: 'Calm.' }]);
  });
  it('writes nothing where nothing changed', () => {
    const first = entryOf(fern, { notes: 'Windy.' });
    valueIn(save([first]));
    const before = file.asked.filter(({ call }) => call === 'writeCells').length;
    expect(valueIn(save([first, first])).saved).toEqual([first]);
    expect(file.asked.filter(({ call }) => call === 'writeCells')).toHaveLength(before);
  });
  it('keeps what somebody wrote in the sheet since it was read, beside the new words', () => {
    const first = entryOf(fern, { notes: 'Windy.', next: '' });
    valueIn(save([first]));
    file.put(record, headings() + 2, column('notes'), 'Windy, then rain.');
    file.put(record, headings() + 2, column('next'), 'Dilute.');
    const { saved } = valueIn(save([{ ...first, notes: 'Calm.' }, first]));
    expect(saved).toEqual([{ ...first, notes: 'Windy, then rain.\nCalm.', next: 'Dilute.' }]);
    expect(rows()).toEqual([line({ ...first, notes: 'Windy, then rain.\nCalm.', next: 'Dilute.' })]);
  });
  it('leaves words that were there where the sidebar saw no row', () => {
    valueIn(save([entryOf(fern, { notes: 'Windy.' })]));
    expect(valueIn(save([entryOf(fern, { notes: 'Calm.' })])).saved[0]?.notes).toBe('Windy.\nCalm.');
  });
  it('is worked out anew where somebody writes meanwhile', () => {
    const first = entryOf(fern, { notes: 'Windy.' });
    valueIn(save([first]));
    file.before(() => file.put(record, headings() + 2, column('hard'), 'The meniscus.'));
    valueIn(save([{ ...first, notes: 'Calm.' }, first]));
    expect(rows()).toEqual([line({ ...first, notes: 'Calm.', hard: 'The meniscus.' })]);
  });
  it('writes nothing where a heading is gone', () => {
    valueIn(save([entryOf(fern)]));
    file.put(record, headings() + 1, column('hard'), '');
    const before = written().length;
    expect(problemOf(save([entryOf(fern, { notes: 'Windy.' })])).message).toBe(said(say.headings));
    expect(written()).toHaveLength(before);
  });
  it('writes from left to right, wherever the columns were moved to', () => {
    valueIn(save([entryOf(fern)]));
    const [row, hard, notes] = [headings() + 1, column('hard'), column('notes')];
    file.put(record, row, hard, recordWords.labels.notes);
    file.put(record, row, notes, recordWords.labels.hard);
    const before = written().length;
    valueIn(save([entryOf(fern, { hard: 'The flask.', next: 'Dilute.', notes: 'Windy.' })]));
    const cells = written().slice(before);
    expect(cells.map((cell) => cell.column)).toEqual([hard, notes, column('next')].sort((one, other) => one - other));
    expect(cells.find((cell) => cell.column === notes)?.now).toBe('The flask.');
  });
  it('refuses words with a name of the file in them, and says where', () => {
    file.put(fern, file.rowOf(fern, 'c1-t1'), at.who, 'Ana\nBen');
    fillRow(file, { step: 'molar mass' }, { who: 'Cyril' });
    const where = `“${recordWords.labels.notes}” of ${fern}`;
    for (const name of ['Otter', 'Ana', 'Cyril'])
      expect(problemOf(save([entryOf(fern, { notes: `Well done, ${name}!` })]))).toEqual({
        field: `${rowName(entryOf(fern))}.notes`,
        message: said({ ...say.named, where, received: `“${name}”` }),
      });
    expect(file.asked.every(({ call }) => call === 'readBook')).toBe(true);
    expect(save([entryOf(fern, { notes: `Whoever ${roles[0]} was quick.` })]).ok).toBe(true);
  });
  it('knows names that were typed since the page looked', () => {
    const page = builtLesson();
    expect(valueIn(page.call('readRecord')).classes).toHaveLength(2);
    page.put(fern, page.rowOf(fern, 'c1-t1'), at.who, 'Ana');
    expect(
      problemOf(page.call('saveRecord', [{ entry: entryOf(fern, { notes: 'Ana left.' }), base: null }])).field,
    ).toBe(`${rowName(entryOf(fern))}.notes`);
  });
  it('takes two thousand characters and no more', () => {
    expect(save([entryOf(fern, { hard: 'x'.repeat(2000) })]).ok).toBe(true);
    expect(problemOf(save([entryOf(fern, { hard: 'x'.repeat(2001) })]))).toEqual({
      field: `${rowName(entryOf(fern))}.hard`,
      message: said({
        ...say.tooLong,
        where: `“${recordWords.labels.hard}” of ${fern}`,
        received: '2001',
      }),
    });
  });
});

describe('a Record of an earlier version', () => {
  /** As it was before lessons had a substance there, with a column of the teacher's own behind it. */
  const older = () => {
    valueIn(save([entryOf(fern, { activity: 'A dilution', notes: 'Windy.' })]));
    const added = recordFields.filter((field) => !firstRecordFields.some((first) => first === field));
    const [row, places] = [headings() + 1, added.map(column)];
    for (const place of places) file.put(record, row, place, '');
    file.put(record, row + 1, firstRecordFields.length + 2, 'my own');
    return added;
  };
  it('is read as ever, and gets its new headings behind everything that stands there', () => {
    const added = older();
    const heading = file
      .sheetCalled(record)
      .cells.findIndex((line) => firstRecordFields.every((field) => line.includes(recordWords.labels[field])));
    const cells = file.sheetCalled(record).cells.map((texts) => texts.map(String));
    expect(recognisedSheet(cells)).toMatchObject({ kind: 'record' });
    const moved = entryOf(moss, { activity: 'A dilution', substance: 'potassium bromide, KBr', notes: 'Calm.' });
    expect(valueIn(save([moved])).saved).toEqual([moved]);
    expect(added.map(column)).toEqual([firstRecordFields.length + 3, firstRecordFields.length + 4]);
    expect(file.cell(record, heading + 2, firstRecordFields.length + 2)).toBe('my own');
    expect(rows()).toEqual([line(entryOf(fern, { activity: 'A dilution', notes: 'Windy.' })), line(moved)]);
  });
  it('keeps the row of a class where the lesson says more of itself by now', () => {
    older();
    const now = entryOf(fern, { activity: 'A dilution', substance: 'potassium bromide, KBr', notes: 'Calm.' });
    const before = entryOf(fern, { activity: 'A dilution', notes: 'Windy.' });
    expect(valueIn(save([now, before])).saved).toEqual([now]);
    expect(rows()).toEqual([line(now)]);
  });
});

describe('two lessons of a class on one day', () => {
  it('have a row each, by their activity and by their substance', () => {
    const one = entryOf(fern, { activity: 'A dilution', substance: 'KBr', notes: 'One.' });
    const other = { ...one, activity: 'A serial dilution', notes: 'Two.' };
    const third = { ...one, substance: 'NaCl', notes: 'Three.' };
    for (const entry of [one, other, third]) valueIn(save([entry]));
    expect(rows()).toEqual([line(one), line(other), line(third)]);
    valueIn(save([{ ...other, notes: 'Again.' }, other]));
    expect(rows()).toEqual([line(one), line({ ...other, notes: 'Again.' }), line(third)]);
  });
});

describe('rows that are sent to be kept', () => {
  const sent = { entry: entryOf(fern), base: null };
  it('are whole, with words without blanks around them', () => {
    const wanted = { entry: entryOf(fern, { notes: ' Windy. ' }), base: entryOf(fern, { notes: 'Calm. ' }) };
    expect(valueIn(readRows([wanted, sent]))).toEqual([
      { entry: entryOf(fern, { notes: 'Windy.' }), base: entryOf(fern, { notes: 'Calm.' }) },
      { entry: entryOf(fern), base: undefined },
    ]);
    expect(valueIn(readRows([{ entry: entryOf(fern) }]))[0]?.base).toBeUndefined();
  });
  it.each([
    [undefined, 'undefined'],
    ['rows', 'string'],
    [[], '0 of them'],
    [Array.from({ length: 51 }, () => sent), '51 of them'],
  ])('are refused where they are none or too many', (given, received) => {
    expect(problemOf(readRows(given)).message).toBe(said({ ...say.rows, received }));
    expect(readRows(Array.from({ length: 50 }, () => sent)).ok).toBe(true);
  });
  it.each([
    [null],
    ['row'],
    [{}],
    [{ entry: null }],
    [{ entry: 'x' }],
    [{ entry: { ...sent.entry, notes: 7 } }],
    [{ entry: { day: '2026-03-02', className: fern } }],
    [{ entry: entryOf('  ') }],
    [{ entry: entryOf(fern, { day: 'today' }) }],
    [{ entry: entryOf(fern, { day: '2026-03-021' }) }],
    [{ entry: entryOf(fern, { day: '12026-03-02' }) }],
  ])('are refused where one is of another shape: %j', (row) => {
    expect(problemOf(readRows([sent, row])).message).toBe(said({ ...say.rows, received: 'one of another shape' }));
  });
});

describe('names in the file', () => {
  it('are those of teams, of the people in them, and of whoever did a row', () => {
    file.put(fern, file.rowOf(fern, 'c1-t1'), at.who, `Ana: ${roles[0]}\nBen\n${membersTexts.rolesOf('2026-03-02')}`);
    fillRow(file, { step: 'molar mass' }, { who: 'Cyril' });
    fillRow(file, { step: 'cautions read' }, { who: roles[1] });
    const book = valueIn(file.run(look({ book: undefined }, allKinds)));
    expect(namesInFile(book)).toEqual(['Otter', 'Heron', 'Newt', 'Ana', 'Ben', 'Cyril']);
    file.put(moss, 1, at.key, 'moved');
    const spoilt = valueIn(file.run(look({ book: undefined }, allKinds)));
    expect(namesInFile(spoilt)).toEqual(['Otter', 'Heron', 'Newt', 'Ana', 'Ben', 'Cyril']);
  });
});

describe('what the record of today says', () => {
  it('has a proposal for each class that has a sheet, and the row of today where there is one', () => {
    valueIn(save([entryOf(moss, { notes: 'Windy.' })], [entryOf(moss, { day: '2026-03-01', notes: 'Calm.' })]));
    const view = valueIn(file.call('readRecord'));
    expect(view.day).toBe('2026-03-02');
    expect(
      view.classes.map(({ proposal }) => [proposal.className, proposal.day, proposal.activity, proposal.aim]),
    ).toEqual([
      [fern, '2026-03-02', activity?.title, activity?.aim],
      [moss, '2026-03-02', activity?.title, activity?.aim],
    ]);
    expect(view.classes.map(({ saved }) => saved?.notes)).toEqual([undefined, 'Windy.']);
    expect(view.classes.map((one) => 'saved' in one)).toEqual([false, true]);
  });
  it('has a team there unless it is marked absent and typed nothing that day', () => {
    valueIn(file.call('setAbsent', 'c1-t1', true));
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'on target', time: yesterday });
    fillRow(file, { key: 'c1-t2', step: 'molar mass' }, { entry: '119.00', check: 'on target', time: today });
    fillRow(file, { sheet: moss, key: 'c2-t1', step: 'molar mass' }, { entry: '119.00', check: 'on target' });
    const { classes } = valueIn(file.call('readRecord'));
    expect(classes.map(({ names }) => names.present)).toEqual([['Heron'], ['Newt']]);
    expect(classes.map(({ hasEntriesToday }) => hasEntriesToday)).toEqual([true, true]);
    expect(classes[0]?.proposal.present).toContain(recordWords.ofTeams({ some: 1, all: 2 }));
  });
  it('names who is absent: teams by the Plan, people by the cell of their team', () => {
    valueIn(file.call('setAbsent', 'c1-t2', true));
    file.put(
      fern,
      file.rowOf(fern, 'c1-t1'),
      at.who,
      `Ana\nBen: ${membersTexts.absent}\n${membersTexts.rolesOf('2026-03-02')}`,
    );
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'on target', time: today });
    const [first] = valueIn(file.call('readRecord')).classes;
    expect(first?.names).toMatchObject({
      absent: ['Heron'],
      present: ['Otter'],
      absentMembers: [{ team: 'Otter', names: ['Ben'] }],
    });
    expect(first?.proposal.present).toBe(
      [recordWords.ofTeams({ some: 1, all: 2 }), recordWords.absent(1), recordWords.peopleAbsent(1)].join(', '),
    );
  });
  it('says what went well, and takes in what the poll of today says of the class', () => {
    const title = activity?.steps.find(({ id }) => id === 'molar mass')?.title ?? '';
    for (const key of ['c1-t1', 'c1-t2'])
      fillRow(file, { key, step: 'molar mass' }, { entry: '119.00', check: 'on target', tries: 1, time: today });
    const poll = file.sheetCalled(words.poll.sheet).name;
    const answer = (row: number, day: string, className: string) => {
      file.put(poll, row, pollColumns.day, day);
      file.put(poll, row, pollColumns.className, className);
      file.put(poll, row, pollColumns.firstStatement, pollTexts.scale[0]);
      file.put(poll, row, pollColumns.openLine, 'more time');
    };
    answer(pollRows.firstAnswer, '2026-03-02', fern);
    answer(pollRows.firstAnswer + 1, '2026-03-01', moss);
    const { classes } = valueIn(file.call('readRecord'));
    expect(classes[0]?.proposal.wentWell).toBe(recordWords.wentWell([title]));
    expect(classes[0]?.proposal.poll).not.toBe('');
    expect(classes[1]?.proposal.poll).toBe('');
  });
  it('names what the class worked with: substance and the concentrations that its teams were given', () => {
    const { classes } = valueIn(file.call('readRecord'));
    expect(classes.map(({ proposal }) => proposal.substance)).toEqual([
      'potassium bromide, KBr',
      'potassium bromide, KBr',
    ]);
    const given = setup.givens;
    expect(classes[0]?.proposal.concentrations).toMatch(
      /^stock molarity 0\.\d+.* mol\/L, target molarity 0\.\d+.* mol\/L$/,
    );
    expect(given.formula).toBe('KBr');
  });
  it('leaves out a class whose sheet is still being built or cannot be read', () => {
    file.put(fern, 1, at.key, 'moved');
    expect(valueIn(file.call('readRecord')).classes.map(({ proposal }) => proposal.className)).toEqual([moss]);
    const sheet = file.sheetCalled(moss);
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'building' };
    expect(valueIn(file.call('readRecord')).classes).toEqual([]);
  });
  it('names activity and rows as the sheets do where the Plan names an activity that is none of ours', () => {
    const plan = words.plan.sheet;
    file.put(plan, file.sheetCalled(plan).cells.findIndex(([name]) => name === 'activity') + 1, 2, 'brewing');
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'not yet', tries: 5, time: today });
    const [first] = valueIn(file.call('readRecord')).classes;
    expect(first?.proposal).toMatchObject({ activity: 'brewing', aim: '' });
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== plan);
    expect(valueIn(file.call('readRecord')).classes[0]?.proposal).toMatchObject({ activity: '', aim: '' });
  });
  it('is due also where a heading of the Record is gone', () => {
    valueIn(save([entryOf(moss)]));
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', time: today });
    file.put(record, headings() + 1, column('hard'), '');
    expect(valueIn(file.call('recordDue')).due).toEqual([fern]);
    expect(valueIn(file.call('readRecord')).classes.map((one) => 'saved' in one)).toEqual([false, false]);
  });
  it('is due for classes with entries of today and no row of today', () => {
    const due = () => valueIn(file.call('recordDue')).due;
    expect(due()).toEqual([]);
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', time: today });
    fillRow(file, { sheet: moss, key: 'c2-t1', step: 'molar mass' }, { entry: '119.00', time: yesterday });
    expect(due()).toEqual([fern]);
    valueIn(save([entryOf(fern, { day: '2026-03-01' })]));
    expect(due()).toEqual([fern]);
    valueIn(save([entryOf(fern)]));
    expect(due()).toEqual([]);
  });
  it('is due twenty minutes after the last entry of a class, and says in how many minutes that is', () => {
    const at = (time: string) => Object.assign(file.state, { clock: time, now: Date.parse(`2026-03-02T${time}:00Z`) });
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', time: today });
    fillRow(file, { key: 'c1-t2', step: 'molar mass' }, { entry: '119.00', time: '2026-03-02T10:10:00Z' });
    expect(valueIn(file.call('recordDue'))).toEqual({ due: [], nextInMinutes: 15 });
    at('10:29');
    expect(valueIn(file.call('recordDue'))).toEqual({ due: [], nextInMinutes: 1 });
    at('10:30');
    expect(valueIn(file.call('recordDue'))).toEqual({ due: [fern] });
  });
  it('names the concentrations of the class’s own teams, and none of another class', () => {
    const plan = file.sheetCalled(words.plan.sheet);
    const column = (plan.cells.find(([key]) => key === words.plan.key) ?? []).indexOf('target molarity') + 1;
    file.put(words.plan.sheet, plan.cells.findIndex(([key]) => key === 'c2-t1') + 1, column, '0.175');
    const concentrations = valueIn(file.call('readRecord')).classes.map(({ proposal }) => proposal.concentrations);
    expect(concentrations.map((text) => text.includes('0.175'))).toEqual([false, true]);
  });
  it('knows by a time of yesterday that a lesson goes on of which nobody noted the day', () => {
    for (const sheet of file.state.sheets) {
      if (sheet.tag === null) continue;
      const { lesson: _, ...tag } = sheet.tag;
      sheet.tag = tag;
    }
    const fillAll = (tries: number, time: string) => {
      for (const key of ['c1-t1', 'c1-t2'])
        fillRow(file, { key, step: 'molar mass' }, { entry: '119.00', tries, time });
    };
    const hard = () => valueIn(file.call('readRecord')).classes[0]?.proposal.hard;
    fillAll(4, today);
    expect(hard()).toMatch(/^Most attempts: /);
    fillRow(file, { step: 'moles of solute' }, { entry: '0.06', tries: 1, time: yesterday });
    expect(hard()).toMatch(/^Most attempts since the lesson began: /);
  });
  it('is due at once where no entry has a time, on the day that the lesson was begun', () => {
    const due = () => valueIn(file.call('recordDue')).due;
    fillRow(file, { sheet: moss, key: 'c2-t1', step: 'molar mass' }, { entry: '119.00', check: 'on target' });
    expect(due()).toEqual([moss]);
    // A week later nobody can say of what day it is.
    Object.assign(file.state, { today: '2026-03-09', now: Date.parse('2026-03-09T10:00:00Z') });
    expect(due()).toEqual([]);
    Object.assign(file.state, { today: '2026-03-02', now: Date.parse('2026-03-02T10:00:00Z') });
    valueIn(save([entryOf(moss)]));
    expect(due()).toEqual([]);
  });
  describe('the reminder of a class that has gone', () => {
    const due = () => valueIn(file.call('recordDue')).due;
    beforeEach(() => {
      fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'on target', time: today });
      expect(due()).toEqual([fern]);
    });
    const planRows = (className: string) =>
      file.sheetCalled(words.plan.sheet).cells.flatMap((line, index) => (line[1] === className ? [index + 1] : []));
    it('stays when the class or a team is called otherwise, and when another class takes its name', () => {
      for (const row of planRows(fern)) file.put(words.plan.sheet, row, planColumns.className, 'Third period');
      expect(due()).toEqual(['Third period']);
      for (const row of planRows(moss)) file.put(words.plan.sheet, row, planColumns.className, fern);
      expect(due()).toEqual(['Third period']);
    });
    it('stays when the table is built again, also with a team that is gone, and wherever that build is stopped', () => {
      file.finish(file.call('startBuild', setup));
      expect(due()).toEqual([fern]);
      const classes = setup.classes.map(({ name, teams }) => ({ name, teams: teams.slice(0, 1) }));
      let state = valueIn(file.call('startBuild', { ...setup, classes }, { setAside: true, names: 'other' }));
      while (!state.finished) {
        expect([state.done, due()]).toEqual([state.done, [fern]]);
        state = valueIn(file.call('continueBuild'));
      }
      expect(due()).toEqual([fern]);
    });
    it('goes with the sheet only once the day is noted, where the activity changes or the class is gone', () => {
      const solid = activityById('solution from a solid') as Activity;
      const given = {
        activity: 'solution from a solid',
        settings: { ...setup.settings, activity: 'solution from a solid' },
      };
      const givens = { ...startingGivens(solid), formula: 'NaCl', ion: 'Cl-' };
      const proposal = valueIn(file.call('readRecord')).classes[0]?.proposal;
      const other = copyOf(file);
      file.finish(file.call('startBuild', { ...setup, ...given, givens }, { setAside: true }));
      expect(rows()).toEqual([line(proposal ?? entryOf(fern))]);
      expect(due()).toEqual([]);
      fillRow(file, { step: 'molar mass' }, { entry: '58.44', time: today });
      expect(due()).toEqual([fern]);
      expect(valueIn(file.call('readRecord')).classes[0]?.proposal.aim).toBe(solid.aim);
      file = other;
      file.finish(file.call('startBuild', { ...setup, classes: setup.classes.slice(1) }, { setAside: true }));
      expect(rows()).toEqual([line(proposal ?? entryOf(fern))]);
    });
    it('is not noted twice, and not where its sheet stays', () => {
      valueIn(save([entryOf(fern, { notes: 'Windy.' })]));
      file.finish(file.call('startBuild', { ...setup, classes: setup.classes.slice(1) }, { setAside: true }));
      expect(rows()).toEqual([line(entryOf(fern, { notes: 'Windy.' }))]);
      file = builtLesson();
      fillRow(file, { step: 'molar mass' }, { entry: '119.00', time: today });
      file.finish(file.call('startBuild', setup));
      expect(file.names()).not.toContain(record);
    });
    it('stays while the sheet that takes the place of the old one is not whole yet', () => {
      const old = file.sheetCalled(fern);
      if (old.tag === null) throw new Error('Expected a sheet of ours.');
      const next = { ...structuredClone(old), id: 9000, name: `${fern} new`, cells: [] };
      const tag = { ...old.tag };
      Object.assign(old, { tag: { ...tag, state: 'leaving' }, name: `${fern}, kept` });
      expect(due()).toEqual([fern]);
      file.state.sheets.push({ ...next, tag: { ...tag, state: 'building' } });
      expect(due()).toEqual([fern]);
      const { classes } = valueIn(file.call('readRecord'));
      expect(classes.find(({ proposal }) => proposal.className === fern)?.names.present).toContain('Otter');
    });
    it('stays for the lesson that the class does now, where only another lesson of the day has its row', () => {
      valueIn(save([entryOf(fern, { activity: 'A serial dilution' })]));
      expect(due()).toEqual([fern]);
      valueIn(save([entryOf(fern, { activity: activity?.title ?? '', substance: 'sodium chloride, NaCl' })]));
      expect(due()).toEqual([fern]);
      valueIn(save([valueIn(file.call('readRecord')).classes[0]?.proposal ?? entryOf(fern)]));
      expect(due()).toEqual([]);
    });
  });
});
