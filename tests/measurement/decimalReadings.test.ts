import { describe, expect, it } from 'vitest';
import { decimalReadings, otherReading } from '../../src/measurement/decimalReadings.ts';

/** A reading with a point for its decimal mark; without one where no mark was typed. */
const shown = (body: string, decimalMark?: 'point' | 'comma'): readonly string[] =>
  decimalReadings(body, decimalMark).map(({ whole, fraction }) =>
    fraction === undefined ? whole : `${whole}.${fraction}`,
  );

describe('decimalReadings', () => {
  it.each([
    // no mark
    ['1200', '1200'],
    ['0012', '0012'],
    // one point or comma
    ['0.50', '0.50'],
    ['5.', '5.'],
    ['.5', '.5'],
    [',5', '.5'],
    ['5,', '5.'],
    ['1,23', '1.23'],
    ['1,2345', '1.2345'],
    ['0,123', '0.123'],
    ['01,234', '01.234'],
    ['1234,567', '1234.567'],
    ['1.234', '1.234'],
    // several of one mark
    ['1,234,567', '1234567'],
    ['1.234.567', '1234567'],
    ['12,345,678', '12345678'],
    ['123,456,789', '123456789'],
    // both marks: the later is the decimal one
    ['1,234.5', '1234.5'],
    ['1.234,5', '1234.5'],
    ['1,234,567.89', '1234567.89'],
    ['1.234.567,', '1234567.'],
    // spaces and apostrophes
    ['1 234', '1234'],
    ['12 345 678', '12345678'],
    ['1 234.5', '1234.5'],
    ['1 234,5678', '1234.5678'],
    ['1 234.', '1234.'],
    ['0.123 45', '0.12345'],
    ['.123 456', '.123456'],
    ['0.123 456 7', '0.1234567'],
    ['1 234,567 8', '1234.5678'],
  ])('reads %s as %s', (body, reading) => {
    expect(shown(body)).toEqual([reading]);
  });

  it.each([
    '1,23,456',
    '1,234,56',
    '1,2345,678',
    '1234,567,890',
    '0,123,456',
    '1.23.456',
    ',123,456',
    '12,34.5',
    '0,123.4',
    '1234,567.8',
    '1,234.567.8',
    '1.5.,3',
    '.,5',
    '1 23',
    '1 2345',
    '1234 567',
    '0 123',
    '1 23 456',
    '1 234.5,6',
    '1 234,5.6',
    '1 23.4',
    '0.12 345',
    '0.1234 567',
    '0.123 4567',
    '0.123 45 6',
    '5. 5',
    '5.123 ',
  ])('finds no reading of %s', (body) => {
    expect(decimalReadings(body)).toEqual([]);
    expect(decimalReadings(body, 'point')).toEqual([]);
    expect(decimalReadings(body, 'comma')).toEqual([]);
  });

  it.each([
    ['1,234', ['1234', '1.234']],
    ['12,345', ['12345', '12.345']],
    ['999,000', ['999000', '999.000']],
  ])('finds both readings of %s, the whole number first', (body, readings) => {
    expect(shown(body)).toEqual(readings);
  });

  it.each([
    ['1,234', '1234', '1.234'],
    ['1.234', '1.234', '1234'],
    ['1,5', '1.5', '1.5'],
    ['1.5', '1.5', '1.5'],
    ['0,500', '0.500', '0.500'],
    ['1.234.567', '1234567', '1234567'],
    ['1,234.5', '1234.5', '1234.5'],
    ['1234', '1234', '1234'],
  ])('reads %s as %s where the sheet has a point, as %s where it has a comma', (body, point, comma) => {
    expect(shown(body, 'point')).toEqual([point]);
    expect(shown(body, 'comma')).toEqual([comma]);
  });
});

describe('otherReading', () => {
  it.each([
    ['7.140', 'comma', '7.140'],
    ['7,140', 'comma', '7140'],
    ['7,140', 'point', '7.140'],
    ['7.140', 'point', '7140'],
    ['123.456', 'comma', '123.456'],
  ] as const)('reads %s, where the mark is a %s, the other way as %s', (body, mark, other) => {
    const found = otherReading(body, mark);
    expect(found && [found.whole, found.fraction].filter((part) => part !== undefined).join('.')).toBe(other);
  });
  it.each(['7.14', '0.140', '7140', '1234.567', '1.234.567', '1,234.5', '7.1400', '7 140'])(
    'has no other reading of %s',
    (body) => {
      for (const mark of ['point', 'comma'] as const) expect(otherReading(body, mark)).toBeUndefined();
    },
  );
});
