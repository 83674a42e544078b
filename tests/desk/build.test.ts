import { beforeEach, describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import { type BuildNote, noteIn, stateOf } from '../../src/desk/building/buildNote.ts';
import { allKinds } from '../../src/desk/file/look.ts';
import { runWork } from '../../src/desk/runWork.ts';
import { teachersKinds } from '../../src/desk/sheets/teachersSheets.ts';
import { deskWords } from '../../src/desk/words.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { sampleLesson } from '../../src/lab/lesson/sampleLesson.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { readMembers } from '../../src/lab/members/readMembers.ts';
import { classColumns as at, classMarker, classRows, planColumns } from '../../src/workbook/layout.ts';
import { words } from '../../src/workbook/words.ts';
import { builtLesson, fern, firstBuild, moss, setup } from './builtLesson.ts';
import { copyOf, type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const { buildLabels: label } = deskWords;
const solid = activityById('solution from a solid') as Activity;
let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
});
const withClasses = (...classes: readonly (readonly [name: string, ...teams: string[]])[]) => ({
  ...setup,
  classes: classes.map(([name, ...teams]) => ({ name, teams })),
});
const sheetNames = [
  words.plan.sheet,
  words.help.sheet,
  words.prepare.sheet,
  fern,
  moss,
  words.progress.sheet,
  words.poll.sheet,
];
const writes = (one: PaperFile) => one.asked.filter(({ call }) => call !== 'readBook');
const applied = (one: PaperFile) => one.asked.flatMap((asked) => (asked.call === 'applySheet' ? [asked.wish] : []));
/** Every sheet that was brought to its plan, in the order in which the calls did it. */
const planned = (one: PaperFile) =>
  applied(one).flatMap((wish) => [wish, ...(wish.also ?? [])].map(({ plan }) => plan));
const roles = (one: PaperFile) => planned(one).map(({ role }) => role.className ?? role.kind);
const planLines = (one: PaperFile) => {
  const { cells } = one.sheetCalled(words.plan.sheet);
  const heading = cells.findIndex(([key, name]) => key === words.plan.key && name === words.plan.className);
  return cells.slice(heading + 1).flatMap((line) => (line[0] ? [line.slice(0, 3).join(' ')] : []));
};
const type = (one: PaperFile, sheet: string, key: string, step: string, entry: string) =>
  one.put(sheet, one.rowOf(sheet, key, step), at.entry, entry);

describe('a first build', () => {
  let built: PaperFile;
  beforeEach(() => {
    built = paperFile();
    built.finish(built.call('startBuild', setup));
  });
  it('makes the sheets in their order, the first class in one step with the small ones before it, and says how far it is', () => {
    const fresh = paperFile();
    let state = valueIn(fresh.call('startBuild', setup));
    const states = [state];
    while (!state.finished) {
      state = valueIn(fresh.call('continueBuild'));
      states.push(state);
    }
    expect(states.map(({ done, total, label: said }) => [done, total, said])).toEqual([
      [1, 7, label.help],
      [4, 7, moss],
      [7, 7, label.poll],
    ]);
    expect(states.map(({ finished }) => finished)).toEqual([false, false, true]);
    expect(roles(fresh)).toEqual(['plan', 'help', 'prepare', fern, moss, 'progress', 'poll']);
    expect(fresh.names()).toEqual(sheetNames);
  });
  it('takes away the empty sheet that the file began with, forgets its note, and shows the first class', () => {
    expect(built.state.note).toBe('');
    expect(built.state.activeSheet).toBe(built.sheetCalled(fern).id);
    const kept = paperFile({ emptySheet: null });
    kept.finish(kept.call('startBuild', setup));
    expect(kept.names()).toEqual(['Sheet1', ...sheetNames]);
  });
  it('notes how far it is before anything is written and with every step', () => {
    const fresh = paperFile();
    valueIn(fresh.call('startBuild', setup));
    const [first] = applied(fresh);
    const noted = (text: string | undefined) => JSON.parse(text ?? '') as BuildNote;
    expect([noted(first?.note?.before).done, noted(first?.note?.after).done]).toEqual([0, 1]);
    expect(first).toMatchObject({ replace: false, seen: [], read: { kinds: ['plan'] } });
    expect(noted(fresh.state.note)).toMatchObject({
      version: 2,
      done: 1,
      stamp: '2026-03-02 10.15',
      emptySheet: 1,
      shownBefore: null,
      wish: { sample: false, answers: {} },
    });
    valueIn(fresh.call('continueBuild'));
    expect(noted(fresh.state.note)).toMatchObject({ done: 4, made: true });
  });
  it('reads only the Plan between two sheets, and everything that views are made from at the end', () => {
    const kinds = applied(built).map(({ read }) => read.kinds);
    expect(kinds).toEqual([...Array.from({ length: 2 }, () => ['plan']), allKinds]);
  });
  it('says what each sheet was worked out from', () => {
    const plan = built.sheetCalled(words.plan.sheet).id;
    expect(applied(built).map(({ seen }) => seen.map(({ id }) => id))).toEqual([
      [],
      ...Array.from({ length: 2 }, () => [plan]),
    ]);
  });
  it('gives each team a line of the Plan with a key of its own', () => {
    expect(planLines(built)).toEqual([`c1-t1 ${fern} Otter`, `c1-t2 ${fern} Heron`, `c2-t1 ${moss} Newt`]);
    expect(built.rowOf(fern, 'c1-t2', 'molar mass')).toBeGreaterThan(built.rowOf(fern, 'c1-t1', 'molar mass'));
    expect(() => built.rowOf(moss, 'c1-t1')).toThrow();
  });
  it('goes on where it stopped, from another page too', () => {
    const stopped = paperFile();
    valueIn(stopped.call('startBuild', setup));
    valueIn(stopped.call('continueBuild'));
    expect(valueIn(stopped.call('readLesson')).building).toEqual({
      done: 4,
      total: 7,
      label: moss,
      finished: false,
    });
    expect(stopped.finish(stopped.call('continueBuild')).done).toBe(7);
    expect(stopped.names()).toEqual(sheetNames);
  });
  it('begins the Plan again where the build stopped in it, with what it was begun with', () => {
    const stopped = paperFile();
    valueIn(stopped.call('startBuild', setup));
    const [first] = applied(stopped);
    stopped.state.note = first?.note?.before ?? '';
    expect(valueIn(stopped.call('continueBuild'))).toMatchObject({ done: 1, total: 7 });
    expect(roles(stopped)).toEqual(['plan', 'plan']);
    expect(stopped.finish(stopped.call('continueBuild')).finished).toBe(true);
    expect(stopped.names()).toEqual(sheetNames);
  });
  it('has nothing to go on with where none was begun, and where the note is of another version or cannot be read', () => {
    const unread = ['{"version":1,"done":3}', '{not a note'].map((note) => Object.assign(builtLesson(), { note }));
    const unbuilt = paperFile();
    valueIn(unbuilt.call('startBuild', setup));
    unbuilt.state.note = '';
    for (const one of [paperFile(), unbuilt, ...unread]) {
      if ('note' in one) one.state.note = String(one.note);
      const before = writes(one).length;
      expect(problemOf(one.call('continueBuild')).message).toBe(said(deskWords.nothingBuilding));
      expect(writes(one)).toHaveLength(before);
    }
  });
  it('has come to its end where its last answer was lost, and nothing is written once more', () => {
    expect(valueIn(file.call('continueBuild')).finished).toBe(true);
    expect(writes(file)).toEqual([]);
  });
  it('refuses a plan that is none, and asks for nothing', () => {
    const fresh = paperFile();
    expect(problemOf(fresh.call('startBuild', 'build')).message).toContain(deskWords.setupProblems.shape.says);
    expect(fresh.asked).toEqual([]);
  });
  it('hands on what the script refuses', () => {
    const fresh = paperFile();
    const busy = { ok: false, problem: { message: 'Another is at work.', reason: 'busy' } } as const;
    fresh.refuse(busy);
    expect(fresh.call('startBuild', setup)).toEqual(busy);
    fresh.refuse(undefined);
    valueIn(fresh.call('startBuild', setup));
    fresh.refuse(busy);
    expect(fresh.call('continueBuild')).toEqual(busy);
  });
});

describe('the note of a build', () => {
  it('is read only in the version that is written now', () => {
    expect(noteIn({ note: '' })).toBeUndefined();
    expect(noteIn({ note: '{"version":1}' })).toBeUndefined();
    expect(noteIn({ note: 'x' })).toBeUndefined();
    expect(noteIn({ note: '{"version":2,"done":4}' })).toEqual({ version: 2, done: 4 });
  });
  it('says what comes next, or was built last', () => {
    const tasks = [
      { role: { kind: 'plan' }, label: 'one' },
      { role: { kind: 'help' }, label: 'two' },
    ] as const;
    expect(stateOf({ tasks, done: 0 })).toEqual({ done: 0, total: 2, label: 'one', finished: false });
    expect(stateOf({ tasks, done: 1 })).toEqual({ done: 1, total: 2, label: 'two', finished: false });
    expect(stateOf({ tasks, done: 2 })).toEqual({ done: 2, total: 2, label: 'two', finished: true });
    expect(stateOf({ tasks: [], done: 0 })).toEqual({ done: 0, total: 0, label: '', finished: true });
  });
});

describe('building again', () => {
  it('makes nothing new where nothing changed, and leaves in view what was in view', () => {
    file.state.activeSheet = file.sheetCalled(words.progress.sheet).id;
    const ids = file.state.sheets.map(({ id }) => id);
    const note = () => noteIn({ note: file.state.note });
    const first = file.call('startBuild', setup);
    expect(note()).toMatchObject({ emptySheet: null, shownBefore: file.state.activeSheet, made: false });
    expect(file.finish(first).done).toBe(7);
    expect(file.state.sheets.map(({ id }) => id)).toEqual(ids);
    expect(file.state.activeSheet).toBe(file.sheetCalled(words.progress.sheet).id);
    expect(applied(file).map(({ last }) => last)).toEqual([
      ...Array.from({ length: 3 }, () => undefined),
      { emptySheet: null, madeBefore: false, show: file.state.activeSheet, hide: teachersKinds },
    ]);
  });
  it('goes back to where the teacher was once a sheet was made, and to the first class where that sheet is gone', () => {
    const more = withClasses([fern, 'Otter', 'Heron'], [moss, 'Newt'], ['Reed class', 'Wren']);
    const progress = file.sheetCalled(words.progress.sheet).id;
    file.state.activeSheet = progress;
    file.finish(file.call('startBuild', more));
    expect(file.names()).toEqual([...sheetNames, 'Reed class']);
    expect(file.state.activeSheet).toBe(progress);
    file.state.activeSheet = 4711;
    file.finish(
      file.call(
        'startBuild',
        withClasses(
          ...([
            [fern, 'Otter', 'Heron'],
            [moss, 'Newt'],
            ['Reed class', 'Wren'],
            ['Sedge', 'Teal'],
          ] as const),
        ),
      ),
    );
    expect(file.state.activeSheet).toBe(file.sheetCalled(fern).id);
  });
  it('keeps the sheet of a class that is gone under a dated name, once what was typed there may go', () => {
    type(file, moss, 'c2-t1', 'molar mass', '119.00');
    file.put(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.who, 'Ana');
    const one = withClasses([fern, 'Otter', 'Heron']);
    expect(problemOf(file.call('startBuild', one)).question).toEqual({
      about: 'typed',
      cells: 2,
      where: [{ className: moss, team: 'Newt', cells: 2 }],
    });
    expect(writes(file)).toEqual([]);
    const state = file.finish(file.call('startBuild', one, { setAside: true }));
    expect(state.total).toBe(7);
    const kept = deskWords.keptName(moss, '2026-03-02 10.15');
    expect(file.names()).toContain(kept);
    expect(file.sheetCalled(kept)).toMatchObject({ kept: true });
    expect(file.names()).not.toContain(moss);
    expect(planLines(file)).toEqual([`c1-t1 ${fern} Otter`, `c1-t2 ${fern} Heron`]);
  });
  it('asks nothing about a class that is gone where nobody typed', () => {
    file.finish(file.call('startBuild', withClasses([fern, 'Otter', 'Heron'])));
    expect(file.names()).toContain(deskWords.keptName(moss, '2026-03-02 10.15'));
    const aside = file.asked.find(({ call }) => call === 'putAside');
    expect(aside?.wish).toMatchObject({ keptName: deskWords.keptName(moss, '2026-03-02 10.15'), seen: [] });
  });
  it('says how much was typed late where a sheet that is put aside is the last step', () => {
    valueIn(file.call('startBuild', withClasses([fern, 'Otter', 'Heron'])));
    const note = JSON.parse(file.state.note);
    const aside = note.tasks.filter((task: { aside?: number }) => task.aside !== undefined);
    file.state.note = JSON.stringify({ ...note, tasks: [note.tasks[0], ...aside], done: 1 });
    const late = { carried: 2, left: 1, away: 0, own: [] };
    const state = runWork(workFor({ book: undefined }, 'continueBuild', []), (one) => {
      const answer = file.answer(one) as { ok: true; value: object };
      return one.call === 'putAside' ? { ok: true, value: { ...answer.value, late } } : answer;
    });
    expect(valueIn(state)).toMatchObject({ finished: true, late: deskWords.late(late) });
  });
  it('says in the list what is put aside, after the classes', () => {
    valueIn(file.call('startBuild', withClasses([fern, 'Otter', 'Heron'])));
    const aside = noteIn({ note: file.state.note })?.tasks.find((task) => task.aside !== undefined);
    expect(aside).toMatchObject({
      role: { kind: 'class', className: moss },
      aside: file.sheetCalled(moss).id,
    });
    expect(noteIn({ note: file.state.note })?.tasks.map((task) => task.label)).toEqual([
      label.plan,
      label.help,
      label.prepare,
      fern,
      label.putAside(moss),
      label.progress,
      label.poll,
    ]);
  });
  it('counts cells of a team that is gone: entries, help, who did a row, and who is in the team', () => {
    const row = file.rowOf(fern, 'c1-t2', 'molar mass');
    file.put(fern, row, at.entry, '119.00');
    file.put(fern, row, at.help, '2');
    file.put(fern, file.rowOf(fern, 'c1-t2'), at.who, 'Ana, Ben');
    const one = withClasses([fern, 'Otter'], [moss, 'Newt']);
    expect(problemOf(file.call('startBuild', one)).question).toMatchObject({ about: 'typed', cells: 3 });
    file.finish(file.call('startBuild', one, { setAside: true }));
    expect(planLines(file)).toEqual([`c1-t1 ${fern} Otter`, `c2-t1 ${moss} Newt`]);
  });
  it('asks before entries of another activity leave the table, and of nobody who has typed nothing', () => {
    const other = {
      ...setup,
      activity: 'solution from a solid',
      givens: { ...startingGivens(solid), formula: 'KBr' },
      settings: { ...setup.settings, activity: 'solution from a solid' },
    };
    expect(file.call('startBuild', other).ok).toBe(true);
    file = builtLesson();
    type(file, fern, 'c1-t1', 'molar mass', '119.00');
    expect(problemOf(file.call('startBuild', other)).question).toEqual({
      about: 'next lesson',
      from: 'A stock solution and its dilution, KBr',
      to: 'A solution from a solid, KBr',
      where: [{ className: fern, cells: 1 }],
    });
  });
  it('takes another spelling for the same team where nobody typed, and asks where somebody did', () => {
    const corrected = withClasses([fern, 'Otters', 'Heron'], [moss, 'Newt']);
    file.finish(file.call('startBuild', corrected));
    expect(planLines(file)).toEqual([`c1-t1 ${fern} Otters`, `c1-t2 ${fern} Heron`, `c2-t1 ${moss} Newt`]);
    file = builtLesson();
    type(file, fern, 'c1-t1', 'molar mass', '119.00');
    const asked = problemOf(file.call('startBuild', corrected));
    const question = {
      about: 'names',
      pairs: [{ kind: 'team', from: 'Otter', to: 'Otters', className: fern }],
    } as const;
    expect(asked.question).toEqual(question);
    expect(asked.message).toBe(deskWords.question(question));
    file.finish(file.call('startBuild', corrected, { names: 'same' }));
    expect(planLines(file)[0]).toBe(`c1-t1 ${fern} Otters`);
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1', 'molar mass'), at.entry)).toBe('119.00');
  });
  it('gives another team in its place a key of its own', () => {
    type(file, fern, 'c1-t1', 'molar mass', '119.00');
    file.finish(
      file.call('startBuild', withClasses([fern, 'Wren', 'Heron'], [moss, 'Newt']), { names: 'other', setAside: true }),
    );
    expect(planLines(file)).toEqual([`c1-t2 ${fern} Heron`, `c2-t1 ${moss} Newt`, `c1-t3 ${fern} Wren`]);
  });
  it('renames the tab with its class, unless the teacher has called it something else', () => {
    const renamed = withClasses(['Third period', 'Otter', 'Heron'], [moss, 'Newt']);
    const id = file.sheetCalled(fern).id;
    file.finish(file.call('startBuild', renamed));
    expect(file.sheetCalled('Third period').id).toBe(id);
    expect(file.cell('Third period', classRows.title, at.title)).toBe('Third period');
    file = builtLesson();
    file.sheetCalled(fern).name = 'Mine';
    file.finish(file.call('startBuild', renamed));
    expect(file.names()).toContain('Mine');
    expect(file.names()).not.toContain('Third period');
    expect(file.sheetCalled('Mine').id).toBe(id);
    // Progress looks at the sheet by the name that it has.
    const progress = planned(file).find(({ role }) => role.kind === 'progress');
    const looked = JSON.stringify(progress?.blocks);
    expect(looked).toContain("'Mine'!");
    expect(looked).not.toContain(`'${fern}'!`);
    expect(looked).not.toContain("'Third period'!");
  });
  it('gives the tab a free name where another sheet has the one it should get', () => {
    file.state.sheets.push({ id: 9, name: 'Third period', tag: null, kept: false, cells: [], formulaEntries: [] });
    file.finish(file.call('startBuild', withClasses(['Third period', 'Otter', 'Heron'], [moss, 'Newt'])));
    expect(applied(file).flatMap(({ tab }) => (tab === undefined ? [] : [tab]))).toEqual([
      { was: fern, now: 'Third period 2' },
    ]);
  });
  it('lets two classes change names in the Plan and leaves each its sheet', () => {
    const ids = [fern, moss].map((name) => file.sheetCalled(name).id);
    const swapped = new Map<unknown, string>([
      [fern, moss],
      [moss, fern],
    ]);
    for (const line of file.sheetCalled(words.plan.sheet).cells) line[1] = swapped.get(line[1]) ?? line[1] ?? '';
    file.finish(file.call('startBuild', withClasses([moss, 'Otter', 'Heron'], [fern, 'Newt'])));
    const held = file.state.sheets.filter(({ id }) => ids.includes(id));
    expect(held.map(({ cells }) => cells[classRows.title - 1]?.[at.title - 1])).toEqual([moss, fern]);
    expect(planLines(file)).toEqual([`c1-t1 ${moss} Otter`, `c1-t2 ${moss} Heron`, `c2-t1 ${fern} Newt`]);
  });
  it('leaves the blocks of a class where they are, however the Plan is sorted', () => {
    const { cells } = file.sheetCalled(words.plan.sheet);
    const first = cells.findIndex(([key]) => key === 'c1-t1');
    const [otter = [], heron = []] = cells.slice(first, first + 2);
    cells[first] = heron;
    cells[first + 1] = otter;
    file.finish(file.call('startBuild', setup));
    expect(planLines(file).slice(0, 2)).toEqual([`c1-t2 ${fern} Heron`, `c1-t1 ${fern} Otter`]);
    expect(file.rowOf(fern, 'c1-t1')).toBe(firstBuild().rowOf(fern, 'c1-t1'));
    expect(file.rowOf(fern, 'c1-t2')).toBe(firstBuild().rowOf(fern, 'c1-t2'));
  });
  it('keeps a Plan whose numbers would be lost, and has every sheet look at the new one', () => {
    const more = { ...setup, givens: { ...setup.givens, 'target molarity': '0.150' } };
    file.finish(file.call('startBuild', more));
    expect(applied(file)[0]?.replace).toBe(true);
    expect(file.names()).toContain(deskWords.keptName(words.plan.sheet, '2026-03-02 10.15'));
    file = builtLesson();
    file.finish(file.call('startBuild', { ...setup, settings: { ...setup.settings, spare: '20 %' } }));
    expect(applied(file)[0]?.replace).toBe(false);
  });
  it('refuses where a key stands in two lines of the Plan, and names it', () => {
    const { cells } = file.sheetCalled(words.plan.sheet);
    const heron = cells.findIndex(([key]) => key === 'c1-t2');
    file.put(words.plan.sheet, heron + 1, planColumns.key, 'c1-t1');
    expect(problemOf(file.call('startBuild', setup)).message).toBe(
      said({ ...deskWords.keyTwice, received: '“c1-t1”' }),
    );
  });
  it('refuses a Plan that cannot be read, and writes nothing', () => {
    const { cells } = file.sheetCalled(words.plan.sheet);
    const heading = cells.findIndex(([key, name]) => key === words.plan.key && name === words.plan.className);
    file.put(words.plan.sheet, heading + 1, planColumns.key, 'number');
    for (const call of ['startBuild', 'startSample'] as const)
      expect(problemOf(call === 'startBuild' ? file.call(call, setup) : file.call(call)).message).toContain(
        words.plan.key,
      );
    expect(writes(file)).toEqual([]);
  });
  it('works it out once more where somebody changed the Plan meanwhile', () => {
    valueIn(file.call('startBuild', setup));
    file.before(() => file.put(words.plan.sheet, 30, 20, 'a note'));
    expect(valueIn(file.call('continueBuild'))).toMatchObject({ done: 3 });
    expect(file.asked.slice(-3).map(({ call }) => call)).toEqual(['applySheet', 'readBook', 'applySheet']);
  });
  it('leaves alone the sheet of a class that was taken out of the Plan between two steps', () => {
    valueIn(file.call('startBuild', setup));
    const { cells } = file.sheetCalled(words.plan.sheet);
    for (const line of cells) if (line[1] === moss) line[0] = line[1] = line[2] = '';
    file.finish(file.call('continueBuild'));
    expect(roles(file)).toEqual(['plan', 'help', 'prepare', fern, 'progress', 'poll']);
    expect(file.names()).toContain(moss);
  });
  it('stops where the Plan has lost the heading of a number between two steps', () => {
    valueIn(file.call('startBuild', setup));
    const { cells } = file.sheetCalled(words.plan.sheet);
    const heading = cells.find((line) => line.includes('target volume'));
    heading?.splice(heading.indexOf('target volume'), 1, 'aim');
    expect(problemOf(file.call('continueBuild')).message).toBe(
      said({ ...deskWords.headingMissing('target volume'), received: 'a Plan without it' }),
    );
  });
});

describe('the sample', () => {
  let sample: PaperFile;
  beforeEach(() => {
    sample = paperFile();
    sample.finish(sample.call('startSample'));
  });
  const classSheets = () => sample.state.sheets.filter(({ tag }) => tag?.kind === 'class');
  const day = Date.parse('2026-03-02T10:15:00Z');

  it('is a lesson of invented classes with entries, tries and times of before', () => {
    const entries = classSheets().flatMap(({ cells }) =>
      cells.flatMap((line) =>
        line[at.key - 1] !== classMarker && line[at.step - 1] && line[at.entry - 1]
          ? [[line[at.tries - 1], line[at.lastEntry - 1]]]
          : [],
      ),
    );
    expect(entries.length).toBeGreaterThan(20);
    for (const [tries, time] of entries) {
      expect(tries).toBeGreaterThan(0);
      const { date } = time as { date: number };
      expect(date).toBeLessThanOrEqual(day);
      expect(date).toBeGreaterThan(day - 4 * 3_600_000);
    }
  });
  it('has the entries and people of each invented team in its own rows, and nothing in the others', () => {
    const lines = planLines(sample).map((line) => line.split(' ')[0] ?? '');
    const { teams } = valueIn(sample.call('readNumbers'));
    const { entries, members } = sampleLesson(teams);
    expect(teams.map(({ key }) => key)).toEqual(lines);
    for (const { key, className, team } of teams) {
      const sheet = classSheets().find(({ tag }) => tag?.className === className);
      for (const line of sheet?.cells.filter((one) => one[at.key - 1] === key && one[at.step - 1]) ?? []) {
        const entry = entries.find(
          (one) => one.className === className && one.team === team && one.step === line[at.step - 1],
        );
        expect([line[at.entry - 1] ?? '', line[at.tries - 1] ?? '', line[at.lastEntry - 1] ?? '']).toEqual(
          entry === undefined ? ['', '', ''] : [entry.entry, entry.tries, { date: day - entry.minutesAgo * 60_000 }],
        );
      }
      const people = members.find((one) => one.className === className && one.team === team)?.people ?? [];
      const heading = sheet?.cells.find((one) => one[at.key - 1] === key && !one[at.step - 1]);
      const found = readMembers(String(heading?.[at.who - 1] ?? '')).members.map(({ name }) => name);
      expect(found).toEqual(people.map(({ name }) => name));
    }
  });
  it('has people whose roles are of today, and answers to the poll of today and the day before', () => {
    const who = classSheets().flatMap(({ cells }) =>
      cells.flatMap((line) => (line[at.key - 1] && !line[at.step - 1] ? [String(line[at.who - 1] ?? '')] : [])),
    );
    expect(who.some((text) => text.includes('2026-03-02'))).toBe(true);
    const days = valueIn(sample.call('readPoll')).answers.map((answer) => answer.day);
    expect([...new Set(days)].sort()).toEqual(['2026-03-01', '2026-03-02']);
  });
  it('may be begun again in its own file, and stays a sample with all its teams', () => {
    const again = copyOf(sample);
    expect(again.finish(again.call('startSample')).finished).toBe(true);
    expect(again.names()).toEqual(sample.names());
  });
  it('is refused in a file that has a lesson of its own', () => {
    expect(problemOf(file.call('startSample')).message).toBe(
      said({ ...deskWords.lessonThere, received: deskWords.lessonOf(3) }),
    );
  });
  it('stays invented while all its teams are, and not with a team of its own', () => {
    const invented = (one: PaperFile) => {
      const { cells } = one.sheetCalled(words.plan.sheet);
      return cells.some((line) => line[0] === words.settings.invented && line[1] === 'yes');
    };
    expect(invented(sample)).toBe(true);
    expect(invented(firstBuild())).toBe(false);
    const lesson = valueIn(sample.call('readLesson')).setup;
    const same = copyOf(sample);
    same.finish(same.call('startBuild', lesson));
    expect(invented(same)).toBe(true);
    const own = copyOf(sample);
    const [first, ...rest] = lesson.classes;
    own.finish(
      own.call('startBuild', {
        ...lesson,
        classes: [{ ...first, teams: [...(first?.teams ?? []), 'Newcomer'] }, ...rest],
      }),
    );
    expect(invented(own)).toBe(false);
  });
});

describe('a team or a class that joins in mid-lesson', () => {
  it('gets a line of the Plan and a block, and only the sheets that list teams are written besides', () => {
    type(file, fern, 'c1-t1', 'molar mass', '119.00');
    const state = file.finish(file.call('addTeam', moss, ' Late   team '));
    expect(roles(file)).toEqual(['plan', moss, 'progress']);
    expect(state.total).toBe(3);
    expect(planLines(file)).toContain(`c2-t2 ${moss} Late team`);
    expect(file.rowOf(moss, 'c2-t2')).toBeGreaterThan(file.rowOf(moss, 'c2-t1', 'molar mass'));
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1', 'molar mass'), at.entry)).toBe('119.00');
  });
  it('is not added twice where the same is pressed again half-way, and another one is', () => {
    valueIn(file.call('addTeam', moss, 'Late team'));
    const state = file.finish(file.call('addTeam', moss, 'Late team'));
    expect(state.finished).toBe(true);
    expect(planLines(file).filter((line) => line.endsWith('Late team'))).toHaveLength(1);
    expect(problemOf(file.call('addTeam', moss, 'Late team')).message).toContain('are called “Late team”');
  });
  it('goes on with a team whose line stands in the Plan while its block does not', () => {
    valueIn(file.call('addTeam', moss, 'Late team'));
    file.state.note = '';
    file.finish(file.call('addTeam', moss, 'Late team'));
    expect(planLines(file).filter((line) => line.endsWith('Late team'))).toHaveLength(1);
    expect(file.rowOf(moss, 'c2-t2')).toBeGreaterThan(0);
  });
  it('goes on with a team whose class is still being written, or whose sheet cannot be read', () => {
    file.finish(file.call('addTeam', moss, 'Late team'));
    const sheet = file.sheetCalled(moss);
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'building' };
    expect(valueIn(file.call('addTeam', moss, 'Late team')).done).toBe(1);
    file.state.note = '';
    if (sheet.tag !== null) sheet.tag = { ...sheet.tag, state: 'built' };
    file.put(moss, 1, at.key, 'moved');
    expect(valueIn(file.call('addTeam', moss, 'Late team')).done).toBe(1);
  });
  it('needs a class that is there, and a lesson', () => {
    expect(problemOf(file.call('addTeam', 'Reed class', 'Wren'))).toEqual({
      field: 'class',
      message: said({ ...deskWords.classUnknown, received: '“Reed class”' }),
    });
    for (const outcome of [paperFile().call('addTeam', fern, 'Wren'), paperFile().call('addClass', 'Reed', ['Wren'])])
      expect(problemOf(outcome).message).toBe(said(deskWords.teams.noLesson));
  });
  it('needs a name', () => {
    expect(problemOf(file.call('addTeam', fern, '  ')).field).toBe('classes');
    expect(problemOf(file.call('addClass', '', ['Wren'])).field).toBe('classes');
    expect(problemOf(file.call('addClass', 'Reed class', 'Wren')).message).toBe(
      said({ ...deskWords.setupProblems.noTeams, where: 'Reed class' }),
    );
  });
  it('brings a class with a sheet of its own, and the Poll offers it', () => {
    file.finish(file.call('addClass', 'Reed class', ['Wren', 'Teal']));
    expect(roles(file)).toEqual(['plan', 'Reed class', 'progress', 'poll']);
    expect(planLines(file).slice(3)).toEqual(['c3-t1 Reed class Wren', 'c3-t2 Reed class Teal']);
    expect(file.rowOf('Reed class', 'c3-t2')).toBeGreaterThan(0);
  });
  it('goes on with a class that was half built, and refuses one that is there', () => {
    valueIn(file.call('addClass', 'Reed class', ['Wren']));
    file.state.note = '';
    file.finish(file.call('addClass', 'Reed class', ['Wren']));
    expect(planLines(file).slice(3)).toEqual(['c3-t1 Reed class Wren']);
    expect(problemOf(file.call('addClass', 'Reed class', ['Wren'])).message).toContain('are called “Reed class”');
    expect(problemOf(file.call('addClass', fern, ['Wren'])).message).toContain(`“${fern}”`);
  });
});
