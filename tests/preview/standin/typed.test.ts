import { describe, expect, it } from 'vitest';
import { localeOf } from '../../../src/preview/standin/localeOf.ts';
import { needsApostrophe, readTyped } from '../../../src/preview/standin/typed.ts';
import { cellView, open, text, typeIn } from './script.ts';

const read = (typed: string, locale = 'en_GB', numberFormat?: string) =>
  readTyped(typed, { numberFormat, locale: localeOf(locale) });
const number = (value: number) => ({ kind: 'number', value });
const asText = (written: string) => ({ kind: 'text', text: written });

describe('readTyped', () => {
  it.each([
    ['7', number(7)],
    ['-3.5', number(-3.5)],
    ['+3', number(3)],
    ['0.400', number(0.4)],
    ['1,234', number(1234)],
    ['1e5', number(100_000)],
    ['1E5', number(100_000)],
    ['5%', number(0.05)],
    ['5.0 %', number(0.05)],
    ['TRUE', { kind: 'boolean', value: true }],
    ['false', { kind: 'boolean', value: false }],
    ["'0.400", asText('0.400')],
    ["'=1+1", asText('=1+1')],
    ['12 mL', asText('12 mL')],
    ['KBr', asText('KBr')],
    ['1,5', asText('1,5')],
    ['=', asText('=')],
    ['@team', asText('@team')],
    ['-like this', asText('-like this')],
    ['=A1+1', { kind: 'formula', formula: '=A1+1' }],
    ['+A1', { kind: 'formula', formula: '=+A1' }],
    ['=SUM(A1;B1)', { kind: 'formula', formula: '=SUM(A1,B1)' }],
  ])('reads %j where the decimal mark is a point', (typed, content) => {
    expect(read(typed).content).toEqual(content);
  });
  it.each([
    ['0,5', number(0.5)],
    ['1.234,5', number(1234.5)],
    ['0.400', asText('0.400')],
    ['2,5%', number(0.025)],
    ['=ROUND(A1;2)', { kind: 'formula', formula: '=ROUND(A1,2)' }],
    ['=0,5*A1', { kind: 'formula', formula: '=0.5*A1' }],
    ['=IF(A1="a;b";1,5;2)', { kind: 'formula', formula: '=IF(A1="a;b",1.5,2)' }],
  ])('reads %j where the decimal mark is a comma', (typed, content) => {
    expect(read(typed, 'de_DE').content).toEqual(content);
  });
  it('reads dates by the locale and gives the cell a date format', () => {
    expect(read('2024-03-01')).toEqual({ content: number(45_352), numberFormat: 'yyyy-mm-dd' });
    expect(read('3/4/2024', 'en_US').content).toEqual(number(45_355));
    expect(read('3/4/2024', 'en_GB').content).toEqual(number(45_385));
    expect(read('1.3.2024', 'de_DE').content).toEqual(number(45_352));
  });
  it('gives a percentage its format, unless the cell has one', () => {
    expect(read('5%').numberFormat).toBe('0%');
    expect(read('5%', 'en_GB', '0.00').numberFormat).toBeUndefined();
  });
  it.each(['0.400', '5%', '=A1', 'TRUE', '2024-03-01', '+A1', ' x ', '1E5'])(
    'keeps %j in a plain-text cell',
    (typed) => {
      expect(read(typed, 'en_GB', '@').content).toEqual(asText(typed));
    },
  );
  it('reads nothing as a cleared cell', () => {
    expect(read('').content).toBeUndefined();
    expect(read('', 'en_GB', '@').content).toBeUndefined();
  });
  it('knows which texts need an apostrophe to stay texts', () => {
    const cell = { numberFormat: undefined, locale: localeOf('en_GB') };
    expect(['0.400', '=x', 'TRUE', "'x", 'KBr', '12 mL'].map((one) => needsApostrophe(one, cell))).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('values that a script writes', () => {
  const written = (value: unknown, format = '') => {
    const host = open(
      "function put(value, format) { const cell = SpreadsheetApp.getActiveSheet().getRange('A1'); if (format) cell.setNumberFormat(format); cell.setValue(value); return [typeof cell.getValue(), cell.getValue(), cell.getDisplayValue(), cell.getFormula()]; }",
    );
    return host.run('teacher', 'put', [value, format]);
  };
  it.each([
    ['0.400', '', ['number', 0.4, '0.4', '']],
    ['0.400', '@', ['string', '0.400', '0.400', '']],
    [0.4, '@', ['string', '0.4', '0.4', '']],
    [0.4, '0.000', ['number', 0.4, '0.400', '']],
    ['=1+1', '', ['number', 2, '2', '=1+1']],
    ["'=1+1", '', ['string', '=1+1', '=1+1', '']],
    ["'=1+1", '@', ['string', '=1+1', '=1+1', '']],
    ['TRUE', '', ['boolean', true, 'TRUE', '']],
    [null, '', ['string', '', '', '']],
    ['', '', ['string', '', '', '']],
  ])('reads %j in a cell of format %j', (value, format, seen) => {
    expect(written(value, format)).toEqual(seen);
  });
  it('hands dates back as dates', () => {
    const host = open(
      "function put() { const cell = SpreadsheetApp.getActiveSheet().getRange('A1'); cell.setValue(new Date(2026, 2, 1, 13, 30)); const back = cell.getValue(); return [back instanceof Date, back.getHours(), back.getMinutes(), cell.getDisplayValue()]; }",
    );
    expect(host.run('teacher', 'put', [])).toEqual([true, 13, 30, '2026-03-01 13:30:00']);
  });
  it('can be tried where plain-text cells keep the apostrophe', () => {
    const host = open(
      "function put(value) { const cell = SpreadsheetApp.getActiveSheet().getRange('A1').setNumberFormat('@'); cell.setValue(value); return [cell.getValue(), cell.getFormula()]; }",
      { plainTextKeepsApostrophe: true },
    );
    expect(host.run('teacher', 'put', ["'=1"])).toEqual(["'=1", '']);
    expect(host.run('teacher', 'put', ['=1'])).toEqual(['=1', '']);
  });
});

describe('a workbook with a decimal comma', () => {
  it('shows numbers and formulas in its own way, and works out the same', () => {
    const host = open('', { locale: 'de_DE' });
    typeIn(host, { A1: '0,5', B1: '=ROUND(A1*1,25;2)' });
    expect([text(host, 'A1'), text(host, 'B1'), cellView(host, 'B1')?.input]).toEqual([
      '0,5',
      '0,63',
      '=ROUND(A1*1,25;2)',
    ]);
    expect(cellView(host, 'A1')?.input).toBe('0,5');
  });
  it('takes semicolons from a script in every locale, and commas only where the comma is no decimal mark', () => {
    const script =
      "function put(formula) { const cell = SpreadsheetApp.getActiveSheet().getRange('A1'); cell.setFormula(formula); return [cell.getDisplayValue(), cell.getFormula()]; }";
    expect(open(script).run('teacher', 'put', ['=SUM(1;2)'])).toEqual(['3', '=SUM(1,2)']);
    const comma = open(script, { locale: 'de_DE' });
    expect(comma.run('teacher', 'put', ['=SUM(1;2)'])).toEqual(['3', '=SUM(1;2)']);
    expect(comma.run('teacher', 'put', ['=SUM(A2,B2)'])).toEqual(['#ERROR!', '=SUM(A2,B2)']);
  });
});

describe('formulas', () => {
  it.each([
    ['=1/0', '#DIV/0!'],
    ['=NA()', '#N/A'],
    ['=NOSUCHFUNCTION(1)', '#NAME?'],
    ['="a"+1', '#VALUE!'],
    ['=SQRT(-1)', '#NUM!'],
    ['=NoSheet!A1', '#REF!'],
    ['=A1', '#REF!'],
    ['=SUM(1,', '#ERROR!'],
  ])('%s shows %s', (formula, shown) => {
    const host = open();
    typeIn(host, { A1: formula });
    expect(text(host, 'A1')).toBe(shown);
    expect(cellView(host, 'A1')?.error).toBeTruthy();
  });
  it.each([
    ['=TRUE', 'TRUE'],
    ['=IF(FALSE,1,2)', '2'],
    ['=1E5*2', '200000'],
    ['=1e-12*1', '1E-12'],
    ['=0.1+0.2', '0.3'],
    ['=TODAY()', '2026-03-02'],
  ])('%s gives %s', (formula, shown) => {
    const host = open('', { clock: () => new Date(2026, 2, 2, 9, 30) });
    typeIn(host, { A1: formula });
    expect(text(host, 'A1')).toBe(shown);
  });
});
