import type { BrowserContextOptions, Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type PageBundle, pageBundle } from '../../../src/preview/server/pageBundle.ts';
import { type PreviewServer, startServer } from '../../../src/preview/server/server.ts';
import { axeFaults } from '../../browser/axeFaults.ts';
import { browserPages } from '../../browser/browserPages.ts';
import { settled } from '../../browser/settled.ts';
import { themes } from '../../depth.ts';
import { FakeHost, type FakeSheet } from '../fakeHost.ts';

const lesson: FakeSheet = {
  name: 'Second period',
  rows: 60,
  columns: 12,
  view: {
    frozenRows: 1,
    frozenColumns: 1,
    columnWidths: [220, 100, 70, 120, 260, ...Array.from({ length: 7 }, () => 90)],
  },
  cells: {
    '1,1': { text: 'What to find', bold: true },
    '1,2': { text: 'Entry', bold: true },
    '2,1': { text: 'Moles of solute', guarded: 'warning', wrap: true },
    '2,2': { text: '64.0', background: '#ecf7f8' },
    '2,4': { text: '↻ not yet', input: '', spilled: true, background: '#fbebd2', color: '#744400' },
    '2,5': { text: 'What does “per litre” ask of your volume?', input: '', spilled: true, wrap: true },
    '3,1': { text: 'Mass of solute', guarded: 'warning' },
    '3,2': { text: '7616' },
    '3,6': { text: '0', options: ['0', '1', '2', '3'], note: 'How much help would you like?' },
    '4,1': { text: 'Find your team', link: '#gid=2&range=C9' },
    '5,1': {
      text: '#ERROR!',
      input: '=MOLARMASS("nacl")',
      error: 'Expected a formula with capital letters, received “nacl”.',
    },
    '6,1': { text: 'the key', guarded: 'locked' },
  },
};
const help = [
  {
    name: 'MOLES',
    summary: 'Amount.',
    arguments: [
      { name: 'formula', about: 'such as KBr', optional: false },
      { name: 'grams', about: 'mass (g)', optional: false },
    ],
  },
  {
    name: 'MOLARMASS',
    summary: 'Molar mass.',
    arguments: [{ name: 'formula', about: 'such as KBr', optional: false }],
  },
];

const pages = browserPages();
let bundle: PageBundle;
let host: FakeHost;
let server: PreviewServer;
beforeAll(async () => {
  bundle = await pageBundle();
});
beforeEach(async () => {
  host = new FakeHost([lesson, { name: 'Progress' }]);
  host.help = help;
  server = await startServer({ host, bundle });
  return async () => {
    const met = await pages.close();
    await server.close();
    expect(met).toEqual([]);
  };
});

async function open(
  seat: 'teacher' | 'student' = 'student',
  options: BrowserContextOptions = {},
  also = '',
): Promise<Page> {
  const address = `${server.url}/${seat === 'student' ? `?seat=student${also}` : ''}`;
  const { viewport, ...own } = options;
  const shown = { viewport: viewport ?? { width: 1280, height: 800 }, mayLog: /ERR_CONNECTION|ERR_INCOMPLETE|422/ };
  // Every server has an address of its own, so that nothing is kept there from an earlier test.
  const page = await (Object.keys(own).length > 0
    ? pages.open(address, { ...shown, ...own })
    : pages.lend(address, shown));
  await page.waitForSelector('[data-cell=A1]');
  return page;
}
const text = (page: Page, cell: string): Promise<string | null> => page.locator(`[data-cell=${cell}]`).textContent();
const focused = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.cell);
const heard = (page: Page): Promise<string> =>
  page.evaluate(
    () => `${document.getElementById('said')?.textContent} ${document.getElementById('warned')?.textContent}`,
  );
async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

describe('the grid', () => {
  it('is one grid with counted rows and one stop for Tab', async () => {
    const page = await open();
    const grid = page.locator('[role=grid]');
    expect(await grid.getAttribute('aria-rowcount')).toBe('61');
    expect(await grid.getAttribute('aria-colcount')).toBe('13');
    expect(await grid.locator('[tabindex="0"]').count()).toBe(1);
    expect(await page.locator('[data-cell=B2]').getAttribute('aria-colindex')).toBe('3');
    expect(await page.locator('tr', { has: page.locator('[data-cell=B2]') }).getAttribute('aria-rowindex')).toBe('3');
  });
  it('keeps what is typed and draws nothing anew where the tab of the sheet in view is pressed', async () => {
    const page = await open();
    const drawn = await page.locator('[data-cell=B3]').elementHandle();
    await page.click('[data-cell=B2]');
    await page.keyboard.type('65.0');
    await page.getByRole('tab', { name: 'Second period' }).click();
    await expect.poll(() => host.view().sheets[0]?.cells['2,2']?.text).toBe('65.0');
    expect(await drawn?.evaluate((cell) => cell.isConnected)).toBe(true);
    await page.getByRole('tab', { name: 'Progress' }).click();
    expect(await drawn?.evaluate((cell) => cell.isConnected)).toBe(false);
  });
  it('moves by keys and selects blocks', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    await press(page, 'ArrowRight', 'ArrowDown', 'Home');
    await expect.poll(() => focused(page)).toBe('A3');
    await press(page, 'Control+End');
    await expect.poll(() => focused(page)).toBe('F6');
    await press(page, 'Control+Home', 'PageDown');
    await expect.poll(async () => Number((await focused(page))?.slice(1))).toBeGreaterThan(10);
    await page.click('[data-cell=B2]');
    await press(page, 'Shift+ArrowDown', 'Shift+ArrowRight');
    expect(
      await page
        .locator('td[aria-selected=true]')
        .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.cell)),
    ).toEqual(['B2', 'C2', 'B3', 'C3']);
    await expect.poll(() => heard(page)).toContain('B2:C3, 2 by 2 cells');
  });
  it('goes past what is drawn at first', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    for (let count = 0; count < 57; count += 1) await page.keyboard.press('ArrowDown');
    await expect.poll(() => focused(page)).toBe('B59');
    await press(page, 'ArrowDown', 'ArrowDown', 'ArrowDown');
    await expect.poll(() => focused(page)).toBe('B60');
  });
  it('replaces by typing, changes by F2 and Enter, leaves by Escape, clears by Delete', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    await page.keyboard.type('0.0640');
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('B3');
    await expect.poll(() => text(page, 'B2')).toBe('0.0640');
    await press(page, 'F2', 'End', '5', 'Tab');
    await expect.poll(() => text(page, 'B3')).toBe('76165');
    await expect.poll(() => focused(page)).toBe('C3');
    await page.click('[data-cell=B3]');
    await page.keyboard.type('nonsense');
    await page.keyboard.press('Escape');
    await expect.poll(() => text(page, 'B3')).toBe('76165');
    await expect.poll(() => focused(page)).toBe('B3');
    await page.keyboard.press('Delete');
    await expect.poll(() => text(page, 'B3')).toBe('');
    await press(page, 'Control+z');
    await expect.poll(() => text(page, 'B3')).toBe('76165');
    await press(page, 'Control+y');
    await expect.poll(() => text(page, 'B3')).toBe('');
  });
  it('takes text in the line above the grid', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    await page.fill('#cell-text', '0.0650');
    await page.locator('#cell-text').press('Enter');
    await expect.poll(() => text(page, 'B2')).toBe('0.0650');
  });
  it('copies and pastes a block through the clipboard', async () => {
    const page = await open('student', { permissions: ['clipboard-read', 'clipboard-write'] });
    await page.click('[data-cell=A2]');
    await press(page, 'Shift+ArrowDown', 'Shift+ArrowRight', 'Control+c');
    await page.click('[data-cell=H20]');
    await press(page, 'Control+v');
    await expect.poll(() => text(page, 'I21')).toBe('7616');
    await expect.poll(() => text(page, 'H20')).toBe('Moles of solute');
  });
  it('shows one seat’s typing to the other, and leaves alone what is being typed', async () => {
    const [student, teacher] = [await open('student'), await open('teacher')];
    await student.click('[data-cell=B2]');
    await student.keyboard.type('12');
    await teacher.click('[data-cell=B2]');
    await teacher.keyboard.type('77');
    await teacher.keyboard.press('Enter');
    await student.getByText('Someone else typed “77” here meanwhile.').first().waitFor();
    await expect.poll(() => student.locator('.cell-field').inputValue()).toBe('12');
    await student.keyboard.press('Escape');
    await expect.poll(() => text(student, 'B2')).toBe('77');
  });
  it('goes along when rows are added above the cell being typed in', async () => {
    const [student, teacher] = [await open('student'), await open('teacher')];
    await student.click('[data-cell=B3]');
    await student.keyboard.type('mine');
    await teacher.click('[data-cell=B2]');
    await press(teacher, 'Shift+F10');
    await teacher.getByRole('menuitem', { name: 'Add a row above' }).click();
    await student.getByText('Your text now belongs to B4').first().waitFor();
    await student.keyboard.press('Enter');
    await expect.poll(() => text(teacher, 'B4')).toBe('mine');
  });
  it('gives refused text back with the reason', async () => {
    host.refuse = ({ text }) => (text === 'nine' ? 'Expected a number here.' : undefined);
    const page = await open();
    await page.click('[data-cell=B2]');
    await page.keyboard.type('nine');
    await page.keyboard.press('Enter');
    await page.locator('.field-message', { hasText: 'Expected a number here.' }).waitFor();
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('nine');
    await expect.poll(() => heard(page)).toContain('Expected a number here.');
  });
  it('keeps what was typed while the server is away, and saves it afterwards', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    const { port } = server;
    await server.close();
    await page.getByText('The preview is not answering. What you type is kept here').first().waitFor();
    await page.keyboard.type('0.0640');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('0.0640');
    server = await startServer({ host, bundle, port });
    await expect.poll(() => page.locator('#strip').isHidden()).toBe(true);
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('0.0640');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B2')).toBe('0.0640');
  });
  it('refuses a locked cell with a reason, and asks once before a guarded one', async () => {
    const page = await open();
    await page.click('[data-cell=A6]');
    await page.keyboard.type('x');
    await expect.poll(() => heard(page)).toContain('locked in this window');
    expect(await page.locator('[data-cell=A6]').getAttribute('aria-readonly')).toBe('true');
    expect(host.asked).toEqual([]);
    await page.click('[data-cell=A2]');
    await page.keyboard.type('Moles');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Leave it' }).click();
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('Moles');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Change it' }).click();
    await expect.poll(() => text(page, 'A2')).toBe('Moles');
    await page.click('[data-cell=A3]');
    await page.keyboard.type('Mass');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'A3')).toBe('Mass');
  });
  it('offers the choices of a cell by keys', async () => {
    const page = await open();
    await page.click('[data-cell=F3]');
    await press(page, 'Alt+ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowDown', 'Enter');
    await expect.poll(() => text(page, 'F3')).toBe('2');
    await expect.poll(() => focused(page)).toBe('F3');
  });
  it('offers what others typed in a column where its address asks for it, as the host may, and Enter takes it', async () => {
    const type = async (page: Page, cell: string, keys: string) => {
      await page.click(`[data-cell=${cell}]`);
      await page.keyboard.type(keys);
      await page.keyboard.press('Enter');
    };
    const page = await open('student', {}, '&offers');
    await type(page, 'B9', '6');
    await expect.poll(() => text(page, 'B9')).toBe('64.0');
    await type(page, 'B10', '65');
    await expect.poll(() => text(page, 'B10')).toBe('65');
    const other = await open();
    await type(other, 'B11', '6');
    await expect.poll(() => text(other, 'B11')).toBe('6');
  });
  it('helps with functions, completes a name by Tab and takes a cell by pointing', async () => {
    const page = await open();
    await page.click('[data-cell=H9]');
    await page.keyboard.type('=molar');
    await page.keyboard.press('Tab');
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('=MOLARMASS(');
    await page.keyboard.press('Escape');
    await page.keyboard.type('=MOLES("KBr",');
    expect(await page.locator('.signature mark').textContent()).toBe('grams');
    await page.click('[data-cell=B3]');
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('=MOLES("KBr",B3');
  });
  it('follows a link within the workbook', async () => {
    const page = await open();
    await page.click('[data-cell=B4]');
    await press(page, 'ArrowLeft', 'Control+Enter');
    await expect.poll(() => focused(page)).toBe('C9');
    expect(await page.getByRole('tab', { name: 'Progress' }).getAttribute('aria-selected')).toBe('true');
  });
  it.each([
    { width: 1280, at: 'C9' },
    { width: 390, at: 'C9' },
    { width: 390, at: 'A30' },
  ])('goes where a clicked link leads at $width px, its row first in view: $at', async ({ width, at }) => {
    host.set(1, 4, 1, { link: at === 'C9' ? '#gid=2&range=C9' : '#gid=1&range=A30' });
    const page = await open('student', { viewport: { width, height: 800 } });
    await page.click('[data-cell=B2]');
    const link = await page.locator('[data-cell=A4] a').boundingBox();
    if (!link) throw new Error('The link is not drawn.');
    await page.mouse.move(link.x + 20, link.y + link.height - 2);
    await page.mouse.down();
    // A hand holds a button down for a while; the grid must not move away under it.
    await settled(page);
    expect(await page.locator('[data-cell=A4] a').boundingBox()).toEqual(link);
    await page.mouse.up();
    await expect.poll(() => focused(page)).toBe(at);
    expect(await page.locator('td[aria-selected=true]').count()).toBe(1);
    const distance = await page.evaluate((cell) => {
      const top = document.querySelector(`[data-cell=${cell}]`)?.getBoundingClientRect().top ?? 0;
      return Math.round(top - (document.querySelector('thead')?.getBoundingClientRect().bottom ?? 0));
    }, at);
    expect(distance).toBe(0);
  });
  it('draws the row that a link leads to where the sheet is drawn in parts', async () => {
    host = new FakeHost([
      { name: 'Long', rows: 900, cells: { '1,1': { text: 'Last team', link: '#gid=1&range=A880' } } },
    ]);
    await server.close();
    server = await startServer({ host, bundle });
    const page = await open();
    expect(await page.locator('[data-cell=A880]').count()).toBe(0);
    await page.click('[data-cell=A1] a');
    await expect.poll(() => focused(page)).toBe('A880');
    const box = await page.locator('[data-cell=A880]').boundingBox();
    const sheet = await page.locator('#sheet').boundingBox();
    expect(box?.y).toBeLessThan((sheet?.y ?? 0) + (sheet?.height ?? 0) - 40);
    expect(await page.locator('[data-cell=A880]').isVisible()).toBe(true);
  });
  it('follows a link by Enter and by its button, and changes its cell by F2', async () => {
    const page = await open();
    await page.click('[data-cell=B4]');
    await press(page, 'ArrowLeft', 'Enter');
    await expect.poll(() => focused(page)).toBe('C9');
    await page.getByRole('tab', { name: 'Second period' }).click();
    await page.getByRole('button', { name: 'Go there' }).click();
    await expect.poll(() => focused(page)).toBe('C9');
    await page.getByRole('tab', { name: 'Second period' }).click();
    await page.click('[data-cell=B4]');
    await press(page, 'ArrowLeft', 'F2');
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('Find your team');
  });
  it('keeps what is being typed when a link is clicked', async () => {
    const page = await open();
    await page.click('[data-cell=B3]');
    await page.keyboard.type('0.5');
    await page.click('[data-cell=A4] a');
    await expect.poll(() => focused(page)).toBe('C9');
    await page.getByRole('tab', { name: 'Second period' }).click();
    await expect.poll(() => text(page, 'B3')).toBe('0.5');
  });
  it('asks once before guarded rows are removed, and undoes it by keys', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    const remove = async (): Promise<void> => {
      await page.getByRole('button', { name: 'Rows' }).click();
      await page.getByRole('menuitem', { name: 'Remove row 2' }).click();
    };
    await remove();
    await page.getByRole('button', { name: 'Leave them' }).click();
    expect(host.asked).toEqual([]);
    await expect.poll(() => focused(page)).toBe('B2');
    await remove();
    await page.getByRole('button', { name: 'Change them' }).click();
    await expect.poll(() => text(page, 'A2')).toBe('Mass of solute');
    await expect.poll(() => focused(page)).toBe('B2');
    await press(page, 'Control+z');
    await expect.poll(() => text(page, 'A2')).toBe('Moles of solute');
    await remove();
    await expect.poll(() => text(page, 'A2')).toBe('Mass of solute');
  });
  it('takes text from an input method in a cell that is only selected', async () => {
    const page = await open();
    const client = await page.context().newCDPSession(page);
    await page.click('[data-cell=B2]');
    for (const part of ['み', 'みず']) {
      await client.send('Input.imeSetComposition', {
        text: part,
        selectionStart: part.length,
        selectionEnd: part.length,
      });
    }
    await client.send('Input.insertText', { text: '水' });
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('水');
    await page.keyboard.type('!');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B2')).toBe('水!');
    await page.keyboard.insertText('µ');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B3')).toBe('µ');
    await page.click('[data-cell=D2]');
    await page.keyboard.insertText('x');
    await expect.poll(() => text(page, 'D2')).toBe('↻ not yet');
  });
  it('keeps what an input method holds when another cell is pressed', async () => {
    const page = await open();
    const client = await page.context().newCDPSession(page);
    await page.click('[data-cell=B2]');
    await client.send('Input.imeSetComposition', { text: 'みず', selectionStart: 2, selectionEnd: 2 });
    await page.click('[data-cell=C7]');
    await expect.poll(() => page.locator('.cell-field').inputValue()).toBe('みず');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B2')).toBe('みず');
  });
  it('ends text at its column where a hidden column follows', async () => {
    host = new FakeHost([
      {
        name: 'Narrow',
        columns: 8,
        view: { columnWidths: [100, 28, 28, 100, 100, 100, 100, 100], hiddenColumns: [3], frozenColumns: 1 },
        cells: {
          '2,2': { text: 'moles of solute' },
          '3,4': { text: 'a note kept to its own cell', clip: true },
          '2,4': { text: 'a note that runs on over the next columns' },
          '5,1': { text: 'what this table is for' },
          '5,3': { text: 'for the script' },
          '6,1': { text: 'what this column is for' },
          '6,4': { text: 'a word' },
        },
      },
    ]);
    await server.close();
    server = await startServer({ host, bundle });
    const page = await open();
    const right = async (selector: string): Promise<number> => {
      const box = await page.locator(selector).boundingBox();
      return (box?.x ?? 0) + (box?.width ?? 0);
    };
    expect(await right('[data-cell=B2] .text')).toBeLessThanOrEqual(await right('[data-cell=B2]'));
    expect(await right('[data-cell=D2] .text')).toBeGreaterThan(await right('[data-cell=D2]'));
    expect(await right('[data-cell=D3] .text')).toBeLessThanOrEqual(await right('[data-cell=D3]'));
    // A held column’s text runs on where nothing that is seen stands in its row.
    expect(await right('[data-cell=A5] .text')).toBeGreaterThan(await right('[data-cell=A5]'));
    expect(await right('[data-cell=A6] .text')).toBeLessThanOrEqual(await right('[data-cell=A6]'));
    // No line strikes through the text, and those beyond its end stay.
    const line = (cell: string): Promise<string> =>
      page.locator(`[data-cell=${cell}]`).evaluate((one) => getComputedStyle(one).borderRightColor);
    const [crossed, drawn] = [await line('D2'), await line('D3')];
    expect(crossed).toBe('rgba(0, 0, 0, 0)');
    expect(drawn).not.toBe(crossed);
    expect(await line('E2')).toBe(crossed);
    expect(await line('G2')).toBe(drawn);
    expect(await line('B2')).toBe(drawn);
    const shown = page.locator('[data-cell=B2] .text');
    expect(await shown.evaluate((one) => getComputedStyle(one).textOverflow)).toBe('ellipsis');
  });
  it('makes a row as high as wrapped text needs in its own column, and not for a hidden one', async () => {
    const long = 'Molarity after dilution, as the flask in your hands has it now';
    host = new FakeHost([
      {
        name: 'Progress',
        columns: 14,
        view: { columnWidths: Array.from({ length: 14 }, (_, index) => (index < 12 ? 92 : 400)), hiddenColumns: [12] },
        cells: {
          '2,13': { text: long, wrap: true },
          '3,12': { text: long, wrap: true },
          '4,11': { text: long, wrap: true },
        },
      },
    ]);
    await server.close();
    server = await startServer({ host, bundle });
    const page = await open();
    const height = async (cell: string): Promise<number> =>
      (await page.locator(`[data-cell=${cell}]`).boundingBox())?.height ?? 0;
    expect(await height('A2')).toBeLessThan(50);
    expect(await height('A3')).toBeLessThan(30);
    expect(await height('A4')).toBeGreaterThan(80);
  });
  it('says the message of an error first and the line of the script quietly', async () => {
    host.set(1, 5, 1, { error: 'Expected a formula with capital letters, received “nacl”. (line 1312)' });
    const page = await open();
    await page.click('[data-cell=A5]');
    for (const where of ['.cell-tip', '#cell-message']) {
      expect(await page.locator(where).textContent()).toMatch(/received “nacl”\. \(line 1312\)$/);
      const size = (selector: string): Promise<number> =>
        page.locator(selector).evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize));
      expect(await size(`${where} .script-line`)).toBeLessThan(await size(where));
    }
  });
  it('shows an error’s own message beside the cell, in the line above and to a screen reader', async () => {
    const page = await open();
    await page.click('[data-cell=A5]');
    const message = 'Expected a formula with capital letters, received “nacl”.';
    expect(await page.locator('.cell-tip').textContent()).toBe(message);
    expect(await page.locator('#cell-message').textContent()).toBe(message);
    expect(await page.locator('[data-cell=A5]').getAttribute('aria-description')).toBe(message);
    await page.keyboard.press('Escape');
    expect(await page.locator('.cell-tip').isHidden()).toBe(true);
  });
  it('says what a check tells about the row in hand', async () => {
    const page = await open();
    await page.click('[data-cell=B2]');
    await page.keyboard.type('0.0640');
    await page.keyboard.press('Enter');
    await expect.poll(() => text(page, 'B2')).toBe('0.0640');
    host.set(1, 2, 4, { text: '✓ on target' });
    await expect.poll(() => heard(page)).toContain('Moles of solute: ✓ on target.');
  });
  it('leaves the grid by F6 and by Tab at the edge', async () => {
    host.menuLines = [{ title: 'Labrow', items: [{ label: 'Open', run: 'open' }] }];
    const page = await open('teacher');
    await page.click('[data-cell=B2]');
    await page.keyboard.press('F6');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Labrow');
    await page.click('[data-cell=A1]');
    await page.keyboard.press('Shift+Tab');
    await expect.poll(() => focused(page)).toBeUndefined();
  });
});

describe('panels', () => {
  const html =
    '<!DOCTYPE html><html lang="en"><head><title>x</title></head><body><p id="said">…</p><script>' +
    'const say=(text)=>{document.getElementById("said").textContent=text};' +
    'const run=()=>google.script.run.withUserObject("mine").withFailureHandler((error)=>say("failed: "+error.message));' +
    '</script></body></html>';
  async function openPanel(kind: 'sidebar' | 'dialog'): Promise<Page> {
    host.menuLines = [{ title: 'Labrow', items: [{ label: 'Open', run: 'open' }] }];
    host.panel = { title: 'The class now', html, kind };
    const page = await open('teacher');
    await page.getByRole('button', { name: 'Labrow' }).click();
    await page.keyboard.press('Enter');
    await page.frameLocator('iframe').locator('#said').waitFor();
    return page;
  }
  it('opens a sidebar of 300 px that talks to the script, and closes it', async () => {
    host.answer = (name, args) => {
      if (name === 'fails') throw new Error('Expected a class.');
      return { name, args };
    };
    const page = await openPanel('sidebar');
    expect((await page.locator('#panel').boundingBox())?.width).toBe(300);
    const frame = page.frames()[1];
    if (!frame) throw new Error('no frame');
    const said = (): Promise<string | null> => frame.textContent('#said');
    await frame.evaluate('run().withSuccessHandler((value,own)=>say(JSON.stringify(value)+own)).ping([undefined,"µ"])');
    await expect.poll(said).toBe('{"name":"ping","args":[[null,"µ"]]}mine');
    await frame.evaluate('run().fails()');
    await expect.poll(said).toBe('failed: Expected a class.');
    await frame.evaluate('try{run().ping(new Date())}catch(error){say(error.message)}');
    expect(await said()).toContain('received a Date at argument 1 of ping');
    expect(await frame.evaluate('let seen="shut";try{seen=parent.document.title}catch{};seen')).toBe('shut');
    await frame.evaluate('google.script.host.close()');
    await expect.poll(() => page.locator('#panel').isHidden()).toBe(true);
  });
  it('runs at most ten calls at once and loses none', async () => {
    const page = await openPanel('sidebar');
    const frame = page.frames()[1];
    host.answer = (_name, args) => args[0];
    await frame?.evaluate(
      'let sum=0;for(let i=1;i<=25;i++)run().withSuccessHandler((value)=>{sum+=value;say(String(sum))}).add(i)',
    );
    await expect.poll(() => frame?.textContent('#said')).toBe('325');
  });
  it('takes no orders from anything but its panel', async () => {
    const page = await openPanel('sidebar');
    await page.evaluate(() => window.postMessage({ labrow: 'run', id: 1, name: 'erase', args: [] }, '*'));
    await page.evaluate(() => window.postMessage({ labrow: 'close' }, '*'));
    // What the panel itself asks comes after both, and is answered.
    await page.frames()[1]?.evaluate('run().withSuccessHandler(()=>say("answered")).ping()');
    await expect.poll(() => page.frames()[1]?.textContent('#said')).toBe('answered');
    expect(host.asked.map(({ what }) => what)).not.toContain('erase');
    expect(await page.locator('#panel').isVisible()).toBe(true);
  });
  it('goes where the script says without taking the focus from the panel', async () => {
    const page = await openPanel('sidebar');
    await page.frames()[1]?.evaluate('document.body.tabIndex=-1;document.body.focus()');
    host.say({ activate: { seat: 'teacher', sheet: 2, row: 7, column: 3 } });
    await expect.poll(() => page.locator('[data-cell=C7].active').count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('IFRAME');
    await page.frames()[1]?.evaluate('google.script.host.editor.focus()');
    await expect.poll(() => focused(page)).toBe('C7');
  });
  it('opens a dialog that Escape closes', async () => {
    const page = await openPanel('dialog');
    await page.getByRole('dialog', { name: 'The class now' }).getByRole('button', { name: 'Close' }).focus();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
  });
});

describe('the page', () => {
  const looks = [1280, 390].flatMap((width, index) => themes(index).map((dark) => ({ width, dark })));
  it.each(looks)(
    'has no accessibility fault that axe knows and no overflow at $width px, dark: $dark',
    async ({ width, dark }) => {
      const colorScheme = dark ? 'dark' : 'light';
      host.menuLines = [{ title: 'Labrow', items: [{ label: 'Open', run: 'open' }] }];
      const page = await open('teacher', { viewport: { width, height: 800 }, colorScheme });
      expect(await axeFaults(page)).toEqual([]);
      await page.click('[data-cell=A5]');
      expect(await axeFaults(page)).toEqual([]);
      await page.click('[data-cell=B9]');
      await page.keyboard.type('=MOLES(');
      expect(await axeFaults(page)).toEqual([]);
      await press(page, 'Escape', 'Shift+F10');
      expect(await axeFaults(page)).toEqual([]);
      await page.keyboard.press('Escape');
      // A guarded cell fills the line under the field, a wide sheet its frame.
      await page.click('[data-cell=A2]');
      const beyond = await page.evaluate(() =>
        [...document.querySelectorAll('body, .top, .tabs, #desk, #sheet, #cell-text, #cell-message')]
          .filter((part) => part.getBoundingClientRect().right > window.innerWidth)
          .map((part) => part.id || part.className),
      );
      expect(beyond).toEqual([]);
    },
  );
  it('can be used with a finger at 390 px', async () => {
    const page = await open('student', { viewport: { width: 390, height: 800 }, hasTouch: true, isMobile: true });
    await page.tap('[data-cell=B2]');
    await page.tap('[data-cell=B2]');
    await expect.poll(() => page.locator('.cell-field').isVisible()).toBe(true);
    await page.locator('.cell-field').fill('0.0640');
    await page.tap('[data-cell=B3]');
    await expect.poll(() => text(page, 'B2')).toBe('0.0640');
  });
});
