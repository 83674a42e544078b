import { describe, expect, it } from 'vitest';
import { destination, hrefOf } from '../../../src/preview/page/cellLink.ts';
import type { SheetView } from '../../../src/preview/view.ts';

const sheets = [
  { id: 0, name: 'Plan' },
  { id: 7, name: 'Second period' },
] as SheetView[];

describe('destination', () => {
  it.each([
    { link: '#gid=7&range=B5', gives: { kind: 'cell', sheet: 7, place: { row: 5, column: 2 } } },
    { link: '#gid=0', gives: { kind: 'cell', sheet: 0, place: { row: 1, column: 1 } } },
    { link: '#gid=7&range=$C$3:D9', gives: { kind: 'cell', sheet: 7, place: { row: 3, column: 3 } } },
    { link: "#'Second period'!A4", gives: { kind: 'cell', sheet: 7, place: { row: 4, column: 1 } } },
    { link: 'https://example.org/a', gives: { kind: 'outside', address: 'https://example.org/a' } },
  ])('reads $link', ({ link, gives }) => {
    expect(destination(link, sheets)).toEqual(gives);
  });
  it.each([
    '#gid=8',
    '#gid=7&range=nowhere',
    'javascript:alert(1)',
    'data:text/html,x',
    '#',
    'file:///etc/hosts',
    '#%E0',
    "#'%E0'!A1",
  ])('refuses %s', (link) => {
    expect(destination(link, sheets)).toBeUndefined();
  });
});

describe('hrefOf', () => {
  it('gives an address that leads somewhere, and none that runs something', () => {
    expect(hrefOf('https://example.org/a')).toBe('https://example.org/a');
    expect(hrefOf('#gid=7')).toBe('#gid=7');
    for (const link of [
      'javascript:alert(1)',
      'JavaScript:alert(1)',
      ' javascript:x',
      'data:text/html,x',
      'vbscript:x',
      '#',
    ])
      expect(hrefOf(link)).toBeUndefined();
  });
});
