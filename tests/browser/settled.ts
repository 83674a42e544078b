import type { Page } from 'playwright-core';

/** Waits until whatever the page was asked to draw stands there: two frames, since the first may still lay it out. */
export const settled = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
      }),
  );
