import { describe, expect, it } from 'vitest';
import { hazardDataAge } from '../../src/chemistry/hazardDataAge.ts';
import { hazardSource } from '../../src/chemistry/hazardSource.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';

describe('hazardDataAge', () => {
  it.each([
    ['2026-07-01', false],
    ['2026-11-29', false],
    ['2027-12-31', false],
    ['2028-01-01', false],
    ['2028-01-02', true],
    ['2028-02-01', true],
    ['2031-03-04', true],
  ])('on %s says that the act of 2026-07-01 is more than 18 months old: %s', (today, isOld) => {
    expect(hazardDataAge(today)).toEqual({ date: '2026-07-01', isOld });
  });
});

describe('hazardSource', () => {
  it('has source, waste and handling for every listed substance', () => {
    for (const { name } of listedHazards()) {
      const found = hazardSource(name);
      expect(found?.source.length, name).toBeGreaterThan(10);
      expect(found?.drain.length, name).toBeGreaterThan(5);
      expect(found?.handling.length, name).toBeGreaterThan(4);
      expect(JSON.stringify(found)).not.toMatch(/the project|read again|first table/);
    }
    expect(hazardSource('unobtainium chloride')).toBeUndefined();
  });
});
