import { describe, expect, it } from 'vitest';
import { engineFormula, reopenedFormula } from '../../../src/preview/standin/formulaText.ts';

describe('engineFormula', () => {
  it.each([
    ['=COUNTIF($H$14:$H,$D$8)', '=COUNTIF($H$14:$H$10000,$D$8)'],
    ["=COUNTA('My A:B'!A2:A)", "=COUNTA('My A:B'!A2:A$10000)"],
    ['=SUM(A:A)', '=SUM(A:A)'],
    ['=SUM(A1:B2)', '=SUM(A1:B2)'],
    ['="A1:A"&1E5', '="A1:A"&1e5'],
  ])('gives a range without an end one that the engine knows: %s', (formula, engine) => {
    expect(engineFormula(formula)).toBe(engine);
  });
});

describe('reopenedFormula', () => {
  it.each([
    ['=COUNTIF($H$17:$H$10003,$D$8)', '=COUNTIF($H$17:$H,$D$8)'],
    ['=SUM(A1:B2)', '=SUM(A1:B2)'],
    ['=SUM($A$1:$A$4000)', '=SUM($A$1:$A$4000)'],
  ])('opens the range again after rows moved: %s', (engine, formula) => {
    expect(reopenedFormula(engine)).toBe(formula);
  });
});
