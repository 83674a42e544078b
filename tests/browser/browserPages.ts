import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser } from '../../scripts/launchBrowser.ts';
import { bringFont } from './bringFont.ts';

interface OpenOptions extends BrowserContextOptions {
  /** What a page says on its console as an error and may say all the same. */
  readonly mayLog?: RegExp;
  /** What happens before the page is asked for: requests that are answered here, scripts that run first. */
  readonly before?: (page: Page, trouble: (text: string) => void) => Promise<void>;
}

export interface BrowserPages {
  /** Opens an address in a context of its own; it is there when it stands in the font of the tests. */
  open(address: string, options?: OpenOptions): Promise<Page>;
  /** Closes what is open, and hands back every error that a page met or logged. */
  close(): Promise<readonly string[]>;
}

/** Starts one browser for the tests of a file. */
export function browserPages(): BrowserPages {
  let browser: Browser;
  let troubles: string[] = [];
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser?.close());
  return {
    async open(address, { mayLog, before, ...options } = {}) {
      const context = await browser.newContext(options);
      await bringFont(context);
      const page = await context.newPage();
      // Ends what hangs, and decides nothing: a machine under load may take long over a step.
      page.setDefaultTimeout(60_000);
      page.on('pageerror', (error) => troubles.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error' && !mayLog?.test(message.text())) troubles.push(message.text());
      });
      await before?.(page, (text) => troubles.push(text));
      await page.goto(address);
      await page.evaluate(async () => {
        await document.fonts.ready;
      });
      return page;
    },
    async close() {
      for (const context of browser?.contexts() ?? []) await context.close();
      const met = troubles;
      troubles = [];
      return met;
    },
  };
}
