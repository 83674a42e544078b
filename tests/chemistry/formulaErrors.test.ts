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
    'The bracket at character 6 of “K3[Fe(CN6” is never closed. Add “)”, as in Ca(OH)2.',
    '⚠ formula: “)” missing',
  ],
  [
    'K3[Fe(CN)6',
    2,
    'The bracket at character 3 of “K3[Fe(CN)6” is never closed. Add “]”, as in Ca(OH)2.',
    '⚠ formula: “]” missing',
  ],
  ['{Na', 0, 'The bracket at character 1 of “{Na” is never closed. Add “}”, as in Ca(OH)2.', '⚠ formula: “}” missing'],
  [
    'Ca)OH',
    2,
    '“)” at character 3 of “Ca)OH” closes no bracket. Add “(” where the group begins, or leave “)” out.',
    '⚠ formula: “)” out of place',
  ],
  [
    'CaOH]2',
    4,
    '“]” at character 5 of “CaOH]2” closes no bracket. Add “[” where the group begins, or leave “]” out.',
    '⚠ formula: “]” out of place',
  ],
  [
    '(NaCl]',
    5,
    '“]” at character 6 of “(NaCl]” closes no bracket. The bracket that is open there ends with “)”.',
    '⚠ formula: “]” out of place',
  ],
  [
    'Ca()2',
    3,
    'The brackets that end at character 4 of “Ca()2” are empty. Fill the brackets or leave them out.',
    '⚠ formula: empty brackets',
  ],
  [
    '(H2O·NaCl)',
    4,
    '“·” at character 5 of “(H2O·NaCl)” stands inside an open bracket. Close “(” first, as in Ca(NO3)2·4H2O.',
    '⚠ formula: bracket still open',
  ],
  // Numbers
  [
    '2NaCl',
    0,
    '“2NaCl” begins with a number. Leave it out: in an equation it counts formula units, but here one unit is meant.',
    '⚠ formula: number in front',
  ],
  [
    'Xe0',
    2,
    '“0” at character 3 of “Xe0” can’t be a number of atoms. Did you mean the letter O? Otherwise leave out what is not there.',
    '⚠ formula: 0 after a symbol',
  ],
  [
    'H₀₂',
    1,
    '“02” at character 2 of “H₀₂” can’t be a number of atoms. Did you mean the letter O? Otherwise leave out what is not there.',
    '⚠ formula: 0 after a symbol',
  ],
  [
    'Na 100000',
    3,
    '“100000” at character 4 of “Na 100000” is too many: the most is 99999. Check the number of atoms.',
    '⚠ formula: number too large',
  ],
  [
    'Na(2Cl)',
    3,
    'The number at character 4 of “Na(2Cl)” has nothing before it to count. Write each number after what it counts, as in H2O.',
    '⚠ formula: number out of place',
  ],
  [
    'H2 3456789',
    3,
    'The number at character 4 of “H2 3456789” has nothing before it to count. Write each number after what it counts, as in H2O.',
    '⚠ formula: number out of place',
  ],
  [
    'Na1.5',
    4,
    'Part of the formula is missing at character 5 of “Na1.5”. Write a formula on both sides of the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    'Na1.5Cl',
    3,
    'The number at character 4 of “Na1.5Cl” isn’t whole. Count atoms in whole numbers; only water of hydration may have 0.5 before it.',
    '⚠ formula: whole numbers',
  ],
  [
    'CuSO4·0H2O',
    6,
    '“0H2O” at character 7 of “CuSO4·0H2O” doesn’t say how many: write a number above 0, 99999 at most. It says how many of them one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'CuSO4·nH2O',
    6,
    '“n” at character 7 of “CuSO4·nH2O” doesn’t say how many: write the number from the label. It says how many H2O one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'CuSO4 xH2O',
    6,
    '“x” at character 7 of “CuSO4 xH2O” doesn’t say how many: write the number from the label. It says how many H2O one formula unit holds, as in CuSO4·5H2O.',
    '⚠ formula: number after the dot',
  ],
  [
    'NaCl,KBr',
    4,
    '“,” at character 5 of “NaCl,KBr” doesn’t belong in a formula. Type one substance in each cell.',
    '⚠ formula: other character',
  ],
  // Letters that look like digits
  [
    'H20',
    2,
    '“H20” has the digit 0 where a formula has the letter O. Did you mean H2O? If not, type the number as a subscript such as ₂₀.',
    '⚠ H2O?',
  ],
  [
    'NaC1',
    3,
    '“NaC1” has the digit 1 where a formula has the letter l. Did you mean NaCl? If not, type the number as a subscript such as ₂₀.',
    '⚠ NaCl?',
  ],
  [
    'HCI',
    2,
    '“HCI” has a capital I where a formula has the letter l. Did you mean HCl? If not, type the number as a subscript such as ₂₀.',
    '⚠ HCl?',
  ],
  [
    'A1C13·6H20',
    1,
    '“A1C13·6H20” has the digit 1 and the digit 0 where a formula has the letter l and the letter O. Did you mean AlCl3·6H2O? If not, type the number as a subscript such as ₂₀.',
    '⚠ AlCl3·6H2O?',
  ],
  // Symbols
  [
    'NaXy',
    2,
    '“Xy” at character 3 of “NaXy” is not the symbol of an element. Check it on the periodic table.',
    '⚠ element Xy?',
  ],
  [
    'Xabcdefghijk',
    0,
    '“Xabcdefghijk” at character 1 of “Xabcdefghijk” is not the symbol of an element. Check it on the periodic table.',
    '⚠ element Xabcdefghijk?',
  ],
  [
    'Xabcdefghijkl',
    0,
    '“Xabcdefghij…” at character 1 of “Xabcdefghijkl” is not the symbol of an element. Check it on the periodic table.',
    '⚠ element Xabcdefghij…?',
  ],
  ['NaCl·h2o', 5, '“NaCl·h2o” needs a capital letter where each symbol begins. Did you mean NaCl·H2O?', '⚠ NaCl·H2O?'],
  ['so4^2-', 0, '“so4^2-” needs a capital letter where each symbol begins. Did you mean SO4^2-?', '⚠ SO4^2-?'],
  ['co', 0, '“co” needs a capital letter where each symbol begins. Did you mean Co or CO?', '⚠ Co or CO?'],
  ['NaCL', 3, '“NaCL” needs a capital letter where each symbol begins. Did you mean NaCl?', '⚠ NaCl?'],
  [
    'NaCl2x',
    5,
    '“NaCl2x” needs a capital letter where each symbol begins. Look at character 6 of “NaCl2x”, and write symbols as in NaCl.',
    '⚠ formula: capital letters',
  ],
  // Other characters
  [
    'Na$Cl',
    2,
    '“$” at character 3 of “Na$Cl” doesn’t belong in a formula. Type a formula such as KBr or CuSO4·5H2O.',
    '⚠ formula: other character',
  ],
  [
    'Na🧂Cl',
    2,
    '“🧂” at character 3 of “Na🧂Cl” doesn’t belong in a formula. Type a formula such as KBr or CuSO4·5H2O.',
    '⚠ formula: other character',
  ],
  [
    'NaCl(aq)',
    4,
    'The state of matter “(aq)” at character 5 of “NaCl(aq)” doesn’t belong in a formula. Leave it out.',
    '⚠ formula: other character',
  ],
  [
    'Fe(III)',
    2,
    'The oxidation number “(III)” at character 3 of “Fe(III)” doesn’t belong in a formula. Leave it out: the numbers of atoms say it, as in FeCl3.',
    '⚠ formula: other character',
  ],
  // Isotopes
  [
    'C[13]',
    1,
    '“[13]” at character 2 of “C[13]” can’t be read as an isotope. Write the mass number, then the symbol, as in [13C].',
    '⚠ isotope as in [13C]',
  ],
  [
    '[13CH4OHNaClBr]',
    0,
    '“[13CH4OHNaCl” at character 1 of “[13CH4OHNaClBr]” can’t be read as an isotope. Write the isotope alone in the brackets, as in [13C]H4.',
    '⚠ isotope as in [13C]',
  ],
  [
    '[13]CH4OHNaClBr',
    0,
    '“[13]CH4OHNaC” at character 1 of “[13]CH4OHNaClBr” can’t be read as an isotope. Write the mass number, then the symbol, as in [13C].',
    '⚠ isotope as in [13C]',
  ],
  [
    'H[1234567C]',
    1,
    '“1234567C” at character 2 of “H[1234567C]” can’t be an isotope. A mass number counts protons and neutrons, and C has 6 protons. Write a number of atoms after the symbol.',
    '⚠ mass number?',
  ],
  // Parts joined by a dot, and charges
  [
    '·H2O',
    0,
    'Part of the formula is missing at character 1 of “·H2O”. Write a formula on both sides of the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    'H2O·',
    3,
    'Part of the formula is missing at character 4 of “H2O·”. Write a formula on both sides of the dot, as in CuSO4·5H2O.',
    '⚠ formula: part missing',
  ],
  [
    '^2-',
    0,
    'Part of the formula is missing at character 1 of “^2-”. Write what has the charge, as in SO4^2-.',
    '⚠ formula: part missing',
  ],
  ['Ca2+', 2, '“Ca2+” could be Ca^2+ or Ca2^+. Write the charge after ^, as in Ca^2+.', '⚠ Ca^2+ or Ca2^+?'],
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
    ['', 'A blank cell'],
    [' ', 'A blank cell'],
    [undefined, 'A blank cell'],
  ])('%s is no text: a formula is asked for', (cell, received) => {
    const error = errorOf(cell);
    expect(errorText(error)).toBe(`${received} can’t be used for the formula: type a formula as text, such as KBr.`);
    expect(shortErrorText(error)).toBe('⚠ not a formula');
  });

  it('says how long a formula may be, spaces around it not counted', () => {
    expect(readFormula(` ${'H'.repeat(formulaLengthMax)} `).ok).toBe(true);
    expect(errorText(errorOf('H'.repeat(251)))).toBe(
      `“${'H'.repeat(40)} … ${'H'.repeat(15)}” is too long: it has 251 characters, and a formula can have 250. Write repeated groups in brackets with a number, as in (CH2)10.`,
    );
  });
  it('says how deep brackets may stand in each other', () => {
    expect(errorOf('('.repeat(21))).toEqual({
      code: 'formula-too-deep',
      argument: 'formula',
      expected: '20 inside each other are the most',
      received: '“(”',
      advice: 'Write the formula with fewer brackets.',
      at: { text: '('.repeat(21), from: 20 },
    });
  });
  it('names the argument that the formula stands in', () => {
    expect([readFormula('', 'ion'), readFormula('H'.repeat(251), 'ion'), readFormula('Na$', 'ion')]).toMatchObject(
      Array(3).fill({ error: { argument: 'ion' } }),
    );
    expect(readFormula('Ca2+', 'ion')).toMatchObject({ error: { argument: 'ion', expected: 'Ca^2+ or Ca2^+' } });
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
    expect(errorText(errorOf(typed))).toMatch(`“!” at character ${at + 1} of “${around}” doesn’t belong in a formula.`);
  });

  it.each(['(s)', '(l)', '(g)', '(aq)'])('takes %s at the end for a state of matter, and nowhere else', (state) => {
    expect(errorOf(`H2O${state}`)).toMatchObject({
      received: `the state of matter “${state}”`,
      at: { from: 3 },
    });
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
