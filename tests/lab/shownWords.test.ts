import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { shownWords } from '../../src/lab/lesson/shownWords.ts';

/** A step's line as a team reads it, with one of its starting values typed another way. */
function lineOf(
  id: string,
  { step: wanted, typed }: { step: string; typed: Readonly<Record<string, string>> },
): string {
  const activity = activityById(id);
  const step = activity?.steps.find((one) => one.id === wanted);
  if (activity === undefined || step === undefined) throw new Error(`no step ${wanted} in ${id}`);
  const values = Object.fromEntries(activity.givens.map(({ name, start = '' }) => [name, start]));
  return shownWords(step, { values: { ...values, ...typed }, givens: activity.givens });
}

describe('shownWords', () => {
  it.each([
    ['1.18', '1.18 g/mL'],
    ['1.18 g/mL', '1.18 g/mL'],
    ['1.18 g/cm3', '1.18 g/cm3'],
    ['1,18 kg/L', '1,18 kg/L'],
  ])('says a density of %s with one unit', (typed, shown) => {
    expect(lineOf('concentrated reagent', { step: 'reagent molarity', typed: { density: typed } })).toBe(
      `Molarity of 37.2 % HCl with a density of ${shown}.`,
    );
  });
  it.each([
    ['200', 'in 200 mL of 0.300 mol/L solution'],
    ['2e2', 'in 2e2 mL of 0.300 mol/L solution'],
    ['0.2 L', 'in 0.2 L of 0.300 mol/L solution'],
    ['200 cm3', 'in 200 cm3 of 0.300 mol/L solution'],
  ])('says a volume of %s with one unit', (typed, shown) => {
    expect(lineOf('stock and dilution', { step: 'moles of solute', typed: { flask: typed } })).toContain(shown);
  });
  it('says a share of %, once, and leaves out what nobody filled in', () => {
    const massLine = (purity: string) => lineOf('stock and dilution', { step: 'mass of solute', typed: { purity } });
    expect(massLine('94 %')).toMatch(/The solid is 94 % pure\.$/);
    expect(massLine('94')).toMatch(/The solid is 94 % pure\.$/);
    expect(massLine(' ')).not.toContain('pure');
  });
});
