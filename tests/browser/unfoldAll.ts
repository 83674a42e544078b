import type { FrameLocator, Page } from 'playwright-core';

/** Opens every fold of a view, so that what is below it can be reached. */
export const unfoldAll = (sidebar: Page | FrameLocator): Promise<void> =>
  sidebar.locator('main').evaluate((main) => {
    for (const fold of main.querySelectorAll('details')) fold.open = true;
  });
