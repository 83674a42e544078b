import type { Browser, FrameLocator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../scripts/preview/pageBundle.ts';
import { cell, launchBrowser, openSidebar, Preview, tab, typeInto } from './previewWindows.ts';

/** The files that ship, in two windows: the teacher's with the sidebar, a student's without. */
let browser: Browser;
let bundle: PageBundle;
let preview: Preview;
let teacher: Page;
let student: Page;
let sidebar: FrameLocator;

beforeAll(async () => {
  browser = await launchBrowser();
  bundle = await pageBundle();
});
afterAll(() => browser?.close());

beforeEach(async () => {
  preview = await Preview.open(browser, bundle, { name: 'An invented school' });
  teacher = await preview.window('teacher');
  student = await preview.window('student');
  sidebar = await openSidebar(teacher);
});
afterEach(() => preview.close());

const sheet = 'Second period';
const team = 'Pumice';
const shown = (page: Page, row: number, column: number) =>
  expect.poll(() => cell(page, row, column).textContent(), { timeout: 1000 });

describe('a lesson in two windows', { timeout: 120_000 }, () => {
  it('is built by the teacher, worked by a student, and follows the Plan', async () => {
    await sidebar.getByRole('button', { name: 'Build a sample class' }).click();
    await sidebar.getByText('The table is built').waitFor({ timeout: 60_000 });
    for (const name of ['Plan', sheet, 'Fourth period', 'Progress', 'Help']) await tab(teacher, name).waitFor();
    await tab(student, sheet).waitFor();

    // A student types a right value with its unit: the check stands beside it, in both windows, within a second.
    const row = preview.rowOf(sheet, team, 'molar mass');
    preview.host.resetCounts();
    await typeInto(student, { sheet, row, column: 2, text: '119.00 g/mol' });
    await shown(student, row, 4).toBe('on target');
    await tab(teacher, sheet).click();
    await shown(teacher, row, 4).toBe('on target');
    expect(preview.host.counts.functions.CHECKTEAM).toBe(1);

    // A volume left in millilitres is met by a question, never by the answer; the row after it follows.
    const moles = preview.rowOf(sheet, team, 'moles of solute');
    const [, volume, strength] =
      /Amount in ([\d.]+) mL of ([\d.]+) mol\/L/.exec(preview.textAt(sheet, moles, 1).replace(/\s+/g, ' ')) ?? [];
    const inMillilitres = (Number(volume) * Number(strength)).toPrecision(3);
    await typeInto(student, { sheet, row: moles, column: 2, text: inMillilitres });
    await shown(student, moles, 4).toBe('not yet');
    expect(await cell(student, moles, 5).textContent()).toMatch(/\?/);
    expect(await cell(student, moles, 5).textContent()).not.toContain(
      String((Number(volume) * Number(strength)) / 1000),
    );
    expect(preview.textAt(sheet, moles, 9)).toBe('1');

    // Right after all; then the teacher changes the number in the Plan, and every check of that team follows.
    const right = ((Number(volume) * Number(strength)) / 1000).toPrecision(3);
    await typeInto(student, { sheet, row: moles, column: 2, text: right });
    await shown(student, moles, 4).toBe('on target');
    const planned = preview.planned(sheet, team);
    await typeInto(teacher, {
      sheet: 'Plan',
      row: planned.row,
      column: planned.columnOf('stock molarity'),
      text: '0.911',
    });
    await expect.poll(() => preview.textAt(sheet, moles, 4), { timeout: 1000 }).toBe('not yet');
    await shown(student, moles, 1).toContain('0.911 mol/L');
    // What the student typed is still there, to the last figure.
    expect(preview.textAt(sheet, moles, 2)).toBe(right);
  });

  it('is planned from the teacher’s own numbers', async () => {
    await sidebar.getByLabel('Stock molarity').fill('0.250');
    await sidebar.getByRole('textbox', { name: 'Flask', exact: true }).fill('1/4 L');
    await sidebar.getByText('= 250 mL').first().waitFor();
    await sidebar.getByRole('button', { name: 'Build the table' }).click();
    await sidebar.getByText('The table is built').waitFor({ timeout: 60_000 });
    const plan = Object.values(preview.sheet('Plan').cells).map(({ text }) => text);
    expect(plan).toContain('0.250');
    expect(plan).not.toContain('0.25');
  });
});
