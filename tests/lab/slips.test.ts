import { describe, expect, it } from 'vitest';
import { judgeQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { quantities } from '../../src/lab/quantities.ts';

/** `formula KBr, molarity 0.300` as a table of two columns. */
const given = (text: string) => text.split(', ').map((part) => part.split(/ (?=[^ ]+$)/) as [string, string]);

/**
 * Every slip with the number it gives, worked by hand with atomic weights of the 2021 table (Prohaska et al. 2022).
 * Which slips there are: published lists of learners' difficulties and common practice, as DEVELOPERS.md says.
 */
const cases: readonly (readonly [
  quantity: string,
  given: string,
  right: string,
  wrong: Readonly<Record<string, string | readonly string[]>>,
])[] = [
  [
    'molar mass',
    'formula CuSO4·5H2O',
    '249.68',
    {
      'water-of-hydration-left-out': '159.60',
      'one-water-only': '177.62',
      'subscripts-ignored': '201.68',
      'atomic-numbers-used': '127',
      // O for O4, and 5 × H for 5 × H2; 159.602 + 10 × 1.008 + 15.999; 159.602 × 5 × 18.015.
      'one-subscript-missed': ['201.68', '244.64'],
      'water-number-on-one-atom': '185.68',
      'dot-as-times': ['14376.15', '14378'],
      'power-of-ten': '24.968',
    },
  ],
  [
    'molar mass',
    'formula MgCl2·6H2O',
    '203.30',
    {
      // 203.295 − 35.45, and − 6 × 1.008; 95.205 + 12 × 1.008 + 15.999; 95.205 × 6 × 18.015.
      'one-subscript-missed': ['167.85', '197.25'],
      'water-number-on-one-atom': '123.30',
      'dot-as-times': '10290.71',
    },
  ],
  [
    'molar mass',
    'formula Na2CO3',
    '105.99',
    { 'one-subscript-missed': ['83.00', '73.99'], 'subscripts-ignored': '51.00' },
  ],
  [
    'molar mass',
    'formula Ca(NO3)2',
    '164.09',
    {
      'group-subscript-ignored': '102.08',
      'bracket-number-on-one-atom': ['116.09', '150.08'],
      'subscripts-ignored': '70.08',
      // 40.078 + 2 × (14.007 + 15.999).
      'one-subscript-missed': '100.09',
      'atomic-numbers-used': '82',
    },
  ],
  [
    'moles of solute',
    'molarity 0.300, volume 200',
    '0.0600',
    {
      'volume-in-mL': '60.0',
      'volume-ignored': '0.300',
      'volumes-multiplied': '1.50',
      'upside-down': ['667', '0.667'],
      'power-of-ten': '0.600',
    },
  ],
  ['moles of solute', 'molarity 0.125, volume 500', '0.0625', { 'upside-down': ['4000', '4.00'] }],
  [
    'mass of solute',
    'formula KBr, molarity 0.300, volume 200, purity 95.0',
    '7.52',
    {
      'volume-in-mL': '7520',
      'volume-ignored': '37.6',
      'moles-reported': '0.0600',
      'ratio-inverted': '0.000531',
      'volumes-multiplied': '188',
      // 119.002 ÷ 0.0600 ÷ 0.950.
      'upside-down': '2090',
      'molar-mass-reported': '119',
      'purity-ignored': '7.14',
      'purity-inverted': '6.78',
      'power-of-ten': '75.2',
    },
  ],
  [
    'mass of solute',
    'formula CuSO4·5H2O, molarity 0.100, volume 250',
    '6.24',
    {
      'water-of-hydration-left-out': '3.99',
      'one-water-only': '4.44',
      'subscripts-ignored': '5.04',
      'one-subscript-missed': ['5.04', '6.12'],
      'water-number-on-one-atom': '4.64',
      'upside-down': '9990',
      'molar-mass-reported': '250',
      'atomic-numbers-used': '3.18',
    },
  ],
  [
    'mass of solute',
    'formula Ca(NO3)2, molarity 0.100, volume 250',
    '4.10',
    {
      'group-subscript-ignored': '2.55',
      'bracket-number-on-one-atom': ['2.90', '3.75'],
      'one-subscript-missed': '2.50',
      'upside-down': '6560',
      'molar-mass-reported': '164',
    },
  ],
  [
    'mass of solute',
    'formula MgCl2·6H2O, molarity 0.100, volume 250',
    '5.08',
    { 'one-subscript-missed': ['4.20', '4.93'], 'water-number-on-one-atom': '3.08' },
  ],
  [
    'molarity',
    'formula NaCl, mass 5.00, volume 250, purity 92.0',
    '0.315',
    {
      'volume-in-mL': '0.000315',
      'molar-mass-ignored': ['20.0', '18.4'],
      'ratio-inverted': '1080',
      'volumes-multiplied': '0.0197',
      'amount-as-molarity': '0.0787',
      'volume-over-amount': '3.18',
      'purity-ignored': '0.342',
      'purity-inverted': '0.372',
      'power-of-ten': '3.15',
    },
  ],
  [
    'molarity',
    'formula CuSO4·5H2O, mass 12.5, volume 500',
    '0.100',
    {
      'water-of-hydration-left-out': '0.157',
      'one-water-only': '0.141',
      'subscripts-ignored': '0.124',
      'one-subscript-missed': ['0.124', '0.1022'],
      'water-number-on-one-atom': '0.135',
      'atomic-numbers-used': '0.197',
    },
  ],
  [
    'molarity',
    'formula Ca(NO3)2, mass 8.25, volume 250',
    '0.201',
    {
      'group-subscript-ignored': '0.323',
      'bracket-number-on-one-atom': ['0.284', '0.220'],
      'one-subscript-missed': '0.330',
    },
  ],
  [
    'molarity',
    'formula MgCl2·6H2O, mass 5.08, volume 250',
    '0.100',
    { 'one-subscript-missed': ['0.121', '0.103'], 'water-number-on-one-atom': '0.165' },
  ],
  [
    'stock volume',
    'stock molarity 0.750, target molarity 0.120, target volume 250',
    '40.0',
    {
      'litres-reported': '0.0400',
      'ratio-inverted': '1560',
      'water-for-stock': '210',
      'volume-left-out': '0.160',
      'amount-for-volume': ['30.0', '0.0300'],
      'parts-miscounted': ['47.6', '34.5'],
      'power-of-ten': '400',
    },
  ],
  [
    'water volume',
    'stock molarity 0.750, target molarity 0.120, target volume 250',
    '210',
    {
      'litres-reported': '0.210',
      'stock-for-water': '40.0',
      'final-volume-for-water': '250',
      'volumes-added': '290',
      'sign-reversed': '-210',
      'power-of-ten': '21.0',
    },
  ],
  [
    'dilution factor',
    'stock molarity 0.750, target molarity 0.120',
    '6.25',
    {
      'ratio-inverted': '0.160',
      'factor-less-one': '5.25',
      'total-counted-twice': '7.25',
      'total-over-water': '1.19',
      'difference-for-ratio': '0.630',
      'power-of-ten': '62.5',
    },
  ],
  [
    'diluted molarity',
    'stock molarity 0.750, stock volume 40.0, final volume 250',
    '0.120',
    {
      'ratio-inverted': '4.69',
      'solvent-added-to-final': '0.103',
      'water-as-final': '0.143',
      'molarity-unchanged': '0.750',
      'power-of-ten': '1.20',
    },
  ],
  [
    'ion molarity',
    'formula MgCl2, molarity 0.150, ion Cl-',
    '0.300',
    { 'ratio-inverted': '0.0750', 'ion-count-ignored': '0.150', 'all-ions-counted': '0.450', 'power-of-ten': '3.00' },
  ],
  [
    'ion molarity',
    'formula Al2(SO4)3, molarity 0.0200, ion Al3+',
    '0.0400',
    {
      "other-ion's-count": '0.0600',
      'charge-for-count': '0.0600',
      'all-ions-counted': '0.100',
      'ion-count-ignored': '0.0200',
    },
  ],
  ['ion molarity', 'formula MgCl2, molarity 0.150, ion Mg^2+', '0.150', { 'charge-for-count': '0.300' }],
  ['ion molarity', 'formula FeCl3, molarity 0.0400, ion Fe^3+', '0.0400', { 'charge-for-count': '0.120' }],
  ['ion molarity', 'formula Na2SO4, molarity 0.150, ion SO4^2-', '0.150', { 'charge-for-count': '0.300' }],
  ['ion molarity', 'formula CuSO4, molarity 0.100, ion Cu^2+', '0.100', { 'charge-for-count': '0.200' }],
  [
    'percent error',
    'measured 0.276, accepted 0.250',
    '10',
    {
      'divided-by-measured': '9.4',
      'mean-as-base': '9.89',
      'ratio-reported': '110',
      'difference-reported': '0.026',
      'fraction-reported': '0.104',
      'power-of-ten': '1.04',
    },
  ],
  [
    'reagent molarity',
    'formula HCl, mass percent 37.0, density 1.18',
    '12.0',
    {
      'ratio-inverted': '15900',
      'density-divided': '8.60',
      'percent-not-divided': '1200',
      'percent-left-out': '32.4',
      'density-ignored': '10.1',
      'per-mL-not-L': '0.0120',
      // 10 × 37.0 × 1.18; 37.0 ÷ 36.458; the same over 0.0630 kg.
      'grams-per-litre': '437',
      'moles-in-100-g': '1.01',
      'molality-reported': '16.1',
      'power-of-ten': '1.20',
    },
  ],
  [
    // 10 × 65.0 × 1.40 ÷ 63.012.
    'reagent molarity',
    'formula HNO3, mass percent 65.0, density 1.40',
    '14.4',
    { 'grams-per-litre': '910', 'moles-in-100-g': '1.03', 'molality-reported': '29.5' },
  ],
  [
    'density',
    'mass 26.58, volume 25',
    '1.0632',
    {
      'ratio-inverted': '0.94056',
      'mass-reported': '26.58',
      'volume-in-litres': '1063.2',
      'volumes-multiplied': '664.50',
      'power-of-ten': '10.632',
    },
  ],
  [
    // 0.0052 of 0.0172 is 0.3023 of the way, and 4 % is the whole of it: 14 + 1.209.
    'mass percent',
    'density 1.0601, lighter percent 14, lighter density 1.0549, heavier percent 18, heavier density 1.0721',
    '15.2',
    {
      'table-line-taken': ['14.0', '18.0'],
      'middle-of-lines': '16.0',
      'share-mirrored': '16.8',
      'step-unscaled': '14.3',
      'line-not-added': '1.21',
      'share-reported': '0.302',
      'ratio-inverted': '27.2',
      'power-of-ten': '1.52',
    },
  ],
];

const lines = cases.flatMap(([quantity, table, , wrong]) =>
  Object.entries(wrong).flatMap(([id, entries]) => [entries].flat().map((entry) => ({ quantity, table, id, entry }))),
);

describe('slips, worked by hand', () => {
  it.each(cases)('%s of %s is %s', (quantity, table, right) => {
    expect(judgeQuantity(quantity, given(table), right)).toMatchObject({ status: 'on target', slip: '' });
  });
  it.each(lines)('$quantity of $table: $entry matches $id', ({ quantity, table, entry, id }) => {
    const found = judgeQuantity(quantity, given(table), entry);
    expect(found.status).toBe('not yet');
    expect(found.slip.split(' or ')).toContain(id);
    expect(found.feedback).toMatch(/^(Your value matches|Things to check:)/);
  });
  it('have a case for every slip of every quantity', () => {
    const wanted = Object.values(quantities).flatMap(({ name, slips }) => slips.map(({ id }) => `${name}: ${id}`));
    const worked = new Set(lines.map(({ quantity, id }) => `${quantity}: ${id}`));
    expect(wanted.filter((line) => !worked.has(line))).toEqual([]);
  });
});

describe('a slip', () => {
  const kbr = given('formula KBr, molarity 0.300, volume 200');
  it('is named with another where both give the entry', () => {
    // In a litre flask the ratio of the molarities and the volume in litres are one number.
    const litre = given('stock molarity 0.500, target molarity 0.100, target volume 1000');
    const found = judgeQuantity('stock volume', litre, '0.200');
    expect(found).toMatchObject({ status: 'not yet', slip: 'litres-reported or volume-left-out' });
    expect(found.feedback).toBe('Things to check: Which unit does this row ask for? How big is the flask you fill?');
  });
  it('is not named where it gives the target', () => {
    expect(judgeQuantity('moles of solute', given('molarity 0.5, volume 1000'), '0.500').status).toBe('on target');
    expect(judgeQuantity('moles of solute', given('molarity 0.5, volume 1000'), '0.511').slip).toBe('');
  });
  it('reads too few figures as if zeros followed', () => {
    // The amount is 0.0600 mol; 35.7 g leaves the volume out, and 36 is not 36.0.
    expect(judgeQuantity('mass of solute', kbr, '0.06').slip).toBe('moles-reported');
    expect(judgeQuantity('mass of solute', kbr, '36').slip).toBe('');
  });
  it('counts trailing zeros of a whole number as far as the figures asked', () => {
    expect(judgeQuantity('mass of solute', kbr, '7140').slip).toBe('volume-in-mL');
    expect(judgeQuantity('mass of solute', kbr, '7142').slip).toBe('');
    expect(judgeQuantity('mass of solute', kbr, '7140.4').slip).toBe('');
    expect(judgeQuantity('mass of solute', kbr, '7100').slip).toBe('');
    expect(judgeQuantity('mass of solute', kbr, '7100', 2).slip).toBe('volume-in-mL');
  });
  it('takes the rounding of atomic weights that the class uses', () => {
    // K 39 with Br 79.904 gives 7134 at the least, where whole numbers are permitted.
    expect(judgeQuantity('mass of solute', kbr, '7139', 4, 0).slip).toBe('volume-in-mL');
    expect(judgeQuantity('mass of solute', kbr, '7139', 4, 2).slip).toBe('');
  });
  it('is named with another where a formula gives both the same, in words that ask once', () => {
    // With one number in the salt, to miss it and to miss them all are one.
    expect(judgeQuantity('molar mass', given('formula CaCl2'), '75.53')).toEqual({
      status: 'not yet',
      slip: 'subscripts-ignored or one-subscript-missed',
      feedback:
        'Your value matches a molar mass with each element counted only once. What do the small numbers in the formula tell you?',
    });
    expect(judgeQuantity('ion molarity', given('formula MgCl2, molarity 0.150, ion Mg^2+'), '0.300').slip).toBe(
      "other-ion's-count or charge-for-count",
    );
    expect(judgeQuantity('ion molarity', given('formula CuSO4, molarity 0.100, ion Cu^2+'), '0.200').slip).toBe(
      'all-ions-counted or charge-for-count',
    );
  });
  it('of a charge is none where the charge is one, or where it is the number', () => {
    const sodium = judgeQuantity('ion molarity', given('formula Na2SO4, molarity 0.150, ion Na+'), '0.150');
    expect(sodium.slip).toBe('ion-count-ignored');
    expect(judgeQuantity('ion molarity', given('formula KAl(SO4)2, molarity 0.100, ion SO4^2-'), '0.200').status).toBe(
      'on target',
    );
    expect(judgeQuantity('ion molarity', given('formula KAl(SO4)2, molarity 0.100, ion Al^3+'), '0.300').slip).toBe(
      'charge-for-count',
    );
  });
  it('of molality is none where there is no water', () => {
    expect(
      judgeQuantity('reagent molarity', given('formula CH3COOH, mass percent 100, density 1.05'), '1e9').slip,
    ).toBe('');
  });
  it('of ten is named only where nothing else explains the entry', () => {
    expect(judgeQuantity('moles of solute', given('molarity 0.300, volume 200'), '60.0').slip).toBe('volume-in-mL');
    expect(judgeQuantity('moles of solute', given('molarity 0.300, volume 200'), '6.00').slip).toBe('power-of-ten');
  });
});
