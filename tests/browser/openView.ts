import type { FrameLocator, Page } from 'playwright-core';
import { moments } from '../../src/sidebar/page/navigation.ts';
import { texts } from '../../src/sidebar/texts.ts';

/** Goes to a view by its name as a person does: to its moment of the day first, where another one is open. */
export async function openView(sidebar: Page | FrameLocator, name: string): Promise<void> {
  const moment = (Object.keys(moments) as (keyof typeof moments)[]).find((one) =>
    moments[one].some((view) => texts.views[view] === name),
  );
  if (moment === undefined) throw new Error(`No view is called ${name}.`);
  const navigation = sidebar.getByRole('navigation');
  const now = navigation.getByRole('button', { name: texts.moments[moment], exact: true });
  if ((await now.getAttribute('aria-current')) === null) await now.click();
  const view = navigation.getByRole('button', { name, exact: true });
  if ((await view.getAttribute('aria-current')) === null) await view.click();
}
