import { describe, expect, it } from 'vitest';
import { withSeparator } from '../../src/workbook/formula.ts';
import { freeName } from '../../src/workbook/freeName.ts';
import { columnLetters, literal, onSheet } from '../../src/workbook/reference.ts';
import { newSheetNames, tabName } from '../../src/workbook/sheetNames.ts';

describe('tabName', () => {
  it.each([
    { typed: "it's", gives: 'it’s' },
    { typed: 'a/b [c]: *?', gives: 'a b c' },
    { typed: '  two\nlines ', gives: 'two lines' },
    { typed: '///', gives: 'Class' },
    { typed: '=1+1', gives: '=1+1' },
    { typed: 'x'.repeat(200), gives: 'x'.repeat(80) },
  ])('gives “$gives”', ({ typed, gives }) => {
    expect(tabName(typed)).toBe(gives);
  });
});

describe('newSheetNames', () => {
  it('keeps names apart from each other and from those that are there, whatever their case', () => {
    const names = newSheetNames(['a:b', 'A b', 'help'], ['plan', 'Sheet1']);
    expect(names.plan).toBe('Plan 2');
    expect(names.help).toBe('Help');
    expect(names.classes).toEqual({ 'a:b': 'a b', 'A b': 'A b 2', help: 'help 2' });
  });
  it('takes class names that every object has as properties', () => {
    const { classes } = newSheetNames(['constructor', '__proto__']);
    expect(Object.entries(classes)).toEqual([
      ['constructor', 'constructor'],
      ['__proto__', '__proto__'],
    ]);
  });
  it('counts on until a name is free', () => {
    expect(freeName('Plan', ['Plan', 'plan 2'])).toBe('Plan 3');
  });
});

describe('references', () => {
  it('quotes sheets and words', () => {
    expect(onSheet("it's", 'A1')).toBe("'it''s'!A1");
    expect(literal('say "so"')).toBe('"say ""so"""');
  });
  it('counts columns as the grid does', () => {
    expect([1, 26, 27, 52, 53, 702, 703].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
  });
});

describe('withSeparator', () => {
  it('changes separators and leaves words and sheet names alone', () => {
    expect(withSeparator(`=IF('a,b'!A1="x,""y,",1,2)`, ';')).toBe(`=IF('a,b'!A1="x,""y,";1;2)`);
    expect(withSeparator('=IF(A1,1,2)', ',')).toBe('=IF(A1,1,2)');
  });
});
