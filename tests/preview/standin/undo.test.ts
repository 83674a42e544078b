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
    expect(host.undo('teacher')).toBe(true);
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['1', '2']);
    expect(host.undo('teacher')).toBe(true);
    expect(host.undo('teacher')).toBe(true);
    expect(host.undo('teacher')).toBe(false);
    expect(shown(host)).toEqual({});
    while (host.redo('teacher'));
    expect([text(host, 'A1'), text(host, 'B1')]).toEqual(['5%', '1.05']);
    expect(host.redo('teacher')).toBe(false);
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
    expect(host.redo('teacher')).toBe(false);
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
    expect(host.undo('teacher')).toBe(true);
    expect(shown(host)).toEqual({ '1,1': '1', '2,1': '2', '3,1': '3', '1,3': '6', '3,2': 'mine', '6,5': 'too' });
    host.insertRows('teacher', 0, 1, 1);
    typeIn(host, { A1: 'in the new row' }, 'student');
    expect(host.undo('teacher')).toBe(false);
    expect(text(host, 'A1')).toBe('in the new row');
  });
  it('ends the undo list of the other seat, whose places moved', () => {
    const host = open();
    typeIn(host, { A5: 'x' }, 'student');
    host.insertRows('teacher', 0, 1, 1);
    expect(host.undo('student')).toBe(false);
    expect(text(host, 'A6')).toBe('x');
  });
});
