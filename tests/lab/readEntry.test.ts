import { describe, expect, it } from 'vitest';
import { readEntry } from '../../src/lab/judging/readEntry.ts';
import { unitTable } from '../../src/measurement/unitTable.generated.ts';

const read = (cell: unknown, kind: Parameters<typeof readEntry>[1] = 'mass', decimalMark?: 'point' | 'comma') =>
  readEntry(cell as never, kind, { decimalMark });

describe('readEntry', () => {
  it.each([
    ['7.14', 7.14, 3, 3, -2],
    ['7.140 g', 7.14, 4, 4, -3],
    ['7140', 7140, 3, 4, 0],
    ['7140 mg', 7.14, 3, 4, -3],
    ['2.5 kg', 2500, 2, 2, 2],
    ['7.14e3 mg', 7.14, 3, 3, -2],
    ['7.14 × 10^3 mg', 7.14, 3, 3, -2],
    ['  0.050  g ', 0.05, 2, 2, -3],
    [7.1, 7.1, 2, 2, -1],
    ['0', 0, 1, 1, 0],
  ])('reads %j as %d g with its figures', (cell, value, figuresMin, figuresMax, lastPlace) => {
    const found = read(cell);
    expect(found).toMatchObject({
      kind: 'number',
      entry: { figuresMin, figuresMax, lastPlace, isText: typeof cell === 'string' },
    });
    expect(found.kind === 'number' && found.entry.value).toBeCloseTo(value, 12);
  });
  it.each([
    '5 mol',
    '5 mol/L',
    '5 apples',
    '5 °C',
    '5 g/mol',
    '5 %',
    '5 m/s',
    '5 g * cm',
    '5 mol·g^-1',
    '5 s-1',
    '5 g per L',
    '5 g / L',
    '5 g per bottle',
    '5 g mL',
    '5 gKBr',
    '5 -g',
    '5 N',
    '5 or so',
    '5 gelatin sheets',
    '5 gKBr today',
    '5 g mol',
    '5 g mL, we think',
    '5 g mmol',
    '5 g mls',
    '5 g cc',
    '5 g μmol',
    '5 g mol/L',
    '5 g mmol, we think',
    '5 J K-1 mol-1',
    '5 g PER bottle',
    '5 g·cm',
    '5 g ⋅ cm',
    '5 m^2',
    '5 s^(-1)',
    '5 J K-1',
    '5 m2 s-1',
    '5 s–1',
    '5 x',
    '5 times',
    '5-fold',
  ])('keeps the number of %j and says that the unit is another', (cell) => {
    expect(read(cell)).toMatchObject({ kind: 'number', unit: 'other kind', entry: { value: 5 } });
  });
  it.each(Object.values(unitTable).flatMap((row) => row.split(' ').map((pair) => pair.split('|')[0])))(
    'takes no known unit for arithmetic: %s',
    (unit) => {
      for (const kind of ['volume', 'mass', 'ratio'] as const) expect(read(`5 ${unit}`, kind).kind).toBe('number');
    },
  );
  it.each(['', ' ', null, undefined])('reads %j as blank', (cell) => {
    expect(read(cell)).toEqual({ kind: 'blank' });
  });
  it.each([
    [true, 'other kind'],
    [new Date(0), 'other kind'],
    ['seven', 'not a number'],
    ['1:10', 'two numbers'],
    ['7.14 or 7.15', 'two numbers'],
    ['7.14 g or 7.15 g', 'two numbers'],
    ['7.14 ± 0.01 g', 'two numbers'],
    ['7.14 g (team 3)', 'two numbers'],
    ['7.14 g in 200 mL', 'two numbers'],
    ['7.14 15', 'two numbers'],
    ['7.1-7.2', 'calculation'],
    ['5 g/100 mL', 'calculation'],
    ['1.2.3', 'not a number'],
    ['5'.repeat(201), 'too long'],
    [`5 g ${'x'.repeat(200)}`, 'too long'],
    ['=1+1', 'calculation'],
    ['=0.5*0.195', 'calculation'],
    ['=A1/2', 'calculation'],
    ['=SUM(1)', 'calculation'],
    ['39/400', 'calculation'],
    ['0.5*0.195', 'calculation'],
    ['0.5 x 0.195', 'calculation'],
    ['0.5 × 0.195', 'calculation'],
    ['0.5·0.195 mol', 'calculation'],
    ['1/4', 'calculation'],
    ['1/4 mol', 'calculation'],
    ['0.215*0.1*119', 'calculation'],
    ['0.215 mol*0.1 L', 'calculation'],
    ['12+3', 'calculation'],
    ['15.0 g + 0.1 g', 'calculation'],
    ['12 - 3', 'calculation'],
    ['(0.5*2)', 'calculation'],
    ['2^3', 'calculation'],
    ['0.5*0.195=0.0975', 'calculation'],
    ['249.68 =', 'more than a number'],
    ['? 249.68', 'more than a number'],
    ['= 249.68', 'more than a number'],
    ['m = 15.0 g', 'more than a number'],
    ['mass 15.0 g', 'more than a number'],
    ['why?', 'not a number'],
    ['2026-05-04', 'not a number'],
    ['12-5-2026', 'not a number'],
    ['4-12-2026', 'not a number'],
    ['7.14 g 2026-05-04', 'two numbers'],
    ['7.14 g ５', 'two numbers'],
    ['7.14 ½', 'two numbers'],
    ['½ g', 'more than a number'],
    ['5 g–7 g', 'two numbers'],
    ['5 g-7g', 'two numbers'],
    ['5 g − 7 g', 'two numbers'],
    ['５ ｇ－７ ｇ', 'two numbers'],
    ['7.14 g CuSO4 + 5 H2O', 'calculation'],
    ['7.14 g KBr and 5 H2O', 'two numbers'],
    ['5 g ÷ 2', 'calculation'],
    ['5 √2', 'calculation'],
    ['5 ⋅ 2', 'calculation'],
    ['5 − 2', 'calculation'],
    ['5 – 2 g', 'calculation'],
    ['5 ＋ 3', 'calculation'],
    ['5 g／2', 'calculation'],
    ['5 g x (2 + 1)', 'calculation'],
    ['5 g x (2)', 'calculation'],
    ['5 g·2', 'calculation'],
    ['5 g and x is 2', 'two numbers'],
    ['5 g = 5000 mg', 'calculation'],
    ['5 g = m', 'more than a number'],
    ['n = 0.5 * 0.195', 'calculation'],
    ['n = 0.5·0.195', 'calculation'],
    ['n = (0.5) ÷ (0.195)', 'calculation'],
    ['n = 1 − 0.195', 'calculation'],
    ['n is 12 or so, x is 3', 'more than a number'],
    ['=A1', 'more than a number'],
    ['=2−1', 'calculation'],
    ['=-B2', 'calculation'],
    ['=A+B', 'not a number'],
    ['salt (5 spoons)', 'more than a number'],
    ['about seven', 'not a number'],
    ['cat 7.14 g', 'more than a number'],
    ['about7.14', 'more than a number'],
    ['1,234', 'two ways'],
    ['1,234 g', 'two ways'],
    [Number.NaN, 'not a number'],
    [Number.POSITIVE_INFINITY, 'not a number'],
  ])('calls %j unreadable: %s', (cell, because) => {
    expect(read(cell)).toEqual({ kind: 'unreadable', because });
  });
  it.each([
    '7.14 g KBr',
    '7.14 g of KBr',
    '7.14g (KBr)',
    '7.14 g (we think)',
    '7.14 g, rounded',
    '7.14 g?',
    '7.14 g CuSO4·5H2O',
    '7.14 g CuSO4.5H2O',
    '7.14 g CuSO4 x 5 H2O',
    '7.14 g (CuSO4 · 5H2O)',
    '7.14 g Ca(NO3)2·4H2O',
    '7.14 g of [Co(NH3)6]Cl3',
    '7.14 g CaSO4·½H2O',
    '7.14 g CaSO4·0.5H2O',
    '7.14 g CuSO4 ·5H2O',
    '7.14 g CuSO4· 5H2O',
    '7.14 g CuSO4·5 H2O',
    '7.14 g CuSO4  ·  5 H2O',
    '7.14 g CuSO4*5H2O',
    '7.14 g CuSO4x5H2O',
    '7.14 g Na2CO3 × 10 H2O',
    '7.14 g MgSO4 · H2O',
    '7.14 g CaSO4 · ½ H2O',
    '7.14 g CaSO4 · 0,5 H2O',
    '7.14 g CuSO₄ • 5 H₂O',
    '7.14 g NaF·½H₂O',
    '7.14 g (NH₄)₂SO₄',
    '7.14 g of "CaSO4·0.5H2O".',
    "7.14 g of ''CuSO4·5H2O''",
    '7.14 g of “CuSO4·5H2O”!?',
    '7.14 g ‘CuSO4·5H2O’, dry',
    '7.14 g [CuSO4·5H2O]',
    '7.14 g (K3[Fe(CN)6], dry)',
    '7.14 g (dry, of [Co(NH3)6]Cl3)',
    '7.14 g (dry (NH4)2SO4)',
    '7.14 g molar mass from the table',
    '7.14 g perhaps',
    '7.14\u200bg',
    '7.14\u2060 g\u200b',
    '7.14 g:KBr',
    '7.14 g;KBr',
    '7.14 g!KBr',
    '7.14 grammes',
    '7.14 gm',
    '7.14 Grams',
    '7.14gms',
    '7140 mg KBr',
    '0.00714 kg',
    'about 7.14 g',
    'About 7.14 grams of salt',
    '  about 7.14 g',
    'around 7.14 g',
    'approximately 7.14 g',
    'almost 7.14 g',
    'nearly 7.14 g',
    'circa 7.14 g',
    'c. 7.14 g',
    'ca.7.14 g',
    '~ about 7.14 g',
    'about ca. 7.14 g',
    '≃7.14 g',
    '≅ 7.14 g',
    '∼7.14 g',
    '∽7.14 g',
    '~,714e1 g',
    '~+7.14 g',
    'approx. 7.14 g',
    'ca. 7.14 g',
    '~7.14 g',
    '≈ 7.14 g',
    'about ~7.14 g',
    'roughly 7.14 g',
    '\u00a07.14\u202fg\u00a0',
    '7.14 g.',
    '7.14 g grammes',
    '7.14 g molar',
    '７.14 g',
    '７．１４ ｇ',
    '７．１４\u3000ｇ',
    '７１４０ｍｇ',
    '7。14 g',
    '7.14 g。',
    '～７．１４ｇ',
    '714 × 10⁻² g',
    '714x10-2 g',
    '7.14 e+0 g',
  ])('reads %s as 7.14 g', (cell) => {
    const found = read(cell);
    expect(found).toMatchObject({ kind: 'number', unit: 'fits' });
    expect(found.kind === 'number' && found.entry.value).toBeCloseTo(7.14, 12);
  });
  it.each([
    '7.14 KBr',
    '7.14 CuSO4·5H2O',
    '7.14 CuSO4· 5H2O',
    '7.14 CuSO₄ · 5 H₂O',
    '7.14 Ag',
    '7.14 KI',
    '7.14 KBr it was',
    '7.14 "KBr"',
    '7.14 \u200b',
    '7.14;',
    '7.14: KBr',
    '7.14 [dry]',
    '7.14 {dry}',
    '7.14 “dry”',
    '7.14 ‘dry’',
    "7.14 'dry'",
    '7.14 (we think)',
    '7.14?',
    '7.14.',
    '7.14, rounded',
    '7.14!',
    '~7.14',
    'ca 7.14',
  ])('reads %s as a number without a unit', (cell) => {
    expect(read(cell)).toMatchObject({ kind: 'number', unit: 'none', entry: { value: 7.14 } });
  });
  it.each([
    ['0.2 M', 'concentration'],
    ['0.2 molar', 'concentration'],
    ['0.2 mol/L', 'concentration'],
    ['0.2 mole/litre', 'concentration'],
    ['0.2 mol dm-3', 'concentration'],
    ['0.2 moldm⁻³', 'concentration'],
    ['0.2 mol·L⁻¹', 'concentration'],
    ['0.2 mol/dm³ KBr', 'concentration'],
    ['0.2 moles per litre of solution', 'concentration'],
    ['0.2mols', 'amount'],
    ['0.2 moles of KBr', 'amount'],
    ['0.2 ml', 'volume'],
    ['0.2 cc', 'volume'],
    ['0.2 cm3', 'volume'],
    ['0.2 g/cm3', 'density'],
    ['0.2 g mL-1', 'density'],
    ['0.2 g/mol', 'molar mass'],
    ['0.2 grams per mole', 'molar mass'],
    ['0.2 g mol⁻¹ of KBr', 'molar mass'],
    ['0.2 % too low', 'percent'],
    ['0.2 percent error', 'percent'],
    ['0.2 times', 'ratio'],
    ['0.2x', 'ratio'],
    ['0.2 fold', 'ratio'],
    ['0.2×', 'ratio'],
    ['0.2✕', 'ratio'],
    ['0.2✖', 'ratio'],
    ['0.2 TIMES', 'ratio'],
    ['0.2-fold', 'ratio'],
    ['0.2- fold', 'ratio'],
    ['0.2x stronger', 'ratio'],
    ['about 0.2 times', 'ratio'],
  ] as const)('reads %s as a %s', (cell, kind) => {
    expect(read(cell, kind)).toMatchObject({ kind: 'number', unit: 'fits', entry: { value: 0.2 } });
  });
  it.each(['×0.2', 'x0.2', 'X 0.2', '✕0.2', '✖.2', '* 0.2', ' ×0.2'])(
    'passes over the times sign of %s where a pure number is asked for',
    (cell) => {
      expect(read(cell, 'ratio')).toMatchObject({ kind: 'number', unit: 'none', entry: { value: 0.2 } });
      expect(read(cell, 'mass')).toEqual({ kind: 'unreadable', because: 'more than a number' });
    },
  );
  it('knows a ratio where a pure number is asked for', () => {
    for (const cell of ['1:6.67', '1 : 10', '1 to 10', '1 TO 10', '1:4 or so', 'about 1:4']) {
      expect(read(cell, 'ratio')).toEqual({ kind: 'unreadable', because: 'ratio' });
      expect(read(cell, 'mass')).toEqual({ kind: 'unreadable', because: 'two numbers' });
    }
    for (const cell of ['1 total 10', '1 in 10', '10 times 2', '10, or 1:10'])
      expect(read(cell, 'ratio')).toEqual({ kind: 'unreadable', because: 'two numbers' });
  });
  it('takes words that only begin like “times” and “fold” for another unit', () => {
    for (const cell of ['5 timesheets', '5 folders', '5 g'])
      expect(read(cell, 'ratio')).toMatchObject({ kind: 'number', unit: 'other kind', entry: { value: 5 } });
  });
  it('reads a comma in the width of Chinese and Japanese as it reads any comma', () => {
    expect(read('７，１４ ｇ', 'mass', 'comma')).toMatchObject({
      kind: 'number',
      unit: 'fits',
      entry: { value: 7.14 },
    });
    expect(read('７，１４０')).toEqual({ kind: 'unreadable', because: 'two ways' });
  });
  it('passes over two rough words and no more', () => {
    expect(read('about ca. 7.14')).toMatchObject({ kind: 'number', entry: { value: 7.14 } });
    expect(read('about about about 7.14')).toEqual({ kind: 'unreadable', because: 'more than a number' });
  });
  it('keeps the sign behind a rough word', () => {
    for (const cell of ['about -7.14', '~−7.14', '~–7.14'])
      expect(read(cell)).toMatchObject({ kind: 'number', entry: { value: -7.14 } });
  });
  it('takes a cell that holds a number for a number without a unit', () => {
    expect(read(7.14)).toMatchObject({ kind: 'number', unit: 'none', bare: { value: 7.14 } });
  });
  it('asks about the unit where no number can hold the entry in the unit asked', () => {
    expect(read('1e307 kg')).toMatchObject({ kind: 'number', unit: 'other kind', entry: { value: 1e307 } });
  });
  it('reads 200 characters and no longer', () => {
    const remark = (length: number) => `7.14 g ${'x'.repeat(length - 7)}`;
    expect(read(remark(200))).toMatchObject({ kind: 'number', unit: 'fits' });
    expect(read(remark(201))).toEqual({ kind: 'unreadable', because: 'too long' });
  });
  it('keeps the other reading of a mark that the settings decide', () => {
    expect(read('7.140 g', 'mass', 'comma')).toMatchObject({ entry: { value: 7140 }, otherMark: { value: 7.14 } });
    expect(read('7,140 mg', 'mass', 'point')).toMatchObject({ entry: { value: 7.14 }, otherMark: { value: 0.00714 } });
    expect(read('7.14 g', 'mass', 'comma')).not.toHaveProperty('otherMark');
    // Litres are no unit of a mass, so the number stays as it stands in either reading.
    expect(read('7,140 L', 'mass', 'point')).toMatchObject({ entry: { value: 7140 }, otherMark: { value: 7.14 } });
    expect(read('7.140 g', 'mass')).not.toHaveProperty('otherMark');
  });
  it('is never in doubt where the sheet has a decimal mark', () => {
    expect(read('1,234 g', 'mass', 'comma')).toMatchObject({ kind: 'number', entry: { value: 1.234 } });
    expect(read('1,234', 'mass', 'point')).toMatchObject({ kind: 'number', entry: { value: 1234 } });
    expect(read('0,5', 'mass', 'point')).toMatchObject({ kind: 'number', entry: { value: 0.5 } });
    expect(read('1.234', 'mass', 'comma')).toMatchObject({ kind: 'number', entry: { value: 1234 } });
  });
});
