import jsQR from 'jsqr';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { themes } from '../depth.ts';
import { fullDay } from '../desk/fullDay.ts';
import { valueIn } from '../desk/paperFile.ts';
import { answerOf, buildSetup, call, open as openHost } from '../host/bench.ts';
import { setup } from '../host/setup.ts';
import {
  accessibilityFaults,
  answerNext,
  callsOf,
  type SidebarOptions,
  sidebarPages,
  sidewaysScroll,
} from './browser.ts';
import type { FakeAnswers } from './fakeHost.ts';
import { bad, builtLesson, classView, good } from './scenes.ts';

/** What the script itself says about an invented lesson; the browser is handed that, not a copy written by hand. */
const host = openHost();
buildSetup(host, { ...setup, ownNumbers: true, givens: { ...setup.givens, formula: 'AgNO3', ion: 'Ag+' } });
const key = answerOf(call(host, 'readKey'));
const value = (answer: unknown) => [{ value: answer }];
const links = answerOf(call(host, 'readSheets'));
const answers: FakeAnswers = {
  readLesson: value(good(builtLesson)),
  readClass: value(good(classView)),
  readPreparation: value(good(answerOf(call(host, 'readPreparation')))),
  readKey: value(good(key)),
  readPaper: value(good(answerOf(call(host, 'readPaper')))),
  readCover: value(good(valueIn(fullDay().call('readCover')))),
  readSheets: value(good(links)),
  openSheet: value(good(null)),
  hideTeachersSheets: value(good(null)),
  openPage: value(good(null)),
  writePrepareSheet: value(good(null)),
  writeKeySheet: value(good({ name: 'Key 2026-03-02' })),
};

const openSidebar = sidebarPages();
const open = (options: Partial<SidebarOptions> = {}): Promise<Page> => openSidebar({ answers, ...options });
async function prepare(options: Partial<SidebarOptions> = {}): Promise<Page> {
  const opened = await open(options);
  if (options.clock) await opened.clock.runFor(100);
  await openView(opened, 'Prepare');
  if (options.clock) await opened.clock.runFor(100);
  await opened.getByRole('rowheader', { name: 'Set out' }).waitFor();
  return opened;
}
const button = (opened: Page, name: string) => opened.getByRole('button', { name, exact: true });
const shots = process.env.LABROW_SHOTS;
const shot = async (opened: Page, name: string) => {
  if (shots) await opened.screenshot({ path: `${shots}/${name}.png`, fullPage: true });
};

describe('prepare in the sidebar', () => {
  it.each(themes(1))('shows totals, what to lay out and cautions at 300 px, dark: %s', async (dark) => {
    const opened = await prepare({ dark });
    const words = (await opened.locator('main').textContent()) ?? '';
    expect(words).toContain('AgNO₃, solid');
    expect(words).toMatch(/AgNO₃, solid[\d.]+\s+g[\d.]+\s+g/);
    expect(words).toMatch(/volumetric flask \d+ mL/);
    expect(words).toContain('This is no safety data sheet');
    expect(await opened.locator('.caution-block').first().locator('.pictograms li').allTextContents()).toEqual([
      'flame over circle',
      'corrosion',
      'environment',
    ]);
    expect(words).toContain('Local rules decide');
    await shot(opened, `prepare-${dark ? 'dark' : 'light'}`);
    expect(await sidewaysScroll(opened)).toBe(0);
    expect(await accessibilityFaults(opened)).toEqual([]);
  });

  it('is what the sidebar shows first where it was opened for it, and the lesson is read as ever', async () => {
    const opened = await open({ opened: { page: 'sidebar', about: 'prepare' } });
    await opened.getByRole('rowheader', { name: 'Set out' }).waitFor();
    expect(await opened.locator('nav [aria-current=page]').textContent()).toBe('Prepare');
    expect((await callsOf(opened)).map(({ name }) => name)).toEqual(['readLesson', 'recordDue', 'readPreparation']);
    await openView(opened, 'Class now');
    await opened.getByText('Talk first to Basalt').waitFor();
  });

  it('is shown at the second try where the lesson could not be read', async () => {
    const opened = await open({
      answers: { ...answers, readLesson: [{ value: bad('The file is busy.') }, ...value(good(builtLesson))] },
      opened: { page: 'sidebar', about: 'prepare' },
    });
    await button(opened, 'Try again').click();
    await opened.getByRole('rowheader', { name: 'Set out' }).waitFor();
  });

  it('is not shown first where the view asked for is none', async () => {
    const opened = await open({ opened: { page: 'sidebar', about: 'wages' } });
    await opened.getByText('Talk first to Basalt').waitFor();
  });

  it('opens each page to print by its name, from the keyboard', async () => {
    const opened = await prepare();
    for (const name of [
      'This list',
      'Labels',
      'A table on paper',
      'The period in minutes',
      'Steps done by team',
      'For a cover teacher',
      'The key',
    ]) {
      await button(opened, name).focus();
      await opened.keyboard.press('Enter');
    }
    const asked = (await callsOf(opened)).filter((one) => one.name === 'openPage').map(({ args }) => args[0]);
    expect(asked).toEqual(['preparation', 'labels', 'paper', 'period', 'done', 'cover', 'key']);
  });

  it('shows the key only when asked, and hides it when somebody goes elsewhere', async () => {
    const opened = await prepare();
    expect(await opened.locator('.key-table').count()).toBe(0);
    await button(opened, 'Show the key here').click();
    await opened.locator('.key-table').waitFor();
    expect(await opened.locator('.key-table').textContent()).toContain('Mass to weigh');
    expect(await sidewaysScroll(opened)).toBe(0);
    await shot(opened, 'prepare-key');
    expect(await accessibilityFaults(opened)).toEqual([]);
    await openView(opened, 'Help');
    await openView(opened, 'Prepare');
    await button(opened, 'Show the key here').waitFor();
    expect(await opened.locator('.key-table').count()).toBe(0);
  });

  it('writes the key to a sheet only after the warning and a yes', async () => {
    const opened = await prepare();
    await button(opened, 'Show the key here').click();
    await button(opened, 'Write the key to a sheet …').click();
    expect(await opened.getByRole('alert').textContent()).toContain('can read all its sheets');
    // The focus stands on the answer that writes nothing.
    expect(await opened.evaluate(() => document.activeElement?.textContent)).toBe('No, keep it out of the file');
    await opened.keyboard.press('Enter');
    expect((await callsOf(opened)).some(({ name }) => name === 'writeKeySheet')).toBe(false);
    await button(opened, 'Write the key to a sheet …').click();
    await button(opened, 'Yes, write it').click();
    await opened.getByText('The key is in the sheet “Key 2026-03-02”').waitFor();
    expect((await callsOf(opened)).find(({ name }) => name === 'writeKeySheet')?.args).toEqual([true]);
  });

  it('follows the Plan while it is open: looks again, and brings the sheet up to it once it must', async () => {
    const opened = await prepare({ clock: true });
    const written = async () => (await callsOf(opened)).filter(({ name }) => name === 'writePrepareSheet');
    expect(await written()).toEqual([]);
    const view = answerOf(call(host, 'readPreparation'));
    const changed = {
      ...view,
      sheet: 'out of date',
      sections: view.sections.map((section) => ({
        ...section,
        rows: section.rows.map((row) => ({ ...row, note: `${row.note} Changed.` })),
      })),
    };
    await answerNext(opened, 'readPreparation', [
      { value: good(changed) },
      { value: good({ ...changed, sheet: 'up to date' }) },
    ]);
    await button(opened, 'Labels').focus();
    await opened.clock.runFor(21_000);
    await opened.getByText(texts.prepare.broughtUp).waitFor();
    expect(await opened.locator('.amount-table').first().textContent()).toContain('Changed.');
    expect((await written()).map(({ args }) => args)).toEqual([[true]]);
    expect(await opened.evaluate(() => document.activeElement?.textContent)).toBe('Labels');
    await opened.clock.runFor(21_000);
    expect(await written()).toHaveLength(1);
    // Elsewhere it does not look.
    await openView(opened, 'Help');
    const before = (await callsOf(opened)).length;
    await opened.clock.runFor(61_000);
    expect((await callsOf(opened)).slice(before).filter(({ name }) => name === 'readPreparation')).toEqual([]);
  });

  it('says what went wrong and tries again', async () => {
    const opened = await open({
      answers: { ...answers, readPreparation: value(bad('Expected a Plan. Plan a lesson.')) },
    });
    await openView(opened, 'Prepare');
    await opened.getByText('Expected a Plan. Plan a lesson.').waitFor();
    await answerNext(opened, 'readPreparation', answers.readPreparation ?? []);
    await button(opened, 'Try again').click();
    await opened.getByRole('rowheader', { name: 'Set out' }).waitFor();
  });
});

/** What a camera would see of a picture of the screen; as text over the bridge, which is slow with long lists. */
async function pixelsOf(page: Page, png: Buffer) {
  const { text, ...size } = await page.evaluate(async (picture) => {
    const bytes = Uint8Array.from(atob(picture), (letter) => letter.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const { width, height } = image;
    const context = new OffscreenCanvas(width, height).getContext('2d');
    context?.drawImage(image, 0, 0);
    const { data = new Uint8ClampedArray() } = context?.getImageData(0, 0, width, height) ?? {};
    const letters: string[] = [];
    for (const byte of data) letters.push(String.fromCharCode(byte));
    return { text: btoa(letters.join('')), width, height };
  }, png.toString('base64'));
  return { data: new Uint8ClampedArray(Buffer.from(text, 'base64')), ...size };
}

/** How many sheets of A4 a page takes, with margins of a centimetre. */
async function sheetsOfPaper(page: Page): Promise<number> {
  const margin = '10mm';
  const pdf = await page.pdf({ format: 'A4', margin: { top: margin, right: margin, bottom: margin, left: margin } });
  return pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
}

describe('pages to print', () => {
  const ready: Readonly<Record<string, string>> = {
    preparation: '.amount-table',
    labels: '.label',
    key: '.key-table',
    paper: '.paper-table',
    period: '.paper-table',
    done: '.paper-table',
    cover: '.paper-table',
    links: '.scan-picture',
  };
  const opened = async (name: string, options: Partial<SidebarOptions> = {}) => {
    const one = await open({ opened: { page: name }, width: 1000, ...options });
    await one
      .locator(ready[name] ?? '')
      .first()
      .waitFor();
    return one;
  };

  it.each(Object.keys(ready))('%s works wide, at 300 px, in the dark and on paper', async (name) => {
    const wide = await opened(name);
    await shot(wide, `${name}-wide`);
    expect(await accessibilityFaults(wide)).toEqual([]);
    await wide.emulateMedia({ media: 'print' });
    await wide.setViewportSize({ width: 720, height: 1000 });
    expect(await wide.locator('.page-bar').isVisible()).toBe(false);
    expect(await sidewaysScroll(wide)).toBe(0);
    await shot(wide, `${name}-print`);
    const narrow = await opened(name, { width: 300, dark: true });
    await shot(narrow, `${name}-narrow`);
    expect(await sidewaysScroll(narrow)).toBe(0);
    expect(await accessibilityFaults(narrow)).toEqual([]);
  });

  it('has all that a cover teacher needs for 22 teams on one sheet of A4', async () => {
    const one = await opened('cover');
    const { cover } = texts.pages;
    expect(await one.getByRole('heading', { level: 2 }).allTextContents()).toEqual([
      cover.what,
      cover.run,
      cover.where,
      cover.cautions,
      cover.waste,
      cover.ready,
      cover.write,
    ]);
    await one.emulateMedia({ media: 'print' });
    await one.setViewportSize({ width: 718, height: 1000 });
    // Margins of a centimetre leave 190 by 277 mm.
    const end = await one.locator('main').evaluate((drawn) => drawn.getBoundingClientRect().bottom + window.scrollY);
    expect(end).toBeLessThan((277 / 25.4) * 96);
    expect(await sheetsOfPaper(one)).toBe(1);
    // No word is broken to make room for a longer cell.
    const broken = await one.locator('th').evaluateAll((all) =>
      all.flatMap((th) => {
        const range = document.createRange();
        range.selectNodeContents(th);
        const words = (th.textContent ?? '').trim().split(/\s+/);
        return range.getClientRects().length > words.length ? words.join(' ') : [];
      }),
    );
    expect(broken).toEqual([]);
  });

  it('shows each class a picture that a reader by others reads as the address below it', async () => {
    const one = await opened('links', { dark: true });
    const pictures = one.locator('.scan-picture');
    expect(await pictures.count()).toBe(links.classes.length);
    for (const [place, { name, address }] of links.classes.entries()) {
      const picture = pictures.nth(place);
      expect(await picture.getAttribute('aria-label')).toBe(texts.sheets.picture(name));
      const { data, width, height } = await pixelsOf(one, await picture.screenshot());
      expect(jsQR(data, width, height)?.data).toBe(address);
      expect(await one.locator('.address').nth(place).textContent()).toBe(address);
    }
    const [first] = links.classes;
    const alone = await opened('links', { opened: { page: 'links', about: first?.name ?? '' } });
    expect(await alone.locator('.class-link h2').allTextContents()).toEqual([first?.name]);
    await shot(alone, 'links-projected');
  });

  it('puts on each label what a workplace label carries, and room for date and initials', async () => {
    const one = await opened('labels');
    const label = (await one.locator('.label').nth(1).textContent()) ?? '';
    expect(label).toContain('silver nitrate, AgNO₃');
    expect(label).toMatch(/\d mol\/L/);
    expect(label).toMatch(/Danger|Warning/);
    expect(label).toMatch(/H\d{3}: /);
    expect(label).toMatch(/Made \d{4}-/);
    expect(label).toContain('Initials');
    expect(label).toContain('safety data sheet');
    await one.getByLabel('Date on the labels').fill('Monday');
    expect(await one.locator('.label').first().textContent()).toContain('Made Monday');
    const all = await one.locator('.label').count();
    await one.getByLabel('Which labels').selectOption('Moss class');
    expect(await one.locator('.label').count()).toBe(2);
    expect(all).toBe(7);
  });

  it('draws each pictogram with its name beside it, as dilute as the label says, and keeps its colours in the dark', async () => {
    const one = await opened('labels', { dark: true });
    const drawn = (label: Locator) =>
      label.locator('.pictograms li').evaluateAll((items) =>
        items.map((item) => ({
          name: item.textContent,
          marks: item.querySelectorAll('svg[aria-hidden=true] :is(.ink, .paper)').length > 0,
        })),
      );
    const of = (strength: string) => one.locator('.label', { has: one.getByText(strength, { exact: true }) }).first();
    expect(await drawn(of('solid'))).toEqual([
      { name: 'flame over circle', marks: true },
      { name: 'corrosion', marks: true },
      { name: 'environment', marks: true },
    ]);
    // CLP Annex VI: silver nitrate burns eyes from 3 %, about 0.18 mol/L, and irritates them from 1 %.
    expect(await drawn(of('0.0600 mol/L'))).toEqual([{ name: 'exclamation mark', marks: true }]);
    const frame = one.locator('.pictogram .frame').first();
    const colours = () => frame.evaluate((path) => [getComputedStyle(path).fill, getComputedStyle(path).stroke]);
    expect(await colours()).toEqual(['rgb(255, 255, 255)', 'rgb(216, 0, 12)']);
    await one.emulateMedia({ media: 'print' });
    expect(await colours()).toEqual(['rgb(255, 255, 255)', 'rgb(216, 0, 12)']);
    const size = await one.locator('.pictogram').first().boundingBox();
    expect(size?.width).toBeGreaterThan(50);
  });

  it('prints several labels on a page, small ones for small flasks', async () => {
    const one = await opened('labels');
    await one.emulateMedia({ media: 'print' });
    await one.setViewportSize({ width: 720, height: 1000 });
    const across = async (list: string) =>
      new Set(
        await one
          .locator(`${list} > .label`)
          .evaluateAll((labels) => labels.map((label) => Math.round(label.getBoundingClientRect().left))),
      ).size;
    const large = await one.locator('.labels:not(.small) > .label').first().boundingBox();
    expect(large?.width).toBeLessThan(720 / 2);
    expect(large?.width).toBeGreaterThan(720 / 3);
    expect(await across('.labels.small')).toBe(3);
    // A label for a 100 mL flask: its bulb is about 6 cm wide.
    const small = await one.locator('.labels.small > .label').first().boundingBox();
    expect(small?.width).toBeLessThan((720 * 63) / 190);
    const pdf = await one.pdf({ format: 'A4' });
    expect(pdf.length).toBeGreaterThan(1000);
  });

  it('gives a team on paper its own numbers and check figures, and no answer', async () => {
    const one = await opened('paper');
    const sheet = (await one.locator('.paper-sheet').textContent()) ?? '';
    const team = key.teams[0];
    for (const { title, answer } of team?.lines ?? []) {
      if (/^(?:Molar mass|Moles|Mass to)/.test(title)) expect(sheet).not.toContain(answer);
    }
    expect(sheet).toContain('This is a count, not a grade');
    await one.getByLabel('Which team').selectOption('');
    expect(await one.locator('.paper-sheet').count()).toBe(3);
  });

  it('leaves the rule of check figures out where fewer than three rows have one', async () => {
    const paper = answerOf(call(host, 'readPaper'));
    const [first, ...others] = paper.teams;
    if (!first) throw new Error('Expected a team on paper.');
    let left = 2;
    const steps = first.steps.map((step) => ({
      ...step,
      checkFigures: step.checkFigures.length > 0 && left-- > 0 ? step.checkFigures : [],
    }));
    expect(steps.filter(({ checkFigures }) => checkFigures.length > 0)).toHaveLength(2);
    const few = { ...paper, teams: [{ ...first, steps }, ...others] };
    for (const width of [1000, 300]) {
      const one = await open({
        answers: { ...answers, readPaper: value(good(few)) },
        opened: { page: 'paper' },
        width,
      });
      const headings = one.locator('.paper-sheet thead th');
      await headings.first().waitFor();
      expect(await headings.allTextContents()).toEqual(['What to find', 'Your result', 'Unit']);
      expect(await one.locator('.check-rule').count()).toBe(0);
      const asked = await one.locator('.paper-sheet tbody .self-check').allTextContents();
      expect(asked).toHaveLength(steps.length);
      for (const [index, { kind, checkFigures }] of steps.entries()) {
        if (checkFigures.length > 0) expect(asked[index]).toBe('Show it to your teacher.');
        else if (kind === 'measured') expect(asked[index]).toBe('Show your teacher before you go on.');
        else if (kind === 'calculated') expect(asked[index]).toMatch(/^Comes from your own reading/);
      }
      expect(await sidewaysScroll(one)).toBe(0);
      expect(await accessibilityFaults(one)).toEqual([]);
      await shot(one, `paper-few-${width}`);
      // A team with more of them has the rule.
      await one.getByLabel('Which team').selectOption(others[0]?.key ?? '');
      await one.locator('.check-rule').waitFor();
      expect(await headings.allTextContents()).toContain('Check figure');
    }
  });

  it('shares the minutes that are typed out over the steps', async () => {
    const one = await opened('period');
    const total = one.getByLabel(texts.pages.period.total).first();
    await total.fill('45');
    const minutes = await one.locator('table').first().locator('td:last-child').allTextContents();
    expect(minutes.reduce((sum, text) => sum + Number(text), 0)).toBe(45);
    await total.fill('2');
    await one.getByText('Type a whole number of minutes').first().waitFor();
    expect(await one.locator('table').first().locator('td:last-child').allTextContents()).toEqual(minutes);
  });

  it('lists the day for a technician: a box to tick, a column for each class, on one sheet of paper', async () => {
    const one = await opened('preparation');
    const table = one.locator('.amount-table');
    const headings = await table.locator('thead th').allTextContents();
    expect(headings).toEqual([
      texts.prepare.done,
      texts.prepare.what,
      'Fern class',
      'Moss class',
      texts.prepare.needed,
      texts.prepare.spare,
    ]);
    const rows = await table.locator('tbody tr:not(.section-row)').count();
    expect(await table.getByRole('checkbox').count()).toBe(rows);
    await table.getByRole('checkbox', { name: texts.prepare.ready('AgNO3, solid') }).check();
    const solid = table.locator('tr', { hasText: 'AgNO₃, solid' }).first();
    const [fern, moss, all] = (await solid.locator('.number').allTextContents()).map((cell) => Number.parseFloat(cell));
    // Each class is rounded up to the balance, so the sum may be two steps of 0.01 g above the whole.
    expect(Math.abs((fern ?? 0) + (moss ?? 0) - (all ?? 0))).toBeLessThan(0.021);
    const vessel = (await table.locator('tr', { hasText: 'waste vessel' }).first().textContent()) ?? '';
    expect(vessel).toMatch(/A labelled \d+ (?:m?L) vessel/);
    // The table fits a sheet of A4 with margins of a centimetre, 190 by 277 mm; long cautions may go on behind it.
    await one.emulateMedia({ media: 'print' });
    await one.setViewportSize({ width: 718, height: 1000 });
    const end = await table.evaluate((drawn) => drawn.getBoundingClientRect().bottom + window.scrollY);
    expect(end).toBeLessThan((277 / 25.4) * 96);
    expect(await sheetsOfPaper(one)).toBeLessThanOrEqual(2);
  });

  it('has the key of each class on one sheet: shared answers once, own ones by team, letters and orders apart', async () => {
    const one = await opened('key');
    const classes = [...new Set(key.teams.map(({ className }) => className))];
    expect(await one.locator('.class-key h2').allTextContents()).toEqual(classes);
    const words = ((await one.locator('.class-key').first().textContent()) ?? '').replace(/\s+/g, ' ');
    for (const { lines } of key.teams.filter(({ className }) => className === classes[0])) {
      for (const { answer } of lines) expect(words).toContain(answer);
    }
    for (const { inWords } of key.orders) expect(words.split(inWords)).toHaveLength(2);
    const shared = key.teams[0]?.lines.find(({ title }) => title === 'Molar mass');
    expect(words.split(`${shared?.answer} ${shared?.unit}`)).toHaveLength(2);
    expect(await sheetsOfPaper(one)).toBe(classes.length);
  });

  it('breaks no answer over a line, wide or at 300 px', async () => {
    const narrow = await prepare();
    await button(narrow, 'Show the key here').click();
    await narrow.locator('.key-table').waitFor();
    for (const page of [narrow, await opened('key', { width: 300 })]) {
      const lines = await page.locator('.answer').evaluateAll((cells) =>
        cells.map((cell) => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
        }),
      );
      expect(Math.max(...lines)).toBe(1);
    }
  });

  it('tells a check figure by a sum in the head, as its rule and its list say', async () => {
    const one = await opened('paper');
    const sizes = await one.locator('.sizes').first().locator('li').allTextContents();
    const rule = sizes.map((item) => /like ([\d.]+): \+ (\d)/.exec(item)?.slice(1).map(Number) ?? []);
    expect(rule).toHaveLength(8);
    // As a student does it: digits added, and what the list says for a number of that size.
    const byHand = (result: string): number => {
      const digits = [...result.replace('.', '')].reduce((sum, digit) => sum + Number(digit), 0);
      const size = Math.floor(Math.log10(Number(result)));
      const found = rule.find(([like]) => Math.floor(Math.log10((like ?? 1) * 1.0000001)) === size);
      return (digits + (found?.[1] ?? Number.NaN)) % 10;
    };
    for (const { answer, title } of key.teams[0]?.lines ?? []) {
      if (!/^(?:Molar mass|Moles of solute|Mass to weigh|Dilution factor)$/.test(title)) continue;
      const row = one.locator('.paper-table tr', { hasText: title }).first();
      expect((await row.locator('td').last().textContent())?.split(' or ')).toContain(String(byHand(answer)));
    }
  });

  it('goes back to the sidebar', async () => {
    const one = await opened('done');
    expect(await one.locator('main').textContent()).toContain('a count, not a grade');
    await button(one, 'Back to the sidebar').click();
    expect((await callsOf(one)).find(({ name }) => name === 'openPage')?.args).toEqual(['sidebar', 'prepare']);
  });
});
