import { describe, expect, it } from 'vitest';
import { hintForStep } from '../../src/lab/hints/hintForStep.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { readingNotes } from '../../src/lab/judging/readingNotes.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';
import { startOf } from './otherActivities.ts';

const found = activityById('measured density');
if (found === undefined) throw new Error('no measured density');
const activity = found;
const ids = activity.steps.map(({ id }) => id);
/** Sucrose, 0.500 mol/L, 25 mL, with the lines 14 % (1.0549 g/mL) and 18 % (1.0721 g/mL): 26.598 g by hand. */
const sugar = firstTeamGivens(activity);

function rows(entries: Readonly<Record<string, string>>, givens: Readonly<Record<string, string>> = sugar) {
  const judged = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: Object.entries({ ...defaultSettings, activity: activity.id, layout: String(layoutVersion) }),
    steps: ids,
    entries: ids.map((id) => ({ 'cautions read': `yes, ${givens.formula}`, ...entries })[id] ?? ''),
  });
  return Object.fromEntries(ids.map((id, at) => [id, judged[at]]));
}

describe('the lines of the table that a team is given', () => {
  const given = (givens: Record<string, string>, ownNumbers = true) => {
    const setup = startOf('measured density');
    return numbersForTeams({ ...setup, ownNumbers, givens: { ...setup.givens, ...givens } });
  };
  it('enclose the label with room on both sides, where the table is dense', () => {
    expect(sugar).toMatchObject({
      'lighter percent': '14',
      'lighter density': '1.0549',
      'heavier percent': '18',
      'heavier density': '1.0721',
    });
    const numbers = given({});
    if (!numbers.ok) throw new Error(numbers.error.advice);
    expect(numbers.value.teams).toHaveLength(12);
    for (const { givens } of numbers.value.teams) {
      const [low, high, molarity] = ['lighter percent', 'heavier percent', 'molarity'].map((name) =>
        Number(givens[name]),
      );
      // Grams in 100 g, with the density between those of the two lines.
      const strength = (density: number) => ((molarity ?? 0) * 342.297) / (10 * density);
      expect(low).toBeLessThan(0.97 * strength(Number(givens['lighter density'])));
      expect(high).toBeGreaterThan(1.03 * strength(Number(givens['heavier density'])));
    }
  });
  it('are written with the comma of the class', () => {
    const setup = startOf('measured density');
    const settings = { ...setup.settings, 'decimal mark': 'comma' };
    for (const ownNumbers of [true, false]) {
      const numbers = numbersForTeams({
        ...setup,
        settings,
        ownNumbers,
        givens: { ...setup.givens, molarity: '0,500' },
      });
      expect(numbers.ok && numbers.value.teams[0]?.givens['lighter density']).toMatch(/^1,0\d{3}$/);
    }
  });
  it('stay as a teacher typed them, and numbers keep within them', () => {
    const own = {
      formula: 'NaCl',
      molarity: '1.00',
      'lighter percent': '4',
      'lighter density': '1.027',
      'heavier percent': '8',
      'heavier density': '1.056',
    };
    const numbers = given(own);
    if (!numbers.ok) throw new Error(numbers.error.advice);
    for (const { givens } of numbers.value.teams) {
      expect(givens).toMatchObject({ 'lighter density': '1.027', 'heavier percent': '8' });
      expect(Number(givens.molarity)).toBeGreaterThan(0.7);
      expect(Number(givens.molarity)).toBeLessThan(1.45);
    }
  });
  it('may start from water, or be of a solute that makes water lighter', () => {
    const salt = given({ formula: 'NaHCO3', molarity: '0.400' }, false);
    expect(salt.ok && salt.value.teams[0]?.givens).toMatchObject({ 'lighter percent': '0', 'heavier percent': '5' });
    const ammonia = given({ formula: 'NH3', molarity: '2.00' }, false);
    expect(ammonia.ok && ammonia.value.teams[0]?.givens).toMatchObject({
      'lighter percent': '5',
      'heavier percent': '0',
    });
  });
  it.each([
    [{ formula: 'KBr' }, 'numbers-solute', 'formula'],
    [{ formula: 'CuSO4·5H2O' }, 'numbers-solute', 'formula'],
    [{ formula: 'NaHCO3', molarity: '0.900' }, 'numbers-shelf', 'molarity'],
    [{ 'lighter percent': '14' }, 'numbers-start', 'lighter density'],
    [{ formula: 'NaCl', molarity: '0.0500' }, 'numbers-shelf', 'molarity'],
    [{ portion: '2' }, 'numbers-shelf', 'portion'],
    [
      { 'lighter percent': '14', 'lighter density': '1.05', 'heavier percent': '18', 'heavier density': '1.05' },
      'lines-alike',
      'heavier density',
    ],
    [
      { 'lighter percent': '20', 'lighter density': '1.0809', 'heavier percent': '22', 'heavier density': '1.0899' },
      'numbers-shelf',
      'molarity',
    ],
  ])('are refused, or the numbers with them: %o', (givens, code, argument) => {
    expect(given(givens, false)).toMatchObject({ ok: false, error: { code, argument } });
  });
  it('ask for a balance that reads fine enough and carries the vessel too', () => {
    const setup = startOf('measured density');
    for (const shelf of [{ balanceReadabilityG: 0.1 }, { balanceMaxG: 80 }]) {
      const numbers = numbersForTeams({ ...setup, ownNumbers: false, shelf: { ...setup.shelf, ...shelf } });
      expect(numbers).toMatchObject({ ok: false, error: { code: 'numbers-shelf', argument: 'portion' } });
    }
  });
});

describe('a portion that is weighed', () => {
  it('is on target as far as the pipette and a tenth of the allowance go', () => {
    // 2 · 0.06 mL ÷ √3 ÷ 25 mL is 0.277 %, the balance adds 0.001 %; with 0.2 % that is 0.48 % of 26.598 g, or 0.127 g.
    for (const [entry, status] of [
      ['26.60', 'on target'],
      ['26.72 g', 'on target'],
      ['26.48', 'on target'],
      ['26.74', 'not yet'],
      ['26.46', 'not yet'],
      ['26.6', 'close'],
      ['24.96', 'not yet'],
      ['26.60 mL', 'not yet'],
      ['', 'blank'],
      ['heavy', 'unreadable'],
    ] as const) {
      expect([entry, rows({ 'portion weighed': entry })['portion weighed']?.status]).toEqual([entry, status]);
    }
    const notes = readingNotes(activity, { settings: {}, givens: sugar });
    expect(notes.ok && notes.value[0]?.lines.join(' ')).toContain(
      'From the balance (±0.01 g, read empty and loaded) and the 25 mL pipette (±0.06 mL): twice their standard uncertainty (JCGM 100), plus 0.2 % for technique. So 1 g may be off by 0.019 g, and 10 g may be off by 0.052 g.',
    );
  });
  it('says which way it is off and never what was expected', () => {
    for (const entry of ['27.5', '25.1', '2660', '0.0266']) {
      const words = rows({ 'portion weighed': entry })['portion weighed']?.lookAt ?? '';
      expect(words).not.toBe('');
      expect(words).not.toMatch(/\d/);
    }
  });
  it('waits for the cautions and the molar mass', () => {
    expect(rows({ 'cautions read': '' })['portion weighed']?.lookAt).toContain('“Aim and cautions”');
    expect(rows({ 'molar mass': '3.4' })['portion weighed']?.lookAt).toContain('“Molar mass”');
  });
  it('names a given that cannot be read', () => {
    const bad = rows({ 'portion weighed': '26.58', 'mass percent': '15' }, { ...sugar, 'heavier density': 'thick' });
    expect(bad['portion weighed']?.lookAt).toMatch(/^⚠ heavier density/);
    expect(bad['mass percent']?.lookAt).toMatch(/^⚠ heavier density/);
    expect(bad['molar mass']?.status).toBe('blank');
  });
});

describe('a molarity from a density, by hand', () => {
  // 26.58 ÷ 25 = 1.0632; 14 + 0.0083 ÷ 0.0172 · 4 = 15.930; 10 · 15.930 · 1.0632 ÷ 342.297 = 0.49481; 1.04 % below 0.500.
  const right = {
    'portion weighed': '26.58',
    density: '1.0632',
    'mass percent': '15.9',
    'molarity found': '0.494',
    'percent error': '1.2',
  };
  it('is right where each row goes on from what stands in the row before', () => {
    // 10 · 15.9 · 1.0632 ÷ 342.297 = 0.49387, and 0.494 is 1.2 % below the label.
    const judged = rows(right);
    for (const id of Object.keys(right)) expect([id, judged[id]?.status]).toEqual([id, 'on target']);
  });
  it('is right where spare digits were kept all through', () => {
    const judged = rows({ ...right, 'molarity found': '0.495', 'percent error': '1.0' });
    for (const id of Object.keys(right)) expect([id, judged[id]?.status]).toEqual([id, 'on target']);
  });
  it('keeps no spare digits of a row that is wrong itself', () => {
    const judged = rows({ ...right, 'mass percent': '16.6', 'molarity found': '0.495' });
    expect(judged['mass percent']?.status).toBe('not yet');
    expect(judged['molarity found']?.status).not.toBe('on target');
  });
  it('follows from a density that needs another look', () => {
    // 1.0652 in place of 1.0632: 14 + 0.0103 ÷ 0.0172 · 4 = 16.395.
    const judged = rows({ ...right, density: '1.0652', 'mass percent': '16.4' });
    expect(judged.density?.status).toBe('not yet');
    expect(judged['mass percent']).toMatchObject({ status: 'follows', root: 'Density' });
  });
  it('goes on from a portion that is far off, and looks at it where no solution has that density', () => {
    // 27.20 ÷ 25 = 1.0880; 14 + 0.0331 ÷ 0.0172 · 4 = 21.7 %: beyond the heavier line, on the same straight line.
    const heavy = rows({ 'portion weighed': '27.20', density: '1.0880', 'mass percent': '21.7' });
    expect(heavy['mass percent']?.status).toBe('on target');
    const light = rows({ 'portion weighed': '24.00', density: '0.96000', 'mass percent': '2' });
    expect(light['mass percent']?.lookAt).toContain('Check “Density” first. This row uses it.');
  });
  it('asks a density for as many figures as the table has, whatever the lesson asks for', () => {
    expect(rows({ ...right, density: '1.06' }).density).toMatchObject({
      status: 'close',
      lookAt: 'Close. Give the value to five figures.',
    });
  });
  it.each([
    ['density', '0.94056', 'ratio-inverted'],
    ['density', '0.9406', 'ratio-inverted'],
    ['density', '0.941', 'ratio-inverted'],
    ['density', '1063.2', 'volume-in-litres'],
    ['density', '26.58', 'mass-reported'],
    ['density', '26.6', 'mass-reported'],
    ['mass percent', '18.0', 'table-line-taken'],
    ['mass percent', '14.5', 'step-unscaled'],
    ['mass percent', '1.93', 'line-not-added'],
    ['molarity found', '49.4', 'percent-not-divided'],
    ['molarity found', '0.500', 'planned-for-made'],
    ['percent error', '0.012', 'fraction-reported'],
    // From 0.49387 in place of 0.494: 0.00613 ÷ 0.500.
    ['percent error', '0.0123', 'fraction-reported'],
    ['percent error', '98.8', 'ratio-reported'],
  ])('names in %s what %s matches', (id, entry, slip) => {
    expect(rows({ ...right, [id]: entry })[id]).toMatchObject({ status: 'not yet', slips: [slip] });
  });
  it('names what a line of 0 % can be taken for, one way at a time', () => {
    const salt = {
      formula: 'NaCl',
      molarity: '0.3',
      portion: '20',
      'lighter percent': '0',
      'lighter density': '0.9982',
      'heavier percent': '4',
      'heavier density': '1.0268',
    };
    const entries = { 'portion weighed': '20.25', density: '1.0125' };
    for (const [entry, slip] of [
      ['0', 'table-line-taken'],
      ['4', 'table-line-taken'],
      ['0.500', 'share-reported'],
    ] as const) {
      expect(rows({ ...entries, 'mass percent': entry }, salt)['mass percent']).toMatchObject({
        status: 'not yet',
        slips: [slip],
      });
    }
  });
  it('helps with the team’s own numbers and never with the answer', () => {
    const hint = (stepId: string, level: number) =>
      hintForStep({ activity, stepId, level, givens: sugar, entries: right, decimalMark: 'point' });
    expect(hint('density', 3)).toBe('26.58 g ÷ 25 mL = ?');
    expect(hint('mass percent', 3)).toBe('14 + (1.0632 − 1.0549) ÷ (1.0721 − 1.0549) × (18 − 14) = ?');
    expect(hint('portion weighed', 2)).toContain('lid');
    expect(hint('portion weighed', 3)).not.toMatch(/\d/);
  });
});
