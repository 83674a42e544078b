import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { browserPages } from '../browser/browserPages.ts';
import { openView } from '../browser/openView.ts';
import { unfoldAll } from '../browser/unfoldAll.ts';
import { builtText } from '../builtText.ts';
import { buildSetup, open as openHost, stepRow, typeIn } from '../host/bench.ts';
import { setup } from '../host/setup.ts';

/*
 * The page as it ships over the script as it ships: what it asks is counted, and answered by the stand-in.
 */
const address = 'http://sidebar.test/';
const sheet = 'Fern class';
let host: StandIn;
let page: Page;
const calls: string[] = [];
const pages = browserPages();

interface Bridged {
  bridge(name: string, args: unknown[]): Promise<unknown>;
  google: unknown;
}

beforeAll(async () => {
  host = openHost();
  buildSetup(host, setup);
  const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
  typeIn(host, { sheet, cells: [[row, 3, '64']] });
  const html = await builtText('dist/Sidebar.html');
  page = await pages.open(address, {
    viewport: { width: 300, height: 760 },
    before: (opened) => bridged(opened, html),
  });
}, 300_000);
afterAll(async () => {
  expect(await pages.close()).toEqual([]);
});

/** The page with a way to the script behind it, in place of the host's. */
async function bridged(page: Page, html: string): Promise<void> {
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html; charset=utf-8', body: html }));
  await page.exposeFunction('bridge', (name: string, args: unknown[]) => {
    calls.push(name);
    return host.run('teacher', name, args);
  });
  await page.addInitScript(() => {
    const frame = window as unknown as Bridged;
    type Handler = (value: unknown) => void;
    const legal = (value: unknown): boolean => {
      if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return true;
      if (Array.isArray(value)) return value.every(legal);
      return (
        typeof value === 'object' &&
        Object.getPrototypeOf(value) === Object.prototype &&
        Object.values(value).every(legal)
      );
    };
    const runner = (success?: Handler, failure?: Handler): unknown =>
      new Proxy(
        {},
        {
          get(_, name: string) {
            if (name === 'withSuccessHandler') return (handler: Handler) => runner(handler, failure);
            if (name === 'withFailureHandler') return (handler: Handler) => runner(success, handler);
            return (...args: unknown[]) => {
              if (!args.every(legal)) throw new Error(`${name} was given a value that may not cross to the host`);
              void frame.bridge(name, args).then(success, failure);
            };
          },
        },
      );
    frame.google = { script: { run: runner() } };
  });
  // The clock of the page stands still: nothing that was read grows old while the test looks at it.
  await page.clock.setFixedTime(new Date('2026-03-02T10:42:00Z'));
}

const view = (name: string) => openView(page, name);

describe('a sidebar that was opened', () => {
  it('has asked once, and shows every view from that', async () => {
    await page.getByText('Talk first to Otter').waitFor();
    expect(calls).toEqual(['readBook']);
    await view(texts.views.prepare);
    await page.getByText('KBr, solid').first().waitFor();
    await page.getByRole('button', { name: texts.prepare.keyShow }).click();
    await page.locator('.key-table').waitFor();
    await view(texts.views.particles);
    await page.locator('svg').first().waitFor();
    await view(texts.views.poll);
    await page.getByText('No answers yet.').waitFor();
    await view(texts.views.teams);
    await page.getByLabel('Otter is absent today').waitFor();
    await view(texts.views.record);
    await page.getByLabel('Present').waitFor();
    await view(texts.views.plan);
    await page.getByRole('button', { name: /^Build the table/ }).waitFor();
    await view(texts.views.classNow);
    await page.getByText('Talk first to Otter').waitFor();
    expect(calls).toEqual(['readBook']);
  });

  it('asks before typed cells are set aside, and builds after the yes that counts them', async () => {
    await view(texts.views.plan);
    await unfoldAll(page);
    await page.getByLabel(texts.plan.teamNames).first().fill('Heron');
    await page.getByRole('button', { name: /^Build the table/ }).click();
    const yes = page.getByRole('button', { name: texts.plan.typed.yes(1) });
    await yes.waitFor();
    expect(host.book.sheets.some(({ name }) => name.includes('kept'))).toBe(false);
    await yes.click();
    await page.getByRole('heading', { name: 'The table is built' }).waitFor();
    expect(host.book.sheets.some(({ name }) => name.startsWith('Fern class, kept'))).toBe(true);
    await page.getByRole('button', { name: texts.build.toClass }).click();
    await page.locator('summary', { hasText: 'Heron' }).waitFor();
  });

  it('says that the file is busy and keeps what was typed', async () => {
    await view(texts.views.plan);
    const back = page.getByRole('button', { name: texts.build.toPlan });
    if (await back.count()) await back.click();
    await unfoldAll(page);
    await page.getByLabel('Target molarity').fill('0.150');
    const sheets = () => host.book.sheets.map(({ name }) => name);
    const before = sheets();
    host.holdLock(true);
    await page.getByRole('button', { name: /^Build the table/ }).click();
    await page.getByText('Nothing was done.').waitFor();
    expect(await page.getByText('The table is built').count()).toBe(0);
    expect(sheets()).toEqual(before);
    host.holdLock(false);
    expect(await page.getByLabel('Target molarity').inputValue()).toBe('0.150');
    await page.getByRole('button', { name: texts.tryAgain }).click();
    await page.getByRole('heading', { name: 'The table is built' }).waitFor();
    // Now it stands in the file, and nothing is left to keep.
    await page.getByRole('button', { name: texts.build.toPlan }).click();
    expect(await page.getByLabel('Target molarity').inputValue()).toBe('0.150');
    expect(await page.getByText(texts.plan.draftKept).count()).toBe(0);
  });
});
