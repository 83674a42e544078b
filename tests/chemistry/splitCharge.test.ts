import { describe, expect, it } from 'vitest';
import { isListedIon } from '../../src/chemistry/listedIons.ts';
import { chargeText, splitCharge } from '../../src/chemistry/splitCharge.ts';

const readings = (text: string): string =>
  splitCharge(text)
    .map(({ base, charge }) => `${base} ${charge}`)
    .join(' or ');

describe('splitCharge', () => {
  it.each([
    // After ^, the size before or after the sign, with or without brackets and spaces.
    ['SO4^2-', 'SO4 -2'],
    ['SO4^-2', 'SO4 -2'],
    ['SO4^(2-)', 'SO4 -2'],
    ['SO4^(-2)', 'SO4 -2'],
    ['SO4^{2-}', 'SO4 -2'],
    ['SO4^{-2}', 'SO4 -2'],
    ['SO4  ^ ( 2 - )', 'SO4 -2'],
    ['SO4  ^ ( - 2 )', 'SO4 -2'],
    ['Na^+', 'Na 1'],
    ['Cl^-', 'Cl -1'],
    ['X^12+', 'X 12'],
    ['X^+12', 'X 12'],
    ['Na^0+', 'Na 0'],
    // In brackets
    ['SO4(2-)', 'SO4 -2'],
    ['SO4(-2)', 'SO4 -2'],
    ['SO4 (2-)', 'SO4 -2'],
    ['Na(+)', 'Na 1'],
    ['X(12+)', 'X 12'],
    ['X(+12)', 'X 12'],
    // Raised
    ['SO₄²⁻', 'SO₄ -2'],
    ['SO₄⁻²', 'SO₄ -2'],
    ['Na⁺', 'Na 1'],
    ['X¹²⁺', 'X 12'],
    ['X⁺¹²', 'X 12'],
    ['X¹²³⁺', 'X¹ 23'],
    // A digit that no subscript can be: after a space, after a lowered digit, after the sign
    ['SO4 2-', 'SO4 -2'],
    ['SO₄2-', 'SO₄ -2'],
    ['Ca 2+', 'Ca 2'],
    ['SO4-2', 'SO4 -2'],
    ['Ca+2', 'Ca 2'],
    ['X+12', 'X 12'],
    // As many signs as charges: the digits before them count atoms.
    ['Ca++', 'Ca 2'],
    ['SO4--', 'SO4 -2'],
    ['SO4−−', 'SO4 -2'],
    ['Hg2++', 'Hg2 2'],
    ['Na+', 'Na 1'],
    ['Cl-', 'Cl -1'],
    // A listed ion decides between two readings, and so does a 0, which is no charge.
    ['SO42-', 'SO4 -2'],
    ['S O42-', 'S O4 -2'],
    ['NO3-', 'NO3 -1'],
    ['[Fe(CN)6]4-', '[Fe(CN)6] -4'],
    ['Cr2O72-', 'Cr2O7 -2'],
    ['C6H12O60-', 'C6H12O60 -1'],
    ['Na0+', 'Na0 1'],
    // Two readings
    ['Ca2+', 'Ca 2 or Ca2 1'],
    ['O2-', 'O -2 or O2 -1'],
    ['O 22-', 'O 2 -2 or O 22 -1'],
    ['Hg22+', 'Hg2 2 or Hg22 1'],
    ['XeF3+', 'XeF 3 or XeF3 1'],
    ['C2+', 'C 2 or C2 1'],
    // No charge
    ['NaCl', 'NaCl 0'],
    ['Na-Cl', 'Na-Cl 0'],
    ['Na⁺Cl⁻Br', 'Na⁺Cl⁻Br 0'],
    ['X^123+', 'X^12 3 or X^123 1'],
    ['', ' 0'],
    // Longer than the tail in which a charge is looked for
    ['CH3(CH2)16CH2COO-', 'CH3(CH2)16CH2COO -1'],
    ['CH3(CH2)16CH2COO^-', 'CH3(CH2)16CH2COO -1'],
    ['CH3(CH2)16CH2CONa2+', 'CH3(CH2)16CH2CONa 2 or CH3(CH2)16CH2CONa2 1'],
  ])('reads %s as %s', (text, wanted) => {
    expect(readings(text)).toBe(wanted);
  });

  it.each(['+', '＋', '-', '−', '–', '⁺', '⁻'])('knows the sign %s, alone and after ^', (sign) => {
    const charge = /[+＋⁺]/.test(sign) ? 1 : -1;
    expect(splitCharge(`Xe${sign}`)).toEqual([{ base: 'Xe', charge }]);
    if (/[⁺⁻]/.test(sign)) return;
    for (const text of [`Xe^3${sign}`, `Xe^${sign}3`, `Xe(3${sign})`, `Xe(${sign}3)`, `Xe 3${sign}`, `Xe${sign}3`]) {
      expect([text, splitCharge(text)]).toEqual([text, [{ base: 'Xe', charge: 3 * charge }]]);
    }
  });

  it.each([
    [{ base: 'Na', charge: 1 }, 'Na^+'],
    [{ base: 'Cl', charge: -1 }, 'Cl^-'],
    [{ base: 'Ca', charge: 2 }, 'Ca^2+'],
    [{ base: 'PO4', charge: -3 }, 'PO4^3-'],
  ])('writes %o as %s, which is read one way', (reading, text) => {
    expect(chargeText(reading)).toBe(text);
    expect(splitCharge(text)).toEqual([reading]);
  });
});

describe('isListedIon', () => {
  it.each([
    ['SO4', -2, true],
    ['[Fe(CN)6]', -4, true],
    ['Fe(CN)6', -3, true],
    ['Fe', 3, true],
    ['Fe', 2, true],
    ['SO4', -1, false],
    ['SO4', 2, false],
    ['[SO4', -2, false],
    ['SO4]', -2, false],
    ['S[O4]', -2, false],
    ['[S]O4', -2, false],
    ['[SO4]2', -2, false],
    ['Xe', 1, false],
  ])('%s with charge %d: %s', (body, charge, wanted) => {
    expect(isListedIon({ body, charge })).toBe(wanted);
  });
});
