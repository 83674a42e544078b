import { describe, expect, it } from 'vitest';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import {
  type GlasswareKind,
  glasswareFigures,
  glasswareKinds,
  glasswareTolerance,
} from '../../src/measurement/glasswareTolerance.ts';
import { millilitres } from '../../src/measurement/quantity.ts';

const figure = (kind: GlasswareKind, volume: number, glassClass?: 'A' | 'B', standard?: 'ISO' | 'ASTM') =>
  glasswareTolerance({ kind, volume: millilitres(volume), glassClass, standard });

describe('glasswareTolerance', () => {
  it.each([
    {
      kind: 'volumetric flask',
      volume: 100,
      gives: 0.1,
      source: 'ISO 1042, agrees with the German verification ordinance',
    },
    {
      kind: 'volumetric flask',
      volume: 250,
      gives: 0.15,
      source: 'ISO 1042, agrees with the German verification ordinance',
    },
    {
      kind: 'volumetric flask',
      volume: 1000,
      gives: 0.4,
      source: 'ISO 1042, agrees with the German verification ordinance',
    },
    { kind: 'volumetric flask', volume: 250, glassClass: 'B', gives: 0.3, source: 'ISO 1042' },
    { kind: 'volumetric flask', volume: 250, standard: 'ASTM', gives: 0.12, source: 'ASTM E288, textbook Table 2.6' },
    { kind: 'volumetric flask', volume: 1000, standard: 'ASTM', gives: 0.3, source: 'ASTM E288, textbook Table 2.6' },
    {
      kind: 'volumetric flask',
      volume: 100,
      glassClass: 'B',
      standard: 'ASTM',
      gives: 0.16,
      source: 'ASTM E288: class B is twice class A',
    },
    { kind: 'volumetric pipette', volume: 25, gives: 0.03, source: 'ISO 648' },
    { kind: 'volumetric pipette', volume: 10, standard: 'ASTM', gives: 0.02, source: 'ASTM E969, catalogue abstract' },
    { kind: 'burette', volume: 50, gives: 0.05, source: 'ISO 385' },
    { kind: 'burette', volume: 25, gives: 0.05, source: 'ISO 385: the wider of two scales' },
    { kind: 'graduated cylinder', volume: 100, standard: 'ASTM', gives: 0.5, source: 'ASTM E1272-02, Table 1' },
    { kind: 'graduated pipette', volume: 10, standard: 'ASTM', gives: 0.03, source: 'USP <31>' },
  ] as const)('gives ±$gives mL for a $volume mL $kind [$source]', ({ kind, volume, gives, ...rest }) => {
    const { glassClass, standard }: { glassClass?: 'A' | 'B'; standard?: 'ISO' | 'ASTM' } = rest;
    expect(figure(kind, volume, glassClass, standard)).toEqual({
      ok: true,
      value: { volume, tolerance: gives, basis: 'source' },
    });
  });
  it('says which figures could not be confirmed', () => {
    expect(figure('volumetric flask', 500, 'A', 'ASTM')).toMatchObject({ value: { basis: 'memory' } });
    expect(figure('graduated cylinder', 100)).toMatchObject({ value: { basis: 'memory' } });
    expect(figure('beaker', 250)).toMatchObject({ value: { tolerance: 12.5, basis: 'practice' } });
  });
  it('offers the neighbours of a size that the table lacks', () => {
    const between = figure('volumetric flask', 150);
    expect(!between.ok && errorText(between.error)).toBe(
      '150 mL is not a size of volumetric flask in ISO 1042. Take 100 mL (± 0.1 mL) or 200 mL (± 0.15 mL).',
    );
    expect(!between.ok && shortErrorText(between.error)).toBe('⚠ size: 100 or 200');
    const beyond = figure('volumetric pipette', 250, 'A', 'ASTM');
    expect(!beyond.ok && errorText(beyond.error)).toBe(
      '250 mL is not a size of volumetric pipette in ASTM E969. Take 100 mL (± 0.08 mL).',
    );
    expect(!beyond.ok && shortErrorText(beyond.error)).toBe('⚠ size: 100');
    const below = figure('beaker', 1);
    expect(!below.ok && errorText(below.error)).toBe(
      '1 mL is not a size of beaker in the table of beakers. Take 50 mL (± 2.5 mL).',
    );
  });
  it.each([
    ['volumetric flask', 'ISO 1042', 'ASTM E288'],
    ['volumetric pipette', 'ISO 648', 'ASTM E969'],
    ['graduated pipette', 'ISO 835', 'ASTM E1293'],
    ['burette', 'ISO 385', 'ASTM E287'],
    ['graduated cylinder', 'ISO 4788', 'ASTM E1272'],
  ] as const)('names the standards of a %s: %s and %s', (kind, iso, astm) => {
    expect(figure(kind, 0.1)).toMatchObject({ error: { expected: `a size of ${kind} in ${iso}` } });
    expect(figure(kind, 0.1, 'A', 'ASTM')).toMatchObject({ error: { expected: `a size of ${kind} in ${astm}` } });
  });
  it('finds a size that was computed, to nine figures', () => {
    expect(figure('volumetric flask', 100.00000005)).toMatchObject({ ok: true, value: { volume: 100 } });
    expect(figure('volumetric flask', 99.99999995)).toMatchObject({ ok: true, value: { volume: 100 } });
    expect(figure('volumetric flask', 100.0000002)).toMatchObject({ ok: false });
    expect(figure('volumetric flask', 99.9999998)).toMatchObject({ ok: false });
  });
  it('lists all sizes of a kind, smallest first, of class A and ISO where nothing else is said', () => {
    expect(glasswareFigures({ kind: 'volumetric pipette' })).toEqual(
      glasswareFigures({ kind: 'volumetric pipette', glassClass: 'A', standard: 'ISO' }),
    );
    expect(glasswareFigures({ kind: 'volumetric pipette' }).map(({ volume }) => volume)).toEqual([
      0.5, 1, 2, 5, 10, 20, 25, 50, 100,
    ]);
  });
  it('never has a tighter class B, nor a tighter tolerance for a larger size', () => {
    for (const kind of Object.keys(glasswareKinds) as GlasswareKind[]) {
      for (const standard of ['ISO', 'ASTM'] as const) {
        const strict = glasswareFigures({ kind, glassClass: 'A', standard });
        const loose = glasswareFigures({ kind, glassClass: 'B', standard });
        expect(strict.length).toBeGreaterThan(3);
        expect(loose.map(({ volume }) => volume)).toEqual(strict.map(({ volume }) => volume));
        strict.forEach(({ tolerance }, place) => {
          expect(loose[place]?.tolerance).toBeGreaterThanOrEqual(tolerance);
          expect(strict[place + 1]?.tolerance ?? tolerance).toBeGreaterThanOrEqual(tolerance);
        });
      }
    }
  });
});
