import { describe, expect, it } from 'vitest';
import { amountOf } from '../../src/chemistry/amountOf.ts';
import { diluentVolume } from '../../src/chemistry/diluentVolume.ts';
import { dilutedMolarity } from '../../src/chemistry/dilutedMolarity.ts';
import { dilutedVolume } from '../../src/chemistry/dilutedVolume.ts';
import { dilutionFactor } from '../../src/chemistry/dilutionFactor.ts';
import { ionMolarity } from '../../src/chemistry/ionMolarity.ts';
import { massOf } from '../../src/chemistry/massOf.ts';
import { molality } from '../../src/chemistry/molality.ts';
import { molarity } from '../../src/chemistry/molarity.ts';
import { molarityUncertainty } from '../../src/chemistry/molarityUncertainty.ts';
import { moleFraction } from '../../src/chemistry/moleFraction.ts';
import { particleCount } from '../../src/chemistry/particleCount.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { reagentMolarity } from '../../src/chemistry/reagentMolarity.ts';
import { serialDilution } from '../../src/chemistry/serialDilution.ts';
import { soluteMass } from '../../src/chemistry/soluteMass.ts';
import { solutionVolume } from '../../src/chemistry/solutionVolume.ts';
import { stockVolume } from '../../src/chemistry/stockVolume.ts';
import { theArgument } from '../../src/errors/argumentName.ts';
import { errorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';
import {
  grams,
  gramsPerMillilitre,
  gramsPerMole,
  millilitres,
  moles,
  molesPerLitre,
  percent,
} from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const messageOf = (result: Result<unknown>): string => (result.ok ? 'no error' : errorText(result.error));

/** One gram per mole, so that each number stands for itself. */
const molarMass = gramsPerMole(1);
const solid = (molarityOf: number, volume: number, purity?: number) =>
  soluteMass({
    molarMass,
    molarity: molesPerLitre(molarityOf),
    volume: millilitres(volume),
    purity: purity === undefined ? undefined : percent(purity),
  });
const made = (mass: number, volume: number) => molarity({ molarMass, mass: grams(mass), volume: millilitres(volume) });
const makes = (mass: number, molarityOf: number) =>
  solutionVolume({ molarMass, mass: grams(mass), molarity: molesPerLitre(molarityOf) });
const wanted = (stock: number, target: number, finalVolume: number) => ({
  stock: molesPerLitre(stock),
  target: molesPerLitre(target),
  finalVolume: millilitres(finalVolume),
});
const filledUp = (stock: number, taken: number, finalVolume: number) =>
  dilutedMolarity({
    stock: molesPerLitre(stock),
    stockVolume: millilitres(taken),
    finalVolume: millilitres(finalVolume),
  });
const fillsTo = (stock: number, taken: number, target: number) =>
  dilutedVolume({ stock: molesPerLitre(stock), stockVolume: millilitres(taken), target: molesPerLitre(target) });
const series = (stock: number, factor: number, stages: number, finalVolume?: number) =>
  serialDilution({
    stock: molesPerLitre(stock),
    factor,
    stages,
    finalVolume: finalVolume === undefined ? undefined : millilitres(finalVolume),
  });
const inSolvent = (mass: number, solventMass: number) =>
  molality({ molarMass, mass: grams(mass), solventMass: grams(solventMass) });
const mixed = (first: number, second: number, perMole = molarMass) =>
  moleFraction({
    first: { molarMass: perMole, mass: grams(first) },
    second: { molarMass: perMole, mass: grams(second) },
  });
const bottle = (massPercent: number, density: number) =>
  reagentMolarity({ molarMass, massPercent: percent(massPercent), density: gramsPerMillilitre(density) });
const chloride = (molarityOf: number) =>
  ionMolarity({ formula: succeeded(readFormula('CaCl2')), molarity: molesPerLitre(molarityOf), ion: 'Cl-' });
const uncertain = ({ mass = 1, volume = 1000, balance = 0, flask = 0, purity = 0 }) =>
  molarityUncertainty({
    molarMass,
    mass: grams(mass),
    volume: millilitres(volume),
    balanceTolerance: grams(balance),
    flaskTolerance: millilitres(flask),
    purityTolerance: percent(purity),
  });

const checkSign = 'Check its sign, and the cell it comes from.';

describe('what has to be above 0', () => {
  it.each([
    ['a mass to weigh', 'molarity', 'mol/L', () => solid(0, 1)],
    ['a mass to weigh', 'volume', 'mL', () => solid(1, 0)],
    ['a molarity made', 'grams', 'g', () => made(0, 1)],
    ['a molarity made', 'volume', 'mL', () => made(1, 0)],
    ['a volume that a solid makes', 'grams', 'g', () => makes(0, 1)],
    ['a volume that a solid makes', 'molarity', 'mol/L', () => makes(1, 0)],
    ['a volume of stock', 'stock_molarity', 'mol/L', () => stockVolume(wanted(0, 1, 1))],
    ['a volume of stock', 'target_molarity', 'mol/L', () => stockVolume(wanted(1, 0, 1))],
    ['a volume of stock', 'target_volume', 'mL', () => stockVolume(wanted(2, 1, 0))],
    ['a volume of water', 'target_volume', 'mL', () => diluentVolume(wanted(2, 1, 0))],
    ['a dilution factor', 'target_molarity', 'mol/L', () => dilutionFactor(wanted(2, 0, 1))],
    ['a diluted molarity', 'stock_molarity', 'mol/L', () => filledUp(0, 1, 1)],
    ['a diluted molarity', 'stock_volume', 'mL', () => filledUp(1, 0, 1)],
    ['a diluted molarity', 'final_volume', 'mL', () => filledUp(1, 1, 0)],
    ['a volume to fill up to', 'stock_volume', 'mL', () => fillsTo(2, 0, 1)],
    ['a series', 'stock_molarity', 'mol/L', () => series(0, 2, 1)],
    ['a series', 'final_volume', 'mL', () => series(1, 2, 1, 0)],
    ['a molality', 'grams', 'g', () => inSolvent(0, 1)],
    ['a molality', 'solvent_grams', 'g', () => inSolvent(1, 0)],
    ['a fraction of nothing', 'grams_1', 'g', () => mixed(0, 0)],
    ['a reagent', 'density', 'g/mL', () => bottle(50, 0)],
    ['an uncertainty of nothing weighed', 'grams', 'g', () => uncertain({ mass: 0 })],
    ['an uncertainty in no volume', 'volume', 'mL', () => uncertain({ volume: 0 })],
    // 10^-320 g in 10^20 mL come to less than the smallest number above 0.
    ['an uncertainty of next to nothing', 'grams', 'mol/L', () => uncertain({ mass: 1e-320, volume: 1e20 })],
  ])('is named for %s: %s in %s', (_, argument, unit, refused) => {
    expect(messageOf(refused())).toBe(
      `0 ${unit} can’t be used for ${theArgument(argument)}: it must be above 0 ${unit}. ${checkSign}`,
    );
  });
});

describe('what must not be below 0', () => {
  it.each([
    ['an amount', 'grams', 'g', () => amountOf({ molarMass, mass: grams(-1) })],
    ['a mass', 'moles', 'mol', () => massOf({ molarMass, amount: moles(-1) })],
    ['particles', 'moles', 'mol', () => particleCount(moles(-1))],
    ['ions', 'molarity', 'mol/L', () => chloride(-1)],
    ['a fraction', 'grams_1', 'g', () => mixed(-1, 2)],
    ['a fraction', 'grams_2', 'g', () => mixed(2, -1)],
    ['an uncertainty', 'balance_tolerance', 'g', () => uncertain({ balance: -1 })],
    ['an uncertainty', 'flask_tolerance', 'mL', () => uncertain({ flask: -1 })],
    ['an uncertainty', 'purity_tolerance', 'percentage points', () => uncertain({ purity: -1 })],
  ])('is named for %s: %s in %s', (_, argument, unit, refused) => {
    expect(messageOf(refused())).toBe(
      `-1 ${unit} can’t be used for ${theArgument(argument)}: it must be 0 ${unit} or more. ${checkSign}`,
    );
  });
  it('may be 0', () => {
    const zero = { ok: true, value: 0 };
    expect(amountOf({ molarMass, mass: grams(0) })).toEqual(zero);
    expect(massOf({ molarMass, amount: moles(0) })).toEqual(zero);
    expect(particleCount(moles(0))).toEqual(zero);
    expect(chloride(0)).toEqual(zero);
  });
});

describe('a result beyond every number', () => {
  it.each([
    ['a mass to weigh', 'molarity', () => solid(1e300, 1e300)],
    ['a molarity made', 'grams', () => made(1e308, 1e-3)],
    ['a volume that a solid makes', 'grams', () => makes(1e308, 1)],
    ['an amount', 'grams', () => amountOf({ molarMass: gramsPerMole(0.01), mass: grams(1e308) })],
    ['a mass', 'moles', () => massOf({ molarMass: gramsPerMole(100), amount: moles(1e308) })],
    ['particles', 'moles', () => particleCount(moles(1e300))],
    ['ions', 'molarity', () => chloride(1e308)],
    ['a volume of stock', 'target_volume', () => stockVolume(wanted(1e201, 1e200, 1e200))],
    ['a volume of water', 'target_volume', () => diluentVolume(wanted(1e201, 1e200, 1e200))],
    ['a diluted molarity', 'stock_molarity', () => filledUp(1e200, 1e200, 1e201)],
    ['a volume to fill up to', 'stock_volume', () => fillsTo(1e200, 1e200, 1)],
    ['a dilution factor', 'stock_molarity', () => dilutionFactor(wanted(1e200, 1e-200, 1))],
    ['a molality', 'grams', () => inSolvent(1e308, 1)],
    ['a fraction', 'grams_1', () => mixed(1e307, 1e307, gramsPerMole(0.01))],
    ['an uncertainty', 'grams', () => uncertain({ mass: 1e-10, balance: 1e300 })],
  ])('is said of %s, at the %s', (_, argument, refused) => {
    expect(messageOf(refused())).toBe(
      `The result for ${theArgument(argument)} is beyond any number that a cell can hold. ` +
        'Check the powers of ten and the units.',
    );
  });
});

describe('a share of a whole', () => {
  it.each([
    ['purity_percent', '0 %', () => solid(1, 1000, 0)],
    ['purity_percent', '100.0001 %', () => solid(1, 1000, 100.0001)],
    ['mass_percent', '-5 %', () => bottle(-5, 1)],
  ])('is above 0 and at most the whole: %s of %s is not', (argument, received, refused) => {
    expect(messageOf(refused())).toBe(
      `${received} can’t be used for ${theArgument(argument)}: it must be above 0 % and at most 100 %. Check the label of the bottle.`,
    );
  });
  it('may be the whole', () => {
    expect(solid(1, 1000, 100)).toEqual(solid(1, 1000));
    // 100 g in 100 g at 1 g/mL are 1000 g in a litre.
    expect(bottle(100, 1)).toEqual({ ok: true, value: 1000 });
  });
});

describe('a dilution that cannot be', () => {
  it.each([
    ['stockVolume', '0.5', () => stockVolume(wanted(0.5, 0.5, 100))],
    ['diluentVolume', '2', () => diluentVolume(wanted(0.5, 2, 100))],
    ['dilutionFactor', '2', () => dilutionFactor(wanted(0.5, 2, 100))],
    ['dilutedVolume', '2', () => fillsTo(0.5, 10, 2)],
  ])('has a target that is not below its stock: %s', (_, target, refused) => {
    expect(messageOf(refused())).toBe(
      `A target of ${target} mol/L is not below the stock, 0.5 mol/L. ` +
        'Use a stronger stock, or swap the two cells.',
    );
  });
  it('fills up to less than was taken', () => {
    expect(messageOf(filledUp(1, 25, 10))).toBe(
      'A final volume of 10 mL is less than the stock taken, 25 mL. ' +
        'Filling up only adds volume: swap the two cells, or check their units.',
    );
  });
  it.each([1, 0.5, -10, Number.POSITIVE_INFINITY, Number.NaN])('grows %s times at each stage', (factor) => {
    expect(messageOf(series(1, factor, 1))).toBe(
      `${factor} can’t be a dilution factor: it must be above 1. ` +
        'Type how many times the volume grows at each stage, such as 10.',
    );
  });
  it.each([0, -1, 1.5, 101, Number.NaN])('has %s stages', (stages) => {
    expect(messageOf(series(1, 2, stages))).toBe(
      `${stages} can’t be the number of stages: it must be a whole number from 1 to 100. ` +
        'Type how many dilutions there are, one after the other.',
    );
  });
  it('goes on after nothing is left', () => {
    // 10^-400 is below the smallest number, 5 × 10^-324.
    expect(messageOf(series(1, 1e200, 3))).toBe(
      '3 can’t be the number of stages: it must be at most 1 with this factor. ' +
        'Nothing is left to dilute after that: use fewer stages or a smaller factor.',
    );
    // 10^-300 is left after two stages, and after the third nothing.
    expect(messageOf(series(1, 1e150, 3))).toBe(
      '3 can’t be the number of stages: it must be at most 2 with this factor. ' +
        'Nothing is left to dilute after that: use fewer stages or a smaller factor.',
    );
  });
  it('is none with 100 stages or with a factor of hardly more than 1', () => {
    expect(succeeded(series(1, 2, 100))[99]).toEqual({ stage: 100, molarity: 2 ** -100 });
    expect(succeeded(series(1, 1 + Number.EPSILON, 1))).toHaveLength(1);
  });
});

describe('ionMolarity', () => {
  it.each([
    ['CaCl2', 'Cl-', 0.2, 0.4],
    ['CaCl2', 'Ca2+', 0.2, 0.2],
    ['Al2(SO4)3', 'SO4^2-', 0.5, 1.5],
  ])('counts the ions of one formula unit: %s, %s', (formula, ion, molarityOf, gives) => {
    expect(ionMolarity({ formula: succeeded(readFormula(formula)), molarity: molesPerLitre(molarityOf), ion })).toEqual(
      { ok: true, value: gives },
    );
  });
  it('passes on what the ions fail with, before the sign is looked at', () => {
    const formula = succeeded(readFormula('AgCl'));
    expect(ionMolarity({ formula, molarity: molesPerLitre(-1), ion: 'Cl-' })).toMatchObject({
      ok: false,
      error: { code: 'ions-sparingly' },
    });
  });
});
