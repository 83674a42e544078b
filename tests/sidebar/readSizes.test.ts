import { describe, expect, it } from 'vitest';
import { readSizes } from '../../src/sidebar/arithmetic/readSizes.ts';

describe('readSizes', () => {
  it.each([
    ['100, 200,250', [100, 200, 250]],
    ['250 100\n200', [100, 200, 250]],
    ['1 L, 1/2 L; 5 mL', [5, 500, 1000]],
    ['5, 5 mL', [5]],
    ['', []],
  ])('reads %j', (typed, sizes) => {
    expect(readSizes(typed, 'point')).toEqual({ sizes });
  });
  it('keeps a decimal comma inside a size', () => {
    expect(readSizes('2,5; 10, 25', 'comma')).toEqual({ sizes: [2.5, 10, 25] });
  });
  it('says what it could not read', () => {
    expect(readSizes('100, big', 'point')).toEqual({ message: expect.stringContaining('“big”') });
  });
});
