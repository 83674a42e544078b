import { beforeAll, describe, expect, it } from 'vitest';
import { simulateChains } from '../../scripts/simulate/chains.ts';
import { type GeneratedFindings, simulateGenerated } from '../../scripts/simulate/generatedNumbers.ts';
import { type Findings, rate, simulate, tellsAnswer, total } from '../../scripts/simulate/simulation.ts';
import { allActivities } from '../../src/lab/activities.ts';
import { quantities } from '../../src/lab/quantities.ts';

describe('simulated students', () => {
  let findings: Findings;
  beforeAll(() => {
    findings = simulate({ plansEach: 80, seed: 'kept for tests' });
  });
  it('are all on target when they round honestly, with any permitted rounding of atomic weights and ties either way', () => {
    expect(findings.honest.of).toBe(2 * 80 * Object.keys(quantities).length);
    expect(findings.honest.hits).toBe(findings.honest.of);
  });
  it('are never below close when they round in between', () => {
    expect(findings.roundedInBetween.of).toBeGreaterThan(400);
    expect(findings.roundedInBetween.hits).toBe(findings.roundedInBetween.of);
  });
  it('have their own slip named in at least 99 of 100 cases, and alone in at least 90', () => {
    const slips = findings.slips;
    expect(Math.min(...slips.map(({ named }) => named.of))).toBeGreaterThan(5);
    expect(rate(total(slips.map(({ named }) => named)))).toBeGreaterThanOrEqual(0.99);
    for (const { quantity, id, named, alone } of slips) {
      expect({ quantity, id, named: rate(named) >= 0.99, alone: rate(alone) >= 0.9 }).toEqual({
        quantity,
        id,
        named: true,
        alone: true,
      });
    }
  });
  it('are hardly ever accused of a slip when the number is random', () => {
    expect(rate(findings.accused[4])).toBeLessThan(0.005);
    expect(rate(findings.accused[3])).toBeLessThan(0.005);
    expect(rate(findings.accused[2])).toBeLessThan(0.015);
    expect(rate(findings.accused[1])).toBeLessThan(0.05);
    expect(rate(findings.mistyped)).toBeLessThan(0.05);
  });
  it('never read the answer in a text', () => {
    expect(findings.texts).toBeGreaterThan(50_000);
    expect(findings.telling).toEqual([]);
  });
});

describe('simulated teams of every activity, with the numbers that plans give them', () => {
  let found: GeneratedFindings;
  beforeAll(() => {
    found = simulateGenerated({ teams: 12, seed: 'kept for tests' });
  });
  it('are on target in every row when they type to the figures asked and go on from what they typed', () => {
    expect(found.activities).toBe(allActivities().length);
    expect(found.teams).toBe(12 * found.activities);
    expect(found.rows).toBeGreaterThan(900);
    expect(found.notOnTarget).toEqual([]);
  });
  it('are never below close when they keep every digit and round at the end', () => {
    expect(found.spareDigits).toEqual([]);
  });
  it('have their slips named in at least 99 of 100 cases, and alone in at least 90', () => {
    const quantitiesAsked = new Set(found.slips.map(({ quantity }) => quantity));
    expect([...quantitiesAsked].sort()).toEqual(Object.keys(quantities).sort());
    expect(rate(total(found.slips.map(({ named }) => named)))).toBeGreaterThanOrEqual(0.99);
    expect(rate(total(found.slips.map(({ alone }) => alone)))).toBeGreaterThanOrEqual(0.9);
  });
  it('have the slips of the activities named, and are not accused of them at random', () => {
    expect(found.activitySlips.map(({ id }) => id).sort()).toEqual([
      'flasks-compared',
      'mass-reported',
      'planned-for-made',
    ]);
    for (const { id, named, alone, accused } of found.activitySlips) {
      expect(named.of, id).toBeGreaterThan(15);
      expect(rate(named), id).toBeGreaterThanOrEqual(0.99);
      expect(rate(alone), id).toBeGreaterThanOrEqual(0.9);
      for (const figures of [2, 3, 4] as const) expect(accused[figures].of, id).toBeGreaterThan(10);
      expect(rate(accused[4]), id).toBeLessThan(0.005);
      expect(rate(accused[3]), id).toBeLessThan(0.005);
      expect(rate(accused[2]), id).toBeLessThan(0.015);
    }
  });
  it('are hardly ever accused in their block when a number is random', () => {
    expect(found.accused[3].of).toBeGreaterThan(500);
    expect(rate(found.accused[4])).toBeLessThan(0.005);
    expect(rate(found.accused[3])).toBeLessThan(0.005);
    expect(rate(found.accused[2])).toBeLessThan(0.015);
  });
});

describe('simulated teams of the everyday activity', () => {
  it('are on target in every row when they type to the figures asked and go on from what they typed', () => {
    const chains = simulateChains({ teams: 500, seed: 'kept for tests', tellsAnswer });
    expect(chains.rows).toBe(4500);
    expect(chains.notOnTarget).toEqual([]);
    expect(chains.notFollowing).toEqual([]);
    expect(chains.telling).toEqual([]);
    // Well under 10 ms on a quiet machine; three times that here, where others work beside it.
    expect(chains.millisecondsATeam).toBeLessThan(30);
  });
});

describe('tellsAnswer', () => {
  it('finds the answer to two figures or more, unless it stands in the givens', () => {
    expect(tellsAnswer('That makes 7.14 g.', { answer: 7.14014, given: ['0.300'] })).toBe(true);
    expect(tellsAnswer('That makes about 7.1 g.', { answer: 7.14014, given: [] })).toBe(true);
    expect(tellsAnswer('0.300 mol/L × 0.200 L = ?', { answer: 0.06, given: ['0.300', '200'] })).toBe(false);
    expect(tellsAnswer('Take 25.0 mL.', { answer: 25, given: ['25.0'] })).toBe(false);
  });
});
