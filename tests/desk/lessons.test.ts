import { beforeEach, describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import { classesInFile } from '../../src/desk/classes/classesInFile.ts';
import { bookAfter } from '../../src/desk/file/book.ts';
import type { File } from '../../src/desk/file/look.ts';
import {
  awakened,
  freshLessonId,
  lessonBook,
  lessonShown,
  lessonsInUse,
  sheetsAway,
} from '../../src/desk/lesson/lessonsInFile.ts';
import { planInFile } from '../../src/desk/lesson/planInFile.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { deskWords } from '../../src/desk/words.ts';
import type { CellWish } from '../../src/host/calls.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { copyOf, type PaperFile, paperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const days = { second: '2026-03-09', third: '2026-03-16' } as const;
/** Another day, on which lessons go on. */
const on = (file: PaperFile, day: string): PaperFile => {
  Object.assign(file.state, { today: day, now: Date.parse(`${day}T10:15:00Z`) });
  return file;
};
const forClasses = (...names: readonly string[]): Setup => ({
  ...setup,
  classes: setup.classes.filter(({ name }) => names.includes(name)),
});
/** An exercise with another substance and new numbers. */
const other = (...names: readonly string[]): Setup => ({
  ...forClasses(...names),
  givens: { ...setup.givens, formula: 'KCl', ion: 'Cl-' },
  settings: { ...defaultSettings, seed: '77' },
});
const bookOf = (file: PaperFile) => {
  const kinds = ['plan', 'class', 'poll', 'record'] as const;
  const answer = file.answer({ call: 'readBook', wish: { kinds } }) as { value: Parameters<typeof bookAfter>[1] };
  return bookAfter(undefined, answer.value, kinds);
};
const next = (file: PaperFile, wanted: Setup, wish = {}) => file.finish(file.call('nextLesson', wanted, wish));
const entryOf = (file: PaperFile, sheet: string) =>
  file.cell(sheet, file.rowOf(sheet, 'c1-t1', 'molar mass'), at.entry);
const tagOf = (file: PaperFile, sheet: string) => file.sheetCalled(sheet).tag;
const earlier = (name: string, day = '2026-03-02') => deskWords.awayName(name, day);

let file: PaperFile;
beforeEach(() => {
  file = builtLesson();
  fillRow(
    file,
    { step: 'molar mass' },
    { entry: '119.0', check: 'on target', tries: 2, time: '2026-03-02T10:05:00Z', who: 'Ana' },
  );
  file.put(fern, file.rowOf(fern, 'c1-t1'), at.who, 'Ana, Ben');
});

describe('the lessons of a file', () => {
  it('are one in a file from before there were several, with all its classes and entries', () => {
    for (const sheet of file.state.sheets) {
      if (sheet.tag === null) continue;
      const { lesson: _, ...tag } = sheet.tag;
      sheet.tag = tag;
    }
    const book = bookOf(file);
    expect(lessonsInUse(book).map(({ id, begun }) => [id, begun])).toEqual([['', '']]);
    const [only] = lessonsInUse(book);
    expect(classesInFile(only?.book ?? book).map(({ name }) => name)).toEqual([fern, moss]);
    expect(valueIn(file.call('readClass', fern)).teams[0]?.steps.find(({ id }) => id === 'molar mass')?.entry).toBe(
      '119.0',
    );
    file.finish(file.call('startBuild', setup));
    expect(entryOf(file, fern)).toBe('119.0');
    next(on(file, days.second), other(fern, moss));
    expect(lessonsInUse(bookOf(file)).map(({ id }) => id)).toEqual([`${days.second}.1`]);
    expect(entryOf(file, earlier(fern, ''))).toBe('119.0');
    file.finish(file.call('openEarlier', ''));
    expect(entryOf(file, fern)).toBe('119.0');
    expect(lessonsInUse(bookOf(file)).map(({ id }) => id)).toEqual(['']);
  });
  it('leave a tab as a teacher has called it, whatever lesson that names', () => {
    file.sheetCalled(fern).name = 'Fern, lesson of Friday';
    file.finish(file.call('startBuild', setup));
    expect(file.names()).toContain('Fern, lesson of Friday');
  });
  it('give the only Plan and Prepare their plain tabs back once the other lesson is put away', () => {
    next(on(file, days.second), other(moss));
    const tabs = () => file.names().filter((name) => /^(Plan|Prepare)\b/.test(name));
    expect(tabs().sort()).toEqual(['Plan', 'Plan 2', 'Prepare', 'Prepare 2']);
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    const away = ['Plan', 'Prepare'].map((name) => earlier(`${name} 2`, days.second));
    expect(tabs().sort()).toEqual(['Plan', 'Prepare', ...away].sort());
    next(on(file, days.third), other(fern, moss));
    expect(tabs()).toContain('Plan');
    expect(tabs()).not.toContain('Plan 2');
  });
  it('give a Plan and a Prepare that come back the plain tabs of those that leave', () => {
    next(on(file, days.second), other(fern, moss));
    const tabs = () => file.names().filter((name) => /^(Plan|Prepare)\b/.test(name));
    const first = ['Plan', 'Prepare'].map((name) => earlier(name));
    expect(tabs().sort()).toEqual(['Plan', 'Prepare', ...first].sort());
    file.finish(on(file, days.third).call('openEarlier', '2026-03-02.1'));
    const second = ['Plan', 'Prepare'].map((name) => earlier(name, days.second));
    expect(tabs().sort()).toEqual(['Plan', 'Prepare', ...second].sort());
    expect(tagOf(file, 'Plan')?.lesson).toBe('2026-03-02.1');
  });
  it('leave a Plan the tab that a teacher has given it when another lesson leaves', () => {
    file.sheetCalled('Plan').name = 'My plan';
    next(on(file, days.second), other(moss));
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    expect(file.names()).toContain('My plan');
  });
  it('leave a class sheet the name that somebody gave it while it was put away', () => {
    next(on(file, days.second), other(fern, moss));
    file.sheetCalled(earlier(fern)).name = 'Ferns of March';
    file.finish(on(file, days.third).call('openEarlier', '2026-03-02.1'));
    expect(tagOf(file, 'Ferns of March')).toMatchObject({ state: 'built', lesson: '2026-03-02.1' });
    expect(tagOf(file, moss)).toMatchObject({ state: 'built', lesson: '2026-03-02.1' });
    expect(file.names()).toContain(earlier(fern, days.second));
  });
  it('leave a new sheet of a class the name that its tab is given before it takes the place of the old one', () => {
    const page: File = { book: undefined };
    const press = (name: 'continueBuild' | 'nextLesson', ...about: never[]) =>
      valueIn(file.run(workFor(page, name, about as never)) as Outcome<BuildState>);
    let state = press('nextLesson', ...([other(fern, moss), {}, { sameDay: true }] as never[]));
    while (!file.names().includes(`${fern} 2`)) state = press('continueBuild');
    file.sheetCalled(`${fern} 2`).name = 'Ferns on Monday';
    while (!state.finished) state = press('continueBuild');
    expect(file.names()).toEqual(expect.arrayContaining(['Ferns on Monday', earlier(fern), moss, earlier(moss)]));
    expect(file.names()).not.toContain(fern);
  });
  it('keep the name that a tab is given while the next lesson is built, and hand it to the sheet that comes instead', () => {
    const first = file.call('nextLesson', other(fern, moss), {}, { sameDay: true });
    file.sheetCalled(fern).name = 'Ferns on Monday';
    file.finish(first);
    expect(file.names()).toEqual(expect.arrayContaining(['Ferns on Monday', earlier('Ferns on Monday')]));
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    expect(file.names()).toContain('Ferns on Monday');
  });
  it('find the sheet of each class by its teams, however the class is called and wherever it is listed', () => {
    const classes = [
      { name: moss, teams: ['Newt'] },
      { name: 'Third period', teams: ['Otter'] },
    ];
    file.put(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry, '118');
    const before = JSON.stringify(file.sheetCalled(moss).cells);
    file.finish(file.call('startBuild', { ...setup, classes }, { names: 'same', setAside: true }));
    expect(entryOf(file, 'Third period')).toBe('119.0');
    expect(JSON.stringify(file.sheetCalled(moss).cells)).toBe(before);
  });
  it('leave a class its sheet where the class before it in the file is planned no more', () => {
    const moved = file.sheetCalled(moss).id;
    file.put(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry, '118');
    file.finish(file.call('startBuild', forClasses(moss), { setAside: true }));
    expect(file.sheetCalled(moss).id).toBe(moved);
    expect(file.cell(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry)).toBe('118');
    expect(file.state.sheets.filter(({ kept, cells }) => kept && JSON.stringify(cells).includes('119.0'))).toHaveLength(
      1,
    );
  });
  it('give the plain tabs back whichever number a tab has by then', () => {
    next(on(file, days.second), other(fern, moss));
    file.finish(file.call('openEarlier', '2026-03-02.1', [fern]));
    file.sheetCalled('Plan 2').name = 'Plan 12';
    file.finish(file.call('openEarlier', '2026-03-02.1', [moss]));
    expect(tagOf(file, 'Plan')).toMatchObject({ state: 'built', lesson: '2026-03-02.1' });
    expect(file.names()).not.toContain('Plan 12');
  });
  it('speak of another one while the Plan of the last is still being written, and of that one where it is alone', () => {
    next(on(file, days.second), other(moss));
    const plan = file.sheetCalled('Plan 2');
    Object.assign(plan, { tag: { ...plan.tag, state: 'building' } });
    const book = { ...bookOf(file), activeSheet: file.sheetCalled('Poll').id };
    expect(lessonShown(book, undefined)?.id).toBe('2026-03-02.1');
    const alone = lessonBook(book, `${days.second}.1`).sheets.flatMap(({ kept, id }) => (kept ? [] : [id]));
    const sheets = book.sheets.filter(({ id }) => alone.includes(id));
    expect(lessonShown({ ...book, sheets }, undefined)?.id).toBe(`${days.second}.1`);
  });
  it('stay the one that an open page speaks of, whichever tab is in front by then, and are read once', () => {
    next(on(file, days.second), other(moss));
    const page = { book: undefined };
    file.state.activeSheet = file.sheetCalled(fern).id;
    valueIn(file.run(workFor(page, 'readLesson', [])));
    const asked = file.asked.length;
    file.state.activeSheet = file.sheetCalled('Poll').id;
    expect(valueIn(file.run(workFor(page, 'readNumbers', []))).typical.formula).toBe('KBr');
    expect(file.asked).toHaveLength(asked);
    expect(valueIn(file.run(workFor(page, 'readNumbers', [], { afresh: true }))).typical.formula).toBe('KBr');
    expect(valueIn(file.call('readNumbers')).typical.formula).toBe('KCl');
  });
  it('are told by the name of their activity where that is none of ours', () => {
    const { cells } = file.sheetCalled('Plan');
    file.put('Plan', cells.findIndex(([name]) => name === 'activity') + 1, 2, 'brewing');
    expect(valueIn(file.call('readLessons')).inUse.map(({ activity, substance }) => [activity, substance])).toEqual([
      ['brewing', 'KBr'],
    ]);
    const headings = cells.find(([key]) => key === 'key') ?? [];
    headings[headings.indexOf('formula')] = 'salt';
    expect(valueIn(file.call('readLessons')).inUse[0]?.substance).toBe('');
  });
  it('have the day on which they were begun, and a number of that day', () => {
    const book = bookOf(file);
    expect(lessonsInUse(book).map(({ id, begun }) => [id, begun])).toEqual([['2026-03-02.1', '2026-03-02']]);
    expect(freshLessonId(book)).toBe('2026-03-02.2');
    expect(tagOf(file, fern)).toMatchObject({ lesson: '2026-03-02.1' });
    for (const shared of ['Help', 'Poll', 'Progress']) expect(tagOf(file, shared)?.lesson).toBeUndefined();
  });
  it('each have a book of their own, in which the sheets of others are only names', () => {
    next(on(file, days.second), other(moss));
    const book = bookOf(file);
    const [first, second] = lessonsInUse(book);
    expect(first && classesInFile(first.book).map(({ name }) => name)).toEqual([fern]);
    expect(second && classesInFile(second.book).map(({ name }) => name)).toEqual([moss]);
    const plan = second && planInFile(second.book);
    expect(plan?.state === 'there' && plan.reading.setup.givens.formula).toBe('KCl');
    expect(second?.book.sheets.map(({ name }) => name)).toEqual(book.sheets.map(({ name }) => name));
    expect(lessonShown({ ...book, activeSheet: file.sheetCalled('Poll').id }, undefined)?.id).toBe(second?.id);
    expect(lessonShown(book, first?.id)?.id).toBe(first?.id);
    expect(lessonShown({ ...book, activeSheet: file.sheetCalled(fern).id }, undefined)?.id).toBe(first?.id);
  });
  it('speak of the classes that are at them, and keep the lines of those put away', () => {
    next(on(file, days.second), other(moss));
    const [first] = lessonsInUse(bookOf(file));
    const plan = first && planInFile(first.book);
    if (plan?.state !== 'there') throw new Error('Expected a Plan.');
    expect(plan.reading.teams.map(({ className }) => className)).toEqual([fern, fern]);
    expect(plan.reading.setup.classes.map(({ name }) => name)).toEqual([fern]);
    expect(plan.whole.teams.map(({ className }) => className)).toEqual([fern, fern, moss]);
    const awake = planInFile(lessonBook(awakened(bookOf(file), first?.id ?? ''), first?.id ?? ''));
    expect(awake.state === 'there' && awake.reading.teams).toHaveLength(3);
  });
});

describe('the next lesson', () => {
  it('gives its classes sheets of their own under their names, and hides the lesson before with its entries', () => {
    next(on(file, days.second), other(fern, moss));
    expect(tagOf(file, fern)).toMatchObject({ lesson: `${days.second}.1`, state: 'built' });
    expect(entryOf(file, fern)).toBe('');
    for (const name of [fern, moss, 'Plan', 'Prepare']) {
      expect(tagOf(file, earlier(name))).toMatchObject({ state: 'away', lesson: '2026-03-02.1' });
      expect(tagOf(file, name)).toMatchObject({ state: 'built', lesson: `${days.second}.1` });
    }
    expect(entryOf(file, earlier(fern))).toBe('119.0');
    expect(file.names().filter((name) => /kept/.test(name))).toEqual([]);
    expect(
      sheetsAway(bookOf(file)).map(({ note }) => [note.className, note.activity, note.substance, note.entries]),
    ).toEqual([
      [fern, 'A stock solution and its dilution', 'KBr', 1],
      [moss, 'A stock solution and its dilution', 'KBr', 0],
    ]);
  });
  it('takes the teams along, with their keys and their people, and gives other numbers', () => {
    next(on(file, days.second), other(fern, moss));
    const numbers = valueIn(file.call('readNumbers'));
    expect(numbers.teams.map(({ key, team }) => [key, team])).toEqual([
      ['c1-t1', 'Otter'],
      ['c1-t2', 'Heron'],
      ['c2-t1', 'Newt'],
    ]);
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1'), at.who)).toBe('Ana, Ben');
    expect(numbers.typical.formula).toBe('KCl');
  });
  it('keeps the numbers that were changed by hand, where the same ones are wanted', () => {
    const plan = file.sheetCalled('Plan');
    const line = plan.cells.findIndex(([key]) => key === 'c1-t1') + 1;
    const column = (plan.cells.find(([key]) => key === 'key') ?? []).indexOf('target molarity') + 1;
    file.put('Plan', line, column, '0.125');
    next(on(file, days.second), setup);
    expect(valueIn(file.call('readNumbers')).teams[0]?.givens['target molarity']).toBe('0.125');
  });
  it('writes the day of the lesson before into the Record, once, with counts and no names', () => {
    next(on(file, days.second), other(fern, moss));
    const rows = file.sheetCalled('Record').cells.filter((line) => line.includes(fern));
    expect(rows).toHaveLength(1);
    expect(rows[0]?.join(' ')).toContain('2026-03-02');
    expect(rows[0]?.join(' ')).not.toMatch(/Ana|Ben|Otter/);
    expect(file.sheetCalled('Record').cells.some((line) => line.includes(moss))).toBe(false);
  });
  it('ends a row of the Record whose writing stopped, and leaves one in which somebody has other words', () => {
    valueIn(
      file.call(
        'saveRecord',
        valueIn(file.call('readRecord')).classes.map(({ proposal }) => ({ entry: proposal, base: null })),
      ),
    );
    const record = file.sheetCalled('Record');
    const row = record.cells.findIndex((line) => line.includes(fern)) + 1;
    const whole = JSON.stringify(record.cells[row - 1]);
    const last = (record.cells[row - 1] ?? []).findLastIndex((cell) => cell !== '') + 1;
    const cut = copyOf(file);
    cut.put('Record', row, last, '');
    next(on(cut, days.second), other(fern));
    expect(JSON.stringify(cut.sheetCalled('Record').cells[row - 1])).toBe(whole);
    const changed = copyOf(file);
    changed.put('Record', row, last, '');
    changed.put('Record', row, 4, 'Our own aim.');
    const before = JSON.stringify(changed.sheetCalled('Record').cells[row - 1]);
    next(on(changed, days.second), other(fern));
    expect(JSON.stringify(changed.sheetCalled('Record').cells[row - 1])).toBe(before);
  });
  it('is for the classes that are ticked, and leaves the others at their lesson', () => {
    const before = JSON.stringify(file.sheetCalled(fern).cells);
    next(on(file, days.second), other(moss));
    expect(JSON.stringify(file.sheetCalled(fern).cells)).toBe(before);
    expect(lessonsInUse(bookOf(file)).map(({ id }) => id)).toEqual(['2026-03-02.1', `${days.second}.1`]);
    expect(valueIn(file.call('readLesson')).classes).toEqual([fern, moss]);
    expect(valueIn(file.call('readTeams')).classes.map(({ name }) => name)).toEqual([fern, moss]);
    const progress = file.sheetCalled('Progress').cells.map((line) => line[0]);
    expect(progress.filter((name) => name === fern || name === moss)).toEqual([fern, moss]);
  });
  it('is begun for a class by the name that the Plan gives it now', () => {
    const rows = file.sheetCalled('Plan').cells.flatMap((line, index) => (line[1] === fern ? [index + 1] : []));
    for (const row of rows) file.put('Plan', row, 2, 'Third period');
    next(on(file, days.second), { ...other(fern), classes: [{ name: 'Third period', teams: ['Otter', 'Heron'] }] });
    expect(lessonsInUse(bookOf(file)).map(({ book }) => classesInFile(book).map(({ name }) => name))).toEqual([
      [moss],
      ['Third period'],
    ]);
    expect(entryOf(file, earlier(fern))).toBe('119.0');
  });
  it('is built also for a class whose sheet somebody has deleted, of which Progress has no part meanwhile', () => {
    next(on(file, days.second), other(moss));
    const progress = () => file.sheetCalled('Progress').cells.map((line) => line[0]);
    file.state.sheets = file.state.sheets.filter(({ name }) => name !== fern);
    file.finish(file.call('addTeam', moss, 'Wren'));
    expect([fern, moss].map((name) => progress().includes(name))).toEqual([false, true]);
    next(file, other(fern));
    expect(tagOf(file, fern)?.lesson).toBe(`${days.second}.2`);
    expect([fern, moss].map((name) => progress().includes(name))).toEqual([true, true]);
  });
  it('goes on where its new sheet is deleted while the one before is still to be put away', () => {
    on(file, days.second);
    let state = valueIn(file.call('nextLesson', other(fern, moss)));
    const isMade = () =>
      file.state.sheets.some(({ tag }) => tag?.className === fern && tag.lesson === `${days.second}.1`);
    while (!isMade()) state = valueIn(file.call('continueBuild'));
    file.state.sheets = file.state.sheets.filter(
      ({ tag }) => tag?.className !== fern || tag.lesson !== `${days.second}.1`,
    );
    expect(state.finished).toBe(false);
    file.finish(file.call('continueBuild'));
    expect(entryOf(file, earlier(fern))).toBe('119.0');
  });
  it('is the one that the record of a day tells of once its class has typed, and the one before until then', () => {
    file.finish(file.call('nextLesson', other(fern), {}, { sameDay: true }));
    const page = { book: undefined };
    valueIn(file.run(workFor(page, 'readLesson', [])));
    const substances = () =>
      valueIn(file.run(workFor(page, 'readRecord', [], { afresh: true }))).classes.flatMap(({ proposal }) =>
        proposal.className === fern ? [proposal.substance.replace(/.*, /, '')] : [],
      );
    expect(substances()).toEqual(['KBr']);
    fillRow(file, { step: 'molar mass' }, { entry: '74.55', time: '2026-03-02T10:12:00Z' });
    expect(substances()).toEqual(['KBr', 'KCl']);
  });
  it('takes people, absences, links and times out of what is put away where that was asked, and else leaves them', () => {
    fillRow(file, { step: 'in your words' }, { entry: 'see https://example.org/ours', time: '2026-03-02T10:06:00Z' });
    valueIn(file.call('setAbsent', 'c1-t2', true));
    const people = valueIn(file.call('readLessons')).classes.find(({ name }) => name === fern)?.people;
    expect(people).toBe(6);
    const kept = copyOf(file);
    next(on(kept, days.second), other(fern, moss));
    expect(JSON.stringify(kept.sheetCalled(earlier(fern)).cells)).toContain('example.org');
    next(on(file, days.second), other(fern, moss), { takesPeople: true });
    const left = JSON.stringify([file.sheetCalled(earlier(fern)).cells, file.sheetCalled(earlier('Plan')).cells]);
    expect(left).not.toMatch(/Ana|example\.org|absent 2026/);
    expect(left).not.toContain(String(Date.parse('2026-03-02T10:05:00Z')));
    expect(left).toContain('119.0');
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1'), at.who)).toBe('Ana, Ben');
  });
  it('has room for a class that is new, beside those that go on or alone', () => {
    const larch = { name: 'Larch class', teams: ['Tern', 'Wren'] };
    on(file, days.second);
    next(file, { ...other(fern), classes: [...other(fern).classes, larch] });
    expect(valueIn(file.call('readLesson')).classes).toEqual([moss, fern, larch.name]);
    const { teams } = valueIn(file.call('readNumbers'));
    expect(teams.map(({ key, team }) => [key, team])).toEqual([
      ['c1-t1', 'Otter'],
      ['c1-t2', 'Heron'],
      ['c2-t2', 'Tern'],
      ['c2-t3', 'Wren'],
    ]);
    expect(file.cell(fern, file.rowOf(fern, 'c1-t1'), at.who)).toBe('Ana, Ben');
    expect(entryOf(file, earlier(fern))).toBe('119.0');
    next(file, { ...other(), classes: [{ name: 'Yew class', teams: ['Teal'] }] });
    expect(valueIn(file.call('readLessons')).inUse.map(({ classes }) => classes)).toEqual([
      [moss],
      [fern, larch.name],
      ['Yew class'],
    ]);
    expect(entryOf(file, earlier(fern))).toBe('119.0');
  });
  it('asks before a class begins a second lesson on one day', () => {
    const asked = problemOf(file.call('nextLesson', other(fern)));
    expect(asked.question).toEqual({ about: 'same day', classes: [fern] });
    file.finish(file.call('nextLesson', other(fern), {}, { sameDay: true }));
    expect(tagOf(file, fern)?.lesson).toBe('2026-03-02.2');
    // Also where it has gone back to an earlier one since.
    next(on(file, days.second), other(fern));
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    const again = problemOf(file.call('nextLesson', other(fern, moss)));
    expect(again.question).toEqual({ about: 'same day', classes: [fern] });
  });
  it('goes on at the same press, and says so where another build is under way', () => {
    on(file, days.second);
    valueIn(file.call('nextLesson', other(moss)));
    expect(problemOf(file.call('nextLesson', other(fern))).message).toBe(said(deskWords.otherBuilding));
    expect(problemOf(file.call('openEarlier', '2026-03-02.1')).message).toBe(said(deskWords.otherBuilding));
    const state = valueIn(file.call('nextLesson', other(moss)));
    expect(state.done).toBe(4);
    file.finish({ ok: true, value: state });
    expect(tagOf(file, moss)?.lesson).toBe(`${days.second}.1`);
  });
  it('begins where the activity or the substance is changed once a class has typed', () => {
    on(file, days.second);
    expect(problemOf(file.call('startBuild', other(fern, moss))).question).toMatchObject({ about: 'next lesson' });
    file.finish(file.call('startBuild', other(fern, moss), { begins: 'next' }));
    expect(entryOf(file, earlier(fern))).toBe('119.0');
    expect(lessonsInUse(bookOf(file))).toHaveLength(1);
  });
});

describe('an earlier lesson', () => {
  it('is listed with what it was about, and opened at one press, with the other put away in turn', () => {
    next(on(file, days.second), other(fern, moss));
    file.put(fern, file.rowOf(fern, 'c1-t1', 'molar mass'), at.entry, '74.55');
    expect(valueIn(file.call('readLessons')).away).toEqual([
      {
        id: '2026-03-02.1',
        begun: '2026-03-02',
        activity: 'A stock solution and its dilution',
        substance: 'KBr',
        classes: [fern, moss],
        entries: 1,
        invented: false,
        cleared: [],
      },
    ]);
    file.finish(on(file, days.third).call('openEarlier', '2026-03-02.1'));
    expect(entryOf(file, fern)).toBe('119.0');
    expect(tagOf(file, fern)).toMatchObject({ lesson: '2026-03-02.1', state: 'built' });
    expect(entryOf(file, earlier(fern, days.second))).toBe('74.55');
    expect(valueIn(file.call('readClass', fern)).teams[0]?.steps.find(({ id }) => id === 'molar mass')).toMatchObject({
      check: 'on target',
      entry: '119.0',
    });
    file.finish(file.call('openEarlier', `${days.second}.1`));
    expect(entryOf(file, fern)).toBe('74.55');
  });
  it('holds what was typed while it was put away', () => {
    next(on(file, days.second), other(fern, moss));
    file.put(earlier(fern), file.rowOf(earlier(fern), 'c1-t2', 'molar mass'), at.entry, '12');
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    expect(file.cell(fern, file.rowOf(fern, 'c1-t2', 'molar mass'), at.entry)).toBe('12');
  });
  describe('for some of its classes', () => {
    const planLines = () => file.sheetCalled('Plan').cells.filter((line) => line[1] === moss || line[1] === fern);
    beforeEach(() => {
      next(on(file, days.second), other(fern, moss));
      file.put(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry, '74.55');
      fillRow(file, { step: 'moles of solute' }, { entry: '0.06', time: '2026-03-09T10:05:00Z' });
      on(file, days.third);
    });
    it('leaves the others where they are, and keeps what the lesson has of them for later', () => {
      const before = JSON.stringify(file.sheetCalled(moss).cells);
      const kept = JSON.stringify(file.sheetCalled(earlier(moss)).cells);
      file.finish(file.call('openEarlier', '2026-03-02.1', [fern]));
      expect([entryOf(file, fern), JSON.stringify(file.sheetCalled(moss).cells)]).toEqual(['119.0', before]);
      expect(JSON.stringify(file.sheetCalled(earlier(moss)).cells)).toBe(kept);
      expect(
        lessonsInUse(bookOf(file)).map(({ id, book }) => [id, classesInFile(book).map(({ name }) => name)]),
      ).toEqual([
        ['2026-03-02.1', [fern]],
        [`${days.second}.1`, [moss]],
      ]);
      expect(valueIn(file.call('readLessons')).away.map(({ id, classes }) => [id, classes])).toEqual([
        [`${days.second}.1`, [fern]],
        ['2026-03-02.1', [moss]],
      ]);
      // Two lessons are in use: none of their sheets bears a day, and Plan and Prepare of this one have a number.
      const inUse = () =>
        file.state.sheets.flatMap(({ tag, name }) => (tag !== null && tag.state !== 'away' ? [name] : []));
      expect(inUse()).toEqual(expect.arrayContaining(['Plan', 'Plan 2', 'Prepare', 'Prepare 2', fern, moss]));
      expect(inUse().filter((name) => /lesson/.test(name))).toEqual([]);
      file.finish(file.call('openEarlier', '2026-03-02.1', [moss]));
      expect(file.names().filter((name) => /lesson.*lesson/.test(name) || / \d$/.test(name))).toEqual([]);
      expect(file.cell(moss, file.rowOf(moss, 'c2-t1', 'molar mass'), at.entry)).toBe('');
      expect(lessonsInUse(bookOf(file)).map(({ id }) => id)).toEqual(['2026-03-02.1']);
      expect(planLines()).toHaveLength(3);
    });
    it('goes on at the same press and not at one for another class', () => {
      valueIn(file.call('openEarlier', '2026-03-02.1', [fern]));
      expect(problemOf(file.call('openEarlier', '2026-03-02.1', [moss])).message).toBe(said(deskWords.otherBuilding));
      file.finish(file.call('openEarlier', '2026-03-02.1', [fern]));
      expect(tagOf(file, fern)?.lesson).toBe('2026-03-02.1');
      expect(tagOf(file, moss)?.lesson).toBe(`${days.second}.1`);
    });
    it('notes the day of the lesson that the class goes out of, whose people stay without a yes', () => {
      file.finish(file.call('openEarlier', '2026-03-02.1', [fern]));
      expect(
        file.sheetCalled('Record').cells.filter((line) => line[0] === days.second && line[1] === fern),
      ).toHaveLength(1);
      expect(file.cell(earlier(fern, days.second), file.rowOf(earlier(fern, days.second), 'c1-t1'), at.who)).toBe(
        'Ana, Ben',
      );
    });
    it('takes its people out with a yes, and says when that lesson is opened again that they do not come back', () => {
      file.finish(file.call('openEarlier', '2026-03-02.1', [fern], { takesPeople: true }));
      const put = earlier(fern, days.second);
      expect(JSON.stringify(file.sheetCalled(put).cells)).not.toMatch(/Ana/);
      expect(file.cell(fern, file.rowOf(fern, 'c1-t1'), at.who)).toBe('Ana, Ben');
      expect(valueIn(file.call('readLessons')).away.map(({ id, cleared }) => [id, cleared])).toEqual([
        [`${days.second}.1`, [fern]],
        ['2026-03-02.1', []],
      ]);
      expect(file.finish(file.call('openEarlier', `${days.second}.1`)).late).toBe(deskWords.cleared([fern]));
      expect(file.cell(fern, file.rowOf(fern, 'c1-t1', 'moles of solute'), at.entry)).toBe('0.06');
      expect(file.cell(fern, file.rowOf(fern, 'c1-t1'), at.who)).not.toContain('Ana');
    });
  });
  it('gives the keys of its teams to no late team of the lesson that its classes came from', () => {
    next(on(file, days.second), other(fern, moss));
    file.finish(file.call('addTeam', fern, 'Wren'));
    file.finish(file.call('addClass', 'Reed class', ['Carp']));
    file.finish(on(file, days.third).call('openEarlier', '2026-03-02.1'));
    file.finish(file.call('addTeam', 'Reed class', 'Late'));
    const teams = (name: string) =>
      valueIn(file.call('readTeams'))
        .classes.find((one) => one.name === name)
        ?.teams.map(({ team }) => team);
    expect(teams('Reed class')).toEqual(['Carp', 'Late']);
    file.finish(file.call('openEarlier', `${days.second}.1`));
    expect([teams('Reed class'), teams(fern)]).toEqual([
      ['Carp', 'Late'],
      ['Otter', 'Heron', 'Wren'],
    ]);
  });
  it('is not there to open twice', () => {
    next(on(file, days.second), other(fern, moss));
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    expect(problemOf(file.call('openEarlier', '2026-03-02.1')).message).toBe(
      said({ ...deskWords.lessonNotAway, received: '“2026-03-02.1”' }),
    );
  });
  it.each([false, true])('has in its record what was typed that day, people cleared before: %s', (takesPeople) => {
    const right = { check: 'on target', time: '2026-03-02T10:05:00Z', tries: 5 };
    fillRow(file, { step: 'molar mass' }, { ...right, entry: '119.0' });
    fillRow(file, { key: 'c1-t2', step: 'molar mass' }, { ...right, entry: '119.0', tries: 1 });
    fillRow(file, { step: 'mass of solute' }, { entry: '7', check: 'not yet', time: right.time, tries: 9 });
    const entry = () => valueIn(file.call('readRecord')).classes[0]?.proposal;
    expect(entry()?.wentWell).toContain('1 team found a slip of its own');
    expect(entry()?.hard).toMatch(/no right value yet for “Mass.*Most attempts: “Mass/);
    next(on(file, days.second), other(fern, moss), { takesPeople });
    file.finish(on(file, days.third).call('openEarlier', '2026-03-02.1'));
    expect(entry()).toMatchObject({ wentWell: '', hard: '' });
    const today = { check: 'on target', time: '2026-03-16T10:05:00Z' };
    fillRow(file, { step: 'moles of solute' }, { ...today, entry: '0.06', tries: 3 });
    fillRow(file, { key: 'c1-t2', step: 'moles of solute' }, { ...today, entry: '0.06', tries: 2 });
    expect(entry()).toMatchObject({
      wentWell: '2 teams found slips of their own and put them right without help, most at “Moles of solute”.',
      hard: 'Most attempts since the lesson began: “Moles of solute”, 5 in 2 teams.',
    });
    // Where teams go on is where they stand, whenever they typed.
    expect(entry()?.next).toContain('Mass');
  });
  it('keeps a number that was changed by hand in its Plan while it was put away', () => {
    next(on(file, days.second), other(fern, moss));
    const plan = file.sheetCalled(earlier('Plan'));
    const line = plan.cells.findIndex(([key]) => key === 'c1-t1') + 1;
    const column = (plan.cells.find(([key]) => key === 'key') ?? []).indexOf('target molarity') + 1;
    file.put(earlier('Plan'), line, column, '0.125');
    file.finish(file.call('openEarlier', '2026-03-02.1'));
    expect(valueIn(file.call('readNumbers')).teams[0]?.givens['target molarity']).toBe('0.125');
  });
});

describe('what touches one lesson', () => {
  beforeEach(() => {
    next(on(file, days.second), other(moss));
  });
  it('is a late team: it has a line and a block in the lesson of its class', () => {
    const before = [moss, 'Plan 2'].map((name) => JSON.stringify(file.sheetCalled(name).cells));
    file.finish(file.call('addTeam', fern, 'Pike'));
    expect([moss, 'Plan 2'].map((name) => JSON.stringify(file.sheetCalled(name).cells))).toEqual(before);
    expect(valueIn(file.call('readTeams')).classes[0]?.teams.map(({ team }) => team)).toEqual([
      'Otter',
      'Heron',
      'Pike',
    ]);
    // The line of the class that went on stays in the Plan of the lesson before.
    expect(file.sheetCalled('Plan').cells.filter((line) => line[1] === moss)).toHaveLength(1);
  });
  it('is a new plan of one: numbers of teams that went on stay as they were', () => {
    const line = () => JSON.stringify(file.sheetCalled('Plan').cells.find((cells) => cells[1] === moss));
    const before = line();
    file.state.activeSheet = file.sheetCalled(fern).id;
    file.finish(
      file.call('startBuild', { ...forClasses(fern), givens: { ...setup.givens, 'target molarity': '0.150' } }),
    );
    expect(line()).toBe(before);
    expect(tagOf(file, fern)?.lesson).toBe('2026-03-02.1');
  });
  it('is an absence', () => {
    valueIn(file.call('setAbsent', 'c2-t1', true));
    expect(file.sheetCalled('Plan 2').cells.some((line) => line.includes(`absent ${days.second}`))).toBe(true);
    expect(file.sheetCalled('Plan').cells.some((line) => line.includes(`absent ${days.second}`))).toBe(false);
  });
});

describe('the sample', () => {
  const own: Setup = { ...setup, classes: [{ name: 'Reed class', teams: ['Newt', 'Pike'] }] };
  const sample = (() => {
    let built: PaperFile | undefined;
    return () => {
      if (built === undefined) {
        built = paperFile();
        built.finish(built.call('startSample'));
      }
      return copyOf(built);
    };
  })();
  const pollRows = (file: PaperFile, name: string) => file.sheetCalled('Poll').cells.filter((line) => line[2] === name);

  it('is asked about when the first lesson of one’s own is built, with what it left', () => {
    const file = sample();
    const { classes } = valueIn(file.call('readLesson'));
    const { question } = problemOf(file.call('startBuild', own));
    expect(question).toMatchObject({ about: 'sample', classes, rows: 0 });
    expect(question?.about === 'sample' && question.answers).toBeGreaterThan(0);
    // So it is where that lesson is begun as the next one, for a class that is new.
    expect(problemOf(file.call('nextLesson', own)).question).toEqual(question);
  });
  it('goes with everything that it left: sheets, answers, rows', () => {
    const file = sample();
    const { classes } = valueIn(file.call('readLesson'));
    const proposals = valueIn(file.call('readRecord')).classes.map(({ proposal }) => ({ entry: proposal, base: null }));
    valueIn(file.call('saveRecord', proposals));
    file.put('Poll', 30, 3, 'Reed class');
    file.put('Poll', 30, 9, 'ours');
    // A teacher has moved a column of the Record: what is emptied in a row is still few pieces from left to right.
    for (const line of file.sheetCalled('Record').cells) line.splice(2, 0, ...line.splice(4, 1));
    const before = file.asked.length;
    file.finish(file.call('startBuild', own, { sample: 'remove' }));
    const rows = new Map<string, CellWish[]>();
    for (const one of file.asked.slice(before)) {
      if (one.call !== 'writeCells') continue;
      for (const cell of one.wish.cells) {
        const row = `${cell.sheetId} ${cell.row}`;
        rows.set(row, [...(rows.get(row) ?? []), cell]);
      }
    }
    expect(rows.size).toBeGreaterThan(6);
    for (const cells of rows.values()) {
      // Day and class last: where the host stops before that, it is still seen whose row it is.
      expect(cells.slice(-2).map(({ was }) => was)).toEqual([
        expect.stringMatching(/^2026-/),
        expect.toBeOneOf([...classes]),
      ]);
      const places = cells.slice(0, -2).map(({ column }) => column);
      expect(places).toEqual([...places].sort((one, other) => one - other));
    }
    expect(file.names()).toEqual(
      expect.arrayContaining(['Plan', 'Prepare', 'Reed class', 'Record', 'Help', 'Poll', 'Progress']),
    );
    expect(file.names().filter((name) => classes.includes(name) || name.includes('2'))).toEqual([]);
    for (const name of classes) {
      expect(pollRows(file, name)).toEqual([]);
      expect(file.sheetCalled('Record').cells.some((line) => line.includes(name))).toBe(false);
    }
    expect(pollRows(file, 'Reed class')).toHaveLength(1);
    expect(valueIn(file.call('readLesson')).lessons.map(({ invented }) => invented)).toEqual([false]);
  });
  it('may stay, and goes later at one press', () => {
    const file = sample();
    const { classes } = valueIn(file.call('readLesson'));
    file.finish(file.call('startBuild', own, { sample: 'keep' }));
    expect(valueIn(file.call('readLesson')).classes).toEqual([...classes, 'Reed class']);
    const renamed = copyOf(file);
    const plan = renamed.names().find((name) => /^Plan \d/.test(name)) ?? '';
    renamed.sheetCalled(plan).name = 'My plan';
    renamed.finish(renamed.call('removeSample'));
    expect(renamed.names()).toContain('My plan');
    file.finish(file.call('removeSample'));
    expect(valueIn(file.call('readLesson')).classes).toEqual(['Reed class']);
    expect(file.names()).toContain('Plan');
    expect(problemOf(file.call('removeSample')).message).toBe(said(deskWords.noSample));
  });
  it('is a sample still where its own classes go on', () => {
    const file = sample();
    const { setup: there } = valueIn(file.call('readLesson'));
    file.finish(on(file, days.second).call('nextLesson', there));
    expect(valueIn(file.call('readLesson')).lessons.map(({ invented }) => invented)).toEqual([true]);
    file.finish(file.call('startBuild', own, { sample: 'remove' }));
    expect(
      file.state.sheets.filter(({ tag }) => tag?.lesson !== undefined && tag.lesson !== `${days.second}.2`),
    ).toEqual([]);
  });
});

it('a new term takes the classes and teams of all lessons along, and nothing else', () => {
  next(on(file, days.second), other(moss));
  const wish = { fileName: 'Invented school', keepHints: false, removeOthers: true, keepTeams: true };
  file.finish(file.call('emptyCopy', wish));
  const { classes, lessons, awayCount } = valueIn(file.call('readLesson'));
  expect(classes).toEqual([fern, moss]);
  expect([lessons.length, awayCount]).toEqual([1, 0]);
  expect(valueIn(file.call('readTeams')).classes.map(({ teams }) => teams.map(({ team }) => team))).toEqual([
    ['Otter', 'Heron'],
    ['Newt'],
  ]);
  const words = JSON.stringify(file.state.sheets.map(({ cells }) => cells));
  expect(words).not.toMatch(/Ana|119\.0|2026-03-02/);
  expect(file.names().filter((name) => /Record|kept|lesson of/.test(name))).toEqual([]);
});
