import { describe, expect, it } from 'vitest';
import { errorText } from '../../src/errors/errorText.ts';
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
      'Expected a size of volumetric flask in ISO 1042 for volume, received 150 mL. Take 100 mL (± 0.1 mL) or 200 mL (± 0.15 mL).',
    );
    const beyond = figure('volumetric pipette', 250, 'A', 'ASTM');
    expect(!beyond.ok && beyond.error.advice).toBe('Take 100 mL (± 0.08 mL).');
    const below = figure('beaker', 1);
    expect(!below.ok && below.error.advice).toBe('Take 50 mL (± 2.5 mL).');
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
