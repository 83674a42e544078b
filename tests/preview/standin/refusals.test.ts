import { describe, expect, it } from 'vitest';
import { open } from './script.ts';

const attempt = (body: string): unknown => {
  const host = open(
    `function attempt() { const sheet = SpreadsheetApp.getActiveSpreadsheet().getSheets()[0]; ${body} }`,
  );
  return host.run('teacher', 'attempt', []);
};

describe('what the host refuses in a script', () => {
  it.each([
    [
      'a block with too few rows',
      "sheet.getRange(1, 1, 3, 1).setValues([['a'], ['b']])",
      /data has 2 but the range has 3/,
    ],
    [
      'a block with too many columns',
      "sheet.getRange(1, 1, 1, 1).setValues([['a', 'b']])",
      /data has 2 but the range has 1/,
    ],
    ['a flat array as a block', "sheet.getRange(1, 1, 1, 2).setValues(['a', 'b'])", /method signature.*setValues/],
    [
      'formats of another shape',
      "sheet.getRange('A1:B2').setNumberFormats([['@', '@']])",
      /data has 1 but the range has 2/,
    ],
    ['an unknown colour', "sheet.getRange('A1').setBackground('hurple')", /color \(hurple\)/],
    ['an unknown weight', "sheet.getRange('A1').setFontWeight('heavy')", /setFontWeight: heavy/],
    ['a range past the last row', 'sheet.getRange(1000, 1, 2, 1)', /outside the dimensions/],
    ['a range before the first row', 'sheet.getRange(0, 1)', /starting row of the range is too small/],
    ['a range of no rows', 'sheet.getRange(1, 1, 0, 1)', /at least 1/],
    ['a range by a name that is none', "sheet.getRange('no such range')", /Range not found/],
    ['a text where a number belongs', "sheet.getRange('A1').setFontSize('big')", /method signature/],
    ['a sheet name that is taken', "SpreadsheetApp.getActive().insertSheet('Sheet1')", /already exists/],
    [
      'taking the name of another sheet',
      "SpreadsheetApp.getActive().insertSheet('Two').setName('sheet1')",
      /already exists/,
    ],
    ['deleting the only sheet', 'SpreadsheetApp.getActive().deleteSheet(sheet)', /remove all the sheets/],
    ['hiding the only sheet', 'sheet.hideSheet()', /hide all the sheets/],
    [
      'unprotected ranges on a range',
      "sheet.getRange('A1').protect().setUnprotectedRanges([])",
      /only be set on a protected sheet/,
    ],
    ['domain editing without a domain', 'sheet.protect().setDomainEdit(false)', /domain/],
    [
      'a rule without a condition',
      "SpreadsheetApp.newConditionalFormatRule().setRanges([sheet.getRange('A1')]).build()",
      /must have a condition/,
    ],
    [
      'a rule without a range',
      'SpreadsheetApp.newConditionalFormatRule().whenCellEmpty().build()',
      /at least one range/,
    ],
    [
      'a property that is too large',
      "PropertiesService.getDocumentProperties().setProperty('a', 'x'.repeat(9300))",
      /Argument too large/,
    ],
    ['a cache key that is too long', "CacheService.getScriptCache().put('k'.repeat(251), 'x')", /Argument too large/],
    ['the address of the user', 'Session.getActiveUser()', /userinfo\.email/],
    [
      'reaching the network',
      "UrlFetchApp.fetch('https://example.invalid')",
      /You do not have permission to call UrlFetchApp\.fetch/,
    ],
    ['an HTML file that is not there', "HtmlService.createHtmlOutputFromFile('Nowhere')", /No HTML file named Nowhere/],
    ['a member it does not have', 'sheet.newChart()', /does not cover Sheet\.newChart/],
    ['a text of more than 50 000 characters', "sheet.getRange('A1').setValue('x'.repeat(50001))", /50000 characters/],
    [
      'a bare = in a plain-text cell',
      "sheet.getRange('A1').setNumberFormat('@').setValue('=1+1')",
      /plain-text cell is not known/,
    ],
  ])('refuses %s', (_, body, words) => {
    expect(() => attempt(body)).toThrow(words);
  });

  it('throws an Exception that is an Error of the script', () => {
    const seen = attempt(
      'try { sheet.getRange(0, 0); } catch (error) { return [error instanceof Error, error.name]; }',
    );
    expect(seen).toEqual([true, 'Exception']);
  });

  it('refuses properties over the size of the store', () => {
    const fill =
      "for (let at = 0; at < 60; at += 1) PropertiesService.getScriptProperties().setProperty('key' + at, 'x'.repeat(9000));";
    expect(() => attempt(fill)).toThrow(/storage quota/);
  });

  it.each([
    'setTimeout',
    'URL',
    'TextEncoder',
    'fetch',
    'atob',
    'process',
    'crypto',
    'window',
    'structuredClone',
    'require',
  ])('has no %s', (name) => {
    expect(attempt(`return typeof ${name};`)).toBe('undefined');
  });

  it('has what the host has: console, Intl, Promise', () => {
    expect(attempt("console.log('seen'); return [typeof console.log, typeof Intl, typeof Promise];")).toEqual([
      'function',
      'object',
      'function',
    ]);
  });

  it('refuses a script with syntax newer than ES2019', () => {
    expect(() => open('class A { #hidden = 1; }')).toThrow(/^Syntax error: .* line: \d+ file: Code\.gs$/);
    expect(() => open('const big = 10n;')).toThrow(/^Syntax error/);
  });

  it('refuses a custom function with the name of a built-in one', () => {
    expect(() => open('/** Mine. @customfunction */ function SUM(x) { return x; }')).toThrow(/SUM/);
  });
});

describe('what the host refuses a function in a cell', () => {
  it.each([
    [
      'writing',
      "SpreadsheetApp.getActiveSheet().getRange('B1').setValue(1)",
      /You do not have permission to call setValue/,
    ],
    [
      'formatting',
      "SpreadsheetApp.getActiveSheet().getRange('B1').setBackground('red')",
      /permission to call setBackground/,
    ],
    ['making a sheet', 'SpreadsheetApp.getActive().insertSheet()', /permission to call insertSheet/],
    ['the menu', 'SpreadsheetApp.getUi()', /Cannot call SpreadsheetApp\.getUi\(\) from this context/],
    ['the network without a scope', "UrlFetchApp.fetch('https://example.invalid')", /permission to call UrlFetchApp/],
    [
      'setting properties',
      "PropertiesService.getUserProperties().setProperty('a', 'b')",
      /permission to call setProperty/,
    ],
    [
      'the properties of the document',
      'PropertiesService.getDocumentProperties()',
      /permission to call PropertiesService/,
    ],
  ])('refuses %s', (_, body, words) => {
    const host = open(`/** Tries. @customfunction */ function TRYIT() { ${body}; return 'done'; }`);
    host.type('teacher', [{ sheet: 0, row: 1, column: 1, text: '=TRYIT()' }]);
    const cell = host.view('teacher').sheets[0]?.cells['1,1'];
    expect(cell?.text).toBe('#ERROR!');
    expect(cell?.error).toMatch(words);
  });

  it('lets it read its own cell and its own workbook', () => {
    const host = open(
      "/** Where. @customfunction */ function WHERE() { return SpreadsheetApp.getActiveRange().getA1Notation() + ' ' + SpreadsheetApp.getActiveSheet().getRange('A1').getValue(); }",
    );
    host.type('teacher', [{ sheet: 0, row: 1, column: 1, text: 'top' }]);
    host.type('teacher', [{ sheet: 0, row: 3, column: 2, text: '=WHERE()' }]);
    expect(host.view('teacher').sheets[0]?.cells['3,2']?.text).toBe('B3 top');
  });
});

describe('what the host refuses a simple trigger', () => {
  it.each([
    [
      'a sidebar',
      "SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutput('x'))",
      /Ui\.showSidebar.*script\.container\.ui/,
    ],
    [
      'a dialog',
      "SpreadsheetApp.getUi().showModalDialog(HtmlService.createHtmlOutput('x'), 'x')",
      /Ui\.showModalDialog/,
    ],
    ['the address of the user', 'Session.getEffectiveUser()', /Session\.getEffectiveUser/],
  ])('refuses %s, and tells nobody at the sheet', (_, body, words) => {
    const host = open(`function onEdit() { ${body}; }`);
    expect(host.type('student', [{ sheet: 0, row: 1, column: 1, text: 'x' }]).refused).toEqual([]);
    expect(host.triggerErrors).toEqual([expect.stringMatching(words)]);
  });
});
