import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../scripts/simulate/drawnPlans.ts';
import { readFilledQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { slipSpans } from '../../src/lab/judging/slipsFound.ts';
import { spanOver } from '../../src/lab/judging/worked.ts';
import { seededRandom } from '../../src/lab/numbers/seededRandom.ts';
import { isQuantityName, type QuantityName, quantities } from '../../src/lab/quantities.ts';
import { slipTexts } from '../../src/lab/texts/feedback.ts';

const names = Object.keys(quantities) as QuantityName[];
const drawnSteps = (name: QuantityName, count: number) => {
  const random = seededRandom(name);
  return Array.from({ length: count }, () => {
    const { given } = drawPlan(name, random);
    const step = readFilledQuantity(
      name,
      given.filter(([, value]) => value !== ''),
    );
    if (!step.ok) throw new Error(`${name}: ${step.error.received}`);
    return step.value;
  });
};

describe('quantities', () => {
  it('hold every name of the list and know no other', () => {
    expect(names.every(isQuantityName)).toBe(true);
    expect(Object.entries(quantities).filter(([key, { name }]) => key !== name)).toEqual([]);
    expect(['mass', 'toString', '__proto__', ''].some(isQuantityName)).toBe(false);
  });
  describe.each(names)('%s', (name) => {
    const quantity = quantities[name];
    const steps = drawnSteps(name, 100);
    it('gives what chemistry gives', () => {
      for (const step of steps) {
        const { middle } = spanOver(step, quantity.relation);
        const result = quantity.chemistry({ ...step.numbers, 'molar mass': step.molarMass?.middle ?? Number.NaN });
        expect(result.ok && Math.abs(result.value - middle) <= 1e-12 * Math.abs(middle)).toBe(true);
      }
    });
    it('gives the same with what it builds on carried forward unrounded', () => {
      for (const step of steps) {
        const { middle } = spanOver(step, quantity.relation);
        for (const { name: part, relation } of quantity.buildsOn) {
          const value = relation ? spanOver(step, relation).middle : (step.molarMass?.middle ?? Number.NaN);
          const carried: Record<string, number> = { [part]: value };
          expect(spanOver(step, quantity.relation, carried).middle).toBeCloseTo(middle, 9);
        }
      }
    });
    it('lies between its ends, and so does every slip', () => {
      for (const step of steps) {
        for (const { low, middle, high } of [
          spanOver(step, quantity.relation),
          ...quantity.slips.flatMap((slip) => slipSpans(step, slip)),
        ]) {
          expect(low <= middle && middle <= high).toBe(true);
          expect(high - low).toBeLessThanOrEqual(0.02 * Math.abs(middle));
        }
      }
    });
    it('has words for each of its slips, once', () => {
      const ids = quantity.slips.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(Object.keys(slipTexts)).toContain(id);
    });
    it('finds every slip wrong for some numbers', () => {
      for (const slip of quantity.slips) {
        const values = steps.flatMap((step) =>
          slipSpans(step, slip).map(({ middle }) => middle / spanOver(step, quantity.relation).middle),
        );
        expect(
          values.some((ratio) => Math.abs(ratio - 1) > 0.02),
          slip.id,
        ).toBe(true);
      }
    });
  });
});
