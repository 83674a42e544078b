import fc from 'fast-check';
import * as mathjs from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { DecimalMark } from '../../src/sidebar/arithmetic/pointNumbers.ts';
import { readField } from '../../src/sidebar/arithmetic/readField.ts';
import { cases } from '../depth.ts';

const read = (typed: string, unit: string, mark: DecimalMark = 'point') => readField({ typed, unit, mark });
const textOf = (typed: string, unit: string, mark: DecimalMark = 'point') => {
  const reading = read(typed, unit, mark);
  return reading.kind === 'value' ? reading.text : reading;
};
const messageOf = (typed: string, unit: string, mark: DecimalMark = 'point') => {
  const reading = read(typed, unit, mark);
  return reading.kind === 'problem' ? reading.message : JSON.stringify(reading);
};

describe('readField', () => {
  it.each([
    ['0.400', 'mol/L', '0.400'],
    ['200', 'mL', '200'],
    ['  50.0 ', 'mL', '50.0'],
    ['.5', 'g', '0.5'],
    ['98 %', '%', '98'],
    ['0,5', 'mL', '0.5'],
  ])('keeps the figures of %s and says nothing beside it', (typed, unit, text) => {
    expect(read(typed, unit)).toMatchObject({ kind: 'value', text, meaning: '' });
  });
  it.each([
    ['3 * 200 mL', 'mL', '600'],
    ['3 × 200 mL', 'mL', '600'],
    ['2 x 50 mL', 'mL', '100'],
    ['1/4 L', 'mL', '250'],
    ['¼ L', 'mL', '250'],
    ['1 L + 500 mL', 'mL', '1500'],
    ['1 L − 250 mL', 'mL', '750'],
    ['0.1 mol / 0.25 L', 'mol/L', '0.4'],
    ['20 g / 58 mL', 'g/mL', '0.344827586207'],
    ['0.1 + 0.2', 'g', '0.3'],
    ['2.50e-3', 'g', '0.00250'],
  ])('works out %s', (typed, unit, text) => {
    expect(read(typed, unit)).toMatchObject({ text, meaning: `= ${text} ${unit}` });
  });
  it.each([
    ['0.250 L', 'mL', '250'],
    ['0.2500 L', 'mL', '250.0'],
    ['300 mmol/L', 'mol/L', '0.300'],
    ['0.3 M', 'mol/L', '0.3'],
    ['5 mM', 'mol/L', '0.005'],
    ['400 µL', 'mL', '0.400'],
    ['0.2 dm³', 'mL', '200'],
    ['250 cm3', 'mL', '250'],
    ['1180 kg/m^3', 'g/mL', '1.180'],
  ])('keeps the figures of %s through its conversion', (typed, unit, text) => {
    expect(textOf(typed, unit)).toBe(text);
  });
  it.each([
    ['250ML', 'mL', 'mL'],
    ['250 Ml', 'mL', 'mL'],
    ['3 * 2 Mg', 'g', 'mg'],
    ['5 Mmol / 2 L', 'mol/L', 'mmol'],
  ])('asks whether a capital M was meant in %s', (typed, unit, meant) => {
    expect(messageOf(typed, unit)).toContain(`Did you mean ${meant}?`);
  });
  it('reads and writes a decimal comma where the plan has one', () => {
    expect(textOf('0,400', 'mol/L', 'comma')).toBe('0,400');
    expect(textOf('0,25 L', 'mL', 'comma')).toBe('250');
    expect(read('2 * 0,15 mol/L', 'mol/L', 'comma')).toMatchObject({ text: '0,3', meaning: '= 0,3 mol/L', value: 0.3 });
  });
  it.each([
    ['1,234', 'point', '1234', '1.234'],
    ['1.234', 'comma', '1234', '1,234'],
    ['2 * 1,234 mL', 'point', '1234', '1.234'],
  ] as const)('shows both readings of %s under a decimal %s', (typed, mark, one, other) => {
    expect(messageOf(typed, 'mL', mark)).toContain(`${one} or ${other}`);
  });
  it.each([
    ['2.5 kg', 'a mass'],
    ['3 mol', 'an amount'],
    ['0.3 mol/L', 'a concentration'],
    ['10 cm', 'a length'],
  ])('names both kinds for %s where mL is asked', (typed, kind) => {
    const message = messageOf(typed, 'mL');
    expect(message).toContain('mL');
    expect(message).toContain(`“${typed}” is ${kind}`);
  });
  it.each(['0', '-3', '0.00', '1 L - 1 L'])('asks for more than nothing instead of %s', (typed) => {
    expect(messageOf(typed, 'mL')).toContain(`“${typed}” is not above 0`);
  });
  it.each(['1/0', '1e400'])('refuses %s, which has no finite result', (typed) => {
    expect(messageOf(typed, 'mL')).toContain('no finite result');
  });
  it.each(['3*', 'sqrt(4)', '[1,2]', 'a=5', '5 "a"', 'f(x)=x', '1:2:3 L to mL', '10 % 3', '5 %', '(((('])(
    'reads nothing out of %s',
    (typed) => {
      expect(read(typed, 'mL').kind).toBe('problem');
    },
  );
  it.each(['abc', 'constructor', 'toString', '__proto__', 'pi', '3 teaspons'])('knows no unit %s', (typed) => {
    expect(messageOf(typed, 'mL')).toContain('We do not know the unit');
  });
  it('asks for a unit on each part of a sum', () => {
    expect(messageOf('1 L + 5', 'mL')).toContain('different kinds');
  });
  it('is blank for spaces', () => {
    expect(read('  ', 'mL')).toEqual({ kind: 'blank' });
  });
  it('gives up on a long text in words', () => {
    expect(messageOf('1+'.repeat(300), 'mL')).toContain('200 characters');
  });

  it('agrees with the full mathjs on sums, products and quotients of volumes', () => {
    const volume = fc.tuple(fc.integer({ min: 1, max: 999 }), fc.constantFrom('mL', 'L', 'cL', 'dL', 'uL'));
    fc.assert(
      fc.property(
        volume,
        volume,
        fc.integer({ min: 1, max: 50 }),
        fc.constantFrom('+', '*', '/'),
        (one, other, factor, sign) => {
          const second = sign === '+' ? other.join(' ') : String(factor);
          const typed = `${one.join(' ')} ${sign} ${second}`;
          const expected = (mathjs.evaluate(typed) as mathjs.Unit).toNumber('mL');
          const reading = read(typed, 'mL');
          expect(reading.kind).toBe('value');
          if (reading.kind === 'value') expect(Math.abs(reading.value / expected - 1)).toBeLessThan(1e-11);
        },
      ),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('answers any text with a reading, finite and above 0 where it is a value', () => {
    const pieces = fc.array(
      fc.constantFrom(
        '1',
        '0.5',
        ' ',
        'mL',
        'L',
        '*',
        '/',
        '(',
        ')',
        '+',
        '-',
        '^',
        ',',
        '.',
        'e',
        '%',
        'mol',
        '[',
        '=',
        '"',
      ),
      {
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          pieces.map((list) => list.join('')),
        ),
        fc.constantFrom('mL', '%', 'mol/L'),
        (typed, unit) => {
          const reading = read(typed, unit);
          if (reading.kind === 'value') {
            expect(reading.value).toBeGreaterThan(0);
            expect(Number.isFinite(reading.value)).toBe(true);
            expect(Number(reading.text)).toBe(reading.value);
          }
        },
      ),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
    );
  });
});
