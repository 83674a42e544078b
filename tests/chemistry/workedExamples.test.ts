import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { amountOf } from '../../src/chemistry/amountOf.ts';
import { readConcentrationUnit } from '../../src/chemistry/concentrationUnit.ts';
import { convertConcentration } from '../../src/chemistry/convertConcentration.ts';
import { dilutedMolarity } from '../../src/chemistry/dilutedMolarity.ts';
import { dilutedVolume } from '../../src/chemistry/dilutedVolume.ts';
import { elementPercent } from '../../src/chemistry/elementPercent.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { massOf } from '../../src/chemistry/massOf.ts';
import { molality } from '../../src/chemistry/molality.ts';
import { molarity } from '../../src/chemistry/molarity.ts';
import { molarityUncertainty } from '../../src/chemistry/molarityUncertainty.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { moleFraction } from '../../src/chemistry/moleFraction.ts';
import { particleCount } from '../../src/chemistry/particleCount.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { soluteMass } from '../../src/chemistry/soluteMass.ts';
import { solutionVolume } from '../../src/chemistry/solutionVolume.ts';
import { stockVolume } from '../../src/chemistry/stockVolume.ts';
import { percentError } from '../../src/measurement/percentError.ts';
import {
  gramsPerMillilitre,
  gramsPerMole,
  grams as inGrams,
  millilitres as inMillilitres,
  moles as inMoles,
  molesPerLitre as inMolesPerLitre,
  percent as inPercent,
} from '../../src/measurement/quantity.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { readQuantity } from '../../src/measurement/readQuantity.ts';
import { roundToFigures } from '../../src/measurement/roundToFigures.ts';
import { significantFigures } from '../../src/measurement/significantFigures.ts';
import { succeeded } from './succeeded.ts';

interface Example {
  readonly id: string;
  readonly source: string;
  readonly topic: string;
  readonly asked: string;
  readonly given: Readonly<Record<string, string | number | readonly string[]>>;
  readonly printed_answer: string;
  readonly recomputed?: number;
}
const { examples } = JSON.parse(
  readFileSync(new URL('../published/worked-examples.json', import.meta.url), 'utf8'),
) as {
  readonly examples: readonly Example[];
};

// Readers: the given values are read as people type them.
type Given = Example['given'];
const text = (given: Given, name: string): string => {
  const found = given[name];
  if (typeof found !== 'string') throw new Error(`No ${name} among ${Object.keys(given).join(', ')}`);
  return found;
};
const quantity = (
  kind: 'mass' | 'volume' | 'amount' | 'concentration' | 'density' | 'percent',
  typed: string,
): number =>
  succeeded(
    readQuantity(typed.replace(/^~/, ''), kind, 'given', { decimalMark: typed.includes(',') ? 'comma' : 'point' }),
  ).value;
const mass = (given: Given, name = 'mass') => inGrams(quantity('mass', text(given, name)));
const volume = (given: Given, name = 'volume') => inMillilitres(quantity('volume', text(given, name)));
const amount = (given: Given, name = 'amount') => inMoles(quantity('amount', text(given, name)));
const concentration = (given: Given, name = 'molarity') =>
  inMolesPerLitre(quantity('concentration', text(given, name)));
const density = (given: Given) => gramsPerMillilitre(quantity('density', text(given, 'density')));
/** A number whose unit is none of ours: `231.0 °C`, `220,000 km/s`. */
const plainNumber = (typed: string): number =>
  succeeded(readNumber(/^-?[\d.,]+/.exec(typed)?.[0] ?? '', 'given', { decimalMark: 'point' })).value;

const formulaOf = (given: Given) => succeeded(readFormula(text(given, 'formula')));
const perMole = (formula: string) => succeeded(molarMass(succeeded(readFormula(formula))));
const ofFormula = (given: Given) => succeeded(molarMass(formulaOf(given)));
/** As many grams as moles: for amounts of a substance whose mass does not matter. */
const one = gramsPerMole(1);

interface Wanted {
  readonly value: number;
  readonly from: string;
  readonly to: string;
  readonly formula?: string;
  readonly density?: number;
}
const converted = (wanted: Wanted): number =>
  succeeded(
    convertConcentration({
      value: wanted.value,
      from: succeeded(readConcentrationUnit(wanted.from, 'from')),
      to: succeeded(readConcentrationUnit(wanted.to, 'to')),
      molarMass: wanted.formula === undefined ? undefined : perMole(wanted.formula),
      density: wanted.density === undefined ? undefined : gramsPerMillilitre(wanted.density),
    }),
  );
const bare = (typed: string) => Number(typed.replace(/[^\d.].*$/, ''));

/** Product or quotient with as many figures as its worst factor. */
const withFewestFigures = (value: number, typed: readonly string[]): number => {
  const figures = Math.min(
    ...typed.map((one) => significantFigures(succeeded(readNumber(/^[\d.]+/.exec(one)?.[0] ?? '', 'x')))),
  );
  return Number(succeeded(roundToFigures(succeeded(readNumber(value, 'x')), { figures })).replace(' × 10^', 'e'));
};
/** Sum or difference with as many places as its worst term. */
const withFewestPlaces = (typed: readonly string[]): number => {
  const terms = typed.map((term) => succeeded(readNumber(/^-?[\d.]+/.exec(term)?.[0] ?? '', 'x')));
  const place = Math.max(...terms.map(({ lastPlace }) => lastPlace));
  const sum = Number(terms.reduce((all, { value }) => all + value, 0).toPrecision(12));
  const figures = Math.floor(Math.log10(Math.abs(sum))) - place + 1;
  return Number(succeeded(roundToFigures(succeeded(readNumber(sum, 'x')), { figures })).replace(' × 10^', 'e'));
};
const fraction = (first: string, firstMass: number, second: string, secondMass: number): number =>
  succeeded(
    moleFraction({
      first: { molarMass: perMole(first), mass: inGrams(firstMass) },
      second: { molarMass: perMole(second), mass: inGrams(secondMass) },
    }),
  );
const molalityOf = (formula: string, given: Given, massName = 'mass') =>
  succeeded(
    molality({ molarMass: perMole(formula), mass: mass(given, massName), solventMass: mass(given, 'solvent_mass') }),
  );
const gramsToMoles = (given: Given) => succeeded(amountOf({ molarMass: ofFormula(given), mass: mass(given) }));
const particlesIn = (given: Given) => succeeded(particleCount(inMoles(gramsToMoles(given))));
const percentErrorOf = (given: Given, signed = false) =>
  succeeded(
    percentError({
      measured: plainNumber(text(given, 'measured')),
      accepted: plainNumber(text(given, 'accepted')),
      signed,
    }),
  );
const percentOf = (element: string) => (given: Given) => succeeded(elementPercent(formulaOf(given), element));
const roundedTo = (given: Given) =>
  Number(
    succeeded(
      roundToFigures(succeeded(readNumber(text(given, 'number'), 'number', { decimalMark: 'point' })), {
        figures: Number(given.significant_figures),
      }),
    ).replace(' × 10^', 'e'),
  );

type Answer = (given: Given) => number | readonly number[];

/** By topic, where all of its examples are worked alike. */
const byTopic: Readonly<Record<string, Answer>> = {
  'molar mass': ofFormula,
  'formula mass': ofFormula,
  'grams to moles': gramsToMoles,
  'moles to grams': (given) => succeeded(massOf({ molarMass: ofFormula(given), amount: amount(given) })),
  'grams to particles': particlesIn,
  'molarity from mass': (given) =>
    succeeded(molarity({ molarMass: ofFormula(given), mass: mass(given), volume: volume(given) })),
  'solute mass': (given) =>
    succeeded(soluteMass({ molarMass: ofFormula(given), molarity: concentration(given), volume: volume(given) })),
  'solution volume': (given) =>
    succeeded(solutionVolume({ molarMass: ofFormula(given), mass: mass(given), molarity: concentration(given) })) /
    1000,
  molarity: (given) => succeeded(molarity({ molarMass: one, mass: inGrams(amount(given)), volume: volume(given) })),
  rounding: roundedTo,
  'percent error': (given) => percentErrorOf(given),
  'significant figures: addition': (given) => withFewestPlaces(given.terms as readonly string[]),
  'significant figures: subtraction': (given) => withFewestPlaces(given.terms as readonly string[]),
  'significant figures: multiplication': (given) => {
    const factors = given.factors as readonly string[];
    return withFewestFigures(
      factors.reduce((all, factor) => all * plainNumber(factor), 1),
      factors,
    );
  },
  'significant figures: division': (given) => {
    const [over, under] = [text(given, 'dividend'), text(given, 'divisor')];
    return withFewestFigures(plainNumber(over) / plainNumber(under), [over, under]);
  },
  'mass percent to molality': (given) =>
    converted({
      value: bare(text(given, 'mass_percent')),
      from: '% w/w',
      to: 'mol/kg',
      formula: text(given, 'formula'),
    }),
};

const diluted: Answer = (given) =>
  succeeded(
    dilutedMolarity({
      stock: concentration(given, 'C1'),
      stockVolume: volume(given, 'V1'),
      finalVolume: volume(given, 'V2'),
    }),
  );
const filledUpTo: Answer = (given) =>
  succeeded(
    dilutedVolume({
      stock: concentration(given, 'C1'),
      stockVolume: volume(given, 'V1'),
      target: concentration(given, 'C2'),
    }),
  ) / 1000;
const saltInMassUnits: Answer = (given) =>
  converted({ value: bare(text(given, 'mass_percent')), from: '% w/w', to: 'g/L', density: density(given) });
const saltInMoles: Answer = (given) =>
  converted({
    value: bare(text(given, 'mass_percent')),
    from: '% w/w',
    to: 'mol/L',
    formula: text(given, 'formula'),
    density: density(given),
  });
const withSolvent: Answer = (given) => {
  const [solute, solvent] = [text(given, 'solute'), typeof given.solvent === 'string' ? given.solvent : 'H2O'];
  const masses = [mass(given, 'solute_mass'), mass(given, 'solvent_mass')] as const;
  return [fraction(solute, masses[0], solvent, masses[1]), fraction(solvent, masses[1], solute, masses[0])];
};
const molalityOfSolute: Answer = (given) => molalityOf(text(given, 'solute'), given, 'solute_mass');

/** By id, where the topic's rule does not serve. */
const byId: Readonly<Record<string, Answer>> = {
  'os-3.8b': (given) => 7 * particlesIn(given),
  'os-3.8d-cyl': (given) => 10 * particlesIn(given),
  'os-3.10-C': percentOf('C'),
  'os-3.10-H': percentOf('H'),
  'os-3.10-O': percentOf('O'),
  'os-3.10-cyl': percentOf('Fe'),
  // Grams over moles: as many moles as a molar mass of 1 would give litres.
  'os-3.13-M': (given) => mass(given) / amount(given),
  'os-3.15': (given) =>
    succeeded(soluteMass({ molarMass: one, molarity: concentration(given), volume: volume(given) })),
  'os-3.15-cyl': (given) =>
    succeeded(solutionVolume({ molarMass: one, mass: inGrams(0.004), molarity: concentration(given) })),
  'os-3.19': diluted,
  'os-3.19-cyl': diluted,
  'os-3.20': filledUpTo,
  'os-3.20-cyl': filledUpTo,
  'os-3.21': (given) =>
    succeeded(
      stockVolume({
        stock: concentration(given, 'C1'),
        target: concentration(given, 'C2'),
        finalVolume: volume(given, 'V2'),
      }),
    ) / 1000,
  'os-3.21-cyl': filledUpTo,
  'os-3.23': (given) =>
    (converted({ value: 37.2, from: '% w/w', to: 'g/L', density: density(given) }) * volume(given)) / 1000,
  'os-3.23-cyl': (given) =>
    (1000 * mass(given)) / converted({ value: 37.2, from: '% w/w', to: 'g/L', density: density(given) }),
  'os-3.25a': () => converted({ value: 15, from: 'ppb', to: 'ppm' }),
  'os-3.25b': (given) =>
    1e6 * converted({ value: 15, from: 'ppb', to: 'g/L', density: density(given) }) * (volume(given) / 1000),
  'os-1.1': (given) =>
    withFewestFigures(mass(given) / plainNumber(text(given, 'edge')) ** 3, [text(given, 'edge'), text(given, 'mass')]),
  'os-1.1-cyl-a': (given) => withFewestFigures(plainNumber(text(given, 'edge')) ** 3, [text(given, 'edge')]),
  'os-1.1-cyl-b': (given) =>
    withFewestFigures(mass(given) / plainNumber(text(given, 'edge')) ** 3, [text(given, 'edge'), text(given, 'mass')]),
  'os-1.6': (given) => {
    const factors = given.factors as readonly string[];
    return withFewestFigures(
      factors.reduce((all, factor) => all * plainNumber(factor), 1),
      factors,
    );
  },
  'os-1.6-cyl': (given) => withFewestFigures(mass(given) / volume(given), [text(given, 'mass'), text(given, 'volume')]),
  'os-1.7': (given) => {
    const displaced = withFewestPlaces([text(given, 'v_final'), `-${text(given, 'v_initial')}`]);
    return withFewestFigures(mass(given) / displaced, [text(given, 'mass'), `${displaced}`]);
  },
  'os-11.3-cyl-x': (given) => [withSolvent(given)].flat()[0] ?? Number.NaN,
  'os-11.3-cyl-m': molalityOfSolute,
  'os-11.4-solute': () => fraction('NaCl', 3 * perMole('NaCl'), 'H2O', 1000),
  'os-11.4-solvent': () => fraction('H2O', 1000, 'NaCl', 3 * perMole('NaCl')),
  'os-11.5': (given) =>
    converted({ value: 0.556, from: 'M', to: 'mol/kg', formula: text(given, 'formula'), density: density(given) }),
  'os-11.5-cyl': (given) =>
    converted({ value: 33.7, from: 'mol/kg', to: 'mol/L', formula: text(given, 'formula'), density: density(given) }),
  'os-11.6-n': (given) => [
    succeeded(amountOf({ molarMass: perMole('C3H5(OH)3'), mass: mass(given, 'glycerin') })),
    succeeded(amountOf({ molarMass: perMole('C2H5OH'), mass: mass(given, 'ethanol') })),
  ],
  'os-11.6-x': () => fraction('C2H5OH', 4 * perMole('C2H5OH'), 'C3H5(OH)3', perMole('C3H5(OH)3')),
  'os-11.8-m': (given) => molalityOf('I2', given),
  'os-11.13-n': (given) =>
    gramsToMoles(given) * succeeded(ions(formulaOf(given))).reduce((all, { count }) => all + count, 0),
  'os-11.13-m': (given) =>
    molalityOf('NaCl', given) * succeeded(ions(formulaOf(given))).reduce((all, { count }) => all + count, 0),
  'os-11.ex-HNO3-x': () => [fraction('HNO3', 68, 'H2O', 32), fraction('H2O', 32, 'HNO3', 68)],
  'os-11.ex-HNO3-m': () => converted({ value: 68, from: '% w/w', to: 'mol/kg', formula: 'HNO3' }),
  'os-11.ex-Na2CO3-x': withSolvent,
  'os-11.ex-NH4NO3-x': withSolvent,
  'os-11.ex-Cl2-x': withSolvent,
  'os-11.ex-C5H9N-x': withSolvent,
  'os-11.ex-MeOH-EtOH-x': withSolvent,
  'os-11.ex-Na2CO3-m': molalityOfSolute,
  'os-11.ex-NH4NO3-m': molalityOfSolute,
  'os-11.ex-Cl2-m': molalityOfSolute,
  'os-11.ex-C5H9N-m': molalityOfSolute,
  'quam-A1-c': () =>
    1000 *
    succeeded(
      molarity({ molarMass: one, mass: inGrams(0.10028), volume: inMillilitres(100), purity: inPercent(99.99) }),
    ),
  // Half-widths whose rectangular distributions have the standard uncertainties of the example; the balance counts twice.
  'quam-A1-u': () =>
    1000 *
    succeeded(
      molarityUncertainty({
        molarMass: one,
        mass: inGrams(0.10028),
        volume: inMillilitres(100),
        balanceTolerance: inGrams((0.00005 * Math.sqrt(3)) / Math.SQRT2),
        flaskTolerance: inMillilitres(0.07 * Math.sqrt(3)),
        purity: inPercent(99.99),
        purityTolerance: inPercent(0.01),
      }),
    ),
  'quam-A2-c': () =>
    succeeded(molarity({ molarMass: gramsPerMole(204.2212), mass: inGrams(0.3888), volume: inMillilitres(18.64) })),
  'pe-Al': (given) => percentErrorOf(given, true),
  'hyd-CuSO4-M': ofFormula,
  'hyd-CuSO4-salt': () => (100 * perMole('CuSO4')) / perMole('CuSO4·5H2O'),
  'hyd-CuSO4-water': () => (100 * 5 * perMole('H2O')) / perMole('CuSO4·5H2O'),
  'nacl-1-gL': saltInMassUnits,
  'nacl-4-gL': saltInMassUnits,
  'nacl-10-gL': saltInMassUnits,
  'nacl-20-gL': saltInMassUnits,
  'nacl-26-gL': saltInMassUnits,
  'nacl-1-M': saltInMoles,
  'nacl-4-M': saltInMoles,
  'nacl-10-M': saltInMoles,
  'nacl-20-M': saltInMoles,
  'nacl-26-M': saltInMoles,
};

/** Printed answers that today's weights and unrounded steps do not meet, each with what made the difference. */
const differs: Readonly<Record<string, string>> = {
  'os-3.2-cyl': 'the book adds rounded weights (40.08, 30.97, 16.00); today 310.17',
  'os-3.4-cyl': 'the book takes 197.0 g/mol for gold; with 196.966570 it is 504.43',
  'os-3.8a': 'with 183.18 g/mol and 6.022 × 10^23 it is 1.31499 × 10^20, rightly 1.31; today 1.31501 × 10^20',
  'os-3.8b': 'the book multiplies its rounded 1.31 × 10^20 by 7',
  'os-3.16-cyl': 'the book takes 128.9 g/mol for CoCl2; today 129.83',
  'os-11.4-solute': 'the book divides by 55 mol of water, rounded',
  'os-11.6-n': 'ethanol comes to 4.003 mol; the book writes 4.000',
  'os-11.13-m': 'the unrounded 1.1499 prints as 1.1; the book rounds the amount first',
  'os-11.ex-Cl2-x': 'unrounded 0.193 and 0.807; the printed ones are those of 0.35 mol in 1.82 mol, rounded on the way',
  'os-11.ex-C5H9N-x':
    'unrounded 0.00425 and 0.996; the printed ones are shares of 1.05 mol, the sum rounded on the way',
  'os-11.ex-NH4NO3-m': 'unrounded 5.68; the book rounds on the way',
  'quam-A2-M': 'older weights: C 12.0107, H 1.00794, O 15.9994',
  'hyd-CuSO4-M': 'the page adds H 1.01 and S 32.07',
  'nacl-4-M': 'the table takes 58.454 g/mol for NaCl; today 58.44',
  'nacl-10-M': 'the table takes 58.454 g/mol for NaCl; today 58.44',
  'nacl-20-M': 'the table takes 58.454 g/mol for NaCl; today 58.44',
  'nacl-26-M': 'the table takes 58.454 g/mol for NaCl; today 58.44',
  'mol-HCl-10': 'older weight of chlorine (35.453); today 3.048',
};

/** Questions that no function here answers, each with the reason. */
const outside: Readonly<Record<string, string>> = {
  'os-3.9': 'masses found in a sample: a plain ratio',
  'os-3.9-cyl': 'masses found in a sample: a plain ratio',
  'os-3.22': 'solute over solution: a plain ratio',
  'os-3.22-cyl': 'solute over solute and solvent: a plain ratio',
  'os-3.24': 'percent by volume is no unit of ours',
  'os-3.24-cyl': 'percent by volume is no unit of ours',
  'os-1.8': 'ounces are no unit of the trade',
  'os-1.9': 'pounds and quarts are no units of the trade',
  'os-11.4-cyl': 'mole fraction is no unit of CONVERTCONCENTRATION',
  'os-4.14': 'titration',
  'os-4.14-cyl': 'titration',
  'os-4.15': 'gravimetry',
  'os-4.15-cyl': 'gravimetry',
  'os-4.13': 'yield of a reaction',
  'os-4.13-cyl': 'yield of a reaction',
  'quam-A2-u': 'has terms for repeatability and molar mass; the part we model is in molarityUncertainty.test.ts',
  'quam-A3-c': 'two titrations',
  'quam-A3-u': 'two titrations; the printed entries do not combine to the printed result',
  'hyd-heating': 'loss on heating: a plain ratio',
};

/** Numbers of a printed answer with the place of their last digit; formulas in it are passed over. */
function printedNumbers(printed: string): readonly { readonly value: number; readonly lastPlace: number }[] {
  const plain = printed.replace(/X\([^)]*\)|\b[A-Z][A-Za-z0-9]*\d[A-Za-z0-9]*\b|cm\^3|kg\/m\^3|cm\^2/g, '');
  return Array.from(plain.matchAll(/-?\d[\d,]*\.?\d*(?: × 10\^-?\d+)?/g), ([found]) => {
    const decimalMark = /^\d+,\d{1,2}$/.test(found) ? 'comma' : 'point';
    const { value, lastPlace } = succeeded(readNumber(found, 'printed', { decimalMark }));
    return { value, lastPlace };
  });
}

const answerFor = ({ id, topic }: Example): Answer | undefined => byId[id] ?? byTopic[topic];
const answered = examples.filter(({ id }) => !(id in outside));
const isMet = (example: Example): boolean => {
  const results = [answerFor(example)?.(example.given) ?? []].flat();
  const printed = printedNumbers(example.printed_answer);
  expect(results.length, example.id).toBeGreaterThan(0);
  expect(printed.length, `${example.id}: ${example.printed_answer}`).toBeGreaterThanOrEqual(results.length);
  return results.every((result, place) => {
    const { value, lastPlace } = printed[place] ?? { value: Number.NaN, lastPlace: 0 };
    return Math.abs(result - value) <= 0.5 * 10 ** lastPlace + 1e-9 * Math.abs(value);
  });
};

describe('worked examples', () => {
  it('accounts for every one of them, each once', () => {
    const ids = examples.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(Object.keys(outside).filter((id) => !ids.includes(id))).toEqual([]);
    expect(Object.keys(differs).filter((id) => !ids.includes(id) || id in outside)).toEqual([]);
    expect(answered.filter((example) => answerFor(example) === undefined).map(({ id }) => id)).toEqual([]);
    expect({
      all: ids.length,
      met: answered.length - Object.keys(differs).length,
      differ: Object.keys(differs).length,
      outside: Object.keys(outside).length,
    }).toMatchInlineSnapshot(`
      {
        "all": 147,
        "differ": 18,
        "met": 110,
        "outside": 19,
      }
    `);
  });

  const met = answered.filter(({ id }) => !(id in differs));
  it.each(met.map((example) => ({ ...example, name: `${example.id}: ${example.asked} [${example.source}]` })))(
    'meets $name',
    (example) => {
      expect(isMet(example), `${[answerFor(example)?.(example.given)].flat()} against ${example.printed_answer}`).toBe(
        true,
      );
    },
  );

  const different = answered.filter(({ id }) => id in differs);
  it.each(different.map((example) => ({ ...example, why: differs[example.id] })))('differs in $id: $why', (example) => {
    expect(isMet(example)).toBe(false);
    const results = [answerFor(example)?.(example.given) ?? []].flat();
    // The unrounded recalculation that was published beside the printed answer, from the same weights.
    expect(
      results.some((result) => Math.abs(result / (example.recomputed ?? Number.NaN) - 1) < 2e-6),
      `${results}`,
    ).toBe(true);
  });

  it('tells what rounding on the way gives the printed values where that is the reason', () => {
    // os-3.8a: the book's own molar mass and constant.
    const saccharin = (0.04 / 183.18) * 6.022e23;
    expect(saccharin.toPrecision(3)).toBe('1.31e+20');
    expect(saccharin.toPrecision(6)).toBe('1.31499e+20');
    // os-11.ex-Cl2: both amounts and their sum to two decimals.
    const [chlorine, methylene] = [25 / perMole('Cl2'), 125 / perMole('CH2Cl2')].map((mol) => Number(mol.toFixed(2)));
    const sum = (chlorine ?? 0) + (methylene ?? 0);
    expect([sum, (chlorine ?? 0) / sum, (methylene ?? 0) / sum].map((value) => value.toPrecision(3))).toEqual([
      '1.82',
      '0.192',
      '0.808',
    ]);
    // os-11.ex-C5H9N: the sum to three figures, not the amounts.
    const [base, chloroform] = [0.372 / perMole('C5H9N'), 125 / perMole('CHCl3')];
    const whole = Number((base + chloroform).toPrecision(3));
    expect([whole, base / whole, chloroform / whole].map((value) => value.toPrecision(3))).toEqual([
      '1.05',
      '0.00426',
      '0.997',
    ]);
  });
});
