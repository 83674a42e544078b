import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { NumbersView } from '../../src/desk/views.ts';
import { writtenFormula } from '../../src/lab/particles/writtenFormula.ts';
import { texts } from '../../src/sidebar/texts.ts';
import { openView } from '../browser/openView.ts';
import { themes } from '../depth.ts';
import {
  accessibilityFaults,
  answerNext,
  callsOf,
  type SidebarOptions,
  sidebarPages,
  sidewaysScroll,
} from './browser.ts';
import { bad, builtLesson, classView, good, longName } from './scenes.ts';

const openSidebar = sidebarPages();

const givens = {
  formula: 'MgBr2',
  'stock molarity': '0.400',
  flask: '200',
  'target molarity': '0.120',
  'target volume': '50',
  ion: 'Br-',
  purity: '',
};
const numbers: NumbersView = {
  activity: 'stock and dilution',
  decimalMark: 'point',
  typical: givens,
  teams: [
    { key: 'c1-t1', className: 'Second period', team: 'Basalt', givens: { ...givens, 'target molarity': '0.200' } },
    { key: 'c1-t2', className: 'Second period', team: longName, givens: { ...givens, formula: 'C6H12O6' } },
    { key: 'c2-t1', className: 'Fourth period', team: 'Slate', givens: { ...givens, formula: 'CH3COOH' } },
    { key: 'c2-t2', className: 'Fourth period', team: 'Marble', givens: { ...givens, formula: 'KAl(SO4)2·12H2O' } },
  ],
};

/** A row of three flasks, a fifth each time. */
const row: NumbersView = {
  ...numbers,
  activity: 'serial dilution',
  typical: { formula: 'KBr', 'stock molarity': '0.500', portion: '10', flask: '50' },
  teams: [],
};

async function particles(options: Partial<SidebarOptions> = {}): Promise<Page> {
  const page = await openSidebar({
    answers: {
      readLesson: [{ value: good(builtLesson) }],
      readClass: [{ value: good(classView) }],
      readNumbers: [{ value: good(numbers) }],
      openPage: [{ value: good(null) }],
      ...options.answers,
    },
    ...options,
  } as SidebarOptions);
  await openView(page, 'Particles');
  await page.waitForSelector('figure svg, .notice');
  return page;
}

/** Particles drawn in each box, by outline. */
const drawn = (on: Page) =>
  on.locator('figure svg').evaluateAll((boxes) =>
    boxes.map((box) => {
      const of = (shape: string) => box.querySelectorAll(`.particle.${shape}`).length;
      return { round: of('round'), square: of('square'), whole: of('whole') };
    }),
  );

describe('the view Particles', () => {
  it('draws what its words say, for the numbers that the plan starts from', async () => {
    const view = await particles();
    expect(await drawn(view)).toEqual([
      { round: 10, square: 20, whole: 0 },
      { round: 3, square: 6, whole: 0 },
      { round: 3, square: 6, whole: 0 },
      { round: 3, square: 6, whole: 0 },
    ]);
    const images = await view.getByRole('img').all();
    const names = await Promise.all(images.map(async (image) => (await image.ariaSnapshot()).split('"')[1]));
    expect(names).toEqual([
      'Before, a sample of the stock: 10 Mg²⁺ and 20 Br⁻.',
      'After, the same volume of the diluted solution: 3 Mg²⁺ and 6 Br⁻.',
      'Before, all of a small portion of stock: 3 Mg²⁺ and 6 Br⁻.',
      'After, the same portion with its water: 3 Mg²⁺ and 6 Br⁻.',
    ]);
    const words = await view.locator('main').textContent();
    expect(words).toContain('3.61 × 10²¹ Mg²⁺ and 7.23 × 10²¹ Br⁻');
    expect(words).toContain('Water fills the space between them and is left out.');
  });

  it('follows the team that is chosen', async () => {
    const view = await particles();
    await view.getByLabel('Whose numbers').selectOption('Basalt');
    expect((await drawn(view)).slice(0, 2)).toEqual([
      { round: 4, square: 8, whole: 0 },
      { round: 2, square: 4, whole: 0 },
    ]);
    await view.getByLabel('Whose numbers').selectOption('c1-t2');
    expect((await drawn(view))[0]).toEqual({ round: 0, square: 0, whole: 20 });
    await view.getByLabel('Whose numbers').selectOption('Slate');
    await view.getByText(texts.particles.noPicture).waitFor();
    expect(await view.locator('.notice').textContent()).toContain('weak electrolyte');
  });

  it('shows the dilution of a row that is chosen, in words too, and projects that one', async () => {
    const view = await particles({ answers: { readNumbers: [{ value: good(row) }] } });
    const caption = view.locator('#sample-before');
    expect(await caption.textContent()).toMatch(/^Before, a sample of the stock/);
    await view.getByLabel('Which dilution').selectOption('3: from flask 2 into flask 3');
    expect(await caption.textContent()).toMatch(/^Before, a sample of flask 2/);
    expect(await view.locator('#sample-after').textContent()).toMatch(/^After, the same volume of flask 3/);
    expect(await accessibilityFaults(view)).toEqual([]);
    expect(await sidewaysScroll(view)).toBe(0);
    await view.getByRole('button', { name: 'Open a page to project' }).click();
    await expect
      .poll(async () => (await callsOf(view)).at(-1))
      .toEqual({ name: 'openPage', args: ['particles', '3|'] });
  });

  it('offers no choice of dilutions where there is one', async () => {
    const view = await particles();
    expect(await view.getByLabel('Which dilution').count()).toBe(0);
  });

  it('opens the page to project with the team’s key', async () => {
    const view = await particles();
    await view.getByLabel('Whose numbers').selectOption('Basalt');
    await view.getByRole('button', { name: 'Open a page to project' }).click();
    await expect
      .poll(async () => (await callsOf(view)).at(-1))
      .toEqual({ name: 'openPage', args: ['particles', 'c1-t1'] });
  });

  it('keeps reasons folded, and opens them from the keyboard', async () => {
    const view = await particles();
    const reasons = view.locator('.question').first().locator('details');
    expect(await reasons.getAttribute('open')).toBeNull();
    await reasons.locator('summary').focus();
    await view.keyboard.press('Enter');
    await expect.poll(() => reasons.getByText('✓').isVisible()).toBe(true);
  });

  it('says what to do where the numbers cannot be read', async () => {
    const view = await particles({ answers: { readNumbers: [{ value: bad('Expected a, received b. Try.') }] } });
    await answerNext(view, 'readNumbers', [{ value: good(numbers) }]);
    await view.getByRole('button', { name: 'Try again' }).click();
    await view.waitForSelector('figure svg');
  });

  it.each(themes(1))('is accessible and fits 300 px (dark: %s)', async (dark) => {
    const view = await particles({ dark });
    for (const team of ['', 'c1-t2', 'c2-t1', 'c2-t2']) {
      await view.getByLabel('Whose numbers').selectOption(team);
      expect(await accessibilityFaults(view)).toEqual([]);
      expect(await sidewaysScroll(view)).toBe(0);
    }
  });

  // WCAG 2.2, 1.4.11 and 1.4.3: shapes 3 : 1 against their ground, text 4.5 : 1; and light from dark without colour.
  it.each([{ dark: false }, { dark: true }])(
    'keeps its contrasts, and its fills apart in grey (dark: $dark)',
    async ({ dark }) => {
      const view = await particles({ dark });
      const shades = await view.evaluate(() => {
        const luminance = (colour: string) => {
          const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
            const share = Number(part) / 255;
            return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
          });
          return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
        };
        const box = document.querySelector('figure svg') as SVGElement;
        const host = document.createElementNS('http://www.w3.org/2000/svg', 'g');
        box.append(host);
        const wall = luminance(getComputedStyle(box.querySelector('.wall') as Element).fill);
        return ['round', 'square', 'sixfold', 'pointed', 'whole'].map((shape) => {
          host.setAttribute('class', `particle ${shape}`);
          host.innerHTML = '<circle class="outline" r="5"/><text>x</text>';
          const outline = getComputedStyle(host.querySelector('.outline') as Element);
          const text = getComputedStyle(host.querySelector('text') as Element);
          return {
            shape,
            wall,
            stroke: luminance(outline.stroke),
            fill: luminance(outline.fill),
            text: luminance(text.fill),
          };
        });
      });
      const contrast = (one: number, other: number) => (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
      for (const { shape, wall, stroke, fill, text } of shades) {
        expect(contrast(stroke, wall), shape).toBeGreaterThanOrEqual(3);
        expect(contrast(text, fill), shape).toBeGreaterThanOrEqual(4.5);
      }
      const fillOf = (name: string) => shades.find(({ shape }) => shape === name)?.fill ?? Number.NaN;
      expect(contrast(fillOf('round'), fillOf('square'))).toBeGreaterThanOrEqual(3);
      expect(contrast(fillOf('sixfold'), fillOf('pointed'))).toBeGreaterThanOrEqual(3);
    },
  );
});

describe('the page to project', () => {
  it.each([
    { about: '', says: texts.particles.typical, round: 10 },
    { about: 'c1-t1', says: 'Basalt, Second period', round: 4 },
  ])('shows the picture of “$about” large, with a way back', async ({ about, says, round }) => {
    const page = await openSidebar({
      answers: { readNumbers: [{ value: good(numbers) }], openPage: [{ value: good(null) }] },
      opened: { page: 'particles', about },
      width: 1000,
    });
    await page.waitForSelector('figure svg');
    await page.getByText(says).waitFor();
    expect((await drawn(page))[0]).toMatchObject({ round, square: 2 * round });
    const boxes = await page
      .locator('figure svg')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().width));
    expect(boxes[0]).toBeGreaterThan(400);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await sidewaysScroll(page)).toBe(0);
    await page.getByRole('button', { name: 'Back to the sidebar' }).click();
    const open = page;
    await expect
      .poll(async () => (await callsOf(open)).at(-1))
      .toEqual({ name: 'openPage', args: ['sidebar', 'particles'] });
  });

  // The windows themselves, and what a dialog leaves of them.
  it.each([
    { width: 1366, height: 768 },
    { width: 1024, height: 768 },
    { width: 1000, height: 620 },
    { width: 960, height: 620 },
  ])('has before and after in sight at once at $width × $height, with subscripts', async ({ width, height }) => {
    const hydrate = { ...givens, formula: 'CuSO4·5H2O', ion: 'SO4^2-' };
    const page = await openSidebar({
      answers: { readNumbers: [{ value: good({ ...numbers, typical: hydrate, teams: [] }) }] },
      opened: { page: 'particles' },
      width,
    });
    await page.setViewportSize({ width, height });
    await page.locator('#sample-after').waitFor();
    const figures = await page
      .locator('.figures')
      .first()
      .locator('figure')
      .evaluateAll((all) =>
        all.map((one) => {
          const { top, bottom, left } = one.getBoundingClientRect();
          return { top, bottom, left };
        }),
      );
    expect(figures).toHaveLength(2);
    expect(figures[0]?.top).toBe(figures[1]?.top);
    expect(figures[0]?.left).toBeLessThan(figures[1]?.left ?? 0);
    for (const { bottom } of figures) expect(bottom).toBeLessThanOrEqual(height);
    const words = (await page.locator('.kinds').textContent()) ?? '';
    expect(words).toContain('CuSO₄·5H₂O');
    expect(words).toContain('SO₄²⁻');
    expect(await page.locator('main').textContent()).not.toContain('CuSO4');
    expect(await sidewaysScroll(page)).toBe(0);
  });

  it('writes formulas as they are printed', () => {
    for (const [typed, printed] of [
      ['KBr', 'KBr'],
      ['CuSO4·5H2O', 'CuSO₄·5H₂O'],
      ['KAl(SO4)2·12H2O', 'KAl(SO₄)₂·12H₂O'],
      ['C12H22O11', 'C₁₂H₂₂O₁₁'],
    ] as const) {
      expect(writtenFormula(typed)).toBe(printed);
    }
  });

  it('shows the dilution that it was opened for, and another from the keyboard', async () => {
    const page = await openSidebar({
      answers: { readNumbers: [{ value: good(row) }] },
      opened: { page: 'particles', about: '2|' },
      width: 1000,
    });
    const caption = page.locator('#sample-before');
    await caption.waitFor();
    expect(await caption.textContent()).toMatch(/^Before, a sample of flask 1/);
    await page.getByLabel('Which dilution').focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => caption.textContent()).toMatch(/^Before, a sample of flask 2/);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});
