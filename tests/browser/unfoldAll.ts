import type { FrameLocator, Page } from 'playwright-core';

/** Opens every fold of a view once it is drawn, so that what is below it can be reached. */
export async function unfoldAll(sidebar: Page | FrameLocator): Promise<void> {
  await sidebar.locator('main details').first().waitFor({ state: 'attached' });
  await sidebar.locator('main').evaluate((main) => {
    for (const fold of main.querySelectorAll('details')) fold.open = true;
  });
}
