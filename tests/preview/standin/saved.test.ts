import { describe, expect, it } from 'vitest';
import { open, text, typeIn } from './script.ts';

const script = `
function dress() {
  const book = SpreadsheetApp.getActive();
  const sheet = book.getSheets()[0];
  sheet.getRange('A1').setNote('note').setNumberFormat('@').setValue('0.400');
  sheet.getRange('B1:B3').setBackground('#ff0000').setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(['a', 'b']).build());
  sheet.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenTextEqualTo('a').setBackground('#00ff00').setRanges([sheet.getRange('B1:B3')]).build()]);
  const guard = sheet.protect(); guard.removeEditors(guard.getEditors()); guard.setUnprotectedRanges([sheet.getRange('B1:B3')]);
  sheet.setFrozenRows(1); sheet.setColumnWidth(2, 222); sheet.hideColumns(4); sheet.getRange('F1:G1').merge();
  sheet.addDeveloperMetadata('role', 'plan');
  book.setNamedRange('stock', sheet.getRange('A1'));
  book.setRecalculationInterval(SpreadsheetApp.RecalculationInterval.MINUTE);
  PropertiesService.getDocumentProperties().setProperty('layout', '3');
  const two = book.insertSheet('Class 1'); two.getRange('A1').setFormula("='Sheet1'!A1&\\"!\\""); two.hideSheet();
  two.getRange('B1').setFormula('=TABLE(2,2)');
}
function alter() {
  const book = SpreadsheetApp.getActive();
  const sheet = book.getSheets()[0];
  sheet.getRange('A1').setNote('other').setValue('0.500');
  sheet.getRange('B1:B3').setBackground('#0000ff').clearDataValidations();
  sheet.clearConditionalFormatRules(); sheet.getRange('F1:G1').breakApart(); sheet.getRange('F2:G2').merge();
  const guard = sheet.getProtections(SpreadsheetApp.ProtectionType.SHEET)[0];
  guard.addEditor('somebody@class.invalid').setUnprotectedRanges([]);
  sheet.getDeveloperMetadata()[0].setValue('other'); sheet.setColumnWidth(2, 99).showColumns(4);
  book.removeNamedRange('stock');
  PropertiesService.getDocumentProperties().setProperty('layout', '4');
}
function kept() {
  const book = SpreadsheetApp.getActive();
  return [PropertiesService.getDocumentProperties().getProperty('layout'), book.getSheets()[0].getDeveloperMetadata()[0].getValue(), book.getRangeByName('stock').getValue(), book.getRecalculationInterval() === SpreadsheetApp.RecalculationInterval.MINUTE];
}`;

interface SavedFile {
  readonly form: number;
  readonly formats: readonly object[];
  readonly sheets: readonly {
    readonly cells: readonly (readonly [row: number, column: number, cell: object, format?: number])[];
  }[];
}

describe('save', () => {
  it('loses nothing over a restart', () => {
    const host = open(script, { locale: 'de_DE', name: 'Bench' });
    host.run('teacher', 'dress', []);
    typeIn(host, { B1: 'a', C3: '0,5', C4: '=ROUND(C3;0)', C5: '1.3.2026', C6: "'=x" });
    const again = open(script, { saved: host.save() });
    expect(again.view('teacher')).toEqual({ ...host.view('teacher'), version: again.view('teacher').version });
    expect(again.view('student').sheets).toEqual(host.view('student').sheets);
    expect(again.run('teacher', 'kept', [])).toEqual(['3', 'plan', '0.400', true]);
    expect(again.save()).toBe(host.save());
    expect(again.counts.functions).toEqual({});
  });
  it('is opened by several, and what one of them changes is changed for that one alone', () => {
    const host = open(script);
    host.run('teacher', 'dress', []);
    const saved = host.save();
    const [one, other] = [open(script, { saved }), open(script, { saved })];
    const before = other.view('student');
    one.run('teacher', 'alter', []);
    typeIn(one, { C3: '7', B1: 'b' });
    expect(one.save()).not.toBe(saved);
    expect(other.save()).toBe(saved);
    expect(other.view('student')).toEqual(before);
    expect(open(script, { saved }).save()).toBe(saved);
  });
  it('keeps ids apart in a sheet made afterwards', () => {
    const more = 'function more() { return SpreadsheetApp.getActive().insertSheet().getSheetId(); }';
    const host = open(more);
    const made = host.run('teacher', 'more', []);
    const again = open(more, { saved: host.save() });
    expect(again.run('teacher', 'more', [])).not.toBe(made);
    expect(new Set(again.view('teacher').sheets.map(({ id }) => id)).size).toBe(3);
  });
  it('holds each format once, and opens a file of an earlier version, in which each cell held its own', () => {
    const host = open(script);
    host.run('teacher', 'dress', []);
    const { formats, form, ...rest } = JSON.parse(host.save()) as SavedFile;
    expect(form).toBe(2);
    expect(formats).toEqual([{ numberFormat: '@' }, { background: '#ff0000' }]);
    const earlier = {
      ...rest,
      form: 1,
      sheets: rest.sheets.map((sheet) => ({
        ...sheet,
        cells: sheet.cells.map(([row, column, cell, format]) => [
          row,
          column,
          format === undefined ? cell : { ...cell, format: formats[format] },
        ]),
      })),
    };
    expect(open(script, { saved: JSON.stringify(earlier) }).save()).toBe(host.save());
  });
  it('keeps what was saved of a cell whose format is not in the file', () => {
    const host = open(script);
    host.run('teacher', 'dress', []);
    const saved = JSON.parse(host.save()) as SavedFile;
    const again = open(script, { saved: JSON.stringify({ ...saved, formats: saved.formats.slice(1) }) });
    expect(again.unreadCells).toEqual(['Sheet1 B1', 'Sheet1 B2', 'Sheet1 B3']);
    expect(text(again, 'B1')).toContain('"options":["a","b"]');
    expect(text(again, 'A1')).toBe('0.400');
  });
  it('refuses a text that is no saved workbook', () => {
    expect(() => open('', { saved: '{"cells":[]}' })).toThrow(/Expected a workbook saved by the stand-in/);
  });
  it('works formulas out again on opening', () => {
    const host = open();
    typeIn(host, { A1: '3', B1: '=TWICE(A1)' });
    const again = open('', { saved: host.save() });
    expect(text(again, 'B1')).toBe('6');
    typeIn(again, { A1: '4' });
    expect(text(again, 'B1')).toBe('8');
  });
});
