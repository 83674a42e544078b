import { describe, expect, it } from 'vitest';
import {
  glasswareToleranceEntry,
  glasswareToleranceHelp,
} from '../../src/functions/entries/glasswareToleranceEntry.ts';
import { type GlasswareKind, glasswareFigures, glasswareKinds } from '../../src/measurement/glasswareTolerance.ts';

const kinds = Object.keys(glasswareKinds) as GlasswareKind[];
const standards = ['ISO', 'ASTM'] as const;
const classes = ['A', 'B'] as const;

/** Sizes in mL whose figure could not be confirmed, by standard, kind and class. */
const fromMemory = standards.flatMap((standard) =>
  kinds.flatMap((kind) =>
    classes.map((glassClass) => {
      const figures = glasswareFigures({ kind, glassClass, standard });
      const sizes = figures.filter(({ basis }) => basis === 'memory').map(({ volume }) => volume);
      return `${standard} ${kind} ${glassClass}: ${sizes.length === figures.length ? 'all' : sizes.join(' ')}`;
    }),
  ),
);

describe('GLASSWARETOLERANCE', () => {
  it('says in its notes which figures are confirmed and which come from memory, as the table has them', () => {
    expect(fromMemory.filter((line) => !/: $/.test(line))).toEqual([
      'ISO graduated pipette A: all',
      'ISO graduated pipette B: all',
      'ISO graduated cylinder A: all',
      'ISO graduated cylinder B: all',
      'ASTM volumetric flask A: 5 10 200 500',
      'ASTM volumetric flask B: 5 10 200 500',
      'ASTM volumetric pipette A: 15 20',
      'ASTM volumetric pipette B: 15 20',
      'ASTM graduated pipette A: 1 25',
      'ASTM graduated pipette B: all',
      'ASTM burette A: all',
      'ASTM burette B: all',
      'ASTM graduated cylinder A: 1000 2000',
      'ASTM graduated cylinder B: 1000 2000',
    ]);
    const [, memory] = glasswareToleranceHelp.notes;
    for (const words of [
      'ISO graduated pipettes and graduated cylinders',
      'ASTM burettes',
      'volumetric flasks of 5, 10, 200 and 500 mL',
      'volumetric pipettes of 15 and 20 mL',
      'graduated pipettes but for class A of 2, 5 and 10 mL',
      'graduated cylinders of 1000 and 2000 mL',
    ]) {
      expect(memory).toContain(words);
    }
  });
  it('offers every kind there is a table for', () => {
    expect(glasswareToleranceEntry.arguments[0].oneOf).toEqual(kinds);
  });
});
