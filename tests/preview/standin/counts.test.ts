import { describe, expect, it } from 'vitest';
import { open, text, typeIn } from './script.ts';

describe('counts of calls', () => {
  it('one edit inside a range argument is one call of that function and none of others', () => {
    const host = open();
    typeIn(host, { A1: '1', A2: '2', B1: '=TWICE(A1:A5)', D1: '=TWICE(C1)', C1: '7' });
    host.resetCounts();
    typeIn(host, { A2: '3' });
    expect(host.counts.functions).toEqual({ TWICE: 1 });
    host.resetCounts();
    typeIn(host, { A9: 'beside' });
    expect(host.counts.functions).toEqual({});
  });
  it('a block pasted into a range argument is one call', () => {
    const host = open();
    typeIn(host, { B1: '=TWICE(A1:A5)' });
    host.resetCounts();
    host.type(
      'teacher',
      [1, 2, 3].map((row) => ({ sheet: 0, row, column: 1, text: String(row) })),
    );
    expect(host.counts.functions).toEqual({ TWICE: 1 });
  });
  it('native formulas that read a result cost no call', () => {
    const host = open();
    typeIn(host, { A1: '1', B1: '=TABLE(3,1)', D1: '=SUM(B1:B3)+A1', D2: '=COUNTIF(B1:B3,">20")' });
    host.resetCounts();
    typeIn(host, { A1: '2' });
    expect([text(host, 'D1'), text(host, 'D2'), host.counts.functions]).toEqual(['65', '2', {}]);
  });
  it('an edit in the middle of many blocks calls one of them', () => {
    const host = open(`function build() {
      const sheet = SpreadsheetApp.getActiveSheet();
      sheet.insertRowsAfter(1000, 1000);
      for (let at = 0; at < 40; at += 1) sheet.getRange(at * 40 + 1, 3).setFormula('=TWICE(A' + (at * 40 + 1) + ':A' + (at * 40 + 30) + ')');
    }`);
    host.run('teacher', 'build', []);
    expect(host.counts.functions).toEqual({ TWICE: 40 });
    host.resetCounts();
    host.type('student', [{ sheet: 0, row: 20 * 40 + 5, column: 1, text: '4' }]);
    expect(host.counts.functions).toEqual({ TWICE: 1 });
    expect(host.view('student').sheets[0]?.cells[`${20 * 40 + 5},3`]?.text).toBe('8');
  });
  it('entering a formula again is a call again', () => {
    const host = open(
      "function again() { const cell = SpreadsheetApp.getActiveSheet().getRange('B1'); cell.setFormula(cell.getFormula()); }",
    );
    typeIn(host, { A1: '1', B1: '=TWICE(A1)' });
    host.resetCounts();
    host.run('teacher', 'again', []);
    expect(host.counts.functions).toEqual({ TWICE: 1 });
  });
  it('each call of a service counts by its name', () => {
    const host = open(`function work() {
      const sheet = SpreadsheetApp.getActiveSpreadsheet().getActiveSheet();
      sheet.getRange(1, 1, 2, 2).setValues([[1, 2], [3, 4]]);
      return sheet.getRange('A1:B2').getValues();
    }`);
    expect(host.run('teacher', 'work', [])).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(host.counts.host).toEqual({
      'SpreadsheetApp.getActiveSpreadsheet': 1,
      'Spreadsheet.getActiveSheet': 1,
      'Sheet.getRange': 2,
      'Range.setValues': 1,
      'Range.getValues': 1,
    });
  });
  it('formulas written by a script are worked out once, after the cells they need', () => {
    const host = open(`function work() {
      const sheet = SpreadsheetApp.getActiveSheet();
      sheet.getRange('B1').setFormula('=TWICE(A1:A3)');
      sheet.getRange('A1').setValue(1);
      sheet.getRange('A2').setValue(2);
      SpreadsheetApp.flush();
      return sheet.getRange('B1:B3').getValues();
    }`);
    expect(host.run('teacher', 'work', [])).toEqual([[2], [4], ['']]);
    expect(host.counts.functions).toEqual({ TWICE: 1 });
  });
  it('a script loaded once and one loaded for each call give the same', () => {
    const counting = 'let loads = 0; /** Loads. @customfunction */ function LOADS(x) { loads += 1; return loads; }';
    const [once, afresh] = [false, true].map((freshContexts) => {
      const host = open(counting, { freshContexts });
      typeIn(host, { A1: '=LOADS(1)', A2: '=LOADS(2)' });
      return [text(host, 'A1'), text(host, 'A2'), host.counts.functions];
    });
    expect(once).toEqual(['1', '2', { LOADS: 2 }]);
    expect(afresh).toEqual(['1', '1', { LOADS: 2 }]);
  });
});
