import { afterEach, describe, expect, it } from 'vitest';
import { browserPages } from './browserPages.ts';
import { foreignText } from './foreignText.ts';

const pages = browserPages();
afterEach(async () => {
  expect(await pages.close()).toEqual([]);
});
const page = (body: string) => `data:text/html;charset=utf-8,${encodeURIComponent(body)}`;
const widthOf = (selector: string) => `document.querySelector("${selector}").getBoundingClientRect().width`;

describe('the font of the tests', () => {
  it('draws what pages ask to be drawn otherwise, their signs, marks and fields too', async () => {
    const opened = await pages.open(
      page(`<style>li::marker { content: "▲ " } i::before { content: "⚠" }</style>
        <p style="font-family: serif">Cu²⁺ + SO₄²⁻ ≈ 0.120 mol/L</p><b style="font: 700 12px monospace">✓ ↻ ↳ ● ▽ →</b>
        <ul><li>Otter</ul><i>Heron</i><input value="KBr"><svg><text y="20">Teal</text></svg>`),
    );
    const { own, foreign } = await foreignText(opened);
    expect(foreign).toEqual([]);
    expect(own).toBeGreaterThanOrEqual(5);
  });
  it('draws frames that may load nothing', async () => {
    const inner = '<p>Cu²⁺ ✓</p>'.replaceAll('"', '&quot;');
    const opened = await pages.open(page(`<iframe sandbox="allow-scripts" srcdoc="${inner}"></iframe>`));
    await opened.frameLocator('iframe').getByText('Cu').waitFor();
    const frame = opened.frames()[1];
    const family = await frame?.evaluate(() => getComputedStyle(document.querySelector('p') as Element).fontFamily);
    expect(family).toBe('"Font of the tests"');
    expect(await frame?.evaluate(() => document.fonts.check('16px "Font of the tests"'))).toBe(true);
  });
  it('measures the same on every machine', async () => {
    const opened = await pages.open(page('<span style="font: 100px system-ui">Basalt 0.120</span>'));
    expect(await opened.evaluate(widthOf('span'))).toBe(516.65625);
  });
  it('is missed where it is not brought', async () => {
    const opened = await pages.open(page('<p>Otter</p>'));
    await opened.evaluate(() => {
      document.adoptedStyleSheets = [];
    });
    // Drawn by a font of the machine, or by none where the machine has none.
    await expect.poll(async () => (await foreignText(opened)).own).toBe(0);
  });
});
