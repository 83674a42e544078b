import { readFileSync } from 'node:fs';
import { type Browser, chromium, type FrameLocator, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { findBrowser } from '../../scripts/findBrowser.mjs';
import { type PageBundle, pageBundle } from '../../scripts/preview/pageBundle.ts';
import { type PreviewServer, startServer } from '../../scripts/preview/server.ts';
import { openStandIn, type StandIn } from '../../scripts/preview/standin/openStandIn.ts';

/** The files that ship, in two windows: the teacher's with the sidebar, a student's without. */
let browser: Browser;
let bundle: PageBundle;
let host: StandIn;
let server: PreviewServer;
let teacher: Page;
let student: Page;
let failed: string[] = [];

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: findBrowser(),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  bundle = await pageBundle();
});
afterAll(() => browser?.close());

beforeEach(async () => {
  host = openStandIn({
    code: readFileSync('dist/Code.js', 'utf8'),
    sidebarHtml: readFileSync('dist/Sidebar.html', 'utf8'),
    name: 'An invented school',
  });
  server = await startServer({ host, bundle });
  failed = [];
  teacher = await open('/');
  student = await open('/?seat=student');
});
afterEach(async () => {
  await teacher.context().close();
  await student.context().close();
  await server.close();
  expect(failed).toEqual([]);
});

async function open(path: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  page.on('pageerror', (error) => failed.push(error.message));
  await page.goto(server.url + path);
  await page.getByRole('grid').waitFor();
  return page;
}

async function openSidebar(): Promise<FrameLocator> {
  await teacher
    .getByRole('button', { name: 'Labrow' })
    .or(teacher.getByRole('menuitem', { name: 'Labrow' }))
    .first()
    .click();
  await teacher.getByRole('menuitem', { name: 'Open the sidebar' }).click();
  return teacher.frameLocator('iframe');
}

const tab = (page: Page, name: string) => page.getByRole('tab', { name });
const cell = (page: Page, row: number, column: number) =>
  page.locator(`td[data-cell=${String.fromCharCode(64 + column)}${row}]`);

const sheetNamed = (name: string) => {
  const sheet = host.view('teacher').sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(`There is no sheet ${name}.`);
  return sheet;
};
const textAt = (name: string, row: number, column: number) => sheetNamed(name).cells[`${row},${column}`]?.text ?? '';

/** Row of a team's step in a class sheet, by the narrow columns that repeat both. */
function rowOf(className: string, team: string, step: string): number {
  const { cells, rows } = sheetNamed(className);
  const heading = Array.from({ length: rows }, (_, index) => index + 1).find(
    (row) => cells[`${row},1`]?.text === team && cells[`${row},11`]?.text && cells[`${row},2`]?.text,
  );
  if (heading === undefined) throw new Error(`${className} has no team ${team}.`);
  const found = Array.from({ length: 30 }, (_, index) => heading + index).find(
    (row) => cells[`${row},12`]?.text === step,
  );
  if (found === undefined) throw new Error(`${team} has no step ${step}.`);
  return found;
}

/** Goes to a cell by the team's link and the arrow keys, and types as a person does. */
async function typeInto(page: Page, className: string, row: number, column: number, text: string): Promise<void> {
  await tab(page, className).click();
  const target = cell(page, row, column);
  await target.scrollIntoViewIfNeeded();
  await target.click();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

describe('a lesson in two windows', { timeout: 120_000 }, () => {
  it('is built by the teacher, worked by a student, and follows the Plan', async () => {
    const sidebar = await openSidebar();
    await sidebar.getByRole('button', { name: 'Build a sample class' }).click();
    await sidebar.getByText('The table is built').waitFor({ timeout: 60_000 });
    for (const name of ['Plan', 'Second period', 'Fourth period', 'Progress', 'Help'])
      await tab(teacher, name).waitFor();
    await tab(student, 'Second period').waitFor();

    // A student types a right value with its unit: the check stands beside it, in both windows, within a second.
    const row = rowOf('Second period', 'Pumice', 'molar mass');
    host.resetCounts();
    await typeInto(student, 'Second period', row, 2, '119.00 g/mol');
    await expect.poll(() => cell(student, row, 4).textContent(), { timeout: 1000 }).toBe('on target');
    await tab(teacher, 'Second period').click();
    await expect.poll(() => cell(teacher, row, 4).textContent(), { timeout: 1000 }).toBe('on target');
    expect(host.counts.functions.CHECKTEAM).toBe(1);

    // A volume left in millilitres is met by a question, never by the answer; the row after it follows.
    const moles = rowOf('Second period', 'Pumice', 'moles of solute');
    const [, volume, strength] =
      /Amount in ([\d.]+) mL of ([\d.]+) mol\/L/.exec(textAt('Second period', moles, 1).replace(/\s+/g, ' ')) ?? [];
    const inMillilitres = (Number(volume) * Number(strength)).toPrecision(3);
    await typeInto(student, 'Second period', moles, 2, inMillilitres);
    await expect.poll(() => cell(student, moles, 4).textContent(), { timeout: 1000 }).toBe('not yet');
    expect(await cell(student, moles, 5).textContent()).toMatch(/\?/);
    expect(await cell(student, moles, 5).textContent()).not.toContain(
      String((Number(volume) * Number(strength)) / 1000),
    );
    expect(textAt('Second period', moles, 9)).toBe('1');

    // Right after all; then the teacher changes the number in the Plan, and every check of that team follows.
    const right = ((Number(volume) * Number(strength)) / 1000).toPrecision(3);
    await typeInto(student, 'Second period', moles, 2, right);
    await expect.poll(() => cell(student, moles, 4).textContent(), { timeout: 1000 }).toBe('on target');
    const { row: planRow, column: planColumn } = planCell('Second period', 'Pumice', 'stock molarity');
    await typeInto(teacher, 'Plan', planRow, planColumn, '0.911');
    await expect.poll(() => textAt('Second period', moles, 4), { timeout: 1000 }).toBe('not yet');
    await expect.poll(() => cell(student, moles, 1).textContent(), { timeout: 1000 }).toContain('0.911 mol/L');
    // What the student typed is still there, to the last figure.
    expect(textAt('Second period', moles, 2)).toBe(right);
  });

  it('is planned from the teacher’s own numbers', async () => {
    const sidebar = await openSidebar();
    await sidebar.getByLabel('Stock molarity').fill('0.250');
    await sidebar.getByRole('textbox', { name: 'Flask', exact: true }).fill('1/4 L');
    await sidebar.getByText('= 250 mL').first().waitFor();
    await sidebar.getByRole('button', { name: 'Build the table' }).click();
    await sidebar.getByText('The table is built').waitFor({ timeout: 60_000 });
    const plan = Object.values(sheetNamed('Plan').cells).map(({ text }) => text);
    expect(plan).toContain('0.250');
    expect(plan).not.toContain('0.25');
  });
});

/** Where a team's given stands in the Plan. */
function planCell(className: string, team: string, given: string): { row: number; column: number } {
  const { cells, rows, columns } = sheetNamed('Plan');
  const text = (row: number, column: number) => cells[`${row},${column}`]?.text ?? '';
  const all = Array.from({ length: rows }, (_, index) => index + 1);
  const heading = all.find((row) => text(row, 1) === 'key' || text(row, 1) === 'Key') ?? 0;
  const column = Array.from({ length: columns }, (_, index) => index + 1).find(
    (place) => text(heading, place) === given,
  );
  const row = all.find((place) => text(place, 2) === className && text(place, 3) === team);
  if (row === undefined || column === undefined) throw new Error(`The Plan has no ${given} for ${team}.`);
  return { row, column };
}
