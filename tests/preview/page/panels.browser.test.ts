import { beforeAll, beforeEach, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../../src/preview/server/pageBundle.ts';
import { type PreviewServer, startServer } from '../../../src/preview/server/server.ts';
import { browserPages } from '../../browser/browserPages.ts';
import { open as openHost } from '../standin/script.ts';

const pages = browserPages();
let bundle: PageBundle;
let server: PreviewServer;
let host: ReturnType<typeof openHost>;
beforeAll(async () => {
  bundle = await pageBundle();
});

/** A sidebar with a way to a page over it, and that page with a way back; each says how often it was loaded. */
const script = `
function page(name, button, call) {
  return '<!DOCTYPE html><p>' + name + '</p><output>' + inFront() + '</output>' +
    '<button onclick="google.script.run.withSuccessHandler((it) => { document.querySelector(\\'output\\').textContent = it; }).inFront()">Which</button><input aria-label="' + name + ' note">' +
    '<button onclick="google.script.run.withSuccessHandler(() => {}).' + call + '()">' + button + '</button>' +
    '<button onclick="google.script.run.withSuccessHandler(() => google.script.host.close()).' + call + '()">' + button + ' and close</button>';
}
function inFront() {
  return SpreadsheetApp.getActiveSheet().getName();
}
function openPanel() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutput(page('Beside', 'Over', 'openOver')).setTitle('Beside'));
}
function openOver() {
  SpreadsheetApp.getUi().showModalDialog(HtmlService.createHtmlOutput(page('Above', 'Back', 'openPanel')), 'Above');
}
`;

beforeEach(async () => {
  host = openHost(script);
  server = await startServer({ host, bundle });
  return async () => {
    const troubles = await pages.close();
    await server.close();
    expect(troubles).toEqual([]);
  };
});

it('keeps the sidebar alive under a page, and the page open until it closes itself', async () => {
  const page = await pages.open(`${server.url}/`, { viewport: { width: 1280, height: 800 } });
  await page.waitForSelector('[data-cell=A1]');
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('menuitem', { name: 'Open' }).click();
  const beside = page.frameLocator('#panel iframe');
  const above = page.frameLocator('dialog iframe');
  await beside.getByLabel('Beside note').fill('half typed');
  await beside.getByRole('button', { name: 'Over', exact: true }).click();
  await above.getByText('Above').waitFor();
  // It goes on underneath, with what was typed in it.
  expect(await beside.getByLabel('Beside note').inputValue()).toBe('half typed');
  // A page that goes back and does not close itself stays in the way, as on the host.
  await above.getByRole('button', { name: 'Back', exact: true }).click();
  await expect.poll(() => beside.getByLabel('Beside note').inputValue()).toBe('');
  expect(await page.locator('dialog iframe').count()).toBe(1);
  await above.getByRole('button', { name: 'Back and close' }).click();
  await expect.poll(() => page.locator('dialog').count()).toBe(0);
  expect(await page.locator('#panel iframe').count()).toBe(1);
  await beside.getByLabel('Beside note').fill('alive');
});

it('tells a script which sheet its window has in front, from the menu and from a panel', async () => {
  host.book.addSheet('Second');
  host.tick();
  const page = await pages.open(`${server.url}/`, { viewport: { width: 1280, height: 800 } });
  await page.waitForSelector('[data-cell=A1]');
  const tab = (name: string) => page.getByRole('tab', { name, exact: true });
  await tab('Second').click();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('menuitem', { name: 'Open' }).click();
  const beside = page.frameLocator('#panel iframe');
  await expect.poll(() => beside.locator('output').textContent()).toBe('Second');
  await tab('Sheet1').click();
  await beside.getByRole('button', { name: 'Which' }).click();
  await expect.poll(() => beside.locator('output').textContent()).toBe('Sheet1');
});
