// `npm run shots` takes the pictures of the README: the built script over the stand-in, with the invented sample class.
import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { startServer } from '../src/preview/server/server.ts';
import { openStandIn, type StandIn } from '../src/preview/standin/openStandIn.ts';
import { buildSample } from './buildSample.ts';
import { launchBrowser } from './launchBrowser.ts';
import { stop } from './prepare.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const folder = join(root, 'scripts', 'screenshots');
const largestPicture = 300_000;

function readBuilt(name: string): string {
  const path = join(root, 'dist', name);
  return existsSync(path) ? readFileSync(path, 'utf8') : stop(`dist/${name} is missing. Run “npm run build” first.`);
}

/** One team of the sample, the last, which has typed nothing. */
const shown = { className: 'Second period', team: 'Pumice' } as const;

/** Where the Plan has a team's numbers, found as people find them: by class, team and heading. */
function numberOf(host: StandIn, heading: string): number {
  const plan = host.view('teacher').sheets.find(({ name }) => name === 'Plan');
  const text = (row: number, column: number): string => plan?.cells[`${row},${column}`]?.text ?? '';
  const rows = Array.from({ length: plan?.rows ?? 0 }, (_, index) => index + 1);
  const headings = rows.find((row) => text(row, 1) === 'key' && text(row, 2) === 'class') ?? 0;
  const line = rows.find((row) => text(row, 2) === shown.className && text(row, 3) === shown.team) ?? 0;
  const column = Array.from({ length: plan?.columns ?? 0 }, (_, index) => index + 1).find(
    (one) => text(headings, one) === heading,
  );
  return Number(text(line, column ?? 0)) || stop(`The Plan has no ${heading} for ${shown.team}.`);
}

/**
 * An entry for each answer worth showing: a molar mass that is the sum of the atomic numbers, moles that are one off in
 * the last figure, and a mass that is right for that molar mass.
 */
function shownEntries(host: StandIn) {
  const atomicNumbers = 54;
  const moles = (numberOf(host, 'stock molarity') * numberOf(host, 'flask')) / 1000;
  const lastPlace = 10 ** (Math.floor(Math.log10(moles)) - 2);
  return [
    { step: 'molar mass', text: String(atomicNumbers), check: 'not yet' },
    { step: 'moles of solute', text: (moles + lastPlace).toPrecision(3), check: 'close' },
    { step: 'mass of solute', text: (moles * atomicNumbers).toPrecision(3), check: 'follows' },
    { step: 'cautions read', text: 'yes, KBr', check: 'on target' },
  ];
}
const columns = { entry: 3, check: 5, step: 13 };

/** Types the entries as a student does, and makes sure that each gets the answer it is there for. */
function typeEntries(host: StandIn): void {
  const sheetNow = () => host.view('student').sheets.find(({ name }) => name === shown.className);
  const textIn = (row: number, column: number): string => sheetNow()?.cells[`${row},${column}`]?.text ?? '';
  const rows = Array.from({ length: sheetNow()?.rows ?? 0 }, (_, index) => index + 1);
  const heading = rows.find(
    (row) =>
      textIn(row, 1) === shown.team && textIn(row, columns.step) === '' && textIn(row, columns.check) === 'Check',
  );
  const sheet = sheetNow();
  if (!sheet || heading === undefined)
    throw new Error(`The sample has no rows of ${shown.team} in ${shown.className}.`);
  const placed = shownEntries(host).map((entry) => {
    const row = rows.find((one) => one > heading && textIn(one, columns.step) === entry.step);
    return row === undefined ? stop(`${shown.team} has no row for ${entry.step}.`) : { ...entry, row };
  });
  const edits = placed.map(({ row, text }) => ({ sheet: sheet.id, row, column: columns.entry, text }));
  const [refused] = host.type('student', edits).refused;
  if (refused) stop(`“${refused.edit.text}” was refused: ${refused.reason}`);
  for (const { row, step, text, check } of placed) {
    const got = textIn(row, columns.check);
    if (got !== check) stop(`expected “${check}” for “${text}” in ${step}, received “${got}”.`);
  }
}

async function openWindow(browser: Browser, address: string, size: { width: number; height: number }): Promise<Page> {
  const context = await browser.newContext({ viewport: size, colorScheme: 'light', locale: 'en-US' });
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('tab', { name: shown.className }).click();
  await page.getByRole('link', { name: shown.team }).click();
  await page.locator('td.active', { hasText: shown.team }).waitFor();
  // On to the first entry: the line above the grid then shows what was typed.
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  return page;
}
async function take(page: Page, name: string): Promise<void> {
  const path = join(folder, name);
  await page.screenshot({ path, animations: 'disabled', caret: 'hide' });
  const { size } = statSync(path);
  if (size > largestPicture) stop(`${name} has ${size} bytes, more than ${largestPicture}.`);
  console.log(`labrow: scripts/screenshots/${name}, ${Math.round(size / 1000)} kB`);
}

mkdirSync(folder, { recursive: true });
const host = openStandIn({
  code: readBuilt('Code.js'),
  sidebarHtml: readBuilt('Sidebar.html'),
  name: 'Labrow: an invented school',
});
buildSample(host, () => {});
typeEntries(host);
const server = await startServer({ host });
const browser = await launchBrowser();
try {
  const teacher = await openWindow(browser, `${server.url}/`, { width: 1280, height: 800 });
  await teacher.getByRole('button', { name: 'Labrow' }).click();
  await teacher.getByRole('menuitem', { name: 'Open the sidebar' }).click();
  const sidebar = teacher.frameLocator('#panel iframe');
  await sidebar.getByRole('navigation').getByRole('button', { name: 'In class' }).click();
  await sidebar.getByText('Talk to first').first().waitFor();
  await take(teacher, 'class.png');
  const student = await openWindow(browser, `${server.url}/?seat=student`, { width: 1180, height: 1160 });
  await take(student, 'student.png');
} finally {
  await browser.close();
  await server.close();
}
