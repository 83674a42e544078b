import { type Browser, chromium } from 'playwright-core';
import { findBrowser } from './findBrowser.mjs';

/** Starts a Chromium that asks the network for nothing of its own; ends the run with one line where there is none. */
export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: findBrowser(),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
