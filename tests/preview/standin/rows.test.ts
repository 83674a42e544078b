import { describe, expect, it } from 'vitest';
import { cellView, open, text, typeIn } from './script.ts';

const column = (host: ReturnType<typeof open>, letter: string, count: number) =>
  Array.from({ length: count }, (_, index) => text(host, `${letter}${index + 1}`));

describe('inserted and deleted rows', () => {
  it('move contents, notes, formats, rules and protections with their rows', () => {
    const host = open(`function dress() {
      const sheet = SpreadsheetApp.getActiveSheet();
      sheet.getRange('A3').setValue('x').setNote('a note').setBackground('#ff0000');
      sheet.getRange('A4:A5').protect().setWarningOnly(true);
      sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenTextEqualTo('y').setBackground('#00ff00').setRanges([sheet.getRange('B3:B6')]).build()]);
    }`);
    host.run('teacher', 'dress', []);
    typeIn(host, { B6: 'y', A5: 'kept' });
    host.insertRows('teacher', 0, 2, 2);
    expect(cellView(host, 'A5')).toMatchObject({ text: 'x', note: 'a note', background: '#ff0000' });
    expect(cellView(host, 'B8')).toMatchObject({ text: 'y', background: '#00ff00' });
    expect(cellView(host, 'A7')).toMatchObject({ text: 'kept', guarded: 'warning' });
    expect(host.view('teacher').sheets[0]?.rows).toBe(1002);
    host.deleteRows('teacher', 0, 2, 2);
    expect(cellView(host, 'A3')).toMatchObject({ text: 'x', note: 'a note' });
  });
  it('stretch the ranges of a formula that they fall into, and show it so', () => {
    const host = open();
    typeIn(host, { A1: '1', A2: '2', C1: '=SUM(A1:A2)', C2: '=SEEN(A1:A2)' });
    host.insertRows('teacher', 0, 2, 1);
    expect([cellView(host, 'C1')?.input, cellView(host, 'C3')?.input]).toEqual(['=SUM(A1:A3)', '=SEEN(A1:A3)']);
    expect(text(host, 'C3')).toBe('Number:1 / String: / Number:2');
  });
  it('leave the words of untouched formulas as they were typed', () => {
    const host = open();
    typeIn(host, { A1: '= sum( B1 ,2 )' });
    host.insertRows('teacher', 0, 5, 1);
    expect(cellView(host, 'A1')?.input).toBe('= sum( B1 ,2 )');
  });
  it('inside the rows that a result fills let it fill them anew, with one call', () => {
    const host = open();
    typeIn(host, { A1: '1', A2: '2', A3: '3', B1: '=TWICE(A1:A3)', D1: '=SUM(B1:B3)' });
    host.resetCounts();
    host.insertRows('teacher', 0, 2, 1);
    expect(column(host, 'B', 4)).toEqual(['2', '', '4', '6']);
    expect(text(host, 'D1')).toBe('12');
    expect(host.counts.functions).toEqual({ TWICE: 1 });
    host.deleteRows('teacher', 0, 3, 1);
    expect(column(host, 'B', 4)).toEqual(['2', '', '6', '']);
  });
  it('above a result take it along without a call', () => {
    const host = open();
    typeIn(host, { B2: '=TABLE(2,2)' });
    host.resetCounts();
    host.insertRows('teacher', 0, 1, 1);
    expect([text(host, 'B3'), text(host, 'C4'), text(host, 'B2')]).toEqual(['11', '22', '']);
    expect(host.counts.functions).toEqual({});
  });
  it('take a result with its formula', () => {
    const host = open();
    typeIn(host, { A1: 'top', B2: '=TABLE(3,1)' });
    host.deleteRows('teacher', 0, 2, 1);
    expect(column(host, 'B', 4)).toEqual(['', '', '', '']);
  });
  it('are refused outside the sheet', () => {
    const host = open();
    expect(() => host.insertRows('teacher', 0, 1002, 1)).toThrow(/out of bounds/);
    expect(() => host.deleteRows('teacher', 0, 1000, 2)).toThrow(/out of bounds/);
  });
});

describe('sorted rows', () => {
  it('go by number, then text, then logical value, blanks last either way', () => {
    const host = open();
    typeIn(host, { A1: 'b', A2: '10', A3: 'TRUE', A4: '2', A6: 'A' });
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 6, columns: 1 }, 1, true);
    expect(column(host, 'A', 6)).toEqual(['2', '10', 'A', 'b', 'TRUE', '']);
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 6, columns: 1 }, 1, false);
    expect(column(host, 'A', 6)).toEqual(['TRUE', 'b', 'A', '10', '2', '']);
  });
  it('take notes and formats along, and formulas keep pointing at their own row', () => {
    const host = open("function mark() { SpreadsheetApp.getActiveSheet().getRange('A1').setNote('was first'); }");
    typeIn(host, { A1: '2', A2: '1', B1: '=A1*10+$D$1', B2: '=A2*10+$D$1', D1: '5' });
    host.run('teacher', 'mark', []);
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 2, columns: 2 }, 1, true);
    expect([text(host, 'B1'), text(host, 'B2'), cellView(host, 'B1')?.input]).toEqual(['15', '25', '=A1*10+$D$1']);
    expect(cellView(host, 'A2')?.note).toBe('was first');
  });
  it('leave a result that fills several cells whole', () => {
    const host = open();
    typeIn(host, { A1: '3', A2: '2', A3: '1', B1: '=TABLE(3,1)' });
    host.sortRows('teacher', 0, { row: 1, column: 1, rows: 3, columns: 1 }, 1, true);
    expect([column(host, 'A', 3), column(host, 'B', 3)]).toEqual([
      ['1', '2', '3'],
      ['11', '21', '31'],
    ]);
  });
});
