import type { FrameLocator, Page } from 'playwright-core';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../src/preview/server/pageBundle.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { browserPages } from '../browser/browserPages.ts';
import { openView } from '../browser/openView.ts';
import { cell, openSidebar, Preview, tab, typeInto } from './previewWindows.ts';

/** The files that ship, in two windows: the teacher's with the sidebar, a student's without. */
const pages = browserPages();
let bundle: PageBundle;
let preview: Preview;
let teacher: Page;
let student: Page;
let sidebar: FrameLocator;
/** The workbook of the sample class, as the first test that built it left it. */
let built: string | undefined;

beforeAll(async () => {
  bundle = await pageBundle();
});

afterEach(() => preview.close());

const sheet = 'Second period';
const team = 'Pumice';
const shown = (page: Page, row: number, column: number) => expect.poll(() => cell(page, row, column).textContent());

async function openWindows(saved?: string): Promise<void> {
  preview = await Preview.open(pages, bundle, {
    name: 'An invented school',
    ...(saved === undefined ? {} : { saved }),
  });
  [teacher, student] = await Promise.all([preview.window('teacher'), preview.window('student')]);
  sidebar = await openSidebar(teacher);
}
async function buildSample(): Promise<void> {
  await sidebar.getByRole('button', { name: 'Build a sample class' }).click();
  await sidebar.getByText('The table is built').waitFor();
  built = preview.host.save();
}
async function openSample(): Promise<void> {
  await openWindows(built);
  if (built === undefined) await buildSample();
}

/** Opens one of the teacher’s hidden sheets, as a press in the sidebar does. */
async function openTeachers(name: string): Promise<void> {
  await openView(sidebar, texts.views.sheets);
  await sidebar.getByRole('button', { name: texts.sheets.open(name), exact: true }).click();
  await tab(teacher, name).waitFor();
}

describe('a lesson in two windows', () => {
  beforeEach(() => openWindows());

  it('is built by the teacher, worked by a student, and follows the Plan', async () => {
    await buildSample();
    for (const page of [teacher, student]) {
      for (const name of [sheet, 'Fourth period', 'Poll', 'Progress']) await tab(page, name).waitFor();
      for (const name of ['Plan', 'Help', 'Prepare']) expect(await tab(page, name).count()).toBe(0);
    }

    // The link of a class opens its sheet for a student, whatever they had in front.
    await openView(sidebar, texts.views.sheets);
    await student.goto('about:blank');
    for (const name of ['Fourth period', sheet]) {
      const link = sidebar.getByLabel(texts.sheets.addressOf(name), { exact: true });
      await link.waitFor({ state: 'attached' });
      await student.goto(await link.inputValue());
      await expect.poll(() => tab(student, name).getAttribute('aria-selected')).toBe('true');
    }

    // A student types a right value with its unit: the check comes to stand beside it, in both windows.
    const row = preview.rowOf(sheet, team, 'molar mass');
    preview.host.resetCounts();
    await typeInto(student, { sheet, row, column: at.entry, text: '119.00 g/mol' });
    await shown(student, row, at.check).toBe('on target');
    await tab(teacher, sheet).click();
    await shown(teacher, row, at.check).toBe('on target');
    expect(preview.host.counts.functions.CHECKTEAM).toBe(1);

    // A volume left in millilitres is met by a question, never by the answer; the row after it follows.
    const moles = preview.rowOf(sheet, team, 'moles of solute');
    const [, volume, strength] =
      /Amount in ([\d.]+) mL of ([\d.]+) mol\/L/.exec(preview.textAt(sheet, moles, at.task).replace(/\s+/g, ' ')) ?? [];
    const inMillilitres = (Number(volume) * Number(strength)).toPrecision(3);
    await typeInto(student, { sheet, row: moles, column: at.entry, text: inMillilitres });
    await shown(student, moles, at.check).toBe('not yet');
    expect(await cell(student, moles, at.lookAt).textContent()).toMatch(/\?/);
    expect(await cell(student, moles, at.lookAt).textContent()).not.toContain(
      String((Number(volume) * Number(strength)) / 1000),
    );
    expect(preview.textAt(sheet, moles, at.tries)).toBe('1');

    // Right after all; then the teacher changes the number in the Plan, and every check of that team follows.
    const right = ((Number(volume) * Number(strength)) / 1000).toPrecision(3);
    await typeInto(student, { sheet, row: moles, column: at.entry, text: right });
    await shown(student, moles, at.check).toBe('on target');
    const planned = preview.planned(sheet, team);
    await openTeachers('Plan');
    await typeInto(teacher, {
      sheet: 'Plan',
      row: planned.row,
      column: planned.columnOf('stock molarity'),
      text: '0.911',
    });
    await expect.poll(() => preview.textAt(sheet, moles, at.check)).toBe('not yet');
    await shown(student, moles, at.task).toContain('0.911 mol/L');
    // What the student typed is still there, to the last figure.
    expect(preview.textAt(sheet, moles, at.entry)).toBe(right);
  });
});

/** Row of a step and level in the Help sheet. */
function helpRow(step: string, level: number): number {
  const { cells, rows } = preview.sheet('Help');
  const found = Array.from({ length: rows }, (_, index) => index + 1).find(
    (row) => cells[`${row},1`]?.text === step && cells[`${row},2`]?.text === String(level),
  );
  if (found === undefined) throw new Error(`Help has no line for ${step}, level ${level}.`);
  return found;
}
const helpLink = 4;
/** Everything in a window that could be followed. */
const addresses = (page: Page) =>
  page.locator('a[href]').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
const addressesInSidebar = () =>
  sidebar.locator('a[href]').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));

const notWeb = [
  'javascript:alert(1)',
  '  JaVaScRiPt:alert(1)',
  'data:text/html,<b>x</b>',
  ' DATA:text/html,x',
  'file:///etc/hosts',
  'File:///etc/hosts',
  'mailto:someone@school.test',
  ' MailTo:someone@school.test',
];
const web = ['https://school.test/hint?a=1', 'HTTP://school.test/other'];

describe('a link in Help', () => {
  beforeEach(openSample);

  it('is shown to a team only where it is a web address, and the teacher hears of every other', async () => {
    const steps = ['molar mass', 'moles of solute', 'mass of solute'];
    const lines = steps.flatMap((step) => [1, 2, 3].map((level) => ({ step, level })));
    const placed = notWeb.map((link, index) => ({ link, ...(lines[index] ?? { step: '', level: 0 }) }));
    const help = preview.sheet('Help').id;
    await openTeachers('Help');
    const [first, ...others] = placed;
    if (!first) throw new Error('There is nothing to try.');
    await typeInto(teacher, {
      sheet: 'Help',
      row: helpRow(first.step, first.level),
      column: helpLink,
      text: first.link,
    });
    const { refused } = preview.host.type(
      'teacher',
      others.map(({ link, step, level }) => ({ sheet: help, row: helpRow(step, level), column: helpLink, text: link })),
    );
    expect(refused).toEqual([]);

    await tab(student, sheet).click();
    for (const { link, step, level } of placed) {
      const row = preview.rowOf(sheet, team, step);
      expect(preview.textAt('Help', helpRow(step, level), helpLink).trim()).toBe(link.trim());
      preview.host.type('student', [{ sheet: preview.sheet(sheet).id, row, column: at.help, text: String(level) }]);
      const hint = cell(student, row, at.hint);
      await expect.poll(() => hint.textContent()).not.toBe('');
      expect(await hint.textContent()).not.toContain(link.trim());
      expect(await hint.locator('a').count()).toBe(0);
      // What stands in the Help sheet itself is text for its reader too.
      await tab(teacher, 'Help').click();
      expect(await cell(teacher, helpRow(step, level), helpLink).locator('a').count()).toBe(0);
    }
    for (const page of [teacher, student]) {
      for (const address of await addresses(page)) expect(address).toMatch(/^(?:#|https?:)/i);
    }
    // The Plan's view names each of them, as text.
    // The old page goes on answering until the new one is there.
    await sidebar.locator('body').evaluate((body) => {
      body.dataset.before = 'reload';
      window.location.reload();
    });
    await sidebar.locator('body:not([data-before]) nav').waitFor();
    await openView(sidebar, texts.views.plan);
    const told = sidebar.getByText(/a web address that begins with/);
    await expect.poll(() => told.count()).toBe(placed.length);
    expect(await addressesInSidebar()).toEqual([]);

    for (const [index, link] of web.entries()) {
      const { step, level } = lines[index] ?? { step: '', level: 0 };
      await typeInto(teacher, { sheet: 'Help', row: helpRow(step, level), column: helpLink, text: link });
      const row = preview.rowOf(sheet, team, step);
      preview.host.type('student', [{ sheet: preview.sheet(sheet).id, row, column: at.help, text: String(level) }]);
      await expect.poll(() => cell(student, row, at.hint).textContent()).toContain(link);
    }
  });
});

describe('an entry that is a formula', () => {
  beforeEach(openSample);

  it('is marked for the teacher alone, in the class now', async () => {
    const row = preview.rowOf(sheet, team, 'molar mass');
    const entry = { sheet, row, column: at.entry };
    // In a cell of plain text it stays what was typed, and is no number.
    await typeInto(student, { ...entry, text: '=100+19' });
    await expect.poll(() => preview.textAt(sheet, row, at.check)).toBe('unreadable');
    // Whoever makes the cell one for numbers, as pasting does, gets a formula.
    const state = preview.host.book.sheets.find(({ name }) => name === sheet);
    if (!state) throw new Error(`There is no sheet ${sheet}.`);
    preview.host.book.decorate(state, row, at.entry, (before) => ({
      ...before,
      format: { ...before.format, numberFormat: 'General' },
    }));
    await typeInto(student, { ...entry, text: '=238/2' });
    await expect.poll(() => cell(student, row, at.entry).textContent()).toBe('119');

    // A sidebar that finds a class shows it at once, as it was then.
    await openView(sidebar, texts.views.classNow);
    await sidebar.getByRole('button', { name: texts.classNow.lookAgain }).click();
    const line = sidebar.locator('.teams details', { has: sidebar.getByText(team, { exact: false }) });
    await line.locator('summary').click();
    await line.getByText(texts.classNow.isFormula).waitFor();
    expect(await line.getByText(texts.classNow.isFormula).count()).toBe(1);
    // Nobody else reads it: not the student's window, and no cell of the shared workbook.
    const everyCell = preview.host.view('student').sheets.flatMap(({ cells }) => Object.values(cells));
    expect(everyCell.filter(({ text }) => text.includes(texts.classNow.isFormula))).toEqual([]);
    expect(await student.getByText(texts.classNow.isFormula).count()).toBe(0);
  });
});
