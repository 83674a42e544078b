import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { tenCells } from '../../src/desk/selfCheck/probes/tries.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { classColumns } from '../../src/workbook/layout.ts';
import { browserPages } from '../browser/browserPages.ts';
import { builtText } from '../builtText.ts';
import { scratchOf } from '../desk/tryOut.ts';
import { buildSetup, open as openHost } from '../host/bench.ts';
import { workbookText } from '../host/cells.ts';
import { setup } from '../host/setup.ts';
import { accessibilityFaults, sidewaysScroll } from './browser.ts';

/*
 * The self-check’s page as it ships, over the script as it ships, answered by the stand-in.
 */
const pages = browserPages();
afterEach(async () => {
  expect(await pages.close()).toEqual([]);
});
const html = (await builtText('dist/Sidebar.html')).replace(
  '<body>',
  '<body data-page="sidebar" data-about="self-check">',
);

interface Bridged {
  bridge(name: string, args: unknown[]): Promise<unknown>;
  google: unknown;
}

const openFor = (host: StandIn, seat: 'teacher' | 'student'): Promise<Page> =>
  pages.open('http://sidebar.test/', {
    viewport: { width: 300, height: 760 },
    before: async (page) => {
      await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html; charset=utf-8', body: html }));
      await page.exposeFunction('bridge', (name: string, args: unknown[]) => host.run(seat, name, args));
      await page.addInitScript(() => {
        const frame = window as unknown as Bridged;
        type Handler = (value: unknown) => void;
        const runner = (success?: Handler, failure?: Handler): unknown =>
          new Proxy(
            {},
            {
              get(_, name: string) {
                if (name === 'withSuccessHandler') return (handler: Handler) => runner(handler, failure);
                if (name === 'withFailureHandler') return (handler: Handler) => runner(success, handler);
                return (...args: unknown[]) => void frame.bridge(name, args).then(success, failure);
              },
            },
          );
        frame.google = { script: { run: runner() } };
      });
    },
  });

const say = texts.selfCheck;
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const reportOf = (page: Page) => page.getByLabel(say.report).inputValue();

describe('the page of the self-check', () => {
  it('goes from its first word to a report, from a student’s account', async () => {
    const host = openHost();
    buildSetup(host, setup);
    const before = workbookText(host);
    const page = await openFor(host, 'student');
    await page.getByText(say.about[0]).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByLabel(say.roles.student).check();
    await press(page, say.start);
    await page.getByText(say.type(tenCells)).waitFor();
    const sheet = scratchOf(host)?.id ?? -1;
    for (let row = 60; row < 70; row += 1)
      host.type('student', [{ sheet, row, column: classColumns.entry, text: `${row}` }]);
    await press(page, say.typed);
    await page.getByText(say.askAbout).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await sidewaysScroll(page)).toBe(0);
    const group = page.getByRole('group', { name: /did the sheet offer an entry/ });
    await group.getByLabel('yes').check();
    await press(page, say.finish);
    const report = await reportOf(page);
    expect(report).toContain('from a student’s account');
    expect(report).toContain('You were kept out, as students are to be.');
    expect(report).toContain('All 10 entries that you typed were counted.');
    expect(report).toContain('The sidebar is 300 wide.');
    expect(report).toMatch(/Offers while typing: different\. You answered: yes\./);
    expect(report).toMatch(/Not answered: The first question for consent, /);
    expect(await accessibilityFaults(page)).toEqual([]);
    // Nothing of the file is left changed.
    expect(workbookText(host)).toBe(before);
    await press(page, say.copy);
    await page.getByText(/Copied|The text is marked/).waitFor();
    expect(await reportOf(page)).toMatch(/Copying by a button: /);
  });
  it('goes on with its answers where a page over it has closed it', async () => {
    const host = openHost();
    const page = await openFor(host, 'teacher');
    await press(page, say.start);
    await press(page, say.notTyped);
    await page.getByText(say.askAbout).waitFor();
    await page.reload();
    await page.getByText(say.goOn).waitFor();
    await press(page, say.finish);
    expect(await reportOf(page)).toContain('All 15 formulas tried gave what they should.');
    expect(scratchOf(host)).toBeUndefined();
  });
});
