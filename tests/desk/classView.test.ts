import { beforeEach, describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { deskWords } from '../../src/desk/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { badGiven, badSetting, closedRow } from '../../src/lab/texts/feedback.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import { notYetKnown } from '../../src/workbook/readClassSheet.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { columnLetters } from '../../src/workbook/reference.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, fillRow, firstBuild, moss, setup } from './builtLesson.ts';
import { type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const activity = activityById('stock and dilution');
const scored = (activity?.steps ?? []).filter(({ kind }) => kind !== 'told');
const told = (activity?.steps ?? []).find(({ kind }) => kind === 'told');
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const view = () => valueIn(file.call('readClass', fern));
const team = (name: string) => {
  const found = view().teams.find((one) => one.team === name);
  if (found === undefined) throw new Error(`Expected the team ${name}.`);
  return found;
};
const blank = (sheet: string, key: string, except: readonly string[] = []) => {
  for (const { id, kind } of activity?.steps ?? [])
    if (kind !== 'told' && !except.includes(id)) fillRow(file, { sheet, key, step: id }, { check: 'blank' });
};

describe('a class that is closed at the bell', () => {
  const record = planRecordSheet().name;
  const planCells = () => file.sheetCalled(words.plan.sheet).cells;
  const closedLine = () => planCells().find(([name]) => name === words.settings.closed)?.[1] ?? '';
  const close = (isClosed = true, className: string = fern) => valueIn(file.call('closeClass', className, isClosed));
  const writes = () => file.asked.filter(({ call }) => call !== 'readBook').map(({ call }) => call);
  const recordRows = () =>
    file
      .sheetCalled(record)
      .cells.filter((line) => line[0] === file.state.today)
      .map((line) => line.map(String));
  beforeEach(() => {
    fillRow(
      file,
      { step: 'moles of solute' },
      { entry: '60', check: 'not yet', lookAt: slipIn, tries: 2, time: '2026-03-02T09:30:00Z' },
    );
  });
  const next = '1 team continues at “Moles of solute”.';
  const slipIn = 'Your value matches a result with the volume left in mL. Which unit of volume goes with mol/L?';

  it('is named in the Plan by the keys of its teams, with a second class beside it, until it is opened again', () => {
    const before = structuredClone(planCells());
    expect(view()).not.toHaveProperty('closed');
    close();
    expect(closedLine()).toBe('c1-t1; c1-t2');
    expect(view().closed).toBe(true);
    expect(valueIn(file.call('readClass', moss))).not.toHaveProperty('closed');
    expect(valueIn(file.call('readLesson')).problems).toEqual([]);
    close(true, moss);
    expect(closedLine()).toBe('c1-t1; c1-t2; c2-t1');
    close(false);
    expect(closedLine()).toBe('c2-t1');
    close(false, moss);
    const texts = (cells: readonly (readonly unknown[])[]) => cells.map((line) => line.join('|').replace(/\|+$/, ''));
    expect(texts(planCells())).toEqual(texts(before));
  });
  it('has what is open in its row of the Record, written together with the line of the Plan', () => {
    expect(close()).toEqual({ noted: true });
    expect(writes()).toEqual(['applySheet', 'show', 'writeCells']);
    const [row = []] = recordRows();
    expect(row).toContain(`${next} 1 team still has to read the cautions.`);
    expect(row.join()).toContain('1 team left the volume in mL where litres belong.');
    expect(valueIn(file.call('recordDue')).due).toEqual([]);
  });
  it('leaves in view what was in view', () => {
    close();
    expect(file.asked.find(({ call }) => call === 'show')?.wish).toMatchObject({
      sheetId: firstBuild().state.activeSheet,
    });
  });
  it('keeps in the Record what a teacher wrote, and what was noted at the bell once the rows say it no more', () => {
    const { proposal } = valueIn(file.call('readRecord')).classes[0] ?? {};
    if (proposal === undefined) throw new Error('Expected the class.');
    valueIn(file.call('saveRecord', [{ entry: { ...proposal, hard: 'Units.', next: 'Bring scales.' }, base: null }]));
    close();
    fillRow(file, { step: 'moles of solute' }, { entry: '60', check: closedRow.check, time: '2026-03-02T09:30:00Z' });
    close();
    const { saved, proposal: now } = valueIn(file.call('readRecord')).classes[0] ?? {};
    expect(saved).toMatchObject({ hard: 'Units.', next: expect.stringMatching(`^Bring scales.\n${next}`) });
    expect(now).toMatchObject({ hard: saved?.hard, next: saved?.next });
    expect(recordRows()).toHaveLength(1);
  });
  it('gets no row where nothing was typed today, and nothing is written by the same press twice', () => {
    expect(close(true, moss)).toEqual({ noted: false });
    expect(file.names()).not.toContain(record);
    const count = writes().length;
    close(true, moss);
    close(false);
    expect(writes()).toHaveLength(count);
  });
  it('stays closed when the table is built again, in the same Plan', () => {
    const { id } = file.sheetCalled(words.plan.sheet);
    close();
    file.finish(file.call('startBuild', setup));
    expect(file.sheetCalled(words.plan.sheet).id).toBe(id);
    expect(closedLine()).toBe('c1-t1; c1-t2');
    expect(file.names().filter((name) => name.includes('kept'))).toEqual([]);
  });
  it('is found by its keys, whatever it is called by now', () => {
    close();
    planCells().forEach((line, index) => {
      if (line[1] === fern) file.put(words.plan.sheet, index + 1, 2, 'Third period');
    });
    expect(valueIn(file.call('readClass', 'Third period')).closed).toBe(true);
    close(false, 'Third period');
    expect(closedLine()).toBe('');
  });
  it('has the line in the range that every check reads, above what Prepare compares', () => {
    const lesson = readLesson(planCells().map((line) => line.map(String)));
    if (!lesson.ok) throw new Error('Expected a Plan.');
    const { settings, closed } = lesson.value.places;
    expect(closed.row).toBeGreaterThan(settings.row);
    expect(closed.row).toBeLessThan(settings.row + settings.rows);
    close();
    expect(planCells()[closed.row - 1]?.[0]).toBe(words.settings.closed);
  });
  it('is refused for a class that nobody knows', () => {
    expect(problemOf(file.call('closeClass', 'Reed class', true)).message).toContain('Reed class');
  });
});

describe('a number of the Plan that cannot be read', () => {
  const plan = words.plan.sheet;
  const rowWith = (column: number, text: string) =>
    file.sheetCalled(plan).cells.findIndex((line) => line[column - 1] === text) + 1;
  const columnOf = (given: string) =>
    (file.sheetCalled(plan).cells[rowWith(1, words.plan.key) - 1]?.indexOf(given) ?? -1) + 1;
  it('is the first reason to go to its team, with its cell', () => {
    for (const key of ['c1-t1', 'c1-t2']) blank(fern, key);
    const given = 'target molarity';
    const [row, column] = [rowWith(1, 'c1-t2'), columnOf(given)];
    file.put(plan, row, column, 'about 0.3');
    fillRow(file, { key: 'c1-t2', step: 'stock volume' }, { check: 'unreadable', lookAt: badGiven(given) });
    fillRow(file, { key: 'c1-t1', step: 'molar mass' }, { check: 'blank', help: '3' });
    const cell = `${columnLetters(column)}${row}`;
    expect(view().talkFirst).toEqual([
      { team: 'Heron', reason: words.classNow.badGiven({ cell, name: given, typed: 'about 0.3' }) },
      { team: 'Otter', reason: expect.stringContaining('Asked for help, level 3') },
    ]);
    file.put(plan, row, column, '');
    expect(view().talkFirst[0]?.reason).toContain(`${cell} in the Plan is blank`);
  });
  it('may be a setting', () => {
    for (const key of ['c1-t1', 'c1-t2']) blank(fern, key);
    const row = rowWith(1, 'figures');
    file.put(plan, row, 2, 'three');
    fillRow(file, { step: 'moles of solute' }, { check: 'unreadable', lookAt: badSetting('figures') });
    expect(view().talkFirst[0]).toEqual({
      team: 'Otter',
      reason: words.classNow.badGiven({ cell: `B${row}`, name: 'figures', typed: 'three' }),
    });
  });
});

describe('the class now', () => {
  it('lists the teams by their blocks, each with its rows as they stand', () => {
    fillRow(
      file,
      { step: 'molar mass' },
      { entry: '119.0', check: 'close', lookAt: 'Look once more.', tries: 2, help: '1', who: 'Ana' },
    );
    const now = view();
    expect(now.className).toBe(fern);
    expect(now.clock).toBe('10:15');
    expect(now.stepCount).toBe(scored.length);
    expect(now.teams.map((one) => [one.team, one.key])).toEqual([
      ['Otter', 'c1-t1'],
      ['Heron', 'c1-t2'],
    ]);
    expect(now.teams[0]?.steps.map(({ id, title }) => [id, title])).toEqual(
      activity?.steps.map(({ id, title }) => [id, title]),
    );
    expect(now.teams[0]?.steps.find(({ id }) => id === 'molar mass')).toEqual({
      id: 'molar mass',
      title: activity?.steps.find(({ id }) => id === 'molar mass')?.title,
      check: 'close',
      entry: '119.0',
      lookAt: 'Look once more.',
      tries: 2,
      helpWanted: 1,
      who: 'Ana',
      isFormula: false,
    });
  });
  it('counts rows that are on target, and none that is only told', () => {
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'on target' });
    fillRow(file, { step: 'cautions read' }, { entry: 'yes', check: 'on target' });
    fillRow(file, { step: 'moles of solute' }, { entry: '1', check: 'close' });
    fillRow(file, { step: told?.id ?? '' }, { entry: 'It went well.', check: 'on target' });
    expect(team('Otter').done).toBe(2);
    expect(team('Heron').done).toBe(0);
  });
  it('marks an entry that is a formula', () => {
    const row = file.rowOf(fern, 'c1-t1', 'molar mass');
    file.sheetCalled(fern).formulaEntries = [row];
    expect(
      team('Otter')
        .steps.filter(({ isFormula }) => isFormula)
        .map(({ id }) => id),
    ).toEqual(['molar mass']);
  });
  it('says who is absent and who is in a team', () => {
    valueIn(file.call('setAbsent', 'c1-t2', true));
    file.put(fern, file.rowOf(fern, 'c1-t1'), at.who, 'Ana');
    expect(team('Otter')).not.toHaveProperty('absent');
    expect(team('Otter').members).toEqual([{ name: 'Ana', absent: false, roles: [] }]);
    expect(team('Heron')).toMatchObject({ absent: true, members: [] });
  });
  it('says whom to talk to first, and nothing of a team that is absent', () => {
    for (const key of ['c1-t1', 'c1-t2']) {
      blank(fern, key);
      fillRow(file, { key, step: 'molar mass' }, { check: 'blank', help: '2' });
    }
    expect(view().talkFirst.map((one) => one.team)).toEqual(['Otter', 'Heron']);
    valueIn(file.call('setAbsent', 'c1-t2', true));
    expect(view().talkFirst.map((one) => one.team)).toEqual(['Otter']);
  });
  it('goes by the minutes of the file for a team that types nothing', () => {
    blank(fern, 'c1-t1', ['molar mass']);
    fillRow(file, { step: 'molar mass' }, { entry: '119.00', check: 'on target', time: '2026-03-02T10:05:00Z' });
    expect(view().talkFirst.map((one) => one.team)).toEqual(['Otter']);
    file.state.now = Date.parse('2026-03-02T10:06:00Z');
    expect(view().talkFirst).toEqual([]);
  });
  it('offers the extension to a team whose scored rows are all on target', () => {
    for (const { id } of scored) fillRow(file, { step: id }, { entry: '1', check: 'on target' });
    expect(view().talkFirst).toEqual([
      { team: 'Otter', ready: true, reason: expect.stringContaining(activity?.extension ?? '–') },
    ]);
    expect(team('Otter').done).toBe(scored.length);
  });
  it('says to the class what two teams have before them, and counts what is not known yet', () => {
    for (const key of ['c1-t1', 'c1-t2']) {
      blank(fern, key);
      fillRow(file, { key, step: 'moles of solute' }, { entry: '64', check: 'not yet', lookAt: 'Which unit?' });
    }
    expect(view()).toMatchObject({ sayToClass: expect.stringContaining('Which unit?'), notYetKnown: 0 });
    fillRow(file, { step: 'moles of solute' }, { entry: '64', check: 'Loading...' });
    expect(view().notYetKnown).toBe(1);
    expect(team('Otter').steps.find(({ id }) => id === 'moles of solute')?.check).toBe(notYetKnown);
  });
  it('lists percent errors by size, read in the decimal mark of the lesson, and only where the activity asks for one', () => {
    expect(view()).not.toHaveProperty('percentErrors');
    const reading = activityById('bench reading') as Activity;
    file = paperFile();
    const givens = { ...startingGivens(reading), formula: 'KBr' };
    const settings = { ...setup.settings, activity: reading.id };
    file.finish(file.call('startBuild', { ...setup, activity: reading.id, givens, settings }));
    expect(view().percentErrors).toEqual([]);
    const step = 'percent error';
    fillRow(file, { step }, { entry: '-2.125', check: 'on target' });
    fillRow(file, { key: 'c1-t2', step }, { entry: '1.5', check: 'close' });
    expect(view().percentErrors).toEqual([1.5, 2.125]);
    const row = file.sheetCalled(words.plan.sheet).cells.findIndex(([name]) => name === 'decimal mark') + 1;
    file.put(words.plan.sheet, row, 2, 'comma');
    fillRow(file, { step }, { entry: '-2,125', check: 'on target' });
    fillRow(file, { key: 'c1-t2', step }, { entry: '1,5', check: 'close' });
    expect(view().percentErrors).toEqual([1.5, 2.125]);
  });
  it('leaves percent errors out where the file has no lesson to ask for them, and shows the rows by their names', () => {
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== words.plan.sheet);
    const now = view();
    expect(now).not.toHaveProperty('percentErrors');
    expect(now.stepCount).toBe(0);
    expect(now.teams[0]?.steps.map(({ id, title }) => id === title)).not.toContain(false);
  });
  it('is refused without the class, where its marks were moved, and where the Plan cannot be read', () => {
    expect(problemOf(file.call('readClass', 'Reed class')).message).toBe(
      said({ ...deskWords.classUnknown, received: '“Reed class”' }),
    );
    expect(problemOf(file.call('readClass', undefined)).message).toBe(
      said({ ...deskWords.classUnknown, received: 'undefined' }),
    );
    file.put(moss, 1, at.key, 'moved');
    expect(problemOf(file.call('readClass', moss)).message).toBe(
      said({ ...deskWords.classUnreadable, where: moss, received: 'one without' }),
    );
    for (const line of file.sheetCalled(words.plan.sheet).cells) if (line[0] === words.plan.key) line[0] = 'number';
    expect(problemOf(file.call('readClass', fern)).message).toContain(words.plan.key);
  });
});

describe('looking at the class again and again', () => {
  const page: File = { book: undefined };
  const wishes = () => file.asked.flatMap((one) => (one.call === 'readBook' ? [one.wish] : []));
  const look = (afresh: boolean) => valueIn(file.run(workFor(page, 'readClass', [fern], { afresh })));

  it('reads the Plan and that class alone once it is known, and nothing where nothing is to be new', () => {
    page.book = undefined;
    look(false);
    look(false);
    expect(wishes()).toEqual([{ kinds: ['plan', 'class'], ids: [] }]);
    look(true);
    expect(wishes()[1]).toEqual({ kinds: ['plan'], ids: [file.sheetCalled(fern).id] });
  });
  it('reads all classes where that one is not known', () => {
    page.book = undefined;
    look(true);
    expect(wishes()).toEqual([{ kinds: ['plan', 'class'], ids: [] }]);
    expect(file.run(workFor(page, 'readClass', ['Reed class'], { afresh: true })).ok).toBe(false);
    expect(wishes()[1]).toEqual({ kinds: ['plan', 'class'], ids: [] });
  });
  it('reads for each view what it is made from', () => {
    const kindsOf = (name: 'readNumbers' | 'readPreparation' | 'readKey' | 'readPaper' | 'readPoll' | 'readShare') => {
      file.call(name);
      return wishes()[wishes().length - 1]?.kinds;
    };
    expect(kindsOf('readNumbers')).toEqual(['plan']);
    expect(kindsOf('readPreparation')).toEqual(['plan', 'prepare']);
    expect(kindsOf('readKey')).toEqual(['plan']);
    expect(kindsOf('readPaper')).toEqual(['plan']);
    expect(kindsOf('readPoll')).toEqual(['plan', 'class', 'poll']);
    expect(kindsOf('readShare')).toEqual(['plan', 'class']);
    file.call('readTeams');
    file.call('draftTeams', undefined);
    file.call('recordDue');
    expect(
      wishes()
        .slice(-3)
        .map(({ kinds }) => kinds),
    ).toEqual([['plan', 'class'], ['plan'], ['plan', 'class', 'poll', 'record']]);
  });
});

describe('going to a team', () => {
  it('shows the first row of its block', () => {
    valueIn(file.call('goToTeam', fern, 'c1-t2'));
    expect(file.asked[file.asked.length - 1]).toEqual({
      call: 'show',
      wish: { sheetId: file.sheetCalled(fern).id, cell: { row: file.rowOf(fern, 'c1-t2'), column: 1 } },
    });
    expect(problemOf(file.call('goToTeam', fern, 'c2-t1')).message).toContain('“c2-t1”');
  });
});

describe('entering checks again', () => {
  it('hands on how many the script has entered again', () => {
    file.checksAnswer({ renewed: 3, missing: [] });
    expect(valueIn(file.call('checkAgain'))).toEqual({ renewed: 3 });
    // A page that was just opened looks first: a file of a newer layout is left alone.
    expect(file.asked.map(({ call }) => call)).toEqual(['readBook', 'checkAgain']);
  });
  it('plans a sheet anew whose formulas are gone, and counts the blocks', () => {
    const { id } = file.sheetCalled(fern);
    for (const key of ['c1-t1', 'c1-t2']) file.put(fern, file.rowOf(fern, key), at.check, '');
    file.checksAnswer({ renewed: 1, missing: [id] });
    expect(valueIn(file.call('checkAgain'))).toEqual({ renewed: 3 });
    const wish = file.asked.flatMap((one) => (one.call === 'applySheet' ? [one.wish] : []))[0];
    expect(wish).toMatchObject({
      keptName: deskWords.keptName(fern, '2026-03-02 10.15'),
      plan: { role: { kind: 'class', className: fern } },
      read: { kinds: ['class'] },
    });
    expect(wish?.seen.map((seen) => seen.id)).toEqual([file.sheetCalled(words.plan.sheet).id, id]);
  });
  it('leaves the page with the class as it was read after that', () => {
    const page: File = { book: undefined };
    valueIn(file.run(workFor(page, 'readClass', [fern])));
    file.put(fern, file.rowOf(fern, 'c1-t1'), at.check, '');
    file.checksAnswer({ renewed: 0, missing: [file.sheetCalled(fern).id] });
    valueIn(file.run(workFor(page, 'checkAgain', [])));
    const { sheets = [], kinds = [] } = page.book ?? {};
    const cells = sheets.find(({ name }) => name === fern)?.cells;
    expect(cells?.[file.rowOf(fern, 'c1-t1') - 1]?.[at.check - 1]).not.toBe('');
    expect(kinds).not.toContain('');
  });
  it('counts only blocks whose check is gone', () => {
    file.put(fern, file.rowOf(fern, 'c1-t1'), at.check, '');
    file.checksAnswer({ renewed: 0, missing: [file.sheetCalled(fern).id] });
    expect(valueIn(file.call('checkAgain'))).toEqual({ renewed: 1 });
  });
  it('leaves alone a sheet that nobody knows, and one of another layout', () => {
    file.checksAnswer({ renewed: 0, missing: [4711] });
    expect(valueIn(file.call('checkAgain'))).toEqual({ renewed: 0 });
    file.put(fern, file.rowOf(fern, 'c1-t1', 'molar mass'), at.step, 'something else');
    file.checksAnswer({ renewed: 0, missing: [file.sheetCalled(fern).id] });
    expect(valueIn(file.call('checkAgain'))).toEqual({ renewed: 0 });
    expect(file.asked.some(({ call }) => call === 'applySheet')).toBe(false);
  });
  it('says where there is no Plan to plan from', () => {
    const empty = paperFile();
    empty.checksAnswer({ renewed: 0, missing: [1] });
    expect(problemOf(empty.call('checkAgain')).message).toBe(said({ ...deskWords.planUnfinished, received: 'none' }));
  });
});
