import type { Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../../src/preview/server/pageBundle.ts';
import { type PreviewServer, startServer } from '../../../src/preview/server/server.ts';
import type { StandIn } from '../../../src/preview/standin/openStandIn.ts';
import { browserPages } from '../../browser/browserPages.ts';
import { open as openHost, typeIn } from '../standin/script.ts';

const pages = browserPages();
let bundle: PageBundle;
let host: StandIn;
let server: PreviewServer;
beforeAll(async () => {
  bundle = await pageBundle();
});

/** Checks the rows of a block as a team's check does: what was typed, and whether it is ten. */
const checks = `
/** Checks a block. @customfunction */
function CHECKS(entries) {
  return entries.map(([entry], index) => index === 0 ? ['Check', 'Look at']
    : entry === '' ? ['', ''] : Number(entry) === 10 ? ['on target', 'Yes, ten.'] : ['not yet', 'Is it ten?']);
}`;
beforeEach(async () => {
  host = openHost(checks);
  typeIn(host, { A2: 'Basalt', A3: 'Molar mass', A4: 'Moles', B3: '10', D2: '=CHECKS(B2:B5)' });
  typeIn(host, { A12: 'Quartz', A13: 'Molar mass', A14: 'Moles', B13: '9', B14: '3', D12: '=CHECKS(B12:B15)' });
  host.book.addSheet('Other');
  server = await startServer({ host, bundle });
  return async () => {
    const troubles = await pages.close();
    await server.close();
    expect(troubles).toEqual([]);
  };
});

async function open(): Promise<Page> {
  const page = await pages.lend(`${server.url}/?seat=student`, {
    viewport: { width: 1280, height: 800 },
    // A window that cannot save is told so by the browser as well.
    mayLog: /Failed to load resource/,
  });
  await page.waitForSelector('[data-cell=A1]');
  return page;
}
const text = (page: Page, cell: string): Promise<string | null> => page.locator(`[data-cell=${cell}]`).textContent();
const focused = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.cell);
const toasted = (page: Page): Promise<string> =>
  page
    .locator('.toast')
    .textContent()
    .then((said) => said ?? '');
async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}
/** Everything that a screen reader is told, in order. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    for (const id of ['said', 'warned']) {
      const region = document.getElementById(id);
      if (!region) continue;
      new MutationObserver(() => {
        const now = region.textContent ?? '';
        if (now !== '') said.push(now);
      }).observe(region, { childList: true, characterData: true, subtree: true });
    }
  });
  return () => page.evaluate(() => (window as unknown as { said: string[] }).said);
}

describe('undo', () => {
  it('takes back what this window did, goes there and names the cell', async () => {
    const [one, two] = [await open(), await open()];
    await one.click('[data-cell=B4]');
    await one.keyboard.type('11');
    await one.keyboard.press('Enter');
    await expect.poll(() => text(two, 'B4')).toBe('11');
    await two.click('[data-cell=A20]');
    await two.keyboard.press('Control+z');
    await expect.poll(() => toasted(two)).toContain('There is nothing to undo.');
    expect(await text(one, 'B4')).toBe('11');
    await one.getByRole('tab', { name: 'Other' }).click();
    const heard = await listen(one);
    await one.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(heard).toContain('Undone in B4, which is empty now.');
    await expect.poll(() => focused(one)).toBe('B4');
    await expect.poll(() => text(two, 'B4')).toBe('');
  });
  it('leaves what another window typed over it, and says so', async () => {
    const [one, two] = [await open(), await open()];
    for (const [page, typed] of [
      [one, '11'],
      [two, '12'],
    ] as const) {
      await page.click('[data-cell=B4]');
      await page.keyboard.type(typed);
      await page.keyboard.press('Enter');
      await expect.poll(() => text(one, 'B4')).toBe(typed);
    }
    await one.keyboard.press('Control+z');
    await expect.poll(() => toasted(one)).toContain('changed meanwhile: B4');
    expect(await text(two, 'B4')).toBe('12');
  });
});

describe('a check', () => {
  it('is told once: title, check and what to look at', async () => {
    const page = await open();
    const heard = await listen(page);
    await page.click('[data-cell=B4]');
    await page.keyboard.type('10');
    await page.keyboard.press('Enter');
    await expect.poll(heard).toContain('Moles: on target. Yes, ten.');
    await page.click('[data-cell=B4]');
    await page.keyboard.type('10.0');
    await page.keyboard.press('Enter');
    await expect.poll(heard).toHaveLength(2);
    expect(await heard()).toEqual(['Moles: on target. Yes, ten.', 'Moles: on target. Yes, ten.']);
  });
  it('does not stand beside a new entry as if it were true', async () => {
    const page = await open();
    let letGo = (): void => {};
    const gate = new Promise<void>((settle) => {
      letGo = settle;
    });
    await page.route('**/api/type', async (route) => {
      await gate;
      await route.continue();
    });
    await page.click('[data-cell=B3]');
    await page.keyboard.type('9');
    await page.keyboard.press('Enter');
    const check = page.locator('[data-cell=D3]');
    await expect.poll(() => check.getAttribute('aria-busy')).toBe('true');
    expect(await check.textContent()).toContain('… working');
    expect(await check.locator('.text').isVisible()).toBe(false);
    expect(await page.locator('[data-cell=D4]').getAttribute('aria-busy')).toBeNull();
    letGo();
    await expect.poll(() => check.getAttribute('aria-busy')).toBeNull();
    expect(await text(page, 'D3')).toBe('not yet');
  });
  it('can be typed over after a warning, fails as on the host, and comes back', async () => {
    const page = await open();
    const block = async (): Promise<void> => {
      await page.click('[data-cell=D4]');
      await page.keyboard.type('x');
      await page.keyboard.press('Enter');
      const question = page.getByRole('dialog', { name: 'Change a cell of the table?' });
      expect(await question.textContent()).toContain('It belongs to Basalt. A formula fills it.');
      await question.getByRole('button', { name: 'Change it' }).click();
      await expect.poll(() => text(page, 'D2')).toBe('#REF!');
      await expect.poll(() => text(page, 'D3')).toBe('');
    };
    await block();
    expect(await page.locator('[data-cell=D2]').getAttribute('aria-description')).toContain(
      'Array result was not expanded because it would overwrite data in D4.',
    );
    expect(await toasted(page)).toContain('Undo, or clear D4, to have them back.');
    await page.locator('.toast').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => text(page, 'D3')).toBe('on target');
    await block();
    await page.click('[data-cell=D4]');
    await page.keyboard.press('Delete');
    await expect.poll(() => text(page, 'D3')).toBe('on target');
    expect(await text(page, 'D2')).toBe('Check');
  });
});

describe('a change of many cells', () => {
  it('says how many and whose, each time, and other windows hear of it', async () => {
    const filled = Object.fromEntries(Array.from({ length: 12 }, (_, index) => [`F${index + 2}`, 'x']));
    typeIn(host, filled);
    const [page, other] = [await open(), await open()];
    const clearAll = async (): Promise<void> => {
      await page.click('[data-cell=B4]');
      await press(page, 'Control+a', 'Delete');
      await page.getByRole('dialog', { name: /^Change \d+ cells\?$/ }).waitFor();
    };
    await clearAll();
    expect(await page.locator('dialog').textContent()).toContain('They belong to Basalt and Quartz.');
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await text(page, 'B13')).toBe('9');
    await clearAll();
    await page.getByRole('button', { name: 'Change it' }).click();
    await expect.poll(() => text(page, 'B13')).toBe('');
    await expect.poll(() => toasted(other)).toMatch(/Another window cleared \d+ cells here/);
    await page.keyboard.press('Control+z');
    await expect.poll(() => text(page, 'B13')).toBe('9');
    await clearAll();
  });
});

describe('an entry that could not be saved', () => {
  it('waits in the strip, takes no focus, and goes out by itself', async () => {
    const page = await open();
    await page.click('[data-cell=B4]');
    await page.keyboard.type('10');
    const { port } = server;
    await server.close();
    await page.keyboard.press('Enter');
    await page.locator('#strip').getByText('Not saved yet, Sheet1 B4: “10”').waitFor();
    expect(await page.locator('.cell-field').isVisible()).toBe(false);
    await page.click('[data-cell=B14]');
    await page.keyboard.type('0.02');
    server = await startServer({ host, bundle, port });
    await expect.poll(() => text(page, 'B4'), { timeout: 15_000 }).toBe('10');
    await page.keyboard.type('4');
    expect(await page.locator('.cell-field').inputValue()).toBe('0.024');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B14')).toBe('0.024');
    await expect.poll(() => page.locator('#strip').isHidden()).toBe(true);
  });
  it('says in every window that the workbook cannot be saved, until it can', async () => {
    const page = await open();
    server.setNotice('The disk is full.');
    await page.locator('#strip').getByText('The disk is full.').waitFor();
    const later = await open();
    await later.locator('#strip').getByText('The disk is full.').waitFor();
    server.setNotice(undefined);
    await expect.poll(() => page.locator('#strip').isHidden()).toBe(true);
  });
});

describe('habits of a sheet', () => {
  it('keeps a typed-over text and moves by all four arrows, but not in a text that is being changed', async () => {
    const page = await open();
    await page.click('[data-cell=H20]');
    for (const [key, at] of [
      ['ArrowRight', 'I20'],
      ['ArrowDown', 'I21'],
      ['ArrowLeft', 'H21'],
      ['ArrowUp', 'H20'],
    ] as const) {
      await page.keyboard.type('7');
      await page.keyboard.press(key);
      expect(await focused(page)).toBe(at);
    }
    await expect.poll(() => text(page, 'H21')).toBe('7');
    await press(page, 'F2', 'ArrowLeft', '5', 'Enter');
    await expect.poll(() => text(page, 'H20')).toBe('57');
  });
  it('selects a row and a column by Space and opens nothing', async () => {
    const page = await open();
    await page.click('[data-cell=B4]');
    await page.keyboard.press('Shift+Space');
    expect(await page.locator('.cell-field').isVisible()).toBe(false);
    expect(await page.locator('#cell-name').textContent()).toBe('A4:E4');
    await page.click('[data-cell=B4]');
    await page.keyboard.press('Control+Space');
    expect(await page.locator('#cell-name').textContent()).toMatch(/^B1:B1\d$/);
  });
  it('fills down by Ctrl+D and by the handle', async () => {
    const page = await open();
    await page.click('[data-cell=H6]');
    await page.keyboard.type('=ROW()*2');
    await press(page, 'Enter', 'ArrowUp', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Control+d');
    await expect.poll(() => text(page, 'H8')).toBe('16');
    await page.click('[data-cell=H8]');
    const handle = (await page.locator('.fill-handle').boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    const below = (await page.locator('[data-cell=H10]').boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
    await page.mouse.down();
    await page.mouse.move(below.x + 10, below.y + below.height / 2, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => text(page, 'H10')).toBe('20');
    expect(await text(page, 'H9')).toBe('18');
    expect(await page.locator('#cell-name').textContent()).toBe('H8:H10');
  });
  it('fills with and clears what was just typed, though that has not arrived yet', async () => {
    const page = await open();
    let arrive = () => {};
    const gate = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    await page.route('**/api/type', async (route) => {
      await gate;
      await route.continue();
    });
    await page.click('[data-cell=H7]');
    await page.keyboard.type('below');
    await press(page, 'Enter');
    await page.click('[data-cell=H6]');
    await page.keyboard.type('above');
    await press(page, 'Enter', 'ArrowUp', 'Shift+ArrowDown', 'Control+d');
    await page.click('[data-cell=H9]');
    await page.keyboard.type('gone again');
    await press(page, 'Enter', 'ArrowUp', 'Delete');
    arrive();
    await expect.poll(() => text(page, 'H7')).toBe('above');
    await expect.poll(() => text(page, 'H9')).toBe('');
    expect(await text(page, 'H6')).toBe('above');
    await page.unroute('**/api/type');
  });
  it('takes another column width by dragging, by the menu and back, in this window only', async () => {
    const [page, other] = [await open(), await open()];
    const width = async (of: Page): Promise<number> =>
      Math.round((await of.locator('[data-cell=C2]').boundingBox())?.width ?? 0);
    const before = await width(page);
    const grip = (await page.locator('th[data-column="3"] .width-grip').boundingBox()) ?? {
      x: 0,
      y: 0,
      width: 0,
      height: 0,
    };
    await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
    await page.mouse.down();
    await page.mouse.move(grip.x + grip.width / 2 + 60, grip.y + 5, { steps: 3 });
    await page.mouse.up();
    await expect.poll(() => width(page)).toBe(before + 60);
    expect(await width(other)).toBe(before);
    await page.reload();
    await page.waitForSelector('[data-cell=C2]');
    await expect.poll(() => width(page)).toBe(before + 60);
    await page.locator('th[data-column="3"] .width-grip').dblclick();
    await expect.poll(() => width(page)).toBe(before);
    await page.click('[data-cell=C2]');
    await page.keyboard.press('Shift+F10');
    await page.getByRole('menuitem', { name: 'Make column C wider' }).click();
    await expect.poll(() => width(page)).toBe(before + 40);
  });
  it('pastes past blank cells without asking about what they would cover', async () => {
    const page = await open();
    await page.click('[data-cell=C3]');
    await page.evaluate(() => {
      const data = new DataTransfer();
      data.setData('text/plain', 'a\t\nb\t');
      document.activeElement?.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
    });
    await expect.poll(() => text(page, 'C4')).toBe('b');
    expect(await page.locator('dialog').count()).toBe(0);
    await expect.poll(() => text(page, 'D3')).toBe('on target');
  });
  it('gives no anchor to an address that runs something', async () => {
    typeIn(host, { H3: '=HYPERLINK("javascript:alert(1)","here")', H4: '=HYPERLINK("#%E0","there")' });
    const page = await open();
    expect(await page.locator('[data-cell=H3] a').count()).toBe(0);
    expect(await text(page, 'H3')).toBe('here');
    await page.click('[data-cell=H4]', { position: { x: 80, y: 5 } });
    expect(await page.locator('#follow-link').isHidden()).toBe(true);
  });
});
