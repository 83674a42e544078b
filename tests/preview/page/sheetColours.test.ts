import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coloursShown, contrast } from '../../../src/preview/page/sheetColours.ts';

const colour = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
const darkPaper = '#141b21';

describe('contrast', () => {
  it('gives 21 for black on white (WCAG 2.2, relative luminance)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });
  it('gives 4.54 for #767676 on white (the least grey that passes, known from the definition)', () => {
    expect(contrast('#767676', '#fff')).toBeCloseTo(4.54, 2);
  });
});

describe('coloursShown', () => {
  it('keeps the workbook’s own colours in light', () => {
    expect(coloursShown({ background: '#ddf1f3', color: '#0b5c6b' }, 'light')).toEqual({
      background: '#ddf1f3',
      color: '#0b5c6b',
    });
  });
  it('makes text readable in dark, whatever the workbook’s colours', () => {
    fc.assert(
      fc.property(colour, fc.option(colour, { nil: undefined }), (background, color) => {
        const shown = coloursShown({ background, color }, 'dark');
        expect(contrast(shown.background ?? darkPaper, shown.color ?? '')).toBeGreaterThanOrEqual(4.5);
      }),
    );
  });
  it('makes coloured text readable on the page’s own dark', () => {
    fc.assert(
      fc.property(colour, (color) => {
        expect(contrast(darkPaper, coloursShown({ color }, 'dark').color ?? '')).toBeGreaterThanOrEqual(4.5);
      }),
    );
  });
  it('shows white as the page’s own paper in dark', () => {
    expect(coloursShown({ background: '#ffffff' }, 'dark')).toEqual({});
  });
  it('leaves a cell without colours to the page', () => {
    expect(coloursShown({}, 'dark')).toEqual({});
  });
});
