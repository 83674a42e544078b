import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText } from '../../src/errors/errorText.ts';
import { activityById, addActivity } from '../../src/lab/lesson/activities.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { ClassSetup, Setup, Shelf, TeamNumbers, TeamPlan } from '../../src/lab/lesson/setup.ts';
import { solubleMolarity } from '../../src/lab/lesson/solutes.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';
import { dayPreparation } from '../../src/lab/preparation/dayPreparation.ts';
import { cases } from '../depth.ts';
import { otherActivities, startOf } from './otherActivities.ts';

const classes = (count: number, teams: number): ClassSetup[] =>
  Array.from({ length: count }, (_, at) => ({
    name: `Class ${at + 1}`,
    teams: Array.from({ length: teams }, (__, team) => `Team ${team + 1}`),
  }));

const everyday: Setup = {
  activity: 'stock and dilution',
  givens: {
    formula: 'KBr',
    'stock molarity': '0.300',
    flask: '200',
    'target molarity': '0.0450',
    'target volume': '100',
    ion: 'Br-',
    purity: '',
  },
  ownNumbers: true,
  settings: defaultSettings,
  shelf: defaultShelf,
  classes: classes(2, 6),
};
const withGivens = (givens: Record<string, string>): Setup => ({
  ...everyday,
  givens: { ...everyday.givens, ...givens },
});
const withShelf = (shelf: Partial<Shelf>): Setup => ({ ...everyday, shelf: { ...everyday.shelf, ...shelf } });

const numbers = (setup: Setup): TeamNumbers => {
  const result = numbersForTeams(setup);
  if (!result.ok) throw new Error(`${result.error.argument}: ${result.error.advice}`);
  return result.value;
};
const value = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));
const figuresOf = (text: string | undefined): number => (text ?? '').replace(/[.,]/, '').replace(/^0+/, '').length;

/** Givens that no team gets more of than was typed. */
function cappedGivens(id: string): readonly string[] {
  const activity = activityById(id);
  const recipe = activity && recipeOf(activity);
  return Object.entries(recipe?.entry.takes ?? {}).flatMap(([name, { atMostTyped }]) => {
    const given = recipe?.takes[name];
    return atMostTyped && given !== undefined ? [given] : [];
  });
}

/** What such a plan has to have ready. */
function dayOf(setup: Setup) {
  const activity = activityById(setup.activity);
  if (activity === undefined) throw new Error('the setup has no activity');
  return dayPreparation({ activity, teams: numbers(setup).teams, shelf: setup.shelf, settings: setup.settings });
}

/** All that a team's numbers have to meet, worked here from the texts alone. */
function expectMakeable({ teams }: TeamNumbers, setup: Setup): void {
  const { shelf } = setup;
  const formula = readFormula(setup.givens.formula);
  const mass = formula.ok ? molarMass(formula.value) : formula;
  if (!mass.ok) throw new Error('the setup has no formula');
  const deliverable = shelf.pipettesMl.flatMap((one) => [one, ...shelf.pipettesMl.map((other) => one + other)]);
  const soluble = solubleMolarity(setup.givens.formula ?? '') ?? Number.POSITIVE_INFINITY;
  for (const { givens, key } of teams) {
    const stock = value(givens['stock molarity']);
    const target = value(givens['target molarity']);
    const flask = value(givens.flask);
    const volume = value(givens['target volume']);
    expect(shelf.flasksMl, key).toContain(flask);
    expect(shelf.flasksMl, key).toContain(volume);
    expect(target, key).toBeLessThan(stock);
    const portion = (target / stock) * volume;
    expect(Math.min(...deliverable.map((size) => Math.abs(size - portion) / size)), key).toBeLessThan(1e-9);
    expect(portion, key).toBeLessThanOrEqual(flask / 2 + 1e-9);
    const weighed = (stock * flask * mass.value) / 1000 / ((value(givens.purity) || 100) / 100);
    expect(weighed, key).toBeGreaterThanOrEqual(100 * shelf.balanceReadabilityG * (1 - 1e-12));
    expect(weighed, key).toBeLessThanOrEqual(shelf.balanceMaxG);
    expect(stock, key).toBeLessThanOrEqual(soluble);
    for (const name of ['stock molarity', 'target molarity']) {
      expect(figuresOf(givens[name]), `${key} ${name} ${givens[name]}`).toBe(figuresOf(setup.givens[name]));
    }
  }
}

const pick = <T>(items: readonly [T, ...T[]]) => fc.constantFrom(...items);
const anySetup = fc
  .record({
    seed: fc.string({ maxLength: 8 }),
    formula: pick(['KBr', 'CaCl2·2H2O', '(NH4)2SO4', 'Na2SO4', 'C12H22O11', 'CuSO4·5H2O', 'MgSO4·7H2O']),
    stock: pick(['0.300', '0.250', '0.50', '0.4', '0.120']),
    factor: pick([4, 5, 6.25, 8, 10, 20]),
    flask: pick(['100', '200', '250', '500']),
    volume: pick(['100', '250', '500']),
    flasks: fc.uniqueArray(pick([50, 100, 200, 250, 500, 1000]), { minLength: 1, maxLength: 5 }),
    pipettes: fc.uniqueArray(pick([1, 2, 5, 10, 15, 20, 25, 50]), { minLength: 1, maxLength: 6 }),
    readability: pick([0.1, 0.01, 0.001]),
    teams: fc.integer({ min: 1, max: 10 }),
    classes: fc.integer({ min: 1, max: 3 }),
    purity: pick(['', '98', '95.5']),
  })
  .map((drawn): Setup => {
    const ions: Record<string, string> = {
      KBr: 'Br-',
      CaCl2·2H2O: 'Cl-',
      '(NH4)2SO4': 'NH4+',
      Na2SO4: 'Na+',
      C12H22O11: 'C12H22O11',
      CuSO4·5H2O: 'Cu^2+',
      MgSO4·7H2O: 'Mg^2+',
    };
    return {
      ...everyday,
      givens: {
        formula: drawn.formula,
        'stock molarity': drawn.stock,
        flask: drawn.flask,
        'target molarity': (Number(drawn.stock) / drawn.factor).toPrecision(3),
        'target volume': drawn.volume,
        ion: ions[drawn.formula] ?? '',
        purity: drawn.purity,
      },
      settings: { ...defaultSettings, seed: drawn.seed },
      shelf: {
        flasksMl: drawn.flasks,
        pipettesMl: drawn.pipettes,
        balanceReadabilityG: drawn.readability,
        balanceMaxG: 200,
      },
      classes: classes(drawn.classes, drawn.teams),
    };
  });

describe('numbersForTeams', () => {
  it('gives numbers that the shelf can make, or says what would free them', () => {
    let made = 0;
    let refused = 0;
    const runs = cases({ short: 30, deep: 300 });
    fc.assert(
      fc.property(anySetup, (setup) => {
        const result = numbersForTeams(setup);
        if (result.ok) {
          made += 1;
          expectMakeable(result.value, setup);
        } else {
          refused += 1;
          expect(result.error.code).toBe('numbers-shelf');
          expect(Object.keys(setup.givens)).toContain(result.error.argument);
          expect(result.error.advice).toMatch(/^(Add|Use|Change|Make|Choose)/);
        }
      }),
      { numRuns: runs },
    );
    expect(made).toBeGreaterThan(runs / 4);
    expect(refused).toBeGreaterThan(runs / 20);
  });

  it('gives the same numbers for the same seed and other ones for another', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 6 }), fc.string({ maxLength: 6 }), (seed, other) => {
        const seeded = (text: string) => numbers({ ...everyday, settings: { ...defaultSettings, seed: text } }).teams;
        expect(seeded(seed)).toEqual(seeded(seed));
        if (seed !== other) expect(seeded(seed)).not.toEqual(seeded(other));
      }),
      { numRuns: cases({ short: 2, deep: 20 }) },
    );
  });

  it('gives every team its own, in the stock and in the dilution', () => {
    const { teams, remarks } = numbers({ ...everyday, classes: classes(4, 10) });
    expect(teams).toHaveLength(40);
    const different = (...names: string[]) =>
      new Set(teams.map(({ givens }) => names.map((name) => givens[name]).join())).size;
    expect(different('stock molarity', 'flask')).toBe(40);
    expect(different('stock molarity', 'target molarity', 'target volume')).toBe(40);
    for (const { name } of classes(4, 10)) {
      const stocks = teams.filter(({ className }) => className === name).map(({ givens }) => givens['stock molarity']);
      expect(new Set(stocks).size).toBe(10);
    }
    expect(remarks).toEqual([]);
  });

  it.each(['a', 'b', 'c', 'd', 'e'])(
    'gives out no set that hides a slip while clear ones are left, seed %s',
    (seed) => {
      const settings = { ...defaultSettings, seed };
      expect(numbers({ ...everyday, settings, classes: classes(4, 10) }).remarks).toEqual([]);
    },
  );

  it('gives numbers of one difficulty: all dilution factors whole, or none', () => {
    for (const [target, isWhole] of [
      ['0.0300', true],
      ['0.0450', false],
    ] as const) {
      const { teams } = numbers(withGivens({ 'target molarity': target }));
      for (const { givens } of teams) {
        const factor = value(givens['stock molarity']) / value(givens['target molarity']);
        expect(Math.abs(factor - Math.round(factor)) < 1e-9).toBe(isWhole);
      }
    }
  });

  it('leaves what everyone has alone', () => {
    for (const { givens } of numbers(withGivens({ purity: '98.5 ', formula: ' KBr' })).teams) {
      expect(givens).toMatchObject({ purity: '98.5', formula: 'KBr', ion: 'Br-' });
    }
  });

  it('writes a decimal comma where the lesson has one', () => {
    const setup = withGivens({ 'stock molarity': '0,300', 'target molarity': '0,0450' });
    const { teams } = numbers({ ...setup, settings: { ...defaultSettings, 'decimal mark': 'comma' } });
    for (const { givens } of teams) expect(givens['stock molarity']).toMatch(/^0,\d{3}$/);
  });

  it('keeps a team’s key and numbers when another team joins at the end', () => {
    const before = numbers(everyday).teams;
    const [first, second] = everyday.classes;
    if (!first || !second) throw new Error('two classes are needed');
    const joined = { ...everyday, classes: [first, { ...second, teams: [...second.teams, 'Late team'] }] };
    expect(numbers(joined).teams.slice(0, before.length)).toEqual(before);
  });

  it('gives every team a key of its own, whatever the names', () => {
    const odd = [
      { name: '=Class', teams: ['A', 'a', ' a ', '日本', '—', ''] },
      { name: '=class', teams: ['A'] },
    ];
    const keys = numbers({ ...everyday, classes: odd }).teams.map(({ key }) => key);
    expect(new Set(keys).size).toBe(7);
    for (const key of keys) expect(key).toMatch(/^[\p{L}\p{N}]/u);
  });

  it('prefers sizes that hide no slip, and says what it gave up where there are none', () => {
    const both = numbers(withShelf({ flasksMl: [250, 1000], pipettesMl: [5, 10, 15, 20, 25] }));
    expect(both.remarks.join()).not.toContain('would look right');
    const only = numbers({
      ...withShelf({ flasksMl: [1000] }),
      givens: { ...everyday.givens, flask: '1000', 'target volume': '1000', 'target molarity': '0.00450' },
    });
    expect(only.remarks.join('\n')).toContain(
      'In “Mass to weigh”, a result without the volume would look right (all teams)',
    );
  });

  it.each([
    { about: 'a flask that is not there', setup: withShelf({ flasksMl: [] }), argument: 'flask', frees: 'Add a flask' },
    {
      about: 'no pipette',
      setup: withShelf({ pipettesMl: [] }),
      argument: 'target molarity',
      frees: 'Add a 5 mL pipette',
    },
    {
      about: 'a balance too coarse',
      setup: withShelf({ balanceReadabilityG: 1 }),
      argument: 'stock molarity',
      frees: 'a balance that reads finer than 1 g',
    },
    {
      about: 'a balance too small',
      setup: withShelf({ balanceMaxG: 1 }),
      argument: 'stock molarity',
      frees: 'a balance with a wider range',
    },
    {
      about: 'more than dissolves',
      setup: withGivens({ formula: 'Na2SO4', ion: 'Na+', 'stock molarity': '4.00', 'target molarity': '0.600' }),
      argument: 'stock molarity',
      frees: 'weaker solution',
    },
  ])('says what would free $about', ({ setup, argument, frees }) => {
    const result = numbersForTeams(setup);
    expect(result).toMatchObject({ ok: false, error: { code: 'numbers-shelf', argument } });
    expect(!result.ok && result.error.advice).toContain(frees);
  });

  describe('with shared numbers', () => {
    const shared = (givens: Record<string, string> = {}): Setup => ({ ...withGivens(givens), ownNumbers: false });

    it('gives every team the start’s numbers as typed', () => {
      const { teams } = numbers(shared({ flask: ' 200 ', 'stock molarity': '0.30' }));
      for (const { givens } of teams) expect(givens).toMatchObject({ flask: '200', 'stock molarity': '0.30' });
    });

    it.each([
      [{ flask: '300' }, 'flask'],
      [{ 'target volume': '120' }, 'target volume'],
      [{ 'target molarity': '0.300' }, 'target molarity'],
      [{ 'target molarity': '0.0447' }, 'target molarity'],
      [{ 'stock molarity': '4.00', 'target molarity': '0.600' }, 'stock molarity'],
      [{ 'stock molarity': '0.0200', 'target molarity': '0.00300' }, 'stock molarity'],
    ])('refuses %o and names %s', (givens, argument) => {
      expect(numbersForTeams(shared(givens))).toMatchObject({ ok: false, error: { argument } });
    });
  });

  it.each([
    [{ 'stock molarity': '' }, 'stock molarity'],
    [{ flask: '0' }, 'flask'],
    [{ flask: '-200' }, 'flask'],
    [{ 'target volume': '5 g' }, 'target volume'],
    [{ formula: 'nacl' }, 'formula'],
    [{ ion: 'Cl-' }, 'ion'],
  ])('names the start value that cannot be used: %o', (givens, argument) => {
    expect(numbersForTeams(withGivens(givens))).toMatchObject({ ok: false, error: { argument } });
  });

  it('says why a substance is not proposed where one is chosen anyway', () => {
    const { remarks } = numbers(withGivens({ formula: 'Pb(NO3)2', ion: 'Pb^2+' }));
    expect(remarks[0]).toContain('Lead salts');
  });

  it('plans a solute that stays whole, and says which rows to leave out', () => {
    const { teams, remarks } = numbers(withGivens({ formula: 'C12H22O11', ion: '' }));
    expect(teams).toHaveLength(12);
    expect(remarks.join()).toContain('gives no ions that can be counted here, so the rows about one ion are left out');
    expect(numbersForTeams(withGivens({ ion: '' }))).toMatchObject({ ok: false, error: { argument: 'ion' } });
  });

  describe('of the other activities', () => {
    /** Where stocks stand ready, so many different sets come from two of them with the default shelf. */
    const differentForTwelve: Readonly<Record<string, number>> = { 'weighed residue': 4, 'measured density': 4 };

    it.each(otherActivities)(
      'gives every team of “%s” its own, or shares out what one stock for all gives',
      (activity) => {
        const { teams, remarks } = numbers(startOf(activity));
        const sets = teams.map(({ givens }) => Object.values(givens).join());
        expect(new Set(sets).size).toBe(differentForTwelve[activity] ?? 12);
        expect(remarks.some((remark) => /share theirs/.test(remark))).toBe(new Set(sets).size < 12);
        for (const { givens } of teams) {
          expect(Object.keys(givens)).toEqual(Object.keys(startOf(activity).givens));
          for (const [name, text] of Object.entries(givens)) {
            const start = startOf(activity).givens[name] ?? '';
            if (/molarity/.test(name)) expect(figuresOf(text)).toBe(figuresOf(start));
            if (name === 'flask' || name === 'target volume') expect(everyday.shelf.flasksMl).toContain(value(text));
            if (['formula', 'ion', 'purity', 'density', 'mass percent'].includes(name)) expect(text).toBe(start);
          }
        }
        const shared = numbersForTeams({ ...startOf(activity), ownNumbers: false });
        const filled = Object.fromEntries(Object.entries(startOf(activity).givens).filter(([, text]) => text !== ''));
        expect(shared.ok && shared.value.teams[0]?.givens).toMatchObject(filled);
      },
    );

    describe.each(['measured density', 'weighed residue'])('“%s”', (activity) => {
      const start = startOf(activity);
      const planned = (givens: Record<string, string>, shelf: Partial<Shelf> = {}): Setup => ({
        ...start,
        givens: { ...start.givens, ...givens },
        shelf: { ...start.shelf, ...shelf },
      });
      const portionsOf = (setup: Setup) =>
        [...new Set(numbers(setup).teams.map(({ givens }) => givens.portion))].sort();

      it.each([
        ['10', ['10']],
        ['20', ['15', '20']],
        ['25', ['20', '25']],
      ])('weighs portions that can be compared: of %s mL %j', (portion, weighed) => {
        const setup = planned({ portion, molarity: '0.700' });
        expect(portionsOf(setup)).toEqual(weighed);
        const { remarks } = numbers(setup);
        expect(remarks.filter((remark) => /takes? two fillings|All teams take/.test(remark))).toEqual([]);
      });

      it('takes what comes nearest where the shelf does not give the portion, and says so', () => {
        const other = planned({ portion: '25' }, { pipettesMl: [10, 20] });
        expect(portionsOf(other)).toEqual(['20']);
        expect(numbers(other).remarks).toContain('All teams take 20 mL, because your pipettes do not give 25 mL.');
        const twice = planned({ portion: '50' }, { pipettesMl: [25] });
        expect(portionsOf(twice)).toEqual(['50']);
        expect(numbers(twice).remarks).toContain(
          'The portion takes two fillings of a pipette, because none of your pipettes gives it in one.',
        );
      });

      it('refuses a portion that nothing on the shelf comes within a quarter of', () => {
        const refused = numbersForTeams(planned({ portion: '25' }, { pipettesMl: [5, 50] }));
        expect(refused).toMatchObject({ ok: false, error: { code: 'numbers-shelf', argument: 'portion' } });
        expect(!refused.ok && refused.error.advice).toBe('Add a 25 mL pipette to the shelf, or change the portion.');
      });

      it('says that readings differ where the teams share numbers, and what would free it', () => {
        expect(numbers(start).remarks.join()).toContain(
          'your glassware gives 4 different sets of numbers for 12 teams, so some share theirs, as few as possible in one class. Their own readings will still differ.',
        );
      });
    });

    describe('“serial dilution”', () => {
      const start = startOf('serial dilution');
      const planned = (givens: Record<string, string>, shelf: Partial<Shelf> = {}): Setup => ({
        ...start,
        givens: { ...start.givens, ...givens },
        shelf: { ...start.shelf, ...shelf },
      });
      const furthest = (setup: Setup): number => {
        const asked = value(setup.givens.flask) / value(setup.givens.portion);
        return Math.max(
          ...numbers(setup).teams.map(({ givens }) => {
            const away = value(givens.flask) / value(givens.portion) / asked;
            return Math.max(away, 1 / away);
          }),
        );
      };

      it.each([
        ['5', '100'],
        ['10', '100'],
        ['25', '100'],
        ['10', '250'],
      ])(
        'dilutes every time about as far as %s mL in %s mL, as long as that gives every team its own',
        (portion, flask) => {
          const setup = { ...planned({ portion, flask }), classes: classes(1, 2) };
          expect(furthest(setup)).toBeLessThanOrEqual(1.6 + 1e-9);
          expect(numbers(setup).remarks.join()).not.toContain('much more');
        },
      );

      it('goes further only where the teams would share numbers otherwise, and says so', () => {
        const few = planned({ portion: '10', flask: '100' });
        expect(furthest(few)).toBeGreaterThan(1.6);
        expect(furthest(few)).toBeLessThanOrEqual(4);
        expect(numbers(few).remarks.join()).toContain('Some teams dilute much more or much less');
      });
    });

    it('dries only salts that survive it', () => {
      const setup = startOf('weighed residue');
      const other = { ...setup, givens: { ...setup.givens, formula: 'CaCl2·2H2O' } };
      expect(numbersForTeams(other)).toMatchObject({
        ok: false,
        error: { code: 'numbers-solute', argument: 'formula' },
      });
    });

    it.each(['CuSO4', 'KBr', 'Na2CO3'])('asks for water of hydration where the lesson is about it: %s', (formula) => {
      const setup = startOf('solution from a hydrate');
      const ion = formula === 'KBr' ? 'Br-' : formula === 'CuSO4' ? 'Cu^2+' : 'Na+';
      const dry = numbersForTeams({ ...setup, givens: { ...setup.givens, formula, ion } });
      expect(dry).toMatchObject({
        ok: false,
        error: { code: 'numbers-solute', argument: 'formula', received: `“${formula}”` },
      });
      expect(!dry.ok && errorText(dry.error)).toContain('CuSO4·5H2O');
    });

    it.each(['NaCl', 'CuSO4·5H2O', 'H2O2', 'C2H5OH'])('takes no %s for a concentrated acid', (formula) => {
      const setup = startOf('concentrated reagent');
      const refused = numbersForTeams({ ...setup, givens: { ...setup.givens, formula } });
      expect(refused).toMatchObject({ ok: false, error: { code: 'numbers-solute', argument: 'formula' } });
      const words = refused.ok ? '' : errorText(refused.error);
      expect(words).toContain('HCl');
      expect(words).not.toMatch(/\bHF\b|HClO4/);
      expect(words.length).toBeLessThan(260);
    });

    it.each([
      ['HCl', '37.2', '1.18'],
      ['NH3', '28', '0.90'],
      ['CH3CO2H', '99.7', '1.05'],
      ['NaOH', '50', '1.53'],
    ])('takes %s as its bottle says', (formula, massPercent, density) => {
      const setup = startOf('concentrated reagent');
      const givens = { ...setup.givens, formula, 'mass percent': massPercent, density };
      expect(numbersForTeams({ ...setup, givens }).ok).toBe(true);
    });

    it('says why a concentrated acid is better not chosen', () => {
      const setup = startOf('concentrated reagent');
      const sulfuric = {
        ...setup,
        givens: { ...setup.givens, formula: 'H2SO4', 'mass percent': '96', density: '1.84' },
      };
      expect(numbers(sulfuric).remarks.join()).toContain('Concentrated sulfuric acid');
    });

    it('knows its activities by name', () => {
      expect(numbersForTeams(startOf('titration'))).toMatchObject({ ok: false, error: { argument: 'activity' } });
    });
  });

  describe('cost what a school can pay', () => {
    const many: readonly ClassSetup[] = [
      { name: 'Fern class', teams: Array.from({ length: 7 }, (_, team) => `Team ${team + 1}`) },
      { name: 'Moss class', teams: Array.from({ length: 7 }, (_, team) => `Team ${team + 1}`) },
      { name: 'Reed class', teams: Array.from({ length: 8 }, (_, team) => `Team ${team + 1}`) },
    ];
    const readyStocks: Readonly<Record<string, string>> = {
      dilution: 'stock molarity',
      'serial dilution': 'stock molarity',
      'weighed residue': 'molarity',
      'measured density': 'molarity',
    };
    const all = ['stock and dilution', ...otherActivities];
    const planned = (activity: string, seed = '1'): Setup => {
      const start = startOf(activity);
      return { ...start, classes: many, settings: { ...start.settings, seed } };
    };
    const set = ({ givens }: TeamPlan) => JSON.stringify(givens);

    it.each(Object.entries(readyStocks))(
      'shares one bottle or two in “%s”, the typed one first, and says so',
      (activity, name) => {
        for (const seed of ['1', '2', 'rain']) {
          const setup = planned(activity, seed);
          const { teams, remarks } = numbers(setup);
          const stocks = [...new Set(teams.map(({ givens }) => givens[name] ?? ''))];
          expect(stocks.length).toBeLessThanOrEqual(2);
          expect(stocks).toContain(setup.givens[name]);
          expect(remarks.some((remark) => remark.startsWith('The teams share two stocks'))).toBe(stocks.length === 2);
          if (stocks.length === 2) for (const stock of stocks) expect(remarks.join()).toContain(stock);
        }
      },
    );

    it('names the stocks with the decimal mark of the class', () => {
      const { givens, settings } = planned('dilution');
      const setup = {
        ...planned('dilution'),
        givens: { ...givens, 'stock molarity': '0,300', 'target molarity': '0,0450' },
        settings: { ...settings, 'decimal mark': 'comma' },
      };
      expect(numbers(setup).remarks.join()).toMatch(/two stocks, 0,300 and 0,\d{3} mol\/L/);
    });

    it('takes another stock for all where nothing can be made of the one that was typed, and says so', () => {
      // 0.337 × 15, 25, 30, 40 or 50 hundredths has more figures than three.
      const start = planned('dilution');
      const setup = { ...start, givens: { ...start.givens, 'stock molarity': '0.337' }, classes: classes(1, 2) };
      const { teams, remarks } = numbers({ ...setup, shelf: { ...setup.shelf, pipettesMl: [15, 25] } });
      const stocks = [...new Set(teams.map(({ givens }) => givens['stock molarity'] ?? ''))];
      expect(stocks).toHaveLength(1);
      expect(value(stocks[0])).toBeLessThan(0.337);
      expect(remarks.join()).toContain(`All teams share one stock of ${stocks[0]} mol/L, because 0.337 mol/L gives no`);
    });

    it.each(Object.keys(readyStocks))(
      'takes one bottle alone in “%s” where that gives every team its own',
      (activity) => {
        const { teams } = numbers({ ...planned(activity), classes: classes(1, 2) });
        expect(new Set(teams.map(({ givens }) => givens[readyStocks[activity] ?? ''])).size).toBe(1);
        expect(new Set(teams.map(set)).size).toBe(2);
      },
    );

    it.each(all)('gives no team of “%s” a larger flask or a stronger solution than was typed', (activity) => {
      const setup = planned(activity);
      const capped = cappedGivens(activity);
      expect(capped.length).toBeGreaterThan(0);
      for (const { givens, key } of numbers(setup).teams) {
        for (const name of capped)
          expect(value(givens[name]), `${key} ${name}`).toBeLessThanOrEqual(value(setup.givens[name]));
      }
    });

    it('goes beyond what was typed only where nothing up to it can be made, by as little as can be, and says so', () => {
      const said = 'Some teams get a larger flask or a stronger solution than you typed';
      const small = numbers({
        ...withShelf({ flasksMl: [250, 500] }),
        givens: { ...everyday.givens, 'target volume': '250' },
      });
      expect(small.remarks.join()).toContain(said);
      for (const { givens } of small.teams) {
        expect(givens.flask).toBe('250');
        expect(value(givens['stock molarity'])).toBeLessThanOrEqual(0.3);
      }
      expect(numbers(everyday).remarks.join()).not.toContain(said);
    });

    it.each(Object.keys(readyStocks))(
      'spreads what is shared in “%s”: neighbours differ, and each class repeats as little as can be',
      (activity) => {
        const { teams } = numbers(planned(activity));
        const different = new Set(teams.map(set)).size;
        for (const { name, teams: own } of many) {
          const sets = teams.filter(({ className }) => className === name).map(set);
          const counts = sets.map((one) => sets.filter((other) => other === one).length);
          expect(Math.max(...counts)).toBeLessThanOrEqual(Math.ceil(own.length / different));
          for (const [at, one] of sets.entries()) expect(sets[at + 1], `${name} ${at}`).not.toBe(one);
        }
      },
    );

    /*
     * Before all teams shared a stock, the sums were: serial dilution 19 stocks, 1,900 mL and 166 g; dilution 20 stocks,
     * 2,000 mL and 162 g. By hand, for one bottle: 22 teams × (portion + 10 mL to rinse) × 1.1.
     */
    it.each([
      ['serial dilution', 'CuSO4·5H2O', 'Cu^2+'],
      ['dilution', 'CuSO4·5H2O', 'Cu^2+'],
    ])('has staff make what is taken plus the spare in “%s”', (activity, formula, ion) => {
      const start = planned(activity);
      const setup = { ...start, givens: { ...start.givens, formula, ...('ion' in start.givens ? { ion } : {}) } };
      const day = dayOf(setup);
      expect(day.staffMade.length).toBeLessThanOrEqual(2);
      for (const { withSpareMl, flaskMl, fillings } of day.staffMade) {
        expect(flaskMl * fillings - withSpareMl).toBeLessThan(Math.min(...setup.shelf.flasksMl));
      }
      const taken = day.uses.reduce((sum, use) => sum + (use.taken?.volume ?? 0), 0);
      const needed = day.staffMade.reduce((sum, { neededMl }) => sum + neededMl, 0);
      expect(needed).toBeCloseTo(taken + 22 * 10, 6);
    });

    it.each([
      ['AgNO3', 'Ag+', {}, 13],
      ['CuSO4·5H2O', 'Cu^2+', { 'stock molarity': '0.100', flask: '100', 'target molarity': '0.0150' }, 21],
    ])('weighs out no more %s than the same numbers for all would', (formula, ion, more, count) => {
      const setup = { ...withGivens({ formula, ion, ...more }), classes: classes(1, count) };
      const grams = (own: boolean) =>
        dayOf({ ...setup, ownNumbers: own }).solids.reduce((sum, solid) => sum + solid.grams, 0);
      expect(grams(true)).toBeGreaterThan(0);
      expect(grams(true)).toBeLessThanOrEqual(grams(false));
      expect(new Set(numbers(setup).teams.map(set)).size).toBe(count);
    });
  });

  it('says that an activity without a recipe gives all teams the same', () => {
    const remove = addActivity('talk', () => ({
      id: 'talk',
      title: 'Talk',
      aim: 'Talk.',
      extension: '?',
      givens: [{ name: 'formula', unit: '', about: 'a salt', start: 'KBr' }],
      numbers: { formula: 'formula' },
      steps: [],
    }));
    try {
      const { teams, remarks } = numbers(startOf('talk'));
      expect(new Set(teams.map(({ givens }) => JSON.stringify(givens))).size).toBe(1);
      expect(remarks).toEqual([
        'All teams have the same numbers, because this activity has no recipe to make others from.',
      ]);
      expect(numbers({ ...startOf('talk'), ownNumbers: false }).remarks).toEqual([]);
    } finally {
      remove();
    }
  });

  it('says that a solubility is not known', () => {
    const { remarks } = numbers(withGivens({ formula: 'RbBr', ion: 'Br-' }));
    expect(remarks.join()).toContain('We have no solubility for RbBr');
  });
});
