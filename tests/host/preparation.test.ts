import { beforeEach, describe, expect, it } from 'vitest';
import { deskWords } from '../../src/desk/words.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { answerOf, call, open, savedWith, typeIn } from './bench.ts';
import { sheetState, valueAt, workbookText } from './cells.ts';
import { setup } from './setup.ts';

const { noLesson, keyUnconfirmed } = deskWords;

const page = '<!DOCTYPE html>\n<html>\n<body>\n<p>sidebar</p>\n</body></html>';
const three = {
  ...setup,
  classes: [{ name: 'Fern class', teams: ['Otter', 'Heron', 'Vole'] }, ...setup.classes.slice(1)],
};
const saved = savedWith(three);
let host: StandIn;
beforeEach(() => {
  host = open({ saved, sidebarHtml: page });
});
const column = (sheet: string, number: number) =>
  Array.from({ length: 60 }, (_, index) => valueAt(host, { sheet, row: index + 1, column: number }));
const rowOf = (sheet: string, what: string) => column(sheet, 2).indexOf(what) + 1;
const stockCell = (key: string) => {
  const row = Array.from({ length: 80 }, (_, index) => index + 1).find(
    (line) => valueAt(host, { sheet: 'Plan', row: line, column: 1 }) === key,
  );
  return [row ?? 0, 5] as const;
};

describe('opening pages', () => {
  it('opens a page of the same file with a mark, and names typed by people as data', () => {
    expect(call(host, 'openPage', 'labels', '"><script>alert(1)</script>').ok).toBe(true);
    const panel = host.takePanel?.('teacher');
    expect(panel?.kind).toBe('dialog');
    expect(panel?.title).toBe('Labels to print');
    expect(panel?.html).toContain('<body data-page="labels" data-about="&#34;&#62;&#60;script&#62;alert(1)');
    expect(panel?.html).not.toContain('<script>alert(1)');
  });

  it('hands over what the page is about and its lesson on a line each', () => {
    expect(call(host, 'openPage', 'links', 'Class \t 10\nB').ok).toBe(true);
    const html = host.takePanel?.('teacher')?.html ?? '';
    expect(html).toContain('<body data-page="links" data-about="Class 10&#10;B">');
  });

  it('opens the sidebar again, unmarked', () => {
    expect(call(host, 'openPage', 'sidebar').ok).toBe(true);
    const panel = host.takePanel?.('teacher');
    expect(panel?.kind).toBe('sidebar');
    expect(panel?.html).toBe(page);
  });

  it('opens the sidebar again with the view it is to show, as data', () => {
    expect(call(host, 'openPage', 'sidebar', 'prepare"').ok).toBe(true);
    const panel = host.takePanel?.('teacher');
    expect(panel?.kind).toBe('sidebar');
    expect(panel?.title).toBe('Labrow');
    expect(panel?.html).toBe(page.replace('<body>', '<body data-page="sidebar" data-about="prepare&#34;">'));
  });

  it('refuses a page that nobody knows, in three parts', () => {
    const outcome = call(host, 'openPage', 'wages' as 'labels');
    expect(outcome.ok ? '' : outcome.problem.message).toMatch(/^There is no page called “wages”\. .+\.$/);
  });
});

/*
 * Four teams of the same invented numbers: KBr, 0.300 mol/L in 200 mL, 7.1401 g each (119.002 g/mol).
 * 4 × 7.1401 = 28.5605 → 28.57 g; × 1.10 = 31.4166 → 31.42 g.
 */
describe('preparation from the Plan', () => {
  it('tells the teacher where the hazards come from and how old the data is', () => {
    const { sections } = answerOf(call(host, 'readPreparation'));
    const rows = sections
      .filter(({ name }) => ['cautions', 'sources'].includes(name))
      .flatMap((section) => section.rows);
    expect(rows.map(({ note }) => note).join(' ')).toContain('(two sources agree)');
    expect(rows.find(({ what }) => what === 'potassium bromide: sources')?.note).toMatch(/^Sources: /);
    expect(rows[rows.length - 1]).toMatchObject({
      what: 'hazard data',
      note: expect.stringContaining('CLP Annex VI as of 2026-07-01'),
    });
    // What everyone may open says none of it.
    expect(call(host, 'writePrepareSheet').ok).toBe(true);
    expect(column('Prepare', 6).join(' ')).not.toMatch(/Sources: |sources agree|from memory/);
  });

  it('is worked out for the sidebar and writes nothing', () => {
    const before = workbookText(host);
    const view = answerOf(call(host, 'readPreparation'));
    const solids = view.sections.find(({ name }) => name === 'solids');
    expect(solids?.rows[0]).toMatchObject({ what: 'KBr, solid', amount: 28.57, withSpare: 31.42, unit: 'g' });
    expect(view.labels).toHaveLength(1 + 4 * 2);
    expect(view.periods).toHaveLength(2);
    expect(view.date).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(workbookText(host)).toBe(before);
  });

  it('follows the Plan at once, spare included', () => {
    const [row, given] = stockCell('c1-t1');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.600']] });
    const view = answerOf(call(host, 'readPreparation'));
    // 28.5605 + 7.1401 = 35.7006 → 35.71 g
    expect(view.sections.find(({ name }) => name === 'solids')?.rows[0]?.amount).toBe(35.71);
  });

  it('stands in the Prepare sheet as plain text and numbers', () => {
    const row = rowOf('Prepare', 'KBr, solid');
    expect(row).toBeGreaterThan(5);
    expect(valueAt(host, { sheet: 'Prepare', row, column: 3 })).toBe('');
    // 31.42 g with spare
    expect(valueAt(host, { sheet: 'Prepare', row, column: 4 })).toBe('40');
    expect(column('Prepare', 6).join(' ')).toContain('Local rules decide');
  });

  it('says plainly when the Plan is no longer the one it was written from, and not before', () => {
    const line = () => valueAt(host, { sheet: 'Prepare', row: 2, column: 1 });
    const sheet = () => answerOf(call(host, 'readPreparation')).sheet;
    expect([line(), sheet()]).toEqual(['Up to date with the Plan.', 'up to date']);
    const [row, given] = stockCell('c1-t1');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.450']] });
    expect(line()).toMatch(/^⚠ The Plan has changed/);
    expect(sheet()).toBe('out of date');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.300']] });
    expect(sheet()).toBe('up to date');
    // A change of case alone is another formula.
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, 4, 'KBR']] });
    expect(sheet()).toBe('out of date');
  });

  it('does not take a mark about today, or a note beside the Plan, for a change', () => {
    answerOf(call(host, 'setAbsent', 'c1-t1', true));
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[2, 9, 'mine']] });
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('up to date');
  });

  it('is brought up to the Plan without a look away from what is in view, and nothing else is touched', () => {
    const [row, given] = stockCell('c1-t1');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.900']] });
    answerOf(call(host, 'goToTeam', 'Fern class', 'c1-t1'));
    const others = () =>
      workbookText(host)
        .split('\n\n')
        .filter((sheet) => !sheet.includes('"name":"Prepare"'));
    const before = others();
    answerOf(call(host, 'writePrepareSheet', true));
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('up to date');
    // 3 × 7.1401 + 21.4203 = 42.8406 → 47.13 g with spare
    expect(valueAt(host, { sheet: 'Prepare', row: rowOf('Prepare', 'KBr, solid'), column: 4 })).toBe('50');
    expect(others()).toEqual(before);
    const view = host.view('teacher');
    expect(view.sheets.find(({ id }) => id === view.activeSheet)?.name).toBe('Fern class');
  });

  it('goes by a line that somebody adds to the Plan by hand, and by a number in a cell that is no text', () => {
    const [row] = stockCell('c2-t1');
    typeIn(host, {
      sheet: 'Plan',
      seat: 'teacher',
      cells: ['late', 'Moss class', 'Newcomer', 'KBr', '0.300', '200', '0.120', '50', 'Br-'].map(
        (text, index) => [row + 1, index + 1, text] as const,
      ),
    });
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('out of date');
    host.book.decorate(sheetState(host, 'Plan'), row, 5, ({ format: _, ...cell }) => cell);
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, 5, '0.45']] });
    answerOf(call(host, 'writePrepareSheet', true));
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('up to date');
  });

  it('has no sheet to go by in a file where it was removed', () => {
    host.book.removeSheet(sheetState(host, 'Prepare'));
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('none');
    answerOf(call(host, 'writePrepareSheet'));
    expect(answerOf(call(host, 'readPreparation')).sheet).toBe('up to date');
  });

  it('is written again in place, longer or shorter, and never as another sheet', () => {
    const [row, given] = stockCell('c1-t1');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.900']] });
    const names = host.book.sheets.map(({ name }) => name);
    answerOf(call(host, 'writePrepareSheet'));
    expect(host.book.sheets.map(({ name }) => name)).toEqual(names);
    expect(valueAt(host, { sheet: 'Prepare', row: rowOf('Prepare', 'KBr, solid'), column: 4 })).toBe('50');
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[row, given, '0.300']] });
    answerOf(call(host, 'writePrepareSheet'));
    expect(valueAt(host, { sheet: 'Prepare', row: rowOf('Prepare', 'KBr, solid'), column: 4 })).toBe('40');
  });

  it('holds no answer of a team in the sheet: mass and stock volume stand in the sidebar only', () => {
    const key = answerOf(call(host, 'readKey'));
    const answers = key.teams.flatMap(({ lines }) =>
      lines.filter(({ title }) => /mass|moles/i.test(title)).map(({ answer }) => answer.replace('about ', '')),
    );
    expect(answers.length).toBeGreaterThan(0);
    const words = [2, 3, 4, 6].flatMap((number) => column('Prepare', number)).join(' | ');
    for (const answer of answers.filter((text) => text !== '')) expect(words).not.toContain(answer);
  });

  it('says what to do in a file without a lesson', () => {
    const empty = open();
    for (const name of ['readPreparation', 'readKey', 'readPaper', 'writePrepareSheet'] as const) {
      const outcome = call(empty, name);
      expect(outcome.ok ? '' : outcome.problem.message).toBe(`${noLesson.says} ${noLesson.advice}`);
    }
  });
});

describe('the key and the table on paper', () => {
  it('works out the key and writes nothing', () => {
    const before = workbookText(host);
    const { teams } = answerOf(call(host, 'readKey'));
    expect(teams.map(({ team }) => team)).toEqual(['Otter', 'Heron', 'Vole', 'Newt']);
    expect(teams[0]?.lines.find(({ title }) => title === 'Mass to weigh')?.answer).toBe('7.14');
    expect(workbookText(host)).toBe(before);
  });

  it('is written to a sheet only after a yes, as text, with the warning on top', () => {
    const before = workbookText(host);
    const refused = call(host, 'writeKeySheet', false);
    expect(refused.ok ? '' : refused.problem.message).toBe(`${keyUnconfirmed.says} ${keyUnconfirmed.advice}`);
    expect(workbookText(host)).toBe(before);
    const { name } = answerOf(call(host, 'writeKeySheet', true));
    expect(name).toMatch(/^Key \d{4}-/);
    expect(valueAt(host, { sheet: name, row: 1, column: 1 })).toContain('Everyone who can edit this file can read it');
    expect(column(name, 4)).toContain('7.14');
    const second = answerOf(call(host, 'writeKeySheet', true));
    expect(second.name).not.toBe(name);
    expect(sheetState(host, name)).toBeDefined();
  });

  it('goes into the empty sheet that a press has left when it stopped, and beside one that is a teacher’s own', () => {
    const { name: first } = answerOf(call(host, 'writeKeySheet', true));
    const next = `${first} 2`;
    host.book.addSheet(next);
    expect(answerOf(call(host, 'writeKeySheet', true)).name).toBe(next);
    host.book.addSheet(`${first} 3`);
    typeIn(host, { sheet: `${first} 3`, cells: [[1, 1, 'mine']] });
    const { name: third } = answerOf(call(host, 'writeKeySheet', true));
    expect(valueAt(host, { sheet: `${first} 3`, row: 1, column: 1 })).toBe('mine');
    expect(valueAt(host, { sheet: third, row: 1, column: 1 })).toContain('Everyone who can edit this file');
    // One key more, and none that stands is written over.
    const fourth = answerOf(call(host, 'writeKeySheet', true)).name;
    expect(new Set([first, next, `${first} 3`, third, fourth]).size).toBe(5);
  });

  it('puts no answer on paper', () => {
    const key = answerOf(call(host, 'readKey'));
    const paper = answerOf(call(host, 'readPaper'));
    const words = JSON.stringify(paper.teams.map(({ steps }) => steps.map(({ shown, title }) => [title, shown])));
    const masses = key.teams.flatMap(({ lines }) =>
      lines.filter(({ title }) => /^(Molar mass|Moles|Mass to)/.test(title)).map(({ answer }) => answer),
    );
    expect(masses.length).toBeGreaterThan(6);
    for (const answer of masses) expect(words).not.toContain(answer);
    expect(paper.teams[0]?.steps.find(({ kind }) => kind === 'ticked')?.shown).toContain(
      'This is no safety data sheet',
    );
    expect(paper.teams[0]?.steps.some(({ checkFigures }) => checkFigures.length > 0)).toBe(true);
  });
});
