import { describe, expect, it } from 'vitest';
import { cellView, open, text, typeIn } from './script.ts';

const texts = (host: ReturnType<typeof open>, ...cells: string[]) => cells.map((cell) => text(host, cell));

describe('results that fill several cells', () => {
  it('fill to the right and down, and say that they do', () => {
    const host = open();
    typeIn(host, { B2: '=TABLE(2,3)' });
    expect(texts(host, 'B2', 'C2', 'D2', 'B3', 'C3', 'D3')).toEqual(['11', '12', '13', '21', '22', '23']);
    expect(cellView(host, 'C3')).toMatchObject({ spilled: true, input: '' });
    expect(cellView(host, 'B2')?.spilled).toBeUndefined();
  });
  it('can be read by formulas, which follow them', () => {
    const host = open();
    typeIn(host, { A1: '2', B1: '=TABLE(A1,2)', E1: '=SUM(B1:C9)' });
    expect(text(host, 'E1')).toBe('66');
    typeIn(host, { A1: '1' });
    expect(texts(host, 'E1', 'B2')).toEqual(['23', '']);
    typeIn(host, { A1: '3' });
    expect(texts(host, 'E1', 'C3')).toEqual(['129', '32']);
  });
  it('never overwrite: an occupied cell makes an error that names it', () => {
    const host = open();
    typeIn(host, { B3: 'mine', A1: '=TABLE(3,2)' });
    expect(cellView(host, 'A1')).toMatchObject({
      text: '#REF!',
      error: 'Array result was not expanded because it would overwrite data in B3.',
    });
    expect(texts(host, 'A2', 'B3')).toEqual(['', 'mine']);
  });
  it('give way when somebody types into them, and come back when that is cleared', () => {
    const host = open();
    typeIn(host, { A1: '=TABLE(2,2)', D1: '=IFERROR(A1,"none")', B2: 'typed' });
    expect(texts(host, 'A1', 'B1', 'A2', 'B2', 'D1')).toEqual(['#REF!', '', '', 'typed', 'none']);
    typeIn(host, { B2: '' });
    expect(texts(host, 'A1', 'B1', 'A2', 'B2', 'D1')).toEqual(['11', '12', '21', '22', '11']);
  });
  it('do not call the function again to move out of the way', () => {
    const host = open();
    typeIn(host, { A1: '=TABLE(2,2)' });
    host.resetCounts();
    typeIn(host, { B2: 'typed' });
    typeIn(host, { B2: '' });
    expect(host.counts.functions).toEqual({});
  });
  it('go with their formula', () => {
    const host = open();
    typeIn(host, { A1: '=TABLE(2,2)' });
    typeIn(host, { A1: '' });
    expect(Object.keys(host.view('teacher').sheets[0]?.cells ?? {})).toEqual([]);
  });
  it('stop each other, the one that came first staying', () => {
    const host = open();
    typeIn(host, { A1: '=TABLE(3,2)', C1: '=TABLE(1,1)' });
    typeIn(host, { C2: '=TABLE(2,1)' });
    expect(texts(host, 'A1', 'B3', 'C2', 'C3')).toEqual(['11', '32', '11', '21']);
    typeIn(host, { A1: '=TABLE(3,3)' });
    expect(cellView(host, 'A1')?.error).toMatch(/overwrite data in C1/);
  });
  it('say how many rows are missing at the end of the sheet', () => {
    const host = open();
    host.type('teacher', [{ sheet: 0, row: 999, column: 1, text: '=TABLE(4,1)' }]);
    expect(host.view('teacher').sheets[0]?.cells['999,1']?.error).toBe(
      'Result was not automatically expanded, please insert more rows (2).',
    );
  });
  it('fill cells inside a larger formula too', () => {
    const host = open();
    typeIn(host, { A1: '2', B1: '=TRANSPOSE(TABLE(3,A1))', F1: '=SUM(TABLE(2,2))', F2: '=INDEX(TABLE(2,2),2,1)' });
    expect(texts(host, 'B1', 'C1', 'D1', 'B2', 'D2', 'F1', 'F2')).toEqual(['11', '21', '31', '12', '32', '66', '21']);
  });
  it.each([
    ['a flat array', 'return [1, 2]', /rows are not arrays/],
    ['rows of unequal length', 'return [[1], [1, 2]]', /unequal/],
    ['no rows', 'return []', /unequal or no length/],
    ['nothing', 'return undefined', /received undefined/],
    ['null in a row', 'return [[1, null]]', /received null/],
    ['not a number', 'return 0 / 0', /received NaN/],
    ['infinity in a row', 'return [[1 / 0]]', /received Infinity/],
    ['a date', 'return new Date()', /received a Date/],
  ])('are refused as %s, which the host is not known to show', (_, body, words) => {
    const host = open(`/** Odd. @customfunction */ function ODDITY() { ${body}; }`);
    typeIn(host, { A1: '=ODDITY()' });
    expect(cellView(host, 'A1')).toMatchObject({ text: '#ERROR!', error: expect.stringMatching(words) });
  });
});

describe('arguments of functions in cells', () => {
  it.each([
    ['a number', '2.5', 'Number:2.5'],
    ['a text', 'KBr', 'String:KBr'],
    ['a number as text', "'0.400", 'String:0.400'],
    ['a logical value', 'TRUE', 'Boolean:true'],
    ['a percentage', '5%', 'Number:0.05'],
    ['a blank', '', 'String:'],
    ['an error', '=NA()', 'String:#N/A'],
    ['a division by zero', '=1/0', 'String:#DIV/0!'],
  ])('come as the host types them: %s', (_, typed, seen) => {
    const host = open();
    typeIn(host, { A1: typed, B1: '=SEEN(A1)' });
    expect(text(host, 'B1')).toBe(seen);
  });
  it('come as a Date of the script itself where the cell is a date', () => {
    const host = open(
      '/** Date? @customfunction */ function ISDAY(x) { return x instanceof Date ? x.getFullYear() : typeof x; }',
    );
    typeIn(host, { A1: '2024-03-01', B1: '=ISDAY(A1)', C1: '=ISDAY(A1+1)' });
    expect(texts(host, 'B1', 'C1')).toEqual(['2024', '2024']);
  });
  it('come as rows of cells where they are a range, blanks as empty texts', () => {
    const host = open();
    typeIn(host, { A1: '1', B2: 'x', C1: '=SEEN(A1:B2)' });
    expect(text(host, 'C1')).toBe('Number:1 String: / String: String:x');
  });
  it('come undefined where they are left out', () => {
    const host = open('/** Left out? @customfunction */ function LEFT2(a, b) { return String(b); }');
    typeIn(host, { A1: '=LEFT2(1)' });
    expect(text(host, 'A1')).toBe('undefined');
  });
  it('are an error with its message and line where the function throws', () => {
    const host = open();
    typeIn(host, { A1: '=TWICE("x")' });
    expect(cellView(host, 'A1')).toMatchObject({
      text: '#ERROR!',
      error: expect.stringMatching(/^Error: Expected a number for x, received x\. \(line \d+\)\.$/),
    });
  });
});

describe("the engine's own array formulas", () => {
  it('are blocked in the words of the host, and fill again when there is room', () => {
    const host = open();
    typeIn(host, { A2: 'x', A1: '=SEQUENCE(3)' });
    expect(cellView(host, 'A1')).toMatchObject({ text: '#REF!', error: expect.stringMatching(/would overwrite data/) });
    typeIn(host, { A2: '' });
    expect([texts(host, 'A1', 'A2', 'A3'), cellView(host, 'A3')?.spilled]).toEqual([['1', '2', '3'], true]);
    typeIn(host, { A3: 'y' });
    expect(texts(host, 'A1', 'A2', 'A3')).toEqual(['#REF!', '', 'y']);
    host.insertRows('teacher', 0, 1, 1);
    typeIn(host, { A4: '' });
    expect(texts(host, 'A2', 'A3', 'A4')).toEqual(['1', '2', '3']);
  });
});
