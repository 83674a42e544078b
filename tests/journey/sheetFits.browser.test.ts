import type { Page } from 'playwright-core';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { buildSample } from '../../scripts/buildSample.ts';
import { letteredShown } from '../../src/lab/bench/letteredShown.ts';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { stockAndDilution } from '../../src/lab/lesson/activities/stockAndDilution.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { type PageBundle, pageBundle } from '../../src/preview/server/pageBundle.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns as at, pollColumns, pollRows } from '../../src/workbook/layout.ts';
import { looks } from '../../src/workbook/looks.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';
import { axeFaults } from '../browser/axeFaults.ts';
import { browserPages } from '../browser/browserPages.ts';
import { cases, themes } from '../depth.ts';
import { cell, Preview, tab, type } from './previewWindows.ts';

/** The class sheet as it ships, on the screens of a school. */
const pages = browserPages();
let bundle: PageBundle;
let preview: Preview;
/** The invented class as it is built, once for all tests. */
let saved: string;
beforeAll(async () => {
  bundle = await pageBundle();
  const first = await Preview.open(pages, bundle, { name });
  buildSample(first.host, () => {});
  saved = first.host.save();
});
beforeEach(async () => {
  preview = await Preview.open(pages, bundle, { name, saved });
});
afterEach(() => preview.close());

const name = 'An invented school';
const sheet = 'Second period';
const team = 'Pumice';
const screens = [
  { width: 1366, height: 768 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;

/** Each entry of a block is typed on the smallest and on the usual screen, and on the one between in the long form. */
const typedAt = screens.filter(({ width }) => width !== 1024 || cases({ short: 0, deep: 1 }) > 0);

async function studentAt(size: (typeof screens)[number]): Promise<Page> {
  const page = await preview.window('student');
  await page.setViewportSize(size);
  await tab(page, sheet).click();
  await page.getByRole('link', { name: team, exact: true }).click();
  await page.locator('td.active', { hasText: team }).waitFor();
  return page;
}

/** How much of a cell's text can be seen, as a share of its height and of its width; 1 where all of it is in view. */
const seen = (page: Page, row: number, column: number): Promise<{ down: number; across: number; cut: number }> =>
  cell(page, row, column).evaluate((td) => {
    const text = td.querySelector('.text');
    const box = document.querySelector('.sheet')?.getBoundingClientRect();
    const held = document.querySelector('.grid thead')?.getBoundingClientRect();
    if (!text || !box || !held) return { down: 0, across: 0, cut: 0 };
    const range = document.createRange();
    range.selectNodeContents(text);
    const whole = range.getBoundingClientRect();
    const clip = text.getBoundingClientRect();
    const right = Math.min(box.right, window.innerWidth);
    const bottom = Math.min(box.bottom, window.innerHeight);
    const left = Math.max(box.left, td.classList.contains('held') ? box.left : 0);
    const across = Math.max(0, Math.min(whole.right, right) - Math.max(whole.left, left)) / whole.width;
    const down = Math.max(0, Math.min(whole.bottom, bottom) - Math.max(whole.top, held.bottom)) / whole.height;
    return { down, across, cut: Math.max(0, whole.height - clip.height) };
  });

/** What the team types, row by row: a right value, but for a slip in the second number and a wrong order. */
function entries(): readonly { step: string; text: string }[] {
  const { key, givens } = preview.planned(sheet, team);
  const activity = stockAndDilution({ fromRealStock: false });
  const lines = teamKey({
    activity,
    team: { key, className: sheet, team, givens },
    settings: defaultSettings,
    lettersByTeam: true,
  });
  return lines.map(({ step, answer }) => {
    const text = answer.replace(/^about /, '');
    if (step === 'moles of solute') return { step, text: String(Number(text) * 1000) };
    if (step === 'stock procedure') return { step, text: [...text.split(' ')].reverse().join(' ') };
    return { step, text: step === 'in your words' ? 'The same particles, more room.' : text };
  });
}

describe('the class sheet', () => {
  it.each(typedAt)('shows check and feedback of what was typed, at $width × $height', async (size) => {
    const page = await studentAt(size);
    const isPhone = size.width < 500;
    const measured: string[] = [];
    // On a phone the row of the molar mass is judged; those behind it are only measured, in the long form.
    const whole = entries();
    const untilJudged = whole.findIndex(({ step }) => step === 'molar mass') + 1;
    const typed = isPhone ? whole.slice(0, cases({ short: untilJudged, deep: whole.length })) : whole;
    for (const { step, text } of typed) {
      const row = preview.rowOf(sheet, team, step);
      await cell(page, row, at.entry).click();
      await type(page, text);
      await page.keyboard.press('Enter');
      await expect.poll(() => preview.textAt(sheet, row, at.entry)).toBe(text);
      const told = preview.textAt(sheet, row, at.check);
      if (told === '') continue;
      await expect.poll(() => cell(page, row, at.check).textContent()).toBe(told);
      const check = await seen(page, row, at.check);
      const feedback = preview.textAt(sheet, row, at.lookAt) === '' ? undefined : await seen(page, row, at.lookAt);
      measured.push(
        `${step}: check ${Math.round(100 * check.down * check.across)} %` +
          (feedback === undefined ? '' : `, feedback ${Math.round(100 * feedback.down * feedback.across)} %`),
      );
      if (size.width < 1366) continue;
      expect([step, check]).toEqual([step, { down: 1, across: 1, cut: 0 }]);
      if (feedback !== undefined) expect([step, feedback]).toEqual([step, { down: 1, across: 1, cut: 0 }]);
    }
    console.log(`${size.width} × ${size.height}\n  ${measured.join('\n  ')}`);
    expect(measured.length).toBeGreaterThan(typed.length < whole.length ? 0 : 12);
    if (isPhone) {
      // One swipe from the title: entry, unit and check stand beside the held title.
      const row = preview.rowOf(sheet, team, 'molar mass');
      await cell(page, row, at.title).scrollIntoViewIfNeeded();
      await page.locator('.sheet').evaluate(
        (box, width) => {
          box.scrollLeft = width;
        },
        classWidths[at.task - 1],
      );
      for (const column of [at.title, at.entry, at.unit, at.check]) {
        expect([column, (await seen(page, row, column)).across]).toEqual([column, 1]);
      }
    }
  });

  it('keeps every row at its height, whatever is typed', async () => {
    const page = await studentAt(screens[0]);
    const heights = () =>
      page.locator('.grid tbody tr').evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().height));
    const before = await heights();
    const row = preview.rowOf(sheet, team, 'in your words');
    const long = Array.from({ length: 60 }, (_, word) => `word${word}`).join(' ');
    await cell(page, row, at.entry).click();
    await page.keyboard.insertText(long);
    await page.keyboard.press('Enter');
    await expect.poll(() => preview.textAt(sheet, row, at.entry)).toBe(long);
    await expect.poll(() => cell(page, row, at.entry).textContent()).toContain('word59');
    expect(await heights()).toEqual(before);
    const block = preview.rowOf(sheet, team, 'cautions read') - 1;
    const last = preview.rowOf(sheet, team, 'in your words') + 1;
    const own = before.slice(block - 2, last - 1);
    console.log(`block of ${team}: ${own.reduce((sum, one) => sum + one, 0)} px, tallest ${Math.max(...own)} px`);
    expect(own.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(1600);
    expect(Math.max(...own)).toBeLessThanOrEqual(200);
  });

  it('names a place to type in by its column and its step, and says what help and who are for', async () => {
    const page = await studentAt(screens[0]);
    const row = preview.rowOf(sheet, team, 'mass of solute');
    const name = (column: number) => cell(page, row, column).getAttribute('aria-label');
    expect(await name(at.entry)).toBe('Your entry, 4 Mass to weigh: empty');
    expect(await name(at.help)).toBe('Help 0–3, 4 Mass to weigh: empty');
    expect(await name(at.task)).toBeNull();
    await cell(page, row, at.help).click();
    await page.getByText('How much help? 0 none, 1 the idea').first().waitFor();
    await cell(page, row, at.who).click();
    await page.getByText('Who does this step?').first().waitFor();
    expect(await cell(page, row, at.who).getAttribute('aria-description')).toContain('A role or a name');
  });
});

const studentsSee = ['Second period', 'Fourth period', 'Poll', 'Progress'];

describe('for everybody', () => {
  it.each(['student', 'teacher'] as const)(
    'no sheet has a fault that axe knows in the window of a %s',
    async (seat) => {
      // The teacher's own sheets are hidden until one is opened.
      if (seat === 'teacher') for (const one of preview.host.book.sheets) one.hidden = false;
      const page = await preview.window(seat);
      const names = await page.getByRole('tab').allTextContents();
      expect(names.length).toBe(seat === 'teacher' ? preview.host.book.sheets.length : 4);
      // What a student sees is looked through there, and of two classes that are alike one.
      const seen = names.filter(
        (name) => name !== 'Fourth period' && studentsSee.includes(name) === (seat === 'student'),
      );
      for (const [index, name] of seen.entries()) {
        await tab(page, name).click();
        await expect.poll(() => tab(page, name).getAttribute('aria-selected')).toBe('true');
        for (const dark of themes(index)) {
          // What fades from one colour to another is between both for a while.
          await page.emulateMedia({ colorScheme: dark ? 'dark' : 'light', reducedMotion: 'reduce' });
          // The page draws its cells anew when it hears of the theme, which a browser tells it before it draws a frame.
          await page.evaluate(() => new Promise(requestAnimationFrame));
          expect([name, dark, await axeFaults(page)]).toEqual([name, dark, []]);
        }
      }
    },
  );

  it('a student goes the whole way by keyboard alone', async () => {
    const page = await preview.window('student');
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    const until = async (key: string, isThere: () => Promise<boolean>) => {
      for (let pressed = 0; pressed < 60; pressed += 1) {
        if (await isThere()) return;
        await page.keyboard.press(key);
      }
      throw new Error(`${key} does not lead there.`);
    };
    const active = () => page.locator('td.active');
    const focus = (of: string) => page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, of);
    await until('Tab', () => focus('[role=tab]'));
    await until('ArrowRight', () => page.evaluate((wanted) => document.activeElement?.textContent === wanted, sheet));
    await press('Enter');
    await expect.poll(() => tab(page, sheet).getAttribute('aria-selected')).toBe('true');
    await until('Tab', () => focus('td'));
    await press('Control+Home');
    await until('ArrowDown', async () => (await active().textContent()) === team);
    await press('Enter');
    const cautions = preview.rowOf(sheet, team, 'cautions read');
    await expect.poll(() => active().getAttribute('data-cell')).toBe(`A${cautions - 1}`);
    // The answer that names the substance, from the list of its cell.
    await press('ArrowDown', 'ArrowRight', 'ArrowRight', 'Alt+ArrowDown', 'ArrowDown', 'Enter');
    await expect.poll(() => preview.textAt(sheet, cautions, at.check)).toBe('on target');
    for (const { step, text } of entries().slice(1, cases({ short: 5, deep: 99 }))) {
      const row = preview.rowOf(sheet, team, step);
      await until('ArrowDown', async () => (await active().getAttribute('data-cell')) === `C${row}`);
      await page.keyboard.type(text);
      await press('Enter');
      await expect.poll(() => preview.textAt(sheet, row, at.entry)).toBe(text);
    }
    // Help for the row that is not right, the name of who does it, and where a screen reader hears the check.
    const moles = preview.rowOf(sheet, team, 'moles of solute');
    await until('ArrowUp', async () => (await active().getAttribute('data-cell')) === `C${moles}`);
    await press(...Array.from({ length: at.help - at.entry }, () => 'ArrowRight'));
    await page.keyboard.type('2');
    await press('Tab');
    await expect.poll(() => preview.textAt(sheet, moles, at.hint)).not.toBe('');
    await page.keyboard.type('Ana');
    await press('Enter');
    await expect.poll(() => preview.textAt(sheet, moles, at.who)).toBe('Ana');
    expect(preview.textAt(sheet, moles, at.check)).toBe('not yet');
    // And on to the poll.
    await press('F6');
    await until('Tab', () => focus('[role=tab]'));
    await until('ArrowRight', () => page.evaluate(() => document.activeElement?.textContent === 'Poll'));
    await press('Enter');
    await until('Tab', () => focus('td'));
    const free = pollRows.firstAnswer + 40;
    await press('Control+Home');
    await until('ArrowRight', async () => (await active().getAttribute('data-cell'))?.startsWith('I') ?? false);
    await until('PageDown', async () => Number((await active().getAttribute('data-cell'))?.slice(1)) >= free);
    const place = await active().getAttribute('data-cell');
    await page.keyboard.type('The ions.');
    await press('Enter');
    await expect.poll(() => preview.textAt('Poll', Number(place?.slice(1)), pollColumns.openLine)).toBe('The ions.');
  });
});

describe('the estimate of heights', () => {
  it('is never below what a browser makes of our texts in the font of the tests', async () => {
    const texts = allActivities().flatMap((activity) =>
      ['CuSO4·5H2O', 'AgNO3', 'KBr', 'K2Cr2O7'].slice(0, cases({ short: 2, deep: 4 })).flatMap((formula) => {
        const givens = { ...startingGivens(activity), formula };
        return activity.steps.flatMap((step) => {
          const { lookAt, hint } = saidInRow(step, { activity, givens, decimalMark: 'point', studentsDilute: false });
          const isLettered = step.kind === 'ordered' || step.kind === 'chosen';
          const task = (isLettered ? letteredShown(step, 'c1-t1') : step.shown)
            .map((piece) =>
              typeof piece === 'string' ? piece : `${(givens as Record<string, string>)[piece.given] ?? ''}`,
            )
            .join('');
          return [
            ...lookAt.map((text) => ({ text, column: at.lookAt, look: looks.spilled })),
            ...hint.map((text) => ({ text, column: at.hint, look: looks.spilled })),
            { text: task, column: at.task, look: isLettered ? looks.letters : looks.task },
            { text: `15 ${step.title}`, column: at.title, look: looks.step },
          ];
        });
      }),
    );
    const settings = texts.map(({ text, column, look }) => ({
      text,
      width: classWidths[column - 1] ?? 0,
      size: look.size,
      bold: look.bold,
    }));
    const page = await studentAt(screens[0]);
    // Measured in a cell of the grid itself, so that its room, letters and lines are those of the page.
    const drawn = await page.evaluate((list) => {
      const td = document.querySelector<HTMLElement>('.grid tbody tr.forced td.wrap');
      if (!td) return [];
      const probe = td.cloneNode() as HTMLElement;
      const host = document.createElement('div');
      host.className = 'grid';
      host.style.cssText = 'position:absolute;visibility:hidden';
      probe.removeAttribute('style');
      const box = document.createElement('div');
      box.className = 'text';
      host.append(box);
      document.body.append(host);
      return list.map(({ text, width, size, bold }) => {
        const pixels = Math.round(size * 1.4);
        box.style.cssText = `width:${width - 13}px;font-size:${pixels}px;line-height:${Math.round(pixels * 1.42)}px;
          white-space:pre-wrap;overflow-wrap:anywhere;font-variant-numeric:tabular-nums;font-weight:${bold ? 600 : 400}`;
        box.textContent = text;
        return box.getBoundingClientRect().height + 9;
      });
    }, settings);
    expect(drawn).toHaveLength(settings.length);
    const below = settings.filter((one, place) => heightOf(one.text, one) < (drawn[place] ?? Number.POSITIVE_INFINITY));
    const above = settings.filter((one, place) => heightOf(one.text, one) > (drawn[place] ?? 0));
    console.log(`${settings.length} texts: ${above.length} estimated a line too high, ${below.length} too low`);
    expect(below).toEqual([]);
    expect(above.length / settings.length).toBeLessThan(0.12);
  });
});
