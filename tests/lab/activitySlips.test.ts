import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { commonGivens } from '../../src/lab/lesson/activities/commonGivens.ts';
import { factorStep, stockVolumeStep } from '../../src/lab/lesson/activities/dilutionSteps.ts';
import { labelErrorStep } from '../../src/lab/lesson/activities/labelErrorStep.ts';
import { calculated, measured } from '../../src/lab/lesson/activities/sharedSteps.ts';
import { massStep, massWeighedStep, molesStep, stockMadeStep } from '../../src/lab/lesson/activities/solidSteps.ts';
import { addActivity } from '../../src/lab/lesson/activities.ts';
import type { Activity, CalculatedStep } from '../../src/lab/lesson/activity.ts';

type Cells = Readonly<Record<string, string>>;

/** One row of a block, with the rows above it filled in. */
function rowOf(id: string, { givens, entries, comma }: { givens: Cells; entries: Cells; comma?: true }) {
  const rows = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', id], ...(comma ? [['decimal mark', 'comma']] : [])],
    steps: Object.keys(entries),
    entries: Object.values(entries),
  });
  const last = rows[rows.length - 1];
  if (last === undefined) throw new Error('there is no row');
  return last;
}
const slipsIn = (id: string, givens: Cells, entries: Cells) => rowOf(id, { givens, entries }).slips;

const bromide = {
  formula: 'KBr',
  'stock molarity': '0.300',
  flask: '200',
  'target molarity': '0.0450',
  'target volume': '100',
  ion: 'Br-',
  purity: '',
};

describe('the molarity that was planned or labelled, in place of the one found', () => {
  it('is known in a solution from a solid', () => {
    // 6.06 g ÷ 119.002 ÷ 0.200 L is 0.255.
    const givens = { formula: 'KBr', molarity: '0.250', flask: '200', ion: 'Br-' };
    const made = (entry: string, own: Cells = givens) =>
      rowOf('solution from a solid', { givens: own, entries: { 'mass weighed': '6.06', 'stock made': entry } });
    expect(made('0.255').status).toBe('on target');
    expect(made('0.250')).toMatchObject({ status: 'not yet', slips: ['planned-for-made'] });
    expect(made('0.240').slips).toEqual([]);
    // One figure of what was made is what was planned as well, where that has no more of them.
    const planned = rowOf('solution from a solid', {
      givens: { ...givens, molarity: '0.3' },
      entries: { 'mass weighed': '7.10', 'stock made': '0.3' },
    });
    expect(planned).toMatchObject({ status: 'not yet', slips: ['planned-for-made'] });
    // Without a plan that can be read there is nothing to take for it, and the row is judged all the same.
    expect(made('0.250', { ...givens, molarity: 'strong' })).toMatchObject({ status: 'not yet', slips: [] });
  });
  it('is known in a residue that was weighed', () => {
    // 0.800 g ÷ 58.44 ÷ 0.025 L is 0.548.
    const givens = { formula: 'NaCl', molarity: '0.500', portion: '25' };
    const found = (entry: string) =>
      rowOf('weighed residue', { givens, entries: { 'residue weighed': '0.800', 'molarity found': entry } });
    expect(found('0.548').status).toBe('on target');
    expect(found('0.500').slips).toEqual(['planned-for-made']);
  });
  it('is known on the label of a solution whose density was found', () => {
    const givens = {
      formula: 'C12H22O11',
      molarity: '0.500',
      portion: '25',
      'lighter percent': '14',
      'lighter density': '1.0549',
      'heavier percent': '18',
      'heavier density': '1.0721',
    };
    // 10 × 18.0 × 1.0720 ÷ 342.297 is 0.564.
    const found = (entry: string, label: string) =>
      rowOf('measured density', {
        givens: { ...givens, molarity: label },
        entries: { 'portion weighed': '26.80', density: '1.0720', 'mass percent': '18.0', 'molarity found': entry },
      });
    expect(found('0.564', '0.500').status).toBe('on target');
    expect(found('0.500', '0.500').slips).toEqual(['planned-for-made']);
    expect(found('0.500', '0.400').slips).toEqual([]);
    expect(found('0.500', 'strong')).toMatchObject({ status: 'not yet', slips: [] });
  });
  it('is no slip where the molarity is worked from a label, nor where a bottle was planned by nobody', () => {
    const givens = {
      formula: 'HCl',
      'mass percent': '37.2',
      density: '1.18',
      'target molarity': '0.500',
      'target volume': '250',
    };
    expect(slipsIn('concentrated reagent', givens, { 'reagent molarity': '0.500' })).toEqual([]);
    // 0.500 × 250 ÷ 12.0 is 10.4.
    const volume = (entry: string) =>
      rowOf('concentrated reagent', { givens, entries: { 'reagent molarity': '12.0', 'stock volume': entry } });
    expect(volume('10.4').status).toBe('on target');
    expect(volume('0.500').slips).toEqual([]);
  });
});

describe('the ratio of the two flasks in place of the dilution factor', () => {
  const factor = (entry: string, own: Cells = {}, comma?: true) =>
    rowOf('stock and dilution', {
      givens: { ...bromide, ...own },
      entries: { 'dilution factor': entry },
      ...(comma ? { comma } : {}),
    });
  it('is known either way up, and by the units of the flasks', () => {
    for (const entry of ['2.00', '0.500']) {
      expect(factor(entry).slips).toEqual(['flasks-compared']);
      expect(factor(entry, { flask: '0.2 L', 'target volume': '1 dL' }).slips).toEqual(['flasks-compared']);
    }
    expect(factor('3.00').slips).toEqual([]);
  });
  it('is known by the decimal mark of the class', () => {
    // 1.250 L and 500 mL.
    const flasks = { flask: '1,250 L', 'target volume': '500,0' };
    const molarities = { 'stock molarity': '0,300', 'target molarity': '0,0450' };
    expect(factor('2,50', { ...flasks, ...molarities }, true).slips).toEqual(['flasks-compared']);
  });
  it('is not looked for where one of them cannot be read, or where there is only one', () => {
    for (const own of [{ flask: 'big' }, { 'target volume': 'big' }, { flask: '' }])
      expect(factor('2.00', own)).toMatchObject({ status: 'not yet', slips: [] });
    const alone = { formula: 'KBr', 'stock molarity': '0.300', 'target molarity': '0.0450', 'target volume': '200' };
    expect(slipsIn('dilution', { ...alone, ion: 'Br-' }, { 'dilution factor': '2.00' })).toEqual([]);
  });
});

describe('the mass in place of the moles', () => {
  const moles = (entry: string, own: Cells = {}) =>
    rowOf('stock and dilution', { givens: { ...bromide, ...own }, entries: { 'moles of solute': entry } });
  it('is known, and nothing else of the salt is taken for it', () => {
    expect(moles('7.14').slips).toEqual(['mass-reported']);
    expect(moles('119.0').slips).toEqual([]);
  });
  it('is not looked for where the formula cannot be read', () => {
    expect(moles('7.14', { formula: 'KXy' })).toMatchObject({ status: 'not yet', slips: [] });
    expect(moles('0.0600', { formula: 'KXy' }).status).toBe('on target');
  });
});

describe('another of the team’s numbers', () => {
  const row = (id: string, entry: string, own: Cells = {}) =>
    rowOf('stock and dilution', { givens: { ...bromide, ...own }, entries: { [id]: entry } });
  it('is still known where a third one cannot be read', () => {
    // 0.0450 × 0.200 and 0.300 × 0.100.
    const broken = { 'target volume': 'big' };
    expect(row('moles of solute', '0.00900', broken).slips).toEqual(['other-given-used']);
    expect(row('moles of solute', '0.0300', broken).slips).toEqual([]);
  });
  it('is read with its own unit and the mark of the class', () => {
    // 0.300 × 1.500 L, where 200 mL are asked.
    const litres = { ...bromide, 'stock molarity': '0,300', 'target molarity': '0,0450', 'target volume': '1,500 L' };
    const entries = { 'moles of solute': '0,450' };
    expect(rowOf('stock and dilution', { givens: litres, entries, comma: true }).slips).toEqual(['other-given-used']);
  });
  it('is one at a time, and none that the row takes anyway', () => {
    // 0.0450 × 0.100; and 0.300 in place of 0.0450, which fills the flask with stock.
    expect(row('moles of solute', '0.00450').slips).toEqual([]);
    expect(row('stock volume', '100').slips).toEqual([]);
  });
});

/** Lessons of a department's own, with rows that ours do not put side by side. */
const own = (id: string, steps: Activity['steps'], givens: Activity['givens']): Activity => ({
  id,
  title: id,
  aim: id,
  extension: '',
  givens,
  numbers: { formula: 'formula' },
  steps,
});
const { formula, molarity, stock, flask, target, volume, purity } = commonGivens;
const diluted = (id: string, takes: CalculatedStep['takes']) =>
  calculated({
    id,
    title: id,
    unit: 'mol/L',
    shown: [],
    period: 1,
    quantity: 'diluted molarity',
    takes,
    buildsOn: {},
  });
const solid = { molarity: 'stock molarity', volume: 'flask', purity: 'purity' };
const portion = { name: 'portion', unit: 'mL', about: '' } as const;
const wide = { name: 'wide flask', unit: 'mL', about: '' } as const;
const fromStock = {
  stock: { entryOf: 'stock made' },
  target: 'target molarity',
  volume: 'target volume',
  period: 1,
} as const;
const planned = { ...fromStock, stock: { given: 'stock molarity' } };
const read = measured({
  id: 'molarity read',
  title: 'Molarity read',
  unit: 'mol/L',
  shown: [],
  period: 1,
  expects: { given: 'stock molarity' },
  instrument: 'bench',
});

const lessons: readonly Activity[] = [
  // Percentages: how pure the solid is, and how much of a product comes back.
  own(
    'recovered salt',
    [molesStep(solid), massStep(solid)],
    [formula, stock, flask, purity, { name: 'recovery', unit: '%', about: '' }],
  ),
  // Two volumes, headed by a unit that none of our own columns has.
  own(
    'salt in cubic centimetres',
    [molesStep(solid), massStep(solid)],
    [formula, stock, { ...flask, unit: 'cm³' }, purity, { ...portion, unit: 'cm³' }],
  ),
  // A second portion of the stock, in a flask that no row plans.
  own(
    'two portions',
    [
      massStep(solid),
      massWeighedStep(),
      stockMadeStep(solid),
      stockVolumeStep(fromStock),
      diluted('in the wide flask', {
        'stock molarity': { entryOf: 'stock made' },
        'stock volume': { given: 'portion' },
        'final volume': { given: 'wide flask' },
      }),
      diluted('in the flask', {
        'stock molarity': { entryOf: 'stock made' },
        'stock volume': { given: 'portion' },
        'final volume': { given: 'target volume' },
      }),
    ],
    [formula, stock, flask, target, volume, purity, portion, wide],
  ),
  // Moles of one volume, and a mass for another.
  own(
    'moles in a portion',
    [molesStep({ ...solid, volume: 'portion' }), massStep(solid), factorStep(planned), stockVolumeStep(planned)],
    [formula, stock, flask, target, volume, purity, portion],
  ),
  // A bottle whose molarity follows from its label, compared with what was ordered.
  own(
    'labelled bottle',
    [
      calculated({
        id: 'reagent molarity',
        title: 'Molarity in the bottle',
        unit: 'mol/L',
        shown: [],
        period: 1,
        quantity: 'reagent molarity',
        takes: {
          formula: { given: 'formula' },
          'mass percent': { given: 'mass percent' },
          density: { given: 'density' },
        },
        buildsOn: {},
      }),
      { ...labelErrorStep(), takes: { measured: { entryOf: 'reagent molarity' }, accepted: { given: 'molarity' } } },
    ],
    [formula, molarity, { name: 'mass percent', unit: '%', about: '' }, { name: 'density', unit: 'g/mL', about: '' }],
  ),
  // Two dilutions, each in a flask of its own or of a portion of its own.
  own(
    'uneven flasks',
    [
      diluted('first', {
        'stock molarity': { given: 'stock molarity' },
        'stock volume': { given: 'portion' },
        'final volume': { given: 'flask' },
      }),
      diluted('second', {
        'stock molarity': { entryOf: 'first' },
        'stock volume': { given: 'portion' },
        'final volume': { given: 'wide flask' },
      }),
      diluted('second of more', {
        'stock molarity': { entryOf: 'first' },
        'stock volume': { given: 'large portion' },
        'final volume': { given: 'flask' },
      }),
    ],
    [formula, stock, portion, flask, wide, { ...portion, name: 'large portion' }],
  ),
  // A stock whose molarity is read at the bench, where nothing was weighed.
  own(
    'read stock',
    [
      read,
      factorStep({ ...fromStock, stock: { entryOf: 'molarity read' } }),
      stockVolumeStep({ ...fromStock, stock: { entryOf: 'molarity read' } }),
      diluted('after dilution', {
        'stock molarity': { entryOf: 'molarity read' },
        'stock volume': { given: 'portion' },
        'final volume': { given: 'target volume' },
      }),
    ],
    [formula, stock, target, volume, portion],
  ),
];

describe('slips in lessons of a department’s own', () => {
  let remove: readonly (() => void)[] = [];
  beforeAll(() => {
    remove = lessons.map((lesson) => addActivity(lesson.id, () => lesson));
  });
  afterAll(() => {
    for (const one of remove) one();
  });

  it('know another percentage in place of the purity', () => {
    // 0.300 × 0.200 × 119.002 ÷ 0.950 is 7.52, and ÷ 0.800 is 8.93.
    const givens = { formula: 'KBr', 'stock molarity': '0.300', flask: '200', purity: '95.0 %', recovery: '80.0 %' };
    const mass = (entry: string) => rowOf('recovered salt', { givens, entries: { 'mass of solute': entry } });
    expect(mass('7.52').status).toBe('on target');
    expect(mass('8.93').slips).toEqual(['other-given-used']);
  });
  it('judge a team whose volumes are headed by another unit, and ask about no slip with them', () => {
    const givens = { formula: 'KBr', 'stock molarity': '0.300', flask: '200', purity: '', portion: '50' };
    const mass = (entry: string) =>
      rowOf('salt in cubic centimetres', { givens, entries: { 'mass of solute': entry } });
    // 0.300 × 0.200 × 119.002 is 7.14; with the portion of 50 cm³ it would be 1.79.
    expect(mass('7.14').status).toBe('on target');
    expect(mass('1.79')).toMatchObject({ status: 'not yet', slips: [] });
  });
  it('know the planned stock in every flask, and the planned dilution in its own flask alone', () => {
    const givens = { ...bromide, portion: '15.0', 'wide flask': '250' };
    const made = (id: string, entry: string) =>
      rowOf('two portions', { givens, entries: { 'mass weighed': '7.28', 'stock made': '0.306', [id]: entry } });
    // 0.306 × 15.0 ÷ 250 is 0.0184; 0.300 in its place gives 0.0180; 0.0450 is the plan for 100 mL.
    expect(made('in the wide flask', '0.0184').status).toBe('on target');
    expect(made('in the wide flask', '0.0180').slips).toEqual(['planned-for-made']);
    expect(made('in the wide flask', '0.0450').slips).toEqual([]);
    expect(made('in the flask', '0.0459').status).toBe('on target');
    expect(made('in the flask', '0.0450').slips).toEqual(['planned-for-made']);
  });
  it('compare the flask of the mass, not the volume of another row', () => {
    const givens = { ...bromide, portion: '30' };
    const factor = (entry: string) => slipsIn('moles in a portion', givens, { 'dilution factor': entry });
    for (const entry of ['2.00', '0.500']) expect(factor(entry)).toEqual(['flasks-compared']);
    for (const entry of ['0.300', '3.33']) expect(factor(entry)).toEqual([]);
  });
  it('ask for no other molarity than that of the label, where nothing was found at the bench', () => {
    // 10 × 37.2 × 1.18 ÷ 36.458 is 12.0.
    const givens = { formula: 'HCl', molarity: '11.5', 'mass percent': '37.2', density: '1.18' };
    const bottle = (entry: string) => rowOf('labelled bottle', { givens, entries: { 'reagent molarity': entry } });
    expect(bottle('12.0').status).toBe('on target');
    expect(bottle('11.5')).toMatchObject({ status: 'not yet', slips: [] });
  });
  it('add no factors of dilutions that differ', () => {
    const givens = {
      formula: 'KMnO4',
      'stock molarity': '0.0200',
      portion: '10',
      'large portion': '25',
      flask: '100',
      'wide flask': '250',
    };
    const second = (id: string, entry: string) =>
      rowOf('uneven flasks', { givens, entries: { first: '0.00200', [id]: entry } });
    // 0.0200 × 10 ÷ 100 is 0.00200, and × 10 ÷ 250 is 0.0000800; half the stock × 10 ÷ 250 is 0.000400.
    expect(second('second', '0.0000800').status).toBe('on target');
    expect(second('second', '0.000400').slips).toEqual([]);
    // 0.00200 × 25 ÷ 100 is 0.000500; half the stock × 25 ÷ 100 is 0.00250.
    expect(second('second of more', '0.000500').status).toBe('on target');
    expect(second('second of more', '0.00250').slips).toEqual([]);
  });
  it('name no plan where the stock was read and not made', () => {
    const givens = { ...bromide, portion: '15.0' };
    const row = (id: string, entry: string) =>
      rowOf('read stock', { givens, entries: { 'molarity read': '0.306', [id]: entry } });
    // 0.300 and 0.0450 are what was planned, where 0.306 was read.
    for (const [id, right, planned] of [
      ['dilution factor', '6.80', '6.67'],
      ['stock volume', '14.7', '15.0'],
      ['after dilution', '0.0459', '0.0450'],
    ] as const) {
      expect(row(id, right).status).toBe('on target');
      expect([id, row(id, planned).slips.filter((slip) => slip === 'planned-for-made')]).toEqual([id, []]);
    }
  });
});
