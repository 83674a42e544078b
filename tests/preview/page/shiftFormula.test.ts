import { describe, expect, it } from 'vitest';
import { shiftFormula } from '../../../src/preview/page/shiftFormula.ts';

describe('shiftFormula', () => {
  const down = { rows: 2, columns: 1 };
  it.each([
    { formula: '=A1+B$2', gives: '=B3+C$2' },
    { formula: '=$A1*$B$2', gives: '=$A3*$B$2' },
    { formula: '=SUM(A1:B9)', gives: '=SUM(B3:C11)' },
    { formula: '=\'Second period\'!B4&"A1"', gives: '=\'Second period\'!C6&"A1"' },
    { formula: '=Plan!A1', gives: '=Plan!B3' },
    { formula: '=LOG10(A1)', gives: '=LOG10(B3)' },
    { formula: '=DATA1+1', gives: '=DATA1+1' },
    { formula: 'A1', gives: 'A1' },
    { formula: '=1E5+AA10', gives: '=1E5+AB12' },
  ])('gives $gives for $formula', ({ formula, gives }) => {
    expect(shiftFormula(formula, down)).toBe(gives);
  });
  it('says where a reference left the sheet', () => {
    expect(shiftFormula('=A1+C3', { rows: -1, columns: 0 })).toBe('=#REF!+C2');
  });
});
