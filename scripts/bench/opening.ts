// `tsx scripts/bench/opening.ts [other.html …]`: from opening the sidebar to the class now, beside other builds of the page, each opened in turn.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { openStandIn, type StandIn } from '../../src/preview/standin/openStandIn.ts';
import { buildSample } from '../buildSample.ts';
import { launchBrowser } from '../launchBrowser.ts';

const dist = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist');
const rounds = 15;

/** In the page: a way to the script behind it, and the moment at which the first view stands. */
const inPage = `
const runner = (success, failure) => new Proxy({}, {
  get: (_, name) =>
    name === 'withSuccessHandler' ? (handler) => runner(handler, failure)
    : name === 'withFailureHandler' ? (handler) => runner(success, handler)
    : (...args) => void bridge(name, args).then(success, failure),
});
window.google = { script: { run: runner() } };
new MutationObserver(() => {
  if (document.querySelector('main > .class-now select')) window.shownAt ??= performance.now();
}).observe(document, { childList: true, subtree: true });`;

/** Milliseconds from the beginning of the page to its first view, over a script that answers at once. */
async function opened(browser: Browser, host: StandIn, html: string): Promise<number> {
  const page = await browser.newPage({ viewport: { width: 300, height: 760 } });
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html; charset=utf-8', body: html }));
  await page.exposeFunction('bridge', (name: string, args: unknown[]) => host.run('teacher', name, args));
  await page.addInitScript(inPage);
  await page.goto('http://sidebar.test/');
  const shown = await page.waitForFunction('window.shownAt');
  const ms = Number(await shown.jsonValue());
  await page.close();
  return ms;
}

const pages = [join(dist, 'Sidebar.html'), ...process.argv.slice(2)].map((path) => ({
  path,
  html: readFileSync(path, 'utf8'),
  times: [] as number[],
}));
const host = openStandIn({ code: readFileSync(join(dist, 'Code.js'), 'utf8'), sidebarHtml: '<p></p>' });
buildSample(host, () => {});
const browser = await launchBrowser();
// The first of all is warmer for none.
for (const { html } of pages) await opened(browser, host, html);
for (let round = 0; round < rounds; round += 1) {
  for (const { html, times } of pages) times.push(await opened(browser, host, html));
}
await browser.close();
for (const { path, html, times } of pages) {
  const sorted = times.sort((one, other) => one - other);
  const at = (share: number): string => (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(0);
  console.log(`${path}: ${html.length} characters; class now after ${at(0.5)} ms (half), ${at(0.1)} to ${at(0.9)} ms.`);
}
