import { fileURLToPath } from 'node:url';
import type { Plugin } from 'esbuild';
import type { Page } from 'playwright-core';
import { afterEach, expect } from 'vitest';
import { sidebarHtml } from '../../scripts/build/sidebar.ts';
import { axeFaults } from '../browser/axeFaults.ts';
import { type BrowserPages, browserPages } from '../browser/browserPages.ts';
import { type FakeAnswer, type FakeAnswers, installFakeHost } from './fakeHost.ts';

const address = 'http://sidebar.test/';

export interface SidebarOptions {
  readonly answers: FakeAnswers;
  readonly delay?: number;
  /** Views look again behind what they show, as where that was read some time ago. */
  readonly stale?: boolean;
  readonly width?: number;
  readonly dark?: boolean;
  /** Time stands still but for what the test lets pass. */
  readonly clock?: boolean;
  /** As in a frame without an origin of its own, where storage is refused. */
  readonly withoutStorage?: boolean;
  /** Opened as a page to print or project, with what the sidebar handed over. */
  readonly opened?: { readonly page: string; readonly about?: string };
}

/**
 * Starts one browser for the tests of a file, and hands back what opens the built page over a fake host. After each test
 * its pages are closed; an error in one of them, or a request that one made, fails the test then.
 */
export function sidebarPages(): (options: SidebarOptions) => Promise<Page> {
  const pages = browserPages();
  afterEach(async () => {
    expect(await pages.close()).toEqual([]);
  });
  return (options) => openIn(pages, options);
}

/** The page with answers by name in place of the desk; everything else is the page as it ships. */
const overFakeDesk: Plugin = {
  name: 'fake desk',
  setup({ onResolve }) {
    const path = fileURLToPath(new URL('fakeDesk.ts', import.meta.url));
    onResolve({ filter: /\/askDesk\.ts$/ }, () => ({ path }));
  },
};
let html: Promise<string> | undefined;

/** Pages in which no time passes by itself. */
const standsStill = new WeakSet<Page>();

async function openIn(pages: BrowserPages, options: SidebarOptions): Promise<Page> {
  html ??= sidebarHtml({ plugins: [overFakeDesk] });
  const { opened, clock, withoutStorage } = options;
  const built = await html;
  const text = opened
    ? built.replace('<body>', `<body data-page="${opened.page}" data-about="${opened.about ?? ''}">`)
    : built;
  const viewport = { width: options.width ?? 300, height: 760 };
  const colorScheme = options.dark ? 'dark' : 'light';
  // What an earlier test kept is gone when its page is opened again; what this test keeps is there when it reloads.
  let loads = 0;
  const before = async (page: Page, trouble: (text: string) => void) => {
    await page.route('**/*', (route) => {
      if (route.request().url() === address) {
        loads += 1;
        const forget = loads === 1 && !withoutStorage ? 'localStorage.clear(); sessionStorage.clear();' : '';
        const sandbox = 'sandbox allow-scripts allow-forms';
        return route.fulfill({
          contentType: 'text/html; charset=utf-8',
          body: text.replace('<head>', () => `<head><script>${forget}${fakeHostScript(options)}</script>`),
          headers: withoutStorage ? { 'content-security-policy': sandbox } : {},
        });
      }
      if (!route.request().url().endsWith('/favicon.ico')) trouble(`asked the network for ${route.request().url()}`);
      return route.abort();
    });
    if (clock) {
      standsStill.add(page);
      // Installed time runs on until it is stopped, so it starts well before.
      await page.clock.install({ time: new Date('2026-03-02T09:42:00Z') });
      await page.clock.pauseAt(new Date('2026-03-02T10:42:00Z'));
    }
  };
  // A clock stays with its page, so such a page is used once.
  return clock || withoutStorage
    ? pages.open(address, { viewport, colorScheme, before })
    : pages.lend(address, { viewport, colorScheme, before });
}

/** Milliseconds before every answer: a test that goes by speed and not by what it sees fails where they come late. */
const late = Number(process.env.LABROW_LATE ?? 0);

const fakeHostScript = ({ answers, clock, delay = clock ? 0 : late, stale = false }: SidebarOptions): string =>
  `(${installFakeHost})(${JSON.stringify({ answers, delay, stale }).replaceAll('<', '\\u003c')});`;

interface FakeFrame {
  fake: {
    answers: Record<string, FakeAnswer[]>;
    calls: { name: string; args: unknown[] }[];
    delay: number;
    letGo: (() => void)[];
  };
}

export const callsOf = (page: Page) => page.evaluate(() => (window as unknown as FakeFrame).fake.calls);

export const answerNext = (page: Page, name: string, answers: readonly FakeAnswer[]) =>
  page.evaluate(
    ([called, given]) => {
      (window as unknown as FakeFrame).fake.answers[called] = [...given];
    },
    [name, answers] as const,
  );

/** Gives every answer that is held. */
export const letGo = (page: Page) =>
  page.evaluate(() => {
    for (const give of (window as unknown as FakeFrame).fake.letGo.splice(0)) give();
  });

const wcagAndGoodPractice = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Every rule that axe knows for WCAG 2.2 AA and good practice; returns what it finds wrong, with where. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  // What happens to lie half under the list of views, which stays at the top, would count as too small to press.
  await page.evaluate(() => window.scrollTo(0, 0));
  let looking = true;
  const found = axeFaults(page, wcagAndGoodPractice).finally(() => {
    looking = false;
  });
  // The rules wait for timers of no length, which must pass where time stands still.
  while (looking && standsStill.has(page)) await page.clock.runFor(1);
  return found;
}

/** How far the page can be scrolled sideways, in px. */
export const sidewaysScroll = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
