import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { cautionsRead } from '../../src/lab/lesson/activities/sharedSteps.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity, Substance } from '../../src/lab/lesson/activity.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { TeamPlan } from '../../src/lab/lesson/setup.ts';
import { type DayPreparation, dayPreparation } from '../../src/lab/preparation/dayPreparation.ts';
import { hazardSourceRows } from '../../src/lab/preparation/hazardSourceRows.ts';
import { labels } from '../../src/lab/preparation/labels.ts';
import { preparationRows } from '../../src/lab/preparation/preparationRows.ts';
import { roundedUp, spareShare, withSparePieces } from '../../src/lab/preparation/spare.ts';
import { firstTeamGivens } from './firstTeam.ts';

const activity = (id: string) => {
  const found = activityById(id);
  if (!found) throw new Error(`Expected the activity ${id}.`);
  return found;
};
const team = (className: string, name: string, givens: Record<string, string>): TeamPlan => ({
  key: `${className}-${name}`,
  className,
  team: name,
  givens,
});
const day = (id: string, teams: readonly TeamPlan[], settings: Partial<typeof defaultSettings> = {}): DayPreparation =>
  dayPreparation({
    activity: activity(id),
    teams,
    shelf: defaultShelf,
    settings: { ...defaultSettings, activity: id, ...settings },
  });
const lay = ({ glassware }: DayPreparation, kind: string) =>
  glassware
    .filter((line) => line.kind === kind)
    .map(({ sizeMl, atOnce, withSpare, allDay }) => ({ sizeMl, atOnce, withSpare, allDay }));

/** An invented day: two classes, three teams, potassium bromide. */
const kbr = (molarity: string, flask: string, target: string, volume: string) => ({
  formula: 'KBr',
  'stock molarity': molarity,
  flask,
  'target molarity': target,
  'target volume': volume,
  ion: 'Br-',
  purity: '',
});
const threeTeams = [
  team('Fern class', 'Otter', kbr('0.300', '200', '0.120', '50')),
  team('Fern class', 'Heron', kbr('0.400', '250', '0.100', '100')),
  team('Moss class', 'Newt', kbr('0.250', '200', '0.0500', '100')),
];

/*
 * Worked by hand, with K 39.098 and Br 79.904, so KBr 119.002 g/mol:
 *
 *   Otter   0.300 mol/L × 0.200 L = 0.0600 mol → 7.1401 g    takes 0.120 × 50 / 0.300  = 20 mL of its stock
 *   Heron   0.400 mol/L × 0.250 L = 0.1000 mol → 11.9002 g   takes 0.100 × 100 / 0.400 = 25 mL
 *   Newt    0.250 mol/L × 0.200 L = 0.0500 mol → 5.9501 g    takes 0.0500 × 100 / 0.250 = 20 mL
 *
 *   solid      0.2100 mol × 119.002 g/mol = 24.9904 g → up to 0.01 g: 25.00 g; × 1.10 = 27.4895 → 27.49 g
 *   stock      200 + 250 + 200 = 650 mL made, 20 + 25 + 20 = 65 mL taken for the dilutions
 *   flasks     Fern: 50, 100, 200, 250, one each; Moss: 100, 200. At once one of each size, spare ⌈0.1⌉ = 1 → 2 each;
 *              for the day 50: 1, 100: 2, 200: 2, 250: 1
 *   pipettes   20 mL: Fern 1, Moss 1; 25 mL: Fern 1
 *   water      (200 + 50 + 250 + 100 + 200 + 100) = 900 mL × 1.10 = 990 mL
 *   balance    3 weighings, 5.95 to 11.90 g; at most two teams at once, so one balance
 */
describe('preparation for an everyday lesson', () => {
  const prepared = day('stock and dilution', threeTeams);

  it('totals the solid of all classes, with spare, rounded up to the balance', () => {
    expect(prepared.solids).toEqual([
      {
        formula: 'KBr',
        purityPercent: undefined,
        teams: 3,
        grams: 25,
        gramsWithSpare: 27.49,
        perClass: [19.05, 5.96],
      },
    ]);
  });

  it('totals the stock that teams make and take', () => {
    expect(prepared.ownStocks).toEqual([
      { formula: 'KBr', teams: 3, from: 0.25, to: 0.4, madeMl: 650, takenMl: 65, perClass: [450, 200] },
    ]);
    expect(prepared.staffMade).toEqual([]);
  });

  it('counts glassware by size: at once, with spare, and for the day', () => {
    expect(lay(prepared, 'volumetric flask')).toEqual([
      { sizeMl: 50, atOnce: 1, withSpare: 2, allDay: 1 },
      { sizeMl: 100, atOnce: 1, withSpare: 2, allDay: 2 },
      { sizeMl: 200, atOnce: 1, withSpare: 2, allDay: 2 },
      { sizeMl: 250, atOnce: 1, withSpare: 2, allDay: 1 },
    ]);
    expect(lay(prepared, 'pipette')).toEqual([
      { sizeMl: 20, atOnce: 1, withSpare: 2, allDay: 2 },
      { sizeMl: 25, atOnce: 1, withSpare: 2, allDay: 1 },
    ]);
  });

  /*
   * By hand: Otter 200 − 20 + 50 = 230 mL left, Heron 250 − 25 + 100 = 325 mL, Newt 200 − 20 + 100 = 280 mL; Fern class
   * 555 mL, Moss class 280 mL, 835 mL in all. Filled to four fifths, a beaker of 400 mL takes 320 mL and one of 600 mL
   * takes 480 mL; a vessel of 1000 mL takes 800 mL. Fern class weighs 7.1401 + 11.9002 = 19.0403 g, Moss class 5.9501 g.
   */
  it('tells everything class by class, and says the most to the teacher in numbers alone', () => {
    const rows = preparationRows(prepared, 'point');
    const counted = (what: string) => rows.find((row) => row.what === what)?.byClass?.map(({ amount }) => amount);
    expect(rows.find(({ byClass }) => byClass)?.byClass?.map(({ className }) => className)).toEqual([
      'Fern class',
      'Moss class',
    ]);
    expect(counted('KBr, solid')).toEqual([19.05, 5.96]);
    expect(counted('KBr, 0.25 to 0.4 mol/L')).toEqual([450, 200]);
    expect(counted('volumetric flask 100 mL')).toEqual([1, 1]);
    expect(counted('volumetric flask 250 mL')).toEqual([1, 0]);
    const noteOf = (what: string) => rows.find((row) => row.what === what)?.note;
    // The teacher has a column for each class; a sheet that everybody reads has one number and says what it is for.
    expect(noteOf('volumetric flask 250 mL')).toBe('');
    expect(noteOf('volumetric flask 100 mL')).toBe('');
    for (const { glassware } of [prepared]) {
      for (const { perClass, atOnce, allDay } of glassware) {
        expect(Math.max(...perClass)).toBe(atOnce);
        expect(perClass.reduce((sum, count) => sum + count, 0)).toBe(allDay);
      }
    }
  });

  it('sets out a waste beaker for each team and a vessel for each class, as large as what is left', () => {
    expect(lay(prepared, 'waste beaker').map(({ sizeMl, allDay }) => ({ sizeMl, allDay }))).toEqual([
      { sizeMl: 400, allDay: 2 },
      { sizeMl: 600, allDay: 1 },
    ]);
    expect(prepared.waste).toEqual([{ formula: 'KBr', millilitres: 835, perClass: [555, 280], vesselMl: 1000 }]);
    const row = preparationRows(prepared, 'point').find(({ what }) => what === 'waste vessel, KBr');
    expect(row).toMatchObject({ amount: 0.83, unit: 'L' });
    expect(row?.note).toContain('A labelled 1 L vessel for each class');
    expect(row?.byClass?.map(({ amount }) => amount)).toEqual([0.56, 0.28]);
    const shown = preparationRows(prepared, 'point', { forEveryone: true });
    expect(shown.find(({ what }) => what === 'waste vessel, KBr')).toMatchObject({ withSpare: 0.9 });
    expect(shown.filter(({ section, byClass }) => section !== 'lay' && byClass)).toEqual([]);
  });

  it('counts what a row of flasks leaves once', () => {
    const givens = { formula: 'KBr', 'stock molarity': '0.300', portion: '10', flask: '100' };
    // Three flasks of 100 mL, less 10 mL passed on twice, and 10 mL to rinse the pipette with.
    expect(day('serial dilution', [team('Fern class', 'Otter', givens)]).waste).toMatchObject([{ millilitres: 290 }]);
  });

  it('says which size the shelf does not have', () => {
    expect(prepared.glassware.filter(({ isOnShelf }) => !isOnShelf).map(({ sizeMl }) => sizeMl)).toEqual([50]);
  });

  it('knows what the balance has to do, and how much water is needed', () => {
    expect(prepared.balance).toEqual({
      weighings: 3,
      smallestG: 5.95,
      largestG: 11.9,
      readabilityG: 0.01,
      maxG: 200,
      balances: 1,
    });
    expect(prepared.waterMl).toBe(990);
  });

  it('takes the spare from the Plan, nothing included', () => {
    const bare = day('stock and dilution', threeTeams, { spare: '0 %', 'spare glassware': '0' });
    expect(bare.solids[0]).toMatchObject({ grams: 25, gramsWithSpare: 25 });
    expect(bare.glassware.every(({ atOnce, withSpare }) => atOnce === withSpare)).toBe(true);
    const wide = day('stock and dilution', threeTeams, { spare: '20 %' });
    // 24.9904 g × 1.20 = 29.9885 g
    expect(wide.solids[0]?.gramsWithSpare).toBe(29.99);
  });

  it('weighs out more of a solid that is not pure', () => {
    const [first] = threeTeams;
    const impure = day('stock and dilution', [{ ...first, givens: { ...first?.givens, purity: '80.0' } } as TeamPlan]);
    // 7.1401 g / 0.800 = 8.9251 g
    expect(impure.solids).toEqual([
      { formula: 'KBr', purityPercent: 80, teams: 1, grams: 8.93, gramsWithSpare: 9.82, perClass: [8.93] },
    ]);
  });

  it('names a line that cannot be read and leaves it out of the totals', () => {
    const odd = day('stock and dilution', [
      ...threeTeams,
      team('Moss class', 'Vole', { ...kbr('0.300', '200', '0.120', '50'), flask: 'two hundred' }),
    ]);
    expect(odd.solids).toEqual(prepared.solids);
    expect(odd.problems).toHaveLength(1);
    expect(odd.problems[0]?.message).toMatch(/^“two hundred” can’t be used for the flask\. /);
    expect(preparationRows(odd, 'point').some(({ what }) => what === 'not counted: Moss class, Vole')).toBe(true);
  });

  it('reads and writes a decimal comma', () => {
    const comma = day(
      'stock and dilution',
      threeTeams.map((line) => ({
        ...line,
        givens: Object.fromEntries(Object.entries(line.givens).map(([name, value]) => [name, value.replace('.', ',')])),
      })),
      { 'decimal mark': 'comma' },
    );
    expect(comma.solids).toEqual(prepared.solids);
    expect(preparationRows(comma, 'comma').find(({ section }) => section === 'stocks')?.what).toBe(
      'KBr, 0,25 to 0,4 mol/L',
    );
  });
});

describe('stocks that staff make', () => {
  /*
   * By hand, CuSO4·5H2O 249.68 g/mol, stock 0.500 mol/L for two teams:
   *   taken 0.100 × 100 / 0.500 = 20 mL and 0.150 × 50 / 0.500 = 15 mL, each with 10 mL to rinse: 55 mL; × 1.10 = 60.5 → 61 mL
   *   in the 100 mL flask once: 0.0500 mol × 249.68 g/mol = 12.484 g → 12.48 g on a balance that reads to 0.01 g
   */
  it('weighs a stock from its solid', () => {
    const givens = { formula: 'CuSO4·5H2O', 'stock molarity': '0.500', ion: 'Cu^2+' };
    const prepared = day('dilution', [
      team('Fern class', 'Otter', { ...givens, 'target molarity': '0.100', 'target volume': '100' }),
      team('Fern class', 'Heron', { ...givens, 'target molarity': '0.150', 'target volume': '50' }),
    ]);
    expect(prepared.staffMade).toHaveLength(1);
    expect(prepared.staffMade[0]).toMatchObject({
      teams: 2,
      neededMl: 55,
      withSpareMl: 61,
      flaskMl: 100,
      fillings: 1,
      from: { kind: 'solid', gramsEach: 12.48, gramsInAll: 12.48 },
    });
    expect(prepared.solids).toEqual([]);
  });

  /*
   * By hand, HCl 36.458 g/mol, 37.2 % and 1.18 g/mL: 10 × 37.2 × 1.18 / 36.458 = 12.040 mol/L in the bottle.
   *   two classes watch 250 mL of 0.500 mol/L each, whatever the number of teams: 500 mL; × 1.10 = 550 mL; three fillings of 200 mL waste least
   *   (600 mL; 250 mL would take three, 750 mL; 500 mL two, 1000 mL)
   *   each: 0.500 × 200 / 12.040 = 8.306 mL → 8.3 mL; in all 24.917 → 24.9 mL
   */
  it('makes a solution of a concentrated acid with the water in the beaker first, by staff', () => {
    const givens = {
      formula: 'HCl',
      'mass percent': '37.2',
      density: '1.18',
      'target molarity': '0.500',
      'target volume': '250',
    };
    const prepared = day('concentrated reagent', [
      team('Fern class', 'Otter', givens),
      team('Fern class', 'Heron', givens),
      team('Moss class', 'Newt', givens),
    ]);
    expect(prepared.staffMade[0]).toMatchObject({
      neededMl: 500,
      withSpareMl: 550,
      flaskMl: 200,
      fillings: 3,
      from: { kind: 'bottle', millilitresEach: 8.3, millilitresInAll: 24.9, isFromTable: false },
    });
    const row = preparationRows(prepared, 'point').find(({ section }) => section === 'make');
    expect(row?.note).toContain('staff make it');
    expect(row?.note).toContain('Staff only, in the fume hood. Water in the beaker first');
    expect(row?.note.indexOf('Water in the beaker')).toBeLessThan(row?.note.indexOf('bottle run in') ?? 0);
    // Students do not pour: nothing is laid out for them.
    expect(prepared.glassware).toEqual([]);
  });

  // Where the Plan leaves it to students: 0.500 × 250 / 12.040 = 10.38 mL each, 20.77 → 20.8 mL; × 1.10 = 22.84 → 23 mL.
  it('sets out the bottle and warns where the Plan lets students dilute', () => {
    const givens = {
      formula: 'HCl',
      'mass percent': '37.2',
      density: '1.18',
      'target molarity': '0.500',
      'target volume': '250',
    };
    const prepared = day(
      'concentrated reagent',
      [team('Fern class', 'Otter', givens), team('Fern class', 'Heron', givens)],
      { 'concentrated reagents': 'students' },
    );
    expect(prepared.staffMade).toEqual([]);
    expect(prepared.poured).toEqual([
      { formula: 'HCl', massPercent: 37.2, teams: 2, millilitres: 20.8, withSpare: 23 },
    ]);
    expect(lay(prepared, 'volumetric flask')).toEqual([{ sizeMl: 250, atOnce: 2, withSpare: 3, allDay: 2 }]);
    expect(preparationRows(prepared, 'point').find(({ section }) => section === 'make')?.note).toContain(
      'water in the beaker first',
    );
    expect(prepared.cautions[0]).toMatchObject({ form: { kind: 'bottle', massPercent: 37.2 } });
    expect(prepared.cautions[0]?.cautions.signalWord).toBe('Danger');
    expect(labels(prepared, 'point').map(({ whose }) => whose)).toEqual([
      'Fern class · Otter',
      'Fern class · Otter',
      'Fern class · Heron',
      'Fern class · Heron',
    ]);
    // What is set out for a team is as strong as in the bottle, and its label says so.
    expect(labels(prepared, 'point')[0]).toMatchObject({ strength: '37.2 % by mass', signalWord: 'Danger' });
  });

  it('says that a bottle’s strength is from a table where the Plan does not say it', () => {
    const prepared = day('dilution', [
      team('Fern class', 'Otter', {
        formula: 'HCl',
        'stock molarity': '1.00',
        'target molarity': '0.100',
        'target volume': '100',
        ion: 'Cl-',
      }),
    ]);
    expect(prepared.staffMade[0]?.from).toMatchObject({ kind: 'bottle', massPercent: 37.2, isFromTable: true });
    expect(preparationRows(prepared, 'point').find(({ section }) => section === 'make')?.note).toContain(
      'If your bottle’s label says something else',
    );
    expect(prepared.cautions[0]).toMatchObject({ form: { kind: 'bottle', massPercent: 37.2 } });
  });

  it('prepares every activity from its own starting numbers', () => {
    const ids = [
      'solution from a solid',
      'solution from a hydrate',
      'solution from an impure solid',
      'serial dilution',
    ];
    for (const id of [...ids, 'weighed residue', 'measured density']) {
      const prepared = day(id, [team('Fern class', 'Otter', firstTeamGivens(activity(id)))]);
      expect(prepared.problems).toEqual([]);
      expect(prepared.solids.length + prepared.staffMade.length, id).toBe(1);
    }
  });

  // By hand: sucrose of 0.500 mol/L is 171.15 g/L. On the line from 14 % (1.0549) to 18 % (1.0721) g/mL, 16.10 % has
  // 1.06393 g/mL, and 10 · 16.09 · 1.0639 is 171.2. So 25 mL weigh 26.60 g. Each team takes 25 mL and rinses with 10 mL.
  it('makes stock and lays out closed vessels for a weighed portion', () => {
    const givens = firstTeamGivens(activity('measured density'));
    const prepared = day('measured density', [
      team('Fern class', 'Otter', givens),
      team('Fern class', 'Heron', givens),
    ]);
    expect(prepared.staffMade).toMatchObject([{ teams: 2, neededMl: 70, withSpareMl: 77, flaskMl: 100, fillings: 1 }]);
    expect(prepared.staffMade[0]?.from).toMatchObject({ kind: 'solid', gramsEach: 17.11 });
    expect(prepared.balance).toMatchObject({ weighings: 4, smallestG: 26.6, largestG: 26.6 });
    for (const kind of ['closed vessel', 'thermometer'] as const) {
      expect(lay(prepared, kind)).toEqual([{ sizeMl: undefined, atOnce: 2, withSpare: 3, allDay: 2 }]);
    }
    expect(lay(prepared, 'pipette')).toEqual([{ sizeMl: 25, atOnce: 2, withSpare: 3, allDay: 2 }]);
    expect(labels(prepared, 'point').map(({ strength }) => strength)).toEqual(['0.500 mol/L']);
    const lines = preparationRows(prepared, 'point').map(({ what }) => what);
    expect(lines).toContain('small vessel with a lid, for weighing');
    const unread = day('measured density', [team('Fern class', 'Otter', { ...givens, 'lighter density': 'thin' })]);
    expect(unread.problems[0]?.message).toContain('lighter density');
  });

  it('lays out three flasks and one pipette for a serial dilution', () => {
    const prepared = day('serial dilution', [
      team('Fern class', 'Otter', { formula: 'KBr', 'stock molarity': '0.500', portion: '10', flask: '100' }),
    ]);
    expect(lay(prepared, 'volumetric flask')).toEqual([{ sizeMl: 100, atOnce: 3, withSpare: 4, allDay: 3 }]);
    expect(lay(prepared, 'pipette')).toEqual([{ sizeMl: 10, atOnce: 1, withSpare: 2, allDay: 1 }]);
    expect(labels(prepared, 'point').map(({ strength }) => strength)).toEqual([
      '0.500 mol/L',
      '0.05 mol/L',
      '0.005 mol/L',
      '0.0005 mol/L',
    ]);
  });
});

describe('cautions of the day', () => {
  const cautionRows = (prepared: DayPreparation) =>
    preparationRows(prepared, 'point').filter(({ section }) => section === 'cautions');

  it('has a block for the solid and for each strength that is told otherwise, each with the deferring line', () => {
    const prepared = day('stock and dilution', threeTeams);
    expect(prepared.cautions.map(({ form }) => form.kind)).toContain('solid');
    expect(prepared.cautions.map(({ form }) => form.kind)).toContain('solution');
    for (const { cautions } of prepared.cautions) {
      expect(cautions.statements[cautions.statements.length - 1]?.advice).toContain('This is no safety data sheet.');
    }
    expect(cautionRows(prepared).length).toBeGreaterThan(3);
  });

  // CLP Annex VI Table 3 as copied to hazard-limits.csv: hydrochloric acid is corrosive from 25 %, irritant from 10 %.
  it('follows the concentration limits of the GHS data', () => {
    const acid = (molarity: string) =>
      day('dilution', [
        team('Fern class', 'Otter', {
          formula: 'HCl',
          'stock molarity': molarity,
          'target molarity': '0.100',
          'target volume': '100',
          ion: 'Cl-',
        }),
      ]).cautions.flatMap(({ form, cautions }) =>
        form.kind === 'solution' && form.to === Number(molarity) ? [cautions] : [],
      )[0];
    const limit = (code: string) =>
      readCsv('tests/published/hazard-limits.csv').find(
        (row) => row.formula === 'HCl' && Object.values(row).includes(code),
      );
    expect(limit('H314')).toBeDefined();
    // 25 % is about 7.7 mol/L, 10 % about 2.9 mol/L.
    expect(acid('8.00')?.signalWord).toBe('Danger');
    expect(acid('8.00')?.statements.map(({ code }) => code)).toContain('H314');
    expect(acid('4.00')?.signalWord).toBe('Warning');
    expect(acid('4.00')?.statements.map(({ code }) => code)).toContain('H315');
    expect(acid('1.00')?.statements.map(({ code }) => code)).not.toContain('H315');
  });

  it('says unlisted for what is not listed, and never that it is safe', () => {
    const prepared = day('dilution', [
      team('Fern class', 'Otter', {
        formula: 'RbI',
        'stock molarity': '0.500',
        'target molarity': '0.100',
        'target volume': '100',
        ion: 'I-',
      }),
    ]);
    const words = cautionRows(prepared).map(({ note }) => note);
    expect(words.join(' ')).toContain('Unlisted');
    expect(words.join(' ')).not.toMatch(/\bsafe\b|ordinary care/);
    expect(labels(prepared, 'point').every(({ statements }) => statements.join(' ').includes('Unlisted'))).toBe(true);
  });

  it('gives the teacher codes, sources, doubts and the date, and everyone plain words', () => {
    const prepared = day('stock and dilution', threeTeams);
    const teacher = cautionRows(prepared)
      .map(({ note }) => note)
      .join('\n');
    expect(teacher).toContain('H319: irritates eyes strongly (two sources agree)');
    const everyone = preparationRows(prepared, 'point', { forEveryone: true })
      .filter(({ section }) => section === 'cautions')
      .map(({ note }) => note)
      .join('\n');
    expect(everyone).toContain('Irritates eyes strongly. Wear eye protection.');
    expect(everyone).not.toMatch(/H\d{3}|harmonised|sources? agree|from memory/);
    const behind = hazardSourceRows(prepared, '2026-11-29');
    expect(behind.map(({ what }) => what)).toEqual([
      'potassium bromide, for staff',
      'potassium bromide, for staff',
      'potassium bromide: sources',
      'hazard data',
    ]);
    expect(behind.map(({ section }) => section)).toEqual(['cautions', 'cautions', 'sources', 'sources']);
    expect(behind[2]?.note).toMatch(/^Sources: .*ask for a current sheet/);
    expect(behind[3]?.note).toContain('CLP Annex VI as of 2026-07-01');
    expect(behind[3]?.note).not.toContain('newer copy');
    expect(hazardSourceRows(prepared, '2028-01-02')[3]?.note).toContain('get a newer copy of Labrow');
  });

  it('names the sources of each of several substances with one formula, and none of an unlisted one', () => {
    const of = (formula: string) =>
      hazardSourceRows(
        day('dilution', [
          team('Fern class', 'Otter', {
            formula,
            'stock molarity': '0.500',
            'target molarity': '0.100',
            'target volume': '100',
            ion: '',
          }),
        ]),
        '2026-11-29',
      ).map(({ what }) => what);
    expect(new Set(of('C6H12O6'))).toEqual(
      new Set(['glucose, for staff', 'glucose: sources', 'fructose, for staff', 'fructose: sources', 'hazard data']),
    );
    expect(of('RbI')).toEqual(['hazard data']);
  });

  it('leaves disposal to local rules and names no drain or bin of its own', () => {
    const row = preparationRows(day('stock and dilution', threeTeams), 'point').find(
      ({ section }) => section === 'disposal',
    );
    expect(row?.note).toMatch(/^Local rules decide/);
  });
});

describe('preparation without a recipe', () => {
  const aim = 'Talk about what is on the table.';
  const bare = (substance: Substance): Activity => ({
    id: 'talk',
    title: 'A talk',
    aim,
    extension: '?',
    givens: [],
    numbers: { formula: 'formula' },
    steps: [cautionsRead({ aim, substance })],
  });
  const prepared = (substance: Substance) =>
    dayPreparation({
      activity: bare(substance),
      teams: ['Otter', 'Heron'].map((name) =>
        team('Fern class', name, { formula: 'AgNO3', strength: '0.100', 'mass percent': '37' }),
      ),
      shelf: defaultShelf,
      settings: defaultSettings,
    });

  it('lists what the teams handle, with its cautions, and says that the amount is for the teacher to say', () => {
    const day = prepared({ formula: 'formula', solid: true, molarity: 'strength' });
    const rows = preparationRows(day, 'point');
    expect(rows.filter(({ section }) => section === 'solids' || section === 'make')).toMatchObject([
      { section: 'solids', what: 'AgNO3, solid', amount: undefined },
      { section: 'make', what: 'AgNO3, 0.100 mol/L', amount: undefined },
    ]);
    for (const { note } of rows.filter(({ section }) => section === 'solids')) {
      expect(note).toBe('2 teams. You decide how much: this activity has no recipe.');
    }
    expect(day.cautions.map(({ form }) => form)).toEqual([{ kind: 'solid' }, { kind: 'solution', from: 0.1, to: 0.1 }]);
    expect(day.problems).toEqual([]);
  });

  it('lists a bottle by its label, and the bare substance where nothing more is said', () => {
    const what = (substance: Substance) =>
      preparationRows(prepared(substance), 'point').flatMap((row) =>
        row.section === 'solids' || row.section === 'make' ? [row.what] : [],
      );
    expect(what({ formula: 'formula', massPercent: 'mass percent' })).toEqual(['AgNO3, 37 % by mass']);
    expect(what({ formula: 'formula' })).toEqual(['AgNO3']);
  });

  it('names a strength that cannot be read', () => {
    expect(prepared({ formula: 'formula', molarity: 'lost' }).problems).toHaveLength(2);
  });
});

/*
 * OSHA 29 CFR 1910.1200(f)(6), workplace labels: product identifier, and words, pictures or symbols that tell of the
 * hazards (from memory). GHS label elements: identifier, signal word, hazard statements, precautions, pictograms (from
 * memory). Concentration, date and initials: common practice, no source; the page prints room for the last two.
 */
describe('labels', () => {
  it('carry identifier, formula, concentration, signal word, statements with codes and pictograms', () => {
    const prepared = day('dilution', [
      team('Fern class', 'Otter', {
        formula: 'AgNO3',
        'stock molarity': '0.500',
        'target molarity': '0.100',
        'target volume': '100',
        ion: 'Ag+',
      }),
    ]);
    const [stock, own] = labels(prepared, 'point');
    expect(stock).toMatchObject({
      name: 'silver nitrate',
      formula: 'AgNO3',
      strength: '0.500 mol/L',
      whose: 'for the day',
    });
    expect(own).toMatchObject({ strength: '0.100 mol/L', whose: 'Fern class · Otter', copies: 1 });
    expect(stock?.signalWord).not.toBe('');
    expect(stock?.statements.some((line) => /^(?:H\d{3}|EUH\d{3})/.test(line))).toBe(true);
    expect(stock?.pictograms.map(({ name }) => name)).toEqual(['corrosion']);
    expect(stock?.advice.length).toBeGreaterThan(0);
    expect(new Set(stock?.advice).size).toBe(stock?.advice.length);
    expect(stock?.deferring).toContain('safety data sheet');
  });

  it('quote the prescribed statements, and keep sources and doubts off', () => {
    const of = (formula: string, stock: string) =>
      labels(
        day('dilution', [
          team('Fern class', 'Otter', {
            formula,
            'stock molarity': stock,
            'target molarity': '0.0100',
            'target volume': '100',
            ion: '',
          }),
        ]),
        'point',
      )[0];
    // CLP Annex III.
    expect(of('AgNO3', '0.100')?.statements).toEqual(
      expect.arrayContaining(['H315: Causes skin irritation.', 'H319: Causes serious eye irritation.']),
    );
    expect(of('CuSO4·5H2O', '0.500')?.statements).toContain('H318: Causes serious eye damage.');
    for (const formula of ['AgNO3', 'KMnO4', 'C6H12O6', 'NaH2PO4', 'CuSO4', 'RbI']) {
      const { statements = [], advice = [] } = of(formula, '0.100') ?? {};
      expect([...statements, ...advice].join(' ')).not.toMatch(/harmonised|from memory|one source|sources agree/);
      expect(advice.join(' ')).toMatch(/drain/);
    }
  });

  it('leave the line of the signal word out but for a substance that nobody here knows', () => {
    const of = (formula: string) =>
      labels(
        day('dilution', [
          team('Fern class', 'Otter', {
            formula,
            'stock molarity': '0.100',
            'target molarity': '0.0100',
            'target volume': '100',
            ion: '',
          }),
        ]),
        'point',
      )[0];
    for (const formula of ['KBr', 'NaCl', 'C12H22O11', 'Na2SO4']) {
      expect([formula, of(formula)]).toMatchObject([formula, { signalWord: '', isSignalUnknown: false }]);
      expect(of(formula)?.statements.join(' ')).toContain('Not classified');
    }
    // Listed, and nobody is sure what holds at this strength: the statements say so.
    for (const formula of ['NaH2PO4', 'KMnO4']) {
      expect([formula, of(formula)]).toMatchObject([formula, { signalWord: '', isSignalUnknown: false }]);
      expect(of(formula)?.statements.join(' ')).not.toBe('');
    }
    for (const formula of ['RbI', 'AgF']) {
      expect([formula, of(formula)]).toMatchObject([formula, { signalWord: '', isSignalUnknown: true }]);
    }
    expect(of('RbI')?.statements.join(' ')).toContain('does not mean that it is harmless');
  });

  it('are as many as the vessels: a jar of solid, and two flasks for each team', () => {
    const list = labels(day('stock and dilution', threeTeams), 'point');
    expect(list.map(({ whose }) => whose)).toEqual([
      'for the day',
      'Fern class · Otter',
      'Fern class · Otter',
      'Fern class · Heron',
      'Fern class · Heron',
      'Moss class · Newt',
      'Moss class · Newt',
    ]);
    expect(list[0]).toMatchObject({ strength: 'solid', formula: 'KBr' });
  });
});

describe('spare', () => {
  it.each([
    ['10 %', 0.1],
    ['10', 0.1],
    ['7,5 %', 0.075],
    ['0', 0],
    ['100%', 1],
  ])('reads %s', (typed, share) => {
    expect(spareShare(typed)).toBeCloseTo(share, 12);
  });
  it.each(['', 'some', '-5 %', '101 %', '1e3'])('reads nothing in “%s”', (typed) => {
    expect(spareShare(typed)).toBeUndefined();
  });
  it('rounds up and never down', () => {
    expect(roundedUp(24.9904, 0.01)).toBe(25);
    expect(roundedUp(25, 0.01)).toBe(25);
    expect(roundedUp(60.5, 1)).toBe(61);
    expect(withSparePieces(12, 0.1)).toBe(14);
    expect(withSparePieces(10, 0.1)).toBe(11);
    expect(withSparePieces(1, 0)).toBe(1);
  });
});
