import { describe, expect, it } from 'vitest';
import { millilitres } from '../../src/measurement/quantity.ts';
import { volumetricTolerance } from '../../src/measurement/volumetricTolerance.ts';

describe('volumetricTolerance', () => {
  it.each([
    { vessel: 'flask', volume: 100, glassClass: 'A', standard: 'ISO', gives: 0.1, source: 'ISO 1042' },
    { vessel: 'flask', volume: 250, glassClass: 'B', standard: 'ISO', gives: 0.3, source: 'ISO 1042' },
    { vessel: 'pipette', volume: 25, glassClass: 'A', standard: 'ISO', gives: 0.03, source: 'ISO 648' },
    { vessel: 'flask', volume: 250, glassClass: 'A', standard: 'ASTM', gives: 0.12, source: 'ASTM E288' },
    { vessel: 'pipette', volume: 5, glassClass: 'B', standard: 'ASTM', gives: 0.02, source: 'ASTM E969' },
  ] as const)(
    'gives ±$gives mL for a $volume mL $vessel of class $glassClass ($source)',
    ({ volume, gives, ...kind }) => {
      expect(volumetricTolerance({ ...kind, volume: millilitres(volume) })).toEqual({
        tolerance: gives,
        readAt: volume,
        confirmed: true,
      });
    },
  );

  it('reads a size that the standard lacks at the next one, and says so', () => {
    expect(
      volumetricTolerance({ vessel: 'pipette', volume: millilitres(15), glassClass: 'B', standard: 'ISO' }),
    ).toEqual({ tolerance: 0.06, readAt: 20, confirmed: true });
    expect(
      volumetricTolerance({ vessel: 'pipette', volume: millilitres(200), glassClass: 'A', standard: 'ISO' }),
    ).toEqual({ tolerance: 0.16, readAt: 100, confirmed: true });
  });

  it('says that a figure could not be confirmed', () => {
    const flask = { vessel: 'flask', volume: millilitres(500), glassClass: 'A', standard: 'ASTM' } as const;
    expect(volumetricTolerance(flask).confirmed).toBe(false);
  });
});
