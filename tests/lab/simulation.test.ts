import { beforeAll, describe, expect, it } from 'vitest';
import { simulateChains } from '../../scripts/simulate/chains.ts';
import { type GeneratedFindings, simulateGenerated } from '../../scripts/simulate/generatedNumbers.ts';
import { type Findings, rate, simulate, tellsAnswer, total, triesNear } from '../../scripts/simulate/simulation.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { quantities } from '../../src/lab/quantities.ts';
import { cases } from '../depth.ts';

/** Shares are demanded of these students, not of any: `npm run deep` tries others by `npm run simulate`. */
const seed = 'kept for tests';

describe('simulated students', () => {
  const plansEach = cases({ short: 80, deep: 400 });
  const plans = plansEach * Object.keys(quantities).length;
  let findings: Findings;
  beforeAll(() => {
    findings = simulate({ plansEach, seed });
  });
  it('are all on target when they round honestly, with any permitted rounding of atomic weights and ties either way', () => {
    expect(findings.plans).toBe(plans);
    expect(findings.honest.of).toBe(2 * plans);
    expect(findings.honest.hits).toBe(findings.honest.of);
  });
  it('are never below close when they round in between', () => {
    expect(findings.roundedInBetween.of).toBeGreaterThan(0.38 * plans);
    expect(findings.roundedInBetween.hits).toBe(findings.roundedInBetween.of);
  });
  it('have their own slip named in at least 99 of 100 cases, and alone in at least 95 where no other gives the same', () => {
    const slips = findings.slips;
    expect(Math.min(...slips.map(({ named }) => named.of))).toBeGreaterThan(plans / 208);
    for (const { quantity, id, named, alone } of slips) {
      const isAlone = alone.of === 0 || rate(alone) >= 0.95;
      expect({ quantity, id, named: rate(named) >= 0.99, alone: isAlone }).toEqual({
        quantity,
        id,
        named: true,
        alone: true,
      });
    }
  });
  it('give the same figures with two slips only where a formula or the numbers make them one', () => {
    const pairs = findings.slips.flatMap(({ quantity, id, named, twins }) =>
      [...twins].flatMap(([other, times]) => (times > 0.2 * named.of ? [`${quantity}: ${id}, ${other}`] : [])),
    );
    expect(pairs.sort()).toEqual([
      "ion molarity: charge-for-count, other-ion's-count",
      "ion molarity: other-ion's-count, charge-for-count",
      'mass of solute: one-subscript-missed, subscripts-ignored',
      'mass of solute: subscripts-ignored, one-subscript-missed',
      'molar mass: one-subscript-missed, subscripts-ignored',
      'molar mass: subscripts-ignored, one-subscript-missed',
      'molarity: one-subscript-missed, subscripts-ignored',
      'molarity: subscripts-ignored, one-subscript-missed',
    ]);
  });
  it('are hardly ever accused of a slip when the number is random', () => {
    expect(rate(findings.accused[4])).toBeLessThan(0.005);
    expect(rate(findings.accused[3])).toBeLessThan(0.005);
    expect(rate(findings.accused[2])).toBeLessThan(0.015);
    expect(rate(findings.accused[1])).toBeLessThan(0.05);
    expect(rate(findings.mistyped)).toBeLessThan(0.05);
  });
  it('are hardly ever accused either when it is of the size of the answer', () => {
    const near = [...findings.accusedNear];
    expect(near.map(([quantity]) => quantity).sort()).toEqual(Object.keys(quantities).sort());
    expect(rate(total(near.map(([, accused]) => accused)))).toBeLessThan(0.005);
    for (const [quantity, accused] of near) {
      expect(accused.of, quantity).toBeGreaterThan(0.95 * triesNear * plansEach);
      expect(rate(accused), quantity).toBeLessThan(0.012);
    }
  });
  it('never read the answer in a text', () => {
    expect(findings.texts).toBeGreaterThan(48 * plans);
    expect(findings.telling).toEqual([]);
  });
});

describe('simulated teams of every activity, with the numbers that plans give them', () => {
  const teams = cases({ short: 8, deep: 24 });
  let found: GeneratedFindings;
  beforeAll(() => {
    found = simulateGenerated({ teams, seed });
  });
  it('are on target in every row when they type to the figures asked and go on from what they typed', () => {
    expect(found.activities).toBe(allActivities().length);
    expect(found.teams).toBe(teams * found.activities);
    expect(found.rows).toBeGreaterThan(75 * teams);
    expect(found.notOnTarget).toEqual([]);
  });
  it('are never below close when they keep every digit and round at the end', () => {
    expect(found.spareDigits).toEqual([]);
  });
  it('have their slips named in at least 99 of 100 cases, and alone in at least 95 where no other gives the same', () => {
    const quantitiesAsked = new Set(found.slips.map(({ quantity }) => quantity));
    expect([...quantitiesAsked].sort()).toEqual(Object.keys(quantities).sort());
    expect(rate(total(found.slips.map(({ named }) => named)))).toBeGreaterThanOrEqual(0.99);
    expect(rate(total(found.slips.map(({ alone }) => alone)))).toBeGreaterThanOrEqual(0.95);
  });
  it('have the slips of the activities named', () => {
    expect(found.activitySlips.map(({ quantity, id }) => `${quantity}: ${id}`).sort()).toEqual([
      'diluted molarity: factors-added',
      'diluted molarity: other-given-used',
      'diluted molarity: planned-for-made',
      'dilution factor: flasks-compared',
      'ion molarity: other-given-used',
      'mass of solute: other-given-used',
      'molarity: planned-for-made',
      'moles of solute: mass-reported',
      'moles of solute: other-given-used',
      'reagent molarity: planned-for-made',
      'stock volume: other-given-used',
    ]);
    for (const { quantity, id, named } of found.activitySlips) {
      expect(named.of, `${quantity} ${id}`).toBeGreaterThan(teams / 2);
      expect(rate(named), `${quantity} ${id}`).toBeGreaterThanOrEqual(0.99);
    }
    expect(rate(total(found.activitySlips.map(({ alone }) => alone)))).toBeGreaterThanOrEqual(0.95);
  });
  it('are hardly ever accused in their block when a number is random', () => {
    expect(found.accused[3].of).toBeGreaterThan(111 * teams);
    expect(rate(found.accused[4])).toBeLessThan(0.005);
    expect(rate(found.accused[3])).toBeLessThan(0.005);
    expect(rate(found.accused[2])).toBeLessThan(0.015);
    const near = total([...found.accusedNear.values()]);
    expect(near.of).toBeGreaterThan(750 * teams);
    expect(rate(near)).toBeLessThan(0.005);
  });
});

describe('simulated teams of the everyday activity', () => {
  it('are on target in every row when they type to the figures asked and go on from what they typed', () => {
    const teams = cases({ short: 150, deep: 1500 });
    const chains = simulateChains({ teams, seed, tellsAnswer });
    expect(chains.rows).toBe(9 * teams);
    expect(chains.notOnTarget).toEqual([]);
    expect(chains.notFollowing).toEqual([]);
    expect(chains.telling).toEqual([]);
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
