import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coloursShown, contrast } from '../../../src/preview/page/sheetColours.ts';

const colour = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
/** The page's own paper and ink in dark, as page.css has them: what shows a cell without colours of its own. */
const dark = { paper: '#141b21', ink: '#e7edf2' };

describe('contrast', () => {
  it('gives 21 for black on white (WCAG 2.2, relative luminance)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });
  it('gives 4.54 for #767676 on white (the least grey that passes, known from the definition)', () => {
    expect(contrast('#767676', '#fff')).toBeCloseTo(4.54, 2);
  });
});

describe('coloursShown', () => {
  it('knows the page’s own paper and ink in dark', () => {
    const page = readFileSync(new URL('../../../src/preview/page/page.css', import.meta.url), 'utf8');
    const [, own = ''] = page.split('@media (prefers-color-scheme: dark)');
    expect(/--paper: (\S+);/.exec(own)?.[1]).toBe(dark.paper);
    expect(/--ink: (\S+);/.exec(own)?.[1]).toBe(dark.ink);
  });
  it('keeps the workbook’s own colours in light', () => {
    expect(coloursShown({ background: '#ddf1f3', color: '#0b5c6b' }, 'light')).toEqual({
      background: '#ddf1f3',
      color: '#0b5c6b',
    });
  });
  it('makes text readable in dark, whatever the workbook’s colours', () => {
    const some = fc.option(fc.oneof(colour, fc.constant('#ffffff')), { nil: undefined });
    fc.assert(
      fc.property(some, some, (background, color) => {
        const shown = coloursShown({ background, color }, 'dark');
        expect(contrast(shown.background ?? dark.paper, shown.color ?? dark.ink)).toBeGreaterThanOrEqual(4.5);
        // Ink of the page's own stands on paper of its own only.
        if (shown.color === undefined) expect(shown).toEqual({});
      }),
      // A white cell without a colour of its own is the page's own paper and ink.
      { examples: [['#ffffff', undefined]] },
    );
  });
  it('shows white as the page’s own paper in dark', () => {
    expect(coloursShown({ background: '#ffffff' }, 'dark')).toEqual({});
  });
  it('leaves a cell without colours to the page', () => {
    expect(coloursShown({}, 'dark')).toEqual({});
  });
});
