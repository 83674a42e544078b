import { describe, expect, it } from 'vitest';
import { aboutPicture, pictureAsked } from '../../src/sidebar/particles/aboutPicture.ts';

describe('what a page with a picture is told', () => {
  it.each([
    ['', 1],
    ['fern-class/otter', 1],
    ['fern-class/otter', 3],
    ['', 2],
    ['2|a key of its own', 2],
  ])('comes back as it was: %j, dilution %i', (key, step) => {
    expect(pictureAsked(aboutPicture({ key, step }))).toEqual({ key, step });
  });
  it('is about the first dilution where it names none', () => {
    expect(pictureAsked('fern-class/otter')).toEqual({ key: 'fern-class/otter', step: 1 });
    expect(pictureAsked('0|otter')).toEqual({ key: '0|otter', step: 1 });
  });
});
