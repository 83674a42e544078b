import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { linkTo } from '../../src/desk/sheets/linkTo.ts';
import { type ScanPattern, scanPattern } from '../../src/sidebar/sheets/scanPattern.ts';

const side = 4;

/** The drawing as a camera would see it: the rectangles of its path, filled black on white, so many pixels to a unit. */
function pixelsOf({ size, path }: ScanPattern): { readonly data: Uint8ClampedArray; readonly width: number } {
  const width = size * side;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-(\d+)z/g)];
  expect(runs.map(([run]) => run).join('')).toBe(path);
  for (const [, x = '', y = '', across = ''] of runs) {
    for (let row = Number(y) * side; row < (Number(y) + 1) * side; row += 1) {
      for (let column = Number(x) * side; column < (Number(x) + Number(across)) * side; column += 1) {
        data.fill(0, (row * width + column) * 4, (row * width + column) * 4 + 3);
      }
    }
  }
  return { data, width };
}
const read = (pattern: ScanPattern): string | undefined => {
  const { data, width } = pixelsOf(pattern);
  return jsQR(data, width, width, { inversionAttempts: 'dontInvert' })?.data;
};

describe('scanPattern', () => {
  // Read back by jsQR 1.4.0, an implementation of ISO/IEC 18004 that shares nothing with the one that draws.
  it.each([
    linkTo('https://sheets.invalid/spreadsheets/d/1AbCdEfGhIjKlMnOpQrStUvWxYz0123456789-_abcdef/edit', 1234567890),
    linkTo(
      'https://sheets.invalid/a/school.invalid/spreadsheets/d/1AbCdEfGhIjKlMnOpQrStUvWxYz0123456789/edit#gid=0',
      7,
    ),
    linkTo('http://127.0.0.1:4317/?seat=student', 104),
  ])('draws what a reader by others reads as %s', (address) => {
    expect(address).toMatch(/[^#]+#gid=\d+$/);
    expect(read(scanPattern(address))).toBe(address);
  });

  it('leaves four light modules around it, and is still read with an eighth of it covered', () => {
    const address = linkTo('https://sheets.invalid/spreadsheets/d/1AbCdEfGhIjKlMnOpQrStUvWxYz0123456789/edit', 42);
    const pattern = scanPattern(address);
    const places = [...pattern.path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, across]) => [
      Number(x),
      Number(y),
      Number(x) + Number(across),
    ]);
    expect(Math.min(...places.flatMap(([x = 0, y = 0]) => [x, y]))).toBe(4);
    expect(Math.max(...places.flatMap(([, y = 0, to = 0]) => [y + 1, to]))).toBe(pattern.size - 4);
    const { data, width } = pixelsOf(pattern);
    const from = Math.floor(width / 2);
    const covered = Math.floor(width / 8);
    for (let row = from; row < from + covered; row += 1) {
      data.fill(255, (row * width + from) * 4, (row * width + from + covered) * 4);
    }
    expect(jsQR(data, width, width, { inversionAttempts: 'dontInvert' })?.data).toBe(address);
  });
});
