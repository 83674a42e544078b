import { describe, expect, it } from 'vitest';
import { engineFormula, reopenedFormula } from '../../../src/preview/standin/formulaText.ts';
import { cellView, open, text, typeIn } from './script.ts';

describe('engineFormula', () => {
  it.each([
    ['=COUNTIF($H$14:$H,$D$8)', '=COUNTIF($H$14:$H$10000,$D$8)'],
    ["=COUNTA('My A:B'!A2:A)", "=COUNTA('My A:B'!A2:A$10000)"],
    ['=SUM(A:A)', '=SUM(A:A)'],
    ['=SUM(A1:B2)', '=SUM(A1:B2)'],
    ['="A1:A"&1E5', '="A1:A"&1e5'],
  ])('gives a range without an end one that the engine knows: %s', (formula, engine) => {
    expect(engineFormula(formula, 10_000)).toBe(engine);
  });
});

describe('reopenedFormula', () => {
  it.each([
    ['=COUNTIF($H$17:$H$10003,$D$8)', '=COUNTIF($H$17:$H,$D$8)'],
    ['=SUM(A1:B2)', '=SUM(A1:B2)'],
    ['=SUM($A$1:$A$4000)', '=SUM($A$1:$A$4000)'],
  ])('opens the range again after rows moved: %s', (engine, formula) => {
    expect(reopenedFormula(engine, 10_000)).toBe(formula);
  });
});

describe('a range that is open at its end', () => {
  const filled = (host: ReturnType<typeof open>) => text(host, 'B1');
  it('reaches the last row of its sheet, also where the sheet grows past what was asked of the engine first', () => {
    const host = open();
    typeIn(host, { B1: '=COUNTA(A2:A)', A1000: 'x' });
    expect(filled(host)).toBe('1');
    host.insertRows('teacher', 0, 1001, 3000);
    host.type('teacher', [{ sheet: 0, row: 4000, column: 1, text: 'y' }]);
    expect(filled(host)).toBe('2');
    expect(cellView(host, 'B1')?.input).toBe('=COUNTA(A2:A)');
    host.deleteRows('teacher', 0, 10, 3500);
    expect([filled(host), cellView(host, 'B1')?.input]).toEqual(['1', '=COUNTA(A2:A)']);
  });
  it('reaches as far in a workbook that is opened from its file', () => {
    const host = open();
    typeIn(host, { B1: '=COUNTA(A2:A)' });
    host.insertRows('teacher', 0, 1001, 5000);
    host.type('teacher', [{ sheet: 0, row: 6000, column: 1, text: 'y' }]);
    const again = open('', { saved: host.save() });
    expect([filled(again), cellView(again, 'B1')?.input]).toEqual(['1', '=COUNTA(A2:A)']);
  });
  it('keeps apart from one that names its last row', () => {
    const host = open();
    typeIn(host, { B1: '=COUNTA(A2:A900)' });
    host.insertRows('teacher', 0, 5, 2);
    expect(cellView(host, 'B1')?.input).toBe('=COUNTA(A2:A902)');
  });
});
