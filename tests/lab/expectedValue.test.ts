import { describe, expect, it } from 'vitest';
import { expectedValue } from '../../src/lab/judging/expectedValue.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { ExpectedValue, MeasuredStep } from '../../src/lab/lesson/activity.ts';
import { firstTeamGivens } from './firstTeam.ts';

const activity = activityById('measured density');
if (activity === undefined) throw new Error('There is no lesson about a density.');
const expects = activity.steps
  .filter((step): step is MeasuredStep => step.kind === 'measured')
  .map((step) => step.expects)
  .find((one): one is ExpectedValue => typeof one !== 'string' && 'expected' in one);
if (expects === undefined) throw new Error('No reading is expected without a row that asks for it.');
const givens = firstTeamGivens(activity);
const named = (argument: string) => expects.takes[argument]?.given ?? argument;
const worked = (changed: Readonly<Record<string, string>> = {}, decimalMark: 'point' | 'comma' = 'point') =>
  expectedValue(expects, { givens: { ...givens, ...changed }, decimalMark });
const grams = (...about: Parameters<typeof worked>): number => {
  const result = worked(...about);
  if (!result.ok) throw new Error(`${result.error.argument}: ${result.error.code}`);
  return result.value;
};

describe('the mass that a portion is expected to have', () => {
  it('is its volume times its density, which lies between the two lines of the table', () => {
    const [light, heavy] = [Number(givens[named('lighter density')]), Number(givens[named('heavier density')])];
    const volume = Number(givens[named('volume')]);
    expect(grams()).toBeGreaterThan(light * volume);
    expect(grams()).toBeLessThan(heavy * volume);
    expect(grams({ [named('volume')]: String(2 * volume) })).toBeCloseTo(2 * grams(), 9);
  });
  it('is the same for a class that writes a decimal comma', () => {
    const inCommas = Object.fromEntries(Object.entries(givens).map(([name, cell]) => [name, cell.replace('.', ',')]));
    expect(grams(inCommas, 'comma')).toBe(grams());
    // Three digits behind a comma are a thousand to a class that writes a point.
    const density = named('lighter density');
    const exact = { [density]: '1,180' };
    expect(grams(exact, 'comma')).toBe(grams({ [density]: '1.180' }));
    expect(worked(exact).ok).toBe(false);
  });
  it.each([
    ['formula', 'KBx'],
    ['formula', ''],
    // Technetium has no standard atomic weight (CIAAW table of 2021).
    ['formula', 'HTcO4'],
    ['volume', 'some'],
    ['molarity', ''],
    ['lighter percent', '20 g'],
    ['lighter density', 'thick'],
    ['heavier percent', ''],
    ['heavier density', '0'],
  ])('cannot be worked out where the %s is “%s”, and names that', (argument, cell) => {
    expect(worked({ [named(argument)]: cell })).toMatchObject({ ok: false, error: { argument: named(argument) } });
  });
  it('names the first of two numbers that cannot be read', () => {
    const both = { [named('lighter percent')]: 'x', [named('heavier density')]: 'y' };
    expect(worked(both)).toMatchObject({ ok: false, error: { argument: named('lighter percent') } });
  });
});
