import { describe, expect, it } from 'vitest';
import { unitNamed, unitsOfKind } from '../../src/measurement/unit.ts';

describe('unitNamed', () => {
  it.each([
    ['L', 'volume', 3, ['l', 'Ｌ', 'ℓ', 'litre', 'litres', 'liter', 'liters', 'Litre', 'LITRES']],
    ['dL', 'volume', 2, ['dl']],
    ['cL', 'volume', 1, ['cl']],
    ['mL', 'volume', 0, ['ml', 'mL.', 'm L', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'Milliliters']],
    ['µL', 'volume', -3, ['μL', 'uL', 'ul', 'µl', 'μl']],
    ['dm³', 'volume', 3, ['dm3', 'dm^3']],
    ['cm³', 'volume', 0, ['cm3', 'cm^3', 'cc', 'CC']],
    ['kg', 'mass', 3, ['kilogram', 'kilograms']],
    ['g', 'mass', 0, ['gram', 'grams', 'Gram', 'g.']],
    ['mg', 'mass', -3, ['milligram', 'milligrams']],
    ['µg', 'mass', -6, ['ug', 'μg']],
    ['mol', 'amount', 0, ['mole', 'moles']],
    ['mmol', 'amount', -3, ['millimole', 'millimoles']],
    [
      'mol/L',
      'concentration',
      0,
      [
        'mol/l',
        'mol / L',
        'mol L⁻¹',
        'mol L-1',
        'mol L^-1',
        'mol L−1',
        'mol L–1',
        'mol·L-1',
        'mol · L-1',
        'mol⋅L-1',
        'mol*L-1',
        'mol  L-1',
        'mol l-1',
      ],
    ],
    ['mmol/L', 'concentration', -3, ['mmol/l', 'mmol L⁻¹']],
    ['µmol/L', 'concentration', -6, ['umol/L', 'μmol/l', 'umol L-1']],
    ['mol/dm³', 'concentration', 0, ['mol/dm3', 'mol/dm^3', 'mol dm⁻³', 'mol dm-3', 'mol·dm^-3']],
    ['M', 'concentration', 0, ['molar', 'Molar']],
    ['mM', 'concentration', -3, []],
    ['µM', 'concentration', -6, ['uM', 'μM']],
    ['g/mL', 'density', 0, ['g/ml', 'g mL⁻¹', 'g·ml-1']],
    ['g/cm³', 'density', 0, ['g/cm3', 'g cm⁻³']],
    ['kg/m³', 'density', -3, ['kg/m^3', 'kg m-3']],
    ['%', 'percent', 0, ['percent', 'Percent', '％']],
  ] as const)(
    'knows %s, a %s of 10^%d of the default unit, and its other spellings %j',
    (symbol, kind, power, spellings) => {
      for (const text of [symbol, ...spellings])
        expect([text, unitNamed(text)]).toEqual([text, { kind, symbol, power }]);
    },
  );
  it.each([
    '',
    'ML',
    'm',
    'N',
    'kL',
    'moL',
    'G',
    'gal',
    'u',
    'mol/kg',
    'mol L-2',
    'mol L-13',
    'mol L1',
    'mol/L-1',
    'mol d-1m3',
    'molL-1',
    'dm2',
    'constructor',
    '__proto__',
    'toString',
    'undefined',
  ])('knows no unit %j', (text) => {
    expect(unitNamed(text)).toBeUndefined();
  });
});

describe('unitsOfKind', () => {
  it.each([
    ['volume', 'L, dL, cL, mL, µL, dm³ or cm³'],
    ['mass', 'kg, g, mg or µg'],
    ['amount', 'mol or mmol'],
    ['concentration', 'mol/L, mmol/L, mol/dm³, M, mM, µM or µmol/L'],
    ['density', 'g/mL, g/cm³ or kg/m³'],
    ['percent', '%'],
  ] as const)('lists those of a %s: %s', (kind, listed) => {
    expect(unitsOfKind(kind)).toBe(listed);
  });
});
