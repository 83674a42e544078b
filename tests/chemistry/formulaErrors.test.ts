import { describe, expect, it } from 'vitest';
import { formulaLengthMax, readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { ChemError } from '../../src/errors/result.ts';

const errorOf = (typed: unknown): ChemError => {
  const read = readFormula(typed as string);
  if (read.ok) throw new Error(`read as ${read.value.text}`);
  return read.error;
};

/** Table of mistakes: what is typed, the place pointed at, the whole message and the short one. */
const mistakes: readonly (readonly [string, number, string, string])[] = [
  // Brackets
  [
    'K3[Fe(CN6',
    5,
    'Expected “)” to close the bracket at character 6 of “K3[Fe(CN6”, received the end of the text. Add the bracket, as in Ca(OH)2.',
    '⚠ formula: “)” missing',
  ],
  [
    'K3[Fe(CN)6',
    2,
    'Expected “]” to close the bracket at character 3 of “K3[Fe(CN)6”, received the end of the text. Add the bracket, as in Ca(OH)2.',
    '⚠ formula: “]” missing',
  ],
  [
    '{Na',
    0,
    'Expected “}” to close the bracket at character 1 of “{Na”, received the end of the text. Add the bracket, as in Ca(OH)2.',
    '⚠ formula: “}” missing',
  ],
  [
    'Ca)OH',
    2,
    'Expected a bracket that was opened before character 3 of “Ca)OH”, received “)”. Add “(” where the group begins, or leave “)” out.',
    '⚠ formula: “)” out of place',
  ],
  [
    'CaOH]2',
    4,
    'Expected a bracket that was opened before character 5 of “CaOH]2”, received “]”. Add “[” where the group begins, or leave “]” out.',
    '⚠ formula: “]” out of place',
  ],
  [
    '(NaCl]',
    5,
    'Expected “)” at character 6 of “(NaCl]”, received “]”. Close each bracket with its own kind.',
    '⚠ formula: “]” out of place',
  ],
  [
    'Ca()2',
    3,
    'Expected symbols between the brackets at character 3 of “Ca()2”, received nothing between them. Fill the brackets or leave them out.',
    '⚠ formula: empty brackets',
  ],
  [
    '(H2O·NaCl)',
    4,
    'Expected the bracket at character 1 of “(H2O·NaCl)” to be closed before “·”, received “(H2O·NaCl)”. Close it first, as in Ca(NO3)2·4H2O.',
    '⚠ formula: bracket still open',
  ],
  // Numbers
  [
    '2NaCl',
    0,
    'Expected a formula without a number before it, received “2NaCl”. A number in front counts formula units in an equation, not atoms in one unit: leave it out.',
    '⚠ formula: number in front',
  ],
  [
    'Xe0',
    2,
    'Expected a whole number from 1 at character 3 of “Xe0”, received “0”. Leave out what is not there; did you mean the letter O?',
    '⚠ formula: 0 after a symbol',
  ],
  [
    'H₀₂',
    1,
    'Expected a whole number from 1 at character 2 of “H₀₂”, received “02”. Leave out what is not there; did you mean the letter O?',
    '⚠ formula: 0 after a symbol',
  ],
  [
    'Na 100000',
    3,
    'Expected a number up to 99999 at character 4 of “Na 100000”, received “100000”. Check the number of atoms.',
    '⚠ formula: number too large',
  ],
  [
    'Na(2Cl)',
    3,
    'Expected a symbol or a bracket before the number at character 4 of “Na(2Cl)”, received “2Cl)”. Write each number after what it counts, as in H2O.',
    '⚠ formula: number out of place',
  ],
  [
    'H2 3456789',
    3,
    'Expected a symbol or a bracket before the number at character 4 of “H2 3456789”, received “345678”. Write each number after what it counts, as in H2O.',
    '⚠ formula: number out of place',
  ],
  [
    'Na1.5',
    4,
    'Expected a formula on both sides of the dot in “Na1.5”, received nothing on one side. Write what is joined by the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    'Na1.5Cl',
    3,
    'Expected whole numbers after symbols at character 4 of “Na1.5Cl”, received “Na1.5Cl”. Atoms are counted in whole numbers; only water of hydration may have 0.5 before it.',
    '⚠ formula: whole numbers',
  ],
  [
    'CuSO4·0H2O',
    6,
    'Expected a number over 0 and up to 99999 at character 7 of “CuSO4·0H2O”, received “0H2O”. Write how many of them one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'CuSO4·nH2O',
    6,
    'Expected the number of H2O at character 7 of “CuSO4·nH2O”, received “n”. Look on the label for how many of them one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'CuSO4 xH2O',
    6,
    'Expected the number of H2O at character 7 of “CuSO4 xH2O”, received “x”. Look on the label for how many of them one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'NaCl,KBr',
    4,
    'Expected one formula, with a comma only before its water, at character 5 of “NaCl,KBr”, received “NaCl,KBr”. Type one substance in each cell.',
    '⚠ formula: other character',
  ],
  // Letters that look like digits
  [
    'H20',
    2,
    'Expected a formula with the letter O, received “H20”, with the digit 0 there. Did you mean H2O? If not, type the number as a subscript such as ₂₀.',
    '⚠ H2O?',
  ],
  [
    'NaC1',
    3,
    'Expected a formula with the letter l, received “NaC1”, with the digit 1 there. Did you mean NaCl? If not, type the number as a subscript such as ₂₀.',
    '⚠ NaCl?',
  ],
  [
    'HCI',
    2,
    'Expected a formula with the letter l, received “HCI”, with a capital I there. Did you mean HCl? If not, type the number as a subscript such as ₂₀.',
    '⚠ HCl?',
  ],
  [
    'A1C13·6H20',
    1,
    'Expected a formula with the letter l and the letter O, received “A1C13·6H20”, with the digit 1 and the digit 0 there. Did you mean AlCl3·6H2O? If not, type the number as a subscript such as ₂₀.',
    '⚠ AlCl3·6H2O?',
  ],
  // Symbols
  [
    'NaXy',
    2,
    'Expected the symbol of an element at character 3 of “NaXy”, received “Xy”. Check the spelling on the periodic table.',
    '⚠ element Xy?',
  ],
  [
    'Xabcdefghijk',
    0,
    'Expected the symbol of an element at character 1 of “Xabcdefghijk”, received “Xabcdefghijk”. Check the spelling on the periodic table.',
    '⚠ element Xabcdefghijk?',
  ],
  [
    'Xabcdefghijkl',
    0,
    'Expected the symbol of an element at character 1 of “Xabcdefghijkl”, received “Xabcdefghij…”. Check the spelling on the periodic table.',
    '⚠ element Xabcdefghij…?',
  ],
  [
    'NaCl·h2o',
    5,
    'Expected a formula with capital letters where symbols begin, received “NaCl·h2o”. Did you mean NaCl·H2O?',
    '⚠ NaCl·H2O?',
  ],
  [
    'so4^2-',
    0,
    'Expected a formula with capital letters where symbols begin, received “so4^2-”. Did you mean SO4^2-?',
    '⚠ SO4^2-?',
  ],
  [
    'co',
    0,
    'Expected a formula with capital letters where symbols begin, received “co”. Did you mean Co or CO?',
    '⚠ Co or CO?',
  ],
  [
    'NaCL',
    3,
    'Expected a formula with capital letters where symbols begin, received “NaCL”. Did you mean NaCl?',
    '⚠ NaCl?',
  ],
  [
    'NaCl2x',
    5,
    'Expected a formula with capital letters where symbols begin, received “NaCl2x”. Look at character 6 of “NaCl2x”: write a symbol as in NaCl.',
    '⚠ formula: capital letters',
  ],
  // Other characters
  [
    'Na$Cl',
    2,
    'Expected symbols, numbers and brackets at character 3 of “Na$Cl”, received “$”. Type a formula such as KBr or CuSO4·5H2O.',
    '⚠ formula: other character',
  ],
  [
    'Na🧂Cl',
    2,
    'Expected symbols, numbers and brackets at character 3 of “Na🧂Cl”, received “🧂”. Type a formula such as KBr or CuSO4·5H2O.',
    '⚠ formula: other character',
  ],
  [
    'NaCl(aq)',
    4,
    'Expected a formula without a state of matter, received “NaCl(aq)”. Leave out (aq).',
    '⚠ formula: other character',
  ],
  [
    'Fe(III)',
    2,
    'Expected symbols, numbers and brackets at character 3 of “Fe(III)”, received the oxidation number “(III)”. Leave it out: the numbers of atoms say it, as in FeCl3.',
    '⚠ formula: other character',
  ],
  // Isotopes
  [
    'C[13]',
    1,
    'Expected an isotope such as [13C] at character 2 of “C[13]”, received “[13]”. Write the mass number and then the symbol between the brackets.',
    '⚠ isotope as in [13C]',
  ],
  [
    '[13CH4OHNaClBr]',
    0,
    'Expected one isotope in its own brackets at character 1 of “[13CH4OHNaClBr]”, received “[13CH4OHNaCl”. Write the isotope alone in the brackets, as in [13C]H4.',
    '⚠ isotope as in [13C]',
  ],
  [
    '[13]CH4OHNaClBr',
    0,
    'Expected an isotope such as [13C] at character 1 of “[13]CH4OHNaClBr”, received “[13]CH4OHNaC”. Write the mass number and then the symbol between the brackets.',
    '⚠ isotope as in [13C]',
  ],
  [
    'H[1234567C]',
    1,
    'Expected a mass number that C can have at character 2 of “H[1234567C]”, received “1234567C”. It counts protons and neutrons, and C has 6 protons. For a number of atoms write it after the symbol.',
    '⚠ mass number?',
  ],
  // Parts joined by a dot, and charges
  [
    '·H2O',
    0,
    'Expected a formula on both sides of the dot in “·H2O”, received nothing on one side. Write what is joined by the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    'H2O·',
    3,
    'Expected a formula on both sides of the dot in “H2O·”, received nothing on one side. Write what is joined by the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    '^2-',
    0,
    'Expected a formula before its charge, received “^2-”. Write what carries the charge, as in SO4^2-.',
    '⚠ formula: part missing',
  ],
  [
    'Ca2+',
    2,
    'Expected one reading of formula, received “Ca2+”, which could be Ca^2+ or Ca2^+. Write the charge after ^, as in Ca^2+.',
    '⚠ Ca^2+ or Ca2^+?',
  ],
];

describe('a formula that cannot be read', () => {
  it.each(mistakes)('%s: points at %d and says what to do', (typed, from, message, short) => {
    const error = errorOf(typed);
    expect({ at: error.at, argument: error.argument, message: errorText(error), short: shortErrorText(error) }).toEqual(
      { at: { text: typed, from }, argument: 'formula', message, short },
    );
  });

  it.each([
    [5, '5'],
    [true, 'TRUE'],
    ['', 'nothing'],
    [' ', 'nothing'],
    [undefined, 'nothing'],
  ])('%s is no text: a formula is asked for', (cell, received) => {
    const error = errorOf(cell);
    expect(errorText(error)).toBe(
      `Expected a formula such as KBr for formula, received ${received}. Type the formula as text.`,
    );
    expect(shortErrorText(error)).toBe('⚠ formula expected');
  });

  it('says how long a formula may be, spaces around it not counted', () => {
    expect(readFormula(` ${'H'.repeat(formulaLengthMax)} `).ok).toBe(true);
    expect(errorText(errorOf('H'.repeat(251)))).toBe(
      'Expected a formula of at most 250 characters for formula, received 251 characters. Write repeated groups in brackets with a number, as in (CH2)10.',
    );
  });
  it('says how deep brackets may stand in each other', () => {
    expect(errorOf('('.repeat(21))).toEqual({
      code: 'formula-too-deep',
      argument: 'formula',
      expected: 'brackets at most 20 deep',
      received: 'more at character 21 of “(((((((((((((((((((((”',
      advice: 'Write the formula with fewer brackets.',
      at: { text: '('.repeat(21), from: 20 },
    });
  });
  it('names the argument that the formula stands in', () => {
    expect([readFormula('', 'ion'), readFormula('H'.repeat(251), 'ion'), readFormula('Na$', 'ion')]).toMatchObject(
      Array(3).fill({ error: { argument: 'ion' } }),
    );
    expect(readFormula('Ca2+', 'ion')).toMatchObject({ error: { argument: 'ion', expected: 'one reading of ion' } });
  });

  it.each([
    ['whole up to 30 characters', 30, 29, `${'H'.repeat(29)}!`],
    ['cut at the end', 31, 5, `${'H'.repeat(5)}!${'H'.repeat(13)}…`],
    ['with ten characters before the place', 31, 10, `${'H'.repeat(10)}!${'H'.repeat(13)}…`],
    ['cut at the beginning from the eleventh', 31, 11, `…${'H'.repeat(10)}!${'H'.repeat(13)}…`],
    ['cut on both sides', 31, 16, `…${'H'.repeat(10)}!${'H'.repeat(13)}…`],
    ['with thirteen characters after the place', 31, 17, `…${'H'.repeat(10)}!${'H'.repeat(13)}`],
  ])('shows the text around the place %s', (_, length, at, around) => {
    const typed = `${'H'.repeat(at)}!${'H'.repeat(length - at - 1)}`;
    expect(errorOf(typed).expected).toBe(`symbols, numbers and brackets at character ${at + 1} of “${around}”`);
  });
  it.each([
    [40, `${'H'.repeat(39)}·`],
    [41, `${'H'.repeat(39)}…`],
  ])('shows both sides of a dot in up to 40 characters: %d', (length, shown) => {
    expect(errorOf(`${'H'.repeat(length - 1)}·`).expected).toBe(`a formula on both sides of the dot in “${shown}”`);
  });

  it.each(['(s)', '(l)', '(g)', '(aq)'])('takes %s at the end for a state of matter, and nowhere else', (state) => {
    expect(errorOf(`H2O${state}`)).toMatchObject({ advice: `Leave out ${state}.`, at: { from: 3 } });
    expect(errorOf(`H2O${state}·NaCl`).code).toBe('formula-case');
  });
  it.each(['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII'])('takes (%s) for an oxidation number', (roman) => {
    expect(errorOf(`Mn(${roman})Cl`)).toMatchObject({ received: `the oxidation number “(${roman})”`, at: { from: 2 } });
  });
  it.each([
    ['number', 'H2²', 'number-out-of-place', 2],
    ['number', 'H²3', 'number-out-of-place', 2],
    ['number', '²', 'number-out-of-place', 0],
    ['number', '¹3CH4', 'number-out-of-place', 0],
    ['number', '(0H)', 'number-out-of-place', 1],
    ['number', '(9H)', 'number-out-of-place', 1],
    ['number', 'H⁰', 'subscript-zero', 1],
    ['character', 'H/O', 'formula-character', 1],
    ['character', 'H:O', 'formula-character', 1],
    ['isotope', '[2D]2O', 'element-unknown', 2],
    ['isotope', '²D', 'element-unknown', 1],
    ['isotope', '[13Xy]', 'element-unknown', 3],
    ['isotope', '[13c]', 'isotope-shape', 0],
    ['isotope', '[5C]', 'isotope-unlikely', 0],
    ['isotope', '²³C', 'isotope-unlikely', 0],
    ['dot', 'CuSO4·5', 'formula-part-missing', 6],
    ['dot', 'CaSO4·1/0H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CaSO4·xH2O', 'coefficient-out-of-range', 6],
    ['dot', 'CaSO4, n H2O', 'coefficient-out-of-range', 7],
    ['dot', 'NaCl, NaBr', 'formula-character', 5],
    ['dot', 'H2O··H2O', 'formula-part-missing', 4],
    ['dot', 'CuSO4·0.0H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·100000H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·99999.5H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·1234567H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·0.1234567H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·5₂H2O', 'coefficient-out-of-range', 6],
    ['dot', 'CuSO4·1.H2O', 'formula-part-missing', 7],
    ['dot', 'H₂.5O', 'subscript-not-whole', 2],
    ['bracket', '[NaCl)', 'bracket-not-opened', 5],
    ['case', 'Na(s)a', 'formula-case', 3],
  ] as const)('refuses a %s out of place: %s', (_, typed, code, from) => {
    expect(errorOf(typed)).toMatchObject({ code, at: { from } });
  });
});
