import { describe, expect, it } from 'vitest';
import { cellView, open, text, typeIn } from './script.ts';

interface Interpreter {
  evaluateAst(ast: { readonly procedureName?: string }, state: unknown): unknown;
}

const nested = (levels: number): string => `=${'('.repeat(levels)}1${')'.repeat(levels)}`;
const sum = (terms: number): string => `=${Array.from({ length: terms }, () => '1').join('+')}`;

describe('a formula that the engine cannot take', () => {
  it.each([
    { what: '800 nested brackets', formula: nested(800), says: '800 brackets inside each other' },
    { what: '1,500 terms', formula: sum(1500), says: '1499 signs between its terms' },
    { what: '800 nested calls', formula: `=${'ABS('.repeat(800)}1${')'.repeat(800)}`, says: '800 brackets' },
    { what: 'a text of a billion signs', formula: '=REPT("x",1000000000)', says: '50000 characters' },
    { what: 'a text that grows', formula: '=REPT("x",40000)&REPT("x",40000)', says: '50000 characters' },
  ])('is an error in its cell: $what', ({ formula, says }) => {
    const host = open();
    typeIn(host, { A1: formula, B1: '=TWICE(4)' });
    expect(cellView(host, 'A1')).toMatchObject({ text: '#ERROR!', input: formula });
    expect(cellView(host, 'A1')?.error).toContain(says);
    // The others go on: typed, computed, moved and taken back.
    typeIn(host, { C1: '=B1+1' });
    host.insertRows('teacher', 0, 1, 1);
    expect([text(host, 'B2'), text(host, 'C2')]).toEqual(['8', '9']);
    expect(cellView(host, 'A2')?.input).toBe(formula);
    typeIn(host, { A2: '5', D2: '=A2*2' });
    expect(text(host, 'D2')).toBe('10');
  });
  it('leaves the file readable', () => {
    const host = open();
    typeIn(host, { A1: nested(800), A2: sum(1500), A3: '=REPT("x",1000000000)', B1: 'kept' });
    const again = open('', { saved: host.save() });
    expect([text(again, 'A1'), text(again, 'A2'), text(again, 'A3'), text(again, 'B1')]).toEqual([
      '#ERROR!',
      '#ERROR!',
      '#ERROR!',
      'kept',
    ]);
    expect(cellView(again, 'A1')?.input).toBe(nested(800));
    expect(again.unreadCells).toEqual([]);
  });
  it('is none where a formula is only long', () => {
    const host = open();
    typeIn(host, { A1: nested(60), A2: sum(400), A3: '=LEN(REPT("ab",25000))', A4: `="${'(('.repeat(400)}"` });
    expect([text(host, 'A1'), text(host, 'A2'), text(host, 'A3'), text(host, 'A4').length]).toEqual([
      '1',
      '400',
      '50000',
      800,
    ]);
  });
  it('is an error in its cell when it fails while it is worked out', () => {
    const host = open();
    typeIn(host, { B1: '1' });
    // Planted inside the engine: no text of ours is known to make it fail there.
    const { interpreter } = (host.book.engine as unknown as { _evaluator: { interpreter: Interpreter } })._evaluator;
    const evaluate = interpreter.evaluateAst;
    interpreter.evaluateAst = function (ast, state) {
      if (ast.procedureName === 'SQRT') throw new RangeError('planted');
      return evaluate.call(this, ast, state);
    };
    typeIn(host, { C1: '=SQRT(4)', D1: '=B1+1' });
    expect(cellView(host, 'C1')).toMatchObject({ text: '#ERROR!' });
    expect(cellView(host, 'C1')?.error).toContain('planted');
    expect(text(host, 'D1')).toBe('2');
  });
});

describe('a saved workbook with a cell that cannot be read', () => {
  it('opens without it, with what was saved of it as text', () => {
    const host = open();
    typeIn(host, { A1: 'one', A2: 'two', A3: '=A1' });
    const saved = JSON.parse(host.save()) as { sheets: { cells: [number, number, unknown][] }[] };
    const cells = saved.sheets[0]?.cells ?? [];
    for (const cell of cells) if (cell[0] === 2) cell[2] = { content: { kind: 'formula' } };
    cells.push([4, 1, null], [5, 1, { content: { kind: 'number', value: null } }]);
    const again = open('', { saved: JSON.stringify(saved) });
    expect(again.unreadCells).toEqual(['Sheet1 A2', 'Sheet1 A4', 'Sheet1 A5']);
    expect([text(again, 'A1'), text(again, 'A3')]).toEqual(['one', 'one']);
    expect(text(again, 'A2')).toBe('Could not be read: {"content":{"kind":"formula"}}');
    expect(text(again, 'A4')).toBe('Could not be read: null');
  });
});

describe('code from text', () => {
  const more = `function RUNS(text) { return eval(text); }
    function MAKES(text) { return new Function(text)(); }
    function HAS() { return typeof WebAssembly === 'undefined' ? 'none' : new WebAssembly.Module(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])).constructor.name; }`;
  it('is refused where the stand-in is told so', () => {
    const host = open(more, { allowCodeFromText: false });
    typeIn(host, { A1: '=RUNS("1+1")', A2: '=MAKES("return 2")', A3: '=HAS()', A4: '=TWICE(2)' });
    for (const cell of ['A1', 'A2', 'A3']) expect(text(host, cell)).toBe('#ERROR!');
    expect(cellView(host, 'A1')?.error).toContain('Code generation from strings disallowed');
    expect(text(host, 'A4')).toBe('4');
  });
  it('runs where it is not', () => {
    const host = open(more, { allowCodeFromText: true });
    typeIn(host, { A1: '=RUNS("1+1")', A2: '=MAKES("return 2")' });
    expect([text(host, 'A1'), text(host, 'A2')]).toEqual(['2', '2']);
  });
});
