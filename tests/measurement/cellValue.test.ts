import { describe, expect, it } from 'vitest';
import { isBlank } from '../../src/measurement/cellValue.ts';

describe('isBlank', () => {
  it.each([undefined, null, '', ' ', '\t\n', '\u00a0'])('takes %j for nothing typed', (cell) => {
    expect(isBlank(cell)).toBe(true);
  });
  it.each([0, Number.NaN, false, true, '0', ' x ', new Date(0)])('takes %s for something typed', (cell) => {
    expect(isBlank(cell)).toBe(false);
  });
});
