import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser } from '../../scripts/launchBrowser.ts';
import { bringFont } from './bringFont.ts';

interface Before {
  /** What a page says on its console as an error and may say all the same. */
  readonly mayLog?: RegExp;
  /** What happens before the page is asked for: requests that are answered here, scripts that run first. */
  readonly before?: (page: Page, trouble: (text: string) => void) => Promise<void>;
}
interface OpenOptions extends BrowserContextOptions, Before {}
interface LendOptions extends Before {
  readonly viewport: { readonly width: number; readonly height: number };
  readonly colorScheme?: 'light' | 'dark';
}

export interface BrowserPages {
  /** Opens an address in a context of its own; it is there when it stands in the font of the tests. */
  open(address: string, options?: OpenOptions): Promise<Page>;
  /**
   * Opens an address in a page that an earlier test of the file has left, as new but for what its origin keeps: a
   * context of its own costs more than most tests. `before` may answer requests, and nothing else that would stay.
   */
  lend(address: string, options: LendOptions): Promise<Page>;
  /** Closes what is open, and hands back every error that a page met or logged. */
  close(): Promise<readonly string[]>;
}

/** Starts one browser for the tests of a file. */
export function browserPages(): BrowserPages {
  let browser: Browser;
  let troubles: string[] = [];
  const idle: Page[] = [];
  const lent = new Set<Page>();
  const allowed = new WeakMap<Page, RegExp>();
  /** Pages that still stand where an earlier test has left them: what they say there is nobody's. */
  const left = new WeakSet<Page>();
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser?.close());

  const troubleOn = (page: Page) => (text: string) => {
    if (!left.has(page)) troubles.push(text);
  };
  const newPage = async (options: BrowserContextOptions): Promise<Page> => {
    const context = await browser.newContext(options);
    await bringFont(context);
    const page = await context.newPage();
    // Ends what hangs, and decides nothing: a machine under load may take long over a step.
    page.setDefaultTimeout(60_000);
    const trouble = troubleOn(page);
    page.on('pageerror', (error) => trouble(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error' && !allowed.get(page)?.test(message.text())) trouble(message.text());
    });
    page.on('framenavigated', (frame) => {
      if (frame === page.mainFrame()) left.delete(page);
    });
    return page;
  };
  const show = async (page: Page, address: string, { mayLog, before }: Before): Promise<Page> => {
    if (mayLog) allowed.set(page, mayLog);
    else allowed.delete(page);
    await before?.(page, troubleOn(page));
    await page.goto(address);
    await page.evaluate(async () => {
      await document.fonts.ready;
    });
    return page;
  };
  const takeBack = async (page: Page): Promise<void> => {
    for (const other of page.context().pages()) if (other !== page) await other.close();
    await page.context().clearPermissions();
    await page.context().clearCookies();
    left.add(page);
    idle.push(page);
  };

  return {
    async open(address, { mayLog, before, ...options } = {}) {
      return show(await newPage(options), address, { ...(mayLog ? { mayLog } : {}), ...(before ? { before } : {}) });
    },
    async lend(address, { viewport, colorScheme = 'light', ...rest }) {
      const page = idle.pop() ?? (await newPage({ viewport }));
      lent.add(page);
      // What an earlier test answered is answered until its page goes, which is when this one comes.
      await page.unrouteAll({ behavior: 'ignoreErrors' });
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme, media: null, reducedMotion: null, forcedColors: null });
      // Nothing is under the pointer until a test puts it there.
      await page.mouse.move(-1, -1);
      return show(page, address, rest);
    },
    async close() {
      for (const page of lent) await takeBack(page);
      lent.clear();
      const waiting = new Set(idle.map((page) => page.context()));
      for (const context of browser?.contexts() ?? []) if (!waiting.has(context)) await context.close();
      const met = troubles;
      troubles = [];
      return met;
    },
  };
}
