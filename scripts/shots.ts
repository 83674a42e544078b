// `npm run shots` takes the pictures of the README: the built script over the stand-in, with the invented sample class.
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { startServer } from '../src/preview/server/server.ts';
import { launchBrowser } from './launchBrowser.ts';
import { stop } from './prepare.mjs';
import { drawnFrom, drawnFromFile } from './shots/drawnFrom.ts';
import { sampleAtWork, shown } from './shots/sampleAtWork.ts';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const folder = join(root, 'scripts', 'screenshots');
const largestPicture = 300_000;

function readBuilt(name: string): string {
  const path = join(root, 'dist', name);
  return existsSync(path) ? readFileSync(path, 'utf8') : stop(`dist/${name} is missing. Run “npm run build” first.`);
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
const files = { code: readBuilt('Code.js'), sidebarHtml: readBuilt('Sidebar.html') };
const host = sampleAtWork(files);
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
writeFileSync(join(folder, drawnFromFile), `${JSON.stringify(drawnFrom(files), null, 2)}\n`);
