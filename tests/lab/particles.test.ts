import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { boxText, leftOutText } from '../../src/lab/particles/boxText.ts';
import { type Figure, type ParticlePicture, particlePicture } from '../../src/lab/particles/particlePicture.ts';
import { picturedSteps } from '../../src/lab/particles/picturedSteps.ts';
import { pictureQuestions } from '../../src/lab/particles/pictureQuestions.ts';
import { readSolutions } from '../../src/lab/particles/solutions.ts';
import { tenPower } from '../../src/lab/particles/tenPower.ts';
import { unitsDrawn } from '../../src/lab/particles/unitsDrawn.ts';
import { cases } from '../depth.ts';
import { startOf } from './otherActivities.ts';

const activityOf = (id: string) => {
  const found = allActivities().find((activity) => activity.id === id);
  if (found === undefined) throw new Error(`No activity is called ${id}.`);
  return found;
};

const pictureOf = (givens: Readonly<Record<string, string>>, id = 'dilution') => {
  const solutions = readSolutions({ activity: activityOf(id), givens, decimalMark: 'point' });
  return solutions.ok ? particlePicture(solutions.value) : solutions;
};
const drawn = (givens: Readonly<Record<string, string>>, id?: string): ParticlePicture => {
  const picture = pictureOf(givens, id);
  if (!picture.ok) throw new Error(picture.error.advice);
  return picture.value;
};
const dilution = (formula: string, stock: string, target: string, volume = '50') => ({
  formula,
  'stock molarity': stock,
  'target molarity': target,
  'target volume': volume,
});
const figures = ({ sample, flask }: ParticlePicture): readonly Figure[] => [sample, ...(flask ? [flask] : [])];
const counted = ({ particles }: Figure['boxes'][number], kinds: number) =>
  Array.from({ length: kinds }, (_, place) => particles.filter(({ kind }) => kind === place).length);

const salts = ['KBr', 'MgCl2', 'Na2SO4', 'AlCl3', 'CuSO4·5H2O', 'Fe2(SO4)3', '(NH4)2SO4', 'KAl(SO4)2·12H2O', 'Na3PO4'];
const solutes = [...salts, 'C6H12O6', 'HCl'];
/** Molarities as a class has them: three figures, stock above target. */
const molarities = fc
  .tuple(fc.integer({ min: 20, max: 999 }), fc.integer({ min: 20, max: 999 }))
  .filter(([one, other]) => one !== other)
  .map(([one, other]) => [Math.max(one, other) / 1000, Math.min(one, other) / 1000] as const);

describe('a picture of any dilution', () => {
  it('keeps ratio, charge and proportion in every box, in whole numbers few enough to count', () => {
    let nearOnes = 0;
    fc.assert(
      fc.property(fc.constantFrom(...solutes), molarities, (formula, [stock, target]) => {
        const picture = pictureOf(dilution(formula, stock.toFixed(3), target.toFixed(3)));
        if (!picture.ok) {
          expect(picture.error.code).toBe('particles-too-far-apart');
          expect(stock / target).toBeGreaterThan(8);
          return;
        }
        const { kinds, times } = picture.value;
        for (const { boxes } of figures(picture.value)) {
          for (const box of boxes) {
            const counts = counted(box, kinds.length);
            expect(box.counts).toEqual(counts);
            expect(counts).toEqual(kinds.map(({ perUnit }) => perUnit * box.units));
            expect(counts.reduce((sum, count, place) => sum + count * (kinds[place]?.charge ?? 0), 0)).toBe(0);
            expect(box.particles.length).toBeLessThanOrEqual(120);
            expect(Number.isInteger(box.units) && box.units > 0).toBe(true);
          }
        }
        const [before, after] = picture.value.sample.boxes;
        const ratio = (before?.units ?? 0) / (after?.units ?? 1);
        expect(ratio).toBe(times.drawn);
        expect(Math.abs(ratio / (stock / target) - 1)).toBeLessThanOrEqual(times.exact ? 1e-9 : 0.05);
        if (!times.exact) nearOnes += 1;
        // Equal volumes: the two boxes of a sample are the same size.
        expect([before?.width, before?.height]).toEqual([after?.width, after?.height]);
      }),
      { numRuns: cases({ short: 40, deep: 600 }) },
    );
    expect(nearOnes).toBeGreaterThan(2);
  });

  it('shows the whole portion twice: the same count, in a box as much larger as the volume', () => {
    fc.assert(
      fc.property(fc.constantFrom(...solutes), molarities, (formula, [stock, target]) => {
        const picture = pictureOf(dilution(formula, stock.toFixed(3), target.toFixed(3)));
        fc.pre(picture.ok && picture.value.flask !== undefined);
        if (!picture.ok || picture.value.flask === undefined) return;
        const [small, large] = picture.value.flask.boxes;
        if (small === undefined || large === undefined) throw new Error('Expected two boxes.');
        expect(small.counts).toEqual(large.counts);
        expect(small.particles).toHaveLength(large.particles.length);
        const growth = (large.width * large.height) / (small.width * small.height);
        expect(growth).toBeCloseTo(picture.value.times.drawn, 9);
      }),
      { numRuns: cases({ short: 20, deep: 300 }) },
    );
  });

  it('lets no particle touch another or the wall, and draws no rows', () => {
    for (const formula of solutes) {
      for (const [stock, target] of [
        ['0.400', '0.120'],
        ['1.00', '0.0500'],
        ['0.310', '0.117'],
      ] as const) {
        for (const { boxes, size } of figures(drawn(dilution(formula, stock, target)))) {
          for (const { particles, width, height } of boxes) {
            const fromWalls = particles.map(({ x, y }) => Math.min(x, y, width - x, height - y));
            const apart = particles.flatMap(({ x, y }, place) =>
              particles.slice(place + 1).map((other) => Math.hypot(x - other.x, y - other.y)),
            );
            expect(Math.min(...fromWalls)).toBeGreaterThan(size / 2);
            expect(Math.min(...apart)).toBeGreaterThan(size);
            if (particles.length < 8) continue;
            // In a lattice many share a row; here hardly two do.
            const rows = new Set(particles.map(({ y }) => y.toFixed(1)));
            expect(rows.size).toBeGreaterThan(particles.length * 0.8);
          }
        }
      }
    }
  });

  it('is the same picture each time', () => {
    const givens = dilution('MgCl2', '0.400', '0.120');
    expect(drawn(givens)).toEqual(drawn(givens));
  });
});

describe('a picture of a known dilution', () => {
  it('halves the count where the volume is doubled', () => {
    const { sample, flask } = drawn(dilution('MgCl2', '0.200', '0.100'));
    const [before, after] = sample.boxes;
    expect(before?.counts).toEqual([4, 8]);
    expect(after?.counts).toEqual([2, 4]);
    expect(flask?.boxes.map(({ counts }) => counts)).toEqual([
      [2, 4],
      [2, 4],
    ]);
  });

  it('draws 0.400 to 0.120 mol/L as ten units to three', () => {
    const { sample, times } = drawn(dilution('KBr', '0.400', '0.120'));
    expect(sample.boxes.map(({ units }) => units)).toEqual([10, 3]);
    expect(times).toMatchObject({ drawn: 10 / 3, exact: true });
  });

  // By hand: 0.120 mol/L × 0.0500 L = 6.00 mmol, times 6.02214076e23 is 3.613e21; two bromides each for MgBr2.
  it('counts the particles of the whole flask with the Avogadro constant', () => {
    const { inFlask } = drawn(dilution('MgBr2', '0.400', '0.120'));
    expect(inFlask.map((count) => tenPower(count, { figures: 3, decimalMark: 'point' }))).toEqual([
      '3.61 × 10²¹',
      '7.23 × 10²¹',
    ]);
  });

  // By hand: 10 units at 0.400 mol/L take 10 ÷ (0.400 × 6.02214076e23) L = 4.151e-23 L, and 1 L is 1e24 nm³.
  it('knows the true size of its sample', () => {
    expect(drawn(dilution('KBr', '0.400', '0.120')).sampleVolume).toBeCloseTo(41.51, 2);
  });

  it('leaves a molecular solute whole', () => {
    const { kinds, sample } = drawn(dilution('C12H22O11', '0.400', '0.100'));
    expect(kinds).toMatchObject([{ symbol: 'C₁₂H₂₂O₁₁', charge: 0, perUnit: 1, shape: 'whole' }]);
    expect(sample.boxes.map(({ particles }) => particles.length)).toEqual([12, 3]);
  });

  it('gives each kind of ion a shape of its own', () => {
    for (const formula of salts) {
      const shapes = drawn(dilution(formula, '0.400', '0.100')).kinds.map(({ shape }) => shape);
      expect(new Set(shapes).size, formula).toBe(shapes.length);
    }
  });

  it('does not count water of hydration', () => {
    expect(drawn(dilution('CuSO4·5H2O', '0.400', '0.100')).kinds.map(({ symbol }) => symbol)).toEqual([
      'Cu²⁺',
      'SO₄²⁻',
    ]);
  });
});

describe('what cannot be drawn', () => {
  it.each([
    { why: 'equal volumes too far apart', givens: dilution('KBr', '2.00', '0.00100'), code: 'particles-too-far-apart' },
    { why: 'a weak acid', givens: dilution('CH3COOH', '0.400', '0.100'), code: 'ions-weak' },
    { why: 'a target above the stock', givens: dilution('KBr', '0.100', '0.400'), code: 'target-not-below-stock' },
    { why: 'a blank number', givens: dilution('KBr', '', '0.400'), code: 'quantity-expected' },
    { why: 'a formula that is none', givens: dilution('Kbr', '0.4', '0.1'), code: 'formula-case' },
  ])('says so: $why', ({ givens, code }) => {
    const picture = pictureOf(givens);
    expect(picture.ok ? '' : picture.error.code).toBe(code);
  });
});

describe('unitsDrawn', () => {
  it.each([
    { ratio: 10 / 3, perUnit: 2, before: 10, after: 3, exact: true },
    { ratio: 2, perUnit: 2, before: 6, after: 3, exact: true },
    { ratio: 0.31 / 0.117, perUnit: 2, before: 8, after: 3, exact: false },
    { ratio: 50, perUnit: 2, before: 50, after: 1, exact: true },
  ])('draws $ratio with $perUnit particles a unit as $before to $after', ({ ratio, perUnit, ...expected }) => {
    expect(unitsDrawn({ ratio, perUnit })).toEqual(expected);
  });
});

describe('the words of a picture', () => {
  const wordsOf = (picture: ParticlePicture, called: 'sample' | 'flask') =>
    (picture[called]?.boxes ?? []).map((box) => boxText(picture, { box, figure: called }));
  it('hold the counts that are drawn, and say that water is left out', () => {
    const picture = drawn(dilution('MgCl2', '0.200', '0.100'));
    expect(wordsOf(picture, 'sample')).toEqual([
      'Before, a sample of the stock: 4 Mg²⁺ and 8 Cl⁻.',
      'After, the same volume of the diluted solution: 2 Mg²⁺ and 4 Cl⁻.',
    ]);
    expect(wordsOf(picture, 'flask')).toEqual([
      'Before, all of a small portion of stock: 2 Mg²⁺ and 4 Cl⁻.',
      'After, the same portion with its water: 2 Mg²⁺ and 4 Cl⁻.',
    ]);
    expect(leftOutText(picture)).toBe(
      'All separate, spread out evenly. Water fills the space between them and is left out.',
    );
    expect(leftOutText(drawn(dilution('C6H12O6', '0.2', '0.1')))).toContain('Each molecule stays whole.');
  });
  it('are counted from what is drawn and from nothing else', () => {
    const picture = drawn(dilution('KBr', '0.400', '0.120'));
    const [box] = picture.sample.boxes;
    if (box === undefined) throw new Error('Expected a box.');
    const fewer = { ...box, particles: box.particles.filter(({ kind }) => kind === 0).slice(1) };
    expect(boxText(picture, { box: fewer, figure: 'sample' })).toBe('Before, a sample of the stock: 9 K⁺ and 0 Br⁻.');
  });
});

describe('a row of flasks', () => {
  const givens = { formula: 'KBr', 'stock molarity': '0.500', portion: '10', flask: '50' };
  const activity = activityOf('serial dilution');
  it('is pictured dilution by dilution, each from the flask before', () => {
    expect(picturedSteps(activity)).toBe(3);
    expect(picturedSteps(activityOf('dilution'))).toBe(1);
    // 10 mL in 50 mL: a fifth each time, of 0.500 mol/L.
    const molarities = [1, 2, 3].map((step) => {
      const solutions = readSolutions({ activity, givens, decimalMark: 'point', step });
      if (!solutions.ok) throw new Error(solutions.error.advice);
      const { first, diluted } = solutions.value;
      const picture = particlePicture(solutions.value);
      if (!picture.ok) throw new Error(picture.error.advice);
      const [before, after] = picture.value.sample.boxes;
      expect((before?.units ?? 0) / (after?.units ?? 1)).toBe(5);
      return [first.molarity, diluted?.molarity].map((molarity) => Number(molarity?.toPrecision(6)));
    });
    expect(molarities).toEqual([
      [0.5, 0.1],
      [0.1, 0.02],
      [0.02, 0.004],
    ]);
  });
  it('says which flasks a picture is of', () => {
    const words = (step: number) => {
      const solutions = readSolutions({ activity, givens, decimalMark: 'point', step });
      const picture = solutions.ok ? particlePicture(solutions.value) : solutions;
      if (!picture.ok) throw new Error(picture.error.advice);
      const of = picture.value;
      return (['sample', 'flask'] as const).flatMap((figure) =>
        (of[figure]?.boxes ?? []).map((box) => boxText(of, { box, figure }).split(':')[0]),
      );
    };
    expect(words(1)).toEqual([
      'Before, a sample of the stock',
      'After, the same volume of the diluted solution',
      'Before, all of a small portion of stock',
      'After, the same portion with its water',
    ]);
    expect(words(3)).toEqual([
      'Before, a sample of flask 2',
      'After, the same volume of flask 3',
      'Before, all of a small portion of flask 2',
      'After, the same portion with its water, in flask 3',
    ]);
  });
});

describe('every activity', () => {
  it.each(allActivities().map((activity) => [activity.id, activity] as const))(
    'gives a picture or a reason for each of its teams: %s',
    (id, activity) => {
      const numbers = numbersForTeams(startOf(id));
      if (!numbers.ok) throw new Error(numbers.error.advice);
      for (const { givens } of numbers.value.teams) {
        const picture = drawn(givens, id);
        const dilutes = ['stock and dilution', 'dilution', 'serial dilution', 'concentrated reagent'].includes(id);
        expect(picture.sample.boxes).toHaveLength(dilutes ? 2 : 1);
        expect(picture.flask === undefined).toBe(!dilutes);
        const names = pictureQuestions(activity, picture).map(({ name }) => name);
        expect(names.length).toBeGreaterThanOrEqual(3);
        expect(new Set(names).size).toBe(names.length);
      }
    },
  );
  it('reads a decimal comma where the class writes one', () => {
    const solutions = readSolutions({
      activity: activityOf('dilution'),
      givens: dilution('KBr', '0,400', '0,120'),
      decimalMark: 'comma',
    });
    expect(solutions.ok && solutions.value.first.molarity).toBe(0.4);
  });
});
