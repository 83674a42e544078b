import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { stop } from './prepare.mjs';

const places = [
  // The same engine without a desktop around it takes a third less of the processor.
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** Path of a Chromium-family browser on this machine; ends the run with one line where there is none. */
export function findBrowser() {
  const named = process.env.LABROW_BROWSER;
  const found = (named ? [named] : places).find((place) => existsSync(place));
  if (found) return found;
  return stop(
    named
      ? `LABROW_BROWSER names “${named}”, which is not there. Give the path of a Chromium.`
      : 'the browser tests need Chromium. On Debian or Ubuntu run “apt-get install chromium-headless-shell” (or “chromium”); elsewhere set LABROW_BROWSER to its path.',
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) findBrowser();
