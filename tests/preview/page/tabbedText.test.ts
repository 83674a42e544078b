import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTabbed, writeTabbed } from '../../../src/preview/page/tabbedText.ts';

describe('readTabbed', () => {
  it.each([
    {
      text: 'a\tb\nc\td',
      gives: [
        ['a', 'b'],
        ['c', 'd'],
      ],
    },
    {
      text: 'a\tb\r\nc\td\r\n',
      gives: [
        ['a', 'b'],
        ['c', 'd'],
      ],
    },
    { text: '', gives: [['']] },
    { text: '\t', gives: [['', '']] },
    { text: '"two\nlines"\tnext', gives: [['two\nlines', 'next']] },
    { text: '"say ""now"""', gives: [['say "now"']] },
    { text: '5" pipe\t"open', gives: [['5" pipe', '"open']] },
    { text: 'a\n\nb', gives: [['a'], [''], ['b']] },
  ])('reads $text', ({ text, gives }) => {
    expect(readTabbed(text)).toEqual(gives);
  });
  it('reads back whatever was written', () => {
    const cell = fc.stringMatching(/^[ a"\t\n\r,=0-9µ]{0,6}$/);
    const block = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }),
      );
    fc.assert(
      fc.property(block, (rows) => {
        // An empty last line cannot be told from the line break that ends the text.
        const last = rows.at(-1);
        fc.pre(rows.length === 1 || last?.length !== 1 || last[0] !== '');
        expect(readTabbed(writeTabbed(rows))).toEqual(rows);
      }),
    );
  });
});
