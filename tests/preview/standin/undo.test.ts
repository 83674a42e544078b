import { describe, expect, it } from 'vitest';
import { open, text, typeIn } from './script.ts';

const shown = (host: ReturnType<typeof open>) =>
  Object.fromEntries(Object.entries(host.view('teacher').sheets[0]?.cells ?? {}).map(([at, cell]) => [at, cell.text]));

describe('undo', () => {
  it('puts back what a seat typed, newest first, and does it again', () => {
    const host = open();
    typeIn(host, { A1: '1', B1: '=A1+1' });
    typeIn(host, { A1: '5%' });
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['5%', '1.05']);
    expect(host.undo('teacher').done).toBe(true);
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['1', '2']);
    expect(host.undo('teacher').done).toBe(true);
    expect(host.undo('teacher').done).toBe(true);
    expect(host.undo('teacher').done).toBe(false);
    expect(shown(host)).toEqual({});
    while (host.redo('teacher').done);
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['5%', '1.05']);
    expect(host.redo('teacher').done).toBe(false);
  });
  it('takes a pasted block as one', () => {
    const host = open();
    host.type('teacher', [
      { sheet: 0, row: 1, column: 1, text: 'a' },
      { sheet: 0, row: 2, column: 1, text: 'b' },
    ]);
    host.undo('teacher');
    expect(shown(host)).toEqual({});
  });
  it('keeps to its own seat', () => {
    const host = open();
    typeIn(host, { A1: 'teacher' });
    typeIn(host, { B1: 'student' }, 'student');
    host.undo('teacher');
    expect(shown(host)).toEqual({ '1,2': 'student' });
  });
  it('ends what could be done again once something new is typed', () => {
    const host = open();
    typeIn(host, { A1: 'one' });
    host.undo('teacher');
    typeIn(host, { A1: 'two' });
    expect(host.redo('teacher').done).toBe(false);
  });
  it('brings deleted rows back with the references to them', () => {
    const host = open();
    typeIn(host, { A1: '1', A2: '2', A3: '3', C1: '=SUM(A1:A3)', C2: '=A2', D3: '=TABLE(2,2)' });
    const before = shown(host);
    host.deleteRows('teacher', 0, 2, 1);
    expect(text(host, 'C1')).toBe('4');
    host.undo('teacher');
    expect(shown(host)).toEqual(before);
    host.redo('teacher');
    expect([text(host, 'C1'), text(host, 'D2')]).toEqual(['4', '11']);
  });
  it('takes inserted rows and a sort away again', () => {
    const host = open();
    typeIn(host, { A1: '2', A2: '1', B1: '=A1*10', B2: '=A2*10', D1: '=TABLE(2,1)' });
    const before = shown(host);
    host.insertRows('teacher', 0, 2, 2);
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 4, columns: 2 }, 1, true);
    host.undo('teacher');
    host.undo('teacher');
    expect(shown(host)).toEqual(before);
  });
});

describe('undo of rows while others type', () => {
  it('keeps what was typed since', () => {
    const host = open();
    typeIn(host, { A1: '1', A2: '2', A3: '3', C1: '=SUM(A1:A3)' });
    host.deleteRows('teacher', 0, 2, 1);
    typeIn(host, { B2: 'mine', E5: 'too' }, 'student');
    expect(host.undo('teacher').done).toBe(true);
    expect(shown(host)).toEqual({ '1,1': '1', '2,1': '2', '3,1': '3', '1,3': '6', '3,2': 'mine', '6,5': 'too' });
    host.insertRows('teacher', 0, 1, 1);
    typeIn(host, { A1: 'in the new row' }, 'student');
    expect(host.undo('teacher').done).toBe(false);
    expect(text(host, 'A1')).toBe('in the new row');
  });
  it('follows rows that somebody else moved, for what was typed', () => {
    const host = open();
    typeIn(host, { A5: 'x' }, 'student');
    host.insertRows('teacher', 0, 1, 1);
    expect(host.undo('student')).toEqual({ done: true, changed: [{ sheet: 0, row: 6, column: 1 }], left: [] });
    expect(text(host, 'A6')).toBe('');
    typeIn(host, { A2: 'b', A1: 'z' }, 'student');
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 2, columns: 3 }, 1, true);
    expect([text(host, 'A1'), text(host, 'A2')]).toEqual(['b', 'z']);
    expect(host.undo('student').changed).toEqual([{ sheet: 0, row: 2, column: 1 }]);
    expect([text(host, 'A1'), text(host, 'A2')]).toEqual(['b', '']);
  });
  it('does not put back a formula whose cells moved, nor rows that moved again', () => {
    const host = open();
    typeIn(host, { B1: '=A5' }, 'student');
    typeIn(host, { B1: '7' }, 'student');
    host.insertRows('teacher', 0, 1, 1);
    expect(host.undo('student').done).toBe(false);
    expect(text(host, 'B2')).toBe('7');
    host.insertRows('student', 0, 3, 1);
    host.deleteRows('teacher', 0, 1, 1);
    expect(host.undo('student').done).toBe(false);
  });
});

describe('undo in several windows of one seat', () => {
  const at = (row: number, column: number, typed: string) => [{ sheet: 0, row, column, text: typed }];
  it('takes back what the window itself did and nothing else', () => {
    const host = open();
    host.type('student', at(1, 1, 'mine'), 'one');
    host.type('student', at(2, 1, 'theirs'), 'two');
    expect(host.undo('student', 'three')).toEqual({ done: false, changed: [], left: [] });
    expect(host.undo('student', 'one')).toEqual({ done: true, changed: [{ sheet: 0, row: 1, column: 1 }], left: [] });
    expect(shown(host)).toEqual({ '2,1': 'theirs' });
  });
  it('leaves what somebody typed over it since, and says which cell that is', () => {
    const host = open();
    host.type('teacher', at(1, 1, '15.0'), 'desk');
    host.type('teacher', at(1, 1, '10'), 'desk');
    host.type('student', at(1, 1, '20'), 'bench');
    expect(host.undo('teacher', 'desk')).toEqual({ done: false, changed: [], left: [{ sheet: 0, row: 1, column: 1 }] });
    expect(text(host, 'A1')).toBe('20');
  });
  it('takes back the rest of a block of which somebody changed a part', () => {
    const host = open();
    host.type('teacher', [...at(1, 1, 'a'), ...at(2, 1, 'b'), ...at(3, 1, 'c')], 'desk');
    host.type('student', at(2, 1, 'newer'), 'bench');
    expect(host.undo('teacher', 'desk')).toEqual({
      done: true,
      changed: [
        { sheet: 0, row: 1, column: 1 },
        { sheet: 0, row: 3, column: 1 },
      ],
      left: [{ sheet: 0, row: 2, column: 1 }],
    });
    expect(shown(host)).toEqual({ '2,1': 'newer' });
    host.redo('teacher', 'desk');
    expect(shown(host)).toEqual({ '1,1': 'a', '2,1': 'newer', '3,1': 'c' });
  });
  it('keeps the lists of the windows that were heard of last', () => {
    const host = open();
    for (let window = 0; window <= 100; window += 1) host.type('student', at(window + 1, 1, 'x'), `w${window}`);
    expect(host.undo('student', 'w0').done).toBe(false);
    expect(host.undo('student', 'w100').done).toBe(true);
  });
});
