import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Substance } from '../../src/lab/lesson/activity.ts';
import { cautionWords } from '../../src/lab/lesson/cautionWords.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';
import { startOf } from './otherActivities.ts';
import { rightEntries } from './rightEntries.ts';

const deferring = /Ask your teacher; the safety data sheet decides\.$/;

/** Rows of a team by step id, with the start's numbers and these entries. */
function rowsOf(
  id: string,
  entries: Readonly<Record<string, string>>,
  settings: readonly (readonly [string, string])[] = [],
) {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(`no activity ${id}`);
  const givens = firstTeamGivens(activity);
  const rows = teamChecks({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', id], ['layout', String(layoutVersion)], ...settings],
    steps: activity.steps.map((step) => step.id),
    entries: activity.steps.map((step) => entries[step.id] ?? ''),
  });
  return Object.fromEntries(activity.steps.map((step, at) => [step.id, rows[at]]));
}

describe('the row of cautions', () => {
  it('comes first in every activity', () => {
    for (const { steps } of allActivities()) expect(steps[0]?.kind).toBe('ticked');
  });

  it('shows the cautions before and after it is ticked, with the line that defers last', () => {
    const untouched = rowsOf('stock and dilution', {})['cautions read'];
    expect(untouched?.check).toBe('blank');
    expect(untouched?.lookAt).toMatch(/^Read this, choose “yes, KBr”:/);
    expect(untouched?.lookAt).toContain('Warning');
    expect(untouched?.lookAt).toMatch(deferring);
    for (const entry of ['yes, KBr', ' Yes KBr', 'x: KBr', '✓ KBr', 'OK - KBr', 'read KBr', 'BrK', 'KBr']) {
      const ticked = rowsOf('stock and dilution', { 'cautions read': entry })['cautions read'];
      expect([entry, ticked?.check]).toEqual([entry, 'on target']);
      expect(ticked?.lookAt).toMatch(deferring);
    }
  });

  it('takes nothing else for a tick, and is never called wrong', () => {
    for (const entry of ['no', 'later', '119', '0']) {
      const row = rowsOf('stock and dilution', { 'cautions read': entry })['cautions read'];
      expect([entry, row?.check]).toEqual([entry, 'unreadable']);
    }
  });

  it.each([
    ['yes', 'Which one? Choose “yes, KBr”:'],
    [' ✓ ', 'Which one? Choose “yes, KBr”:'],
    ['yes, NaCl', 'A new one. Choose “yes, KBr”:'],
    ['AgNO3', 'A new one. Choose “yes, KBr”:'],
  ])('takes no tick that is for another substance, or for none: %s', (entry, said) => {
    const { check, lookAt } = rowsOf('stock and dilution', { 'cautions read': entry })['cautions read'] ?? {};
    expect(check).toBe('not yet');
    expect(lookAt?.split('\n')[0]).toBe(said);
    expect(lookAt).toMatch(deferring);
  });

  it('lets no bench row open before it is ticked', () => {
    const activity = activityById('stock and dilution');
    if (activity === undefined) throw new Error('no everyday activity');
    const right = rightEntries(activity, startingGivens(activity));
    const benchBefore = { ...right, 'cautions read': '', 'mass weighed': '' };
    expect(rowsOf('stock and dilution', benchBefore)['mass weighed']?.lookAt).toBe(
      'Wait before you do this. Check “Aim and cautions” first: read the cautions, then answer there.',
    );
    expect(rowsOf('stock and dilution', { ...benchBefore, 'cautions read': 'yes, KBr' })['mass weighed']).toMatchObject(
      {
        check: 'blank',
        lookAt: '',
      },
    );
    // Rows at the desk are judged as ever.
    expect(rowsOf('stock and dilution', benchBefore)['mass of solute']?.check).toBe('on target');
  });

  it('says for a concentrated reagent that staff make it, until the setting says otherwise', () => {
    const said = (...settings: readonly (readonly [string, string])[]) =>
      rowsOf('concentrated reagent', {}, settings)['cautions read']?.lookAt ?? '';
    expect(said()).toContain('Your teacher makes this; you watch.');
    expect(said()).toContain('Acid into water, never the reverse.');
    expect(said(['concentrated reagents', 'students'])).toContain('Only beside your teacher');
  });

  it('never makes an unknown substance look harmless', () => {
    for (const formula of ['XeF4', 'no formula', '']) {
      for (const molarity of ['0.001', '1', '']) {
        const words = wordsOf({ formula: 'formula', solid: true, molarity: 'molarity' }, { formula, molarity });
        expect(words).toMatch(/safety data sheet/);
        expect(words).not.toMatch(/not classified|handle with care/i);
      }
    }
  });
});

const wordsOf = (substance: Substance, givens: Readonly<Record<string, string>>) =>
  cautionWords({ substance, givens, decimalMark: 'point', studentsDilute: false });
/** What a team reads beside the first row of an activity, with its starting numbers changed. */
function readIn(id: string, changed: Readonly<Record<string, string>>): string {
  const activity = activityById(id);
  const first = activity?.steps[0];
  if (activity === undefined || first?.kind !== 'ticked') throw new Error(`no activity ${id}`);
  return wordsOf(first.substance, { ...startingGivens(activity), ...changed });
}

/*
 * CLP Annex VI Table 3 and Annex I as copied to hazard-limits.csv. g/mL at 20 °C: density.csv, between two of its lines;
 * molarity = 10 × percent × density / molar mass, so that 25 % HCl is 7.70 mol/L and 5 % NaOH 1.32 mol/L.
 */
describe('cautions of what is handled', () => {
  it.each([
    { formula: 'HCl', stock: '8.00', told: 'Danger. Burns skin and eyes' },
    { formula: 'HCl', stock: '4.00', told: 'Warning. Irritates skin, eyes and airways' },
    { formula: 'HCl', stock: '2.00', told: 'treat as harmful' },
    { formula: 'NaOH', stock: '2.00', told: 'Danger. Burns skin and eyes' },
    { formula: 'NaOH', stock: '0.300', told: 'Warning. Irritates skin and eyes' },
    { formula: 'NaOH', stock: '0.100', told: 'treat as harmful' },
    { formula: 'H2SO4', stock: '2.00', told: 'Danger. Burns skin and eyes' },
    { formula: 'H2SO4', stock: '1.00', told: 'Warning. Irritates skin and eyes' },
    { formula: 'NH3', stock: '2.00', told: 'Danger. Can blind you, irritates skin' },
    { formula: 'AgNO3', stock: '0.100', told: 'Warning. Irritates skin and eyes' },
    { formula: 'KBr', stock: '0.300', told: 'handle with care' },
    {
      formula: 'CoCl2·6H2O',
      stock: '0.100',
      told: 'Danger, staff only. Damages fertility',
    },
  ])(
    'are those of $stock mol/L $formula where a stock is diluted, or a portion of it weighed',
    ({ formula, stock, told }) => {
      for (const id of ['dilution', 'serial dilution', 'measured density']) {
        const words = readIn(id, { formula, [id === 'measured density' ? 'molarity' : 'stock molarity']: stock });
        const [first = ''] = words.split('\n');
        expect(first.slice(first.indexOf(',') + 2)).toContain(`${stock} mol/L: ${told}`);
        expect(words).not.toContain(', solid');
        expect(words).toMatch(deferring);
      }
    },
  );

  it('has a published limit beside each strength of that table', () => {
    const limits = readCsv('tests/published/hazard-limits.csv');
    const from = (formula: string, code: string) =>
      limits.filter((row) => row.formula === formula && row.h_code === code).map((row) => Number(row.from_percent));
    expect(Math.min(...from('HCl', 'H314'))).toBe(25);
    expect(Math.min(...from('HCl', 'H315'))).toBe(10);
    expect(Math.min(...from('NaOH', 'H314'))).toBe(2);
    expect(Math.min(...from('NaOH', 'H315'))).toBe(0.5);
    expect(Math.min(...from('H2SO4', 'H314'))).toBe(15);
    expect(Math.min(...from('H2SO4', 'H315'))).toBe(5);
  });

  it('are those of the solid first, and of the solution where it is told otherwise, wherever a solid is weighed', () => {
    const cases = [
      ['stock and dilution', 'stock molarity'],
      ['solution from a solid', 'molarity'],
      ['bench reading', 'molarity'],
      ['weighed residue', 'molarity'],
    ] as const;
    for (const [id, given] of cases) {
      const words = readIn(id, { formula: 'NaOH', [given]: '0.300' }).split(/\n|(?<=\.) (?=0\.300 mol)/);
      expect([id, words[0]]).toEqual([
        id,
        expect.stringMatching(/^(Sodium hydroxide|NaOH), solid: Danger\. Burns skin and eyes/),
      ]);
      expect([id, words[1]]).toMatchObject([id, expect.stringMatching(/^0\.300 mol\/L: Warning\./)]);
    }
  });

  it('are those of the bottle first where the reagent is concentrated, then of what is made', () => {
    const words = readIn('concentrated reagent', { 'target molarity': '4.00' });
    expect(words).toMatch(
      /(HCl|Hydrochloric acid), 37\.2 %: Danger\. Burns skin and eyes, irritates airways\.\s4\.00 mol\/L: Warning\./,
    );
  });

  it('are those of the substance itself where the strength cannot be read or is missing', () => {
    for (const stock of ['', 'strong', '4 g', '-1']) {
      expect(readIn('dilution', { formula: 'NaOH', 'stock molarity': stock })).toMatch(
        /^(Sodium hydroxide|NaOH)(, -1 mol\/L)?: Danger\. Burns skin and eyes/m,
      );
    }
    const bottle = { formula: 'formula', massPercent: 'share' };
    expect(wordsOf(bottle, { formula: 'HCl', share: '372' })).toContain('Burns skin and eyes');
  });

  it('keep what was typed, with its unit and its decimal mark', () => {
    expect(readIn('dilution', { formula: 'HCl', 'stock molarity': '4000 mmol/L' })).toContain(
      'Hydrochloric acid, 4000 mmol/L: Warning.',
    );
    const comma = cautionWords({
      substance: { formula: 'formula', molarity: 'molarity' },
      givens: { formula: 'HCl', molarity: '4,00' },
      decimalMark: 'comma',
      studentsDilute: false,
    });
    expect(comma).toContain('Hydrochloric acid, 4,00 mol/L: Warning.');
  });

  it('are never weaker than what is handled: every stronger solution of a listed substance keeps the signal word', () => {
    const order = [/^[^:]*(: (handle|treat|staff)|\. )/, /^[^:]*: Warning/, /^[^:]*: Danger/];
    for (const { formula = '' } of readCsv('tests/published/reagents.csv')) {
      const ranks = ['0.001', '0.01', '0.1', '0.5', '1', '3', '6', '12'].map((stock) => {
        const [head = ''] = readIn('dilution', { formula, 'stock molarity': stock }).split('\n');
        return order.findIndex((word) => word.test(head));
      });
      expect([formula, Math.min(...ranks) >= 0]).toEqual([formula, true]);
      expect([formula, ranks]).toEqual([formula, [...ranks].sort((one, other) => one - other)]);
    }
  });
});

describe('work the dilution from the real stock', () => {
  const settings = [['work the dilution from', 'real stock']] as const;
  it('judges the portion by the stock that was made, and asks for that row first', () => {
    const setup = startOf('stock and dilution');
    const numbers = numbersForTeams(setup);
    if (!numbers.ok) throw new Error(numbers.error.advice);
    const activity = activityById('stock and dilution', { fromRealStock: true });
    if (activity === undefined) throw new Error('no everyday activity');
    const givens = startingGivens(activity);
    const right = rightEntries(activity, givens);
    const made = rowsOf('stock and dilution', right, settings);
    expect(made['stock volume']?.check).toBe('on target');
    const { 'stock made': _, ...open } = right;
    expect(rowsOf('stock and dilution', open, settings)['stock volume']?.lookAt).toContain('“Molarity of your stock”');
    // A stock a tenth too strong: worked from the label, the portion is not right any more.
    const strong = { ...right, 'mass weighed': '7.92', 'stock made': '0.333' };
    const portion = (0.045 / 0.333) * 100;
    expect(
      rowsOf('stock and dilution', { ...strong, 'stock volume': '15.0' }, settings)['stock volume']?.check,
    ).not.toBe('on target');
    expect(rowsOf('stock and dilution', { ...strong, 'stock volume': portion.toFixed(1) })['stock volume']?.check).toBe(
      'not yet',
    );
  });
  it('changes the words of the rows, so that none names a stock that is not meant', () => {
    const shown = (fromRealStock: boolean) =>
      JSON.stringify(
        activityById('stock and dilution', { fromRealStock })?.steps.find(({ id }) => id === 'stock volume')?.shown,
      );
    expect(shown(false)).toContain('stock molarity');
    expect(shown(true)).not.toContain('stock molarity');
  });
});
