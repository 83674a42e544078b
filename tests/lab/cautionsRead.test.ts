import { describe, expect, it } from 'vitest';
import { activityById, allActivities } from '../../src/lab/activities.ts';
import { cautionWords } from '../../src/lab/cautionWords.ts';
import { checkTeam } from '../../src/lab/checkTeam.ts';
import { numbersForTeams } from '../../src/lab/numbersForTeams.ts';
import { startingGivens } from '../../src/lab/startingGivens.ts';
import { startOf } from './otherActivities.ts';
import { rightEntries } from './rightEntries.ts';

const deferring = /Read the one from your supplier; follow local rules and your school’s own assessment\.$/;

/** Rows of a team by step id, with the start's numbers and these entries. */
function rowsOf(
  id: string,
  entries: Readonly<Record<string, string>>,
  settings: readonly (readonly [string, string])[] = [],
) {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(`no activity ${id}`);
  const givens = startingGivens(activity);
  const rows = checkTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', id], ...settings],
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
    expect(untouched?.lookAt).toMatch(/^Read this, then choose yes:/);
    expect(untouched?.lookAt).toContain('Warning');
    expect(untouched?.lookAt).toMatch(deferring);
    for (const entry of ['yes', ' Yes', 'x', '✓', 'OK']) {
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

  it('lets no bench row open before it is ticked', () => {
    const activity = activityById('stock and dilution');
    if (activity === undefined) throw new Error('no everyday activity');
    const right = rightEntries(activity, startingGivens(activity));
    const benchBefore = { ...right, 'cautions read': '', 'mass weighed': '' };
    expect(rowsOf('stock and dilution', benchBefore)['mass weighed']?.lookAt).toBe(
      'Wait at the bench. Read the cautions and tick “Aim and cautions” first.',
    );
    expect(rowsOf('stock and dilution', { ...benchBefore, 'cautions read': 'yes' })['mass weighed']).toMatchObject({
      check: 'blank',
      lookAt: '',
    });
    // Rows at the desk are judged as ever.
    expect(rowsOf('stock and dilution', benchBefore)['mass of solute']?.check).toBe('on target');
  });

  it('says for a concentrated reagent that staff make it, until the setting says otherwise', () => {
    const said = (...settings: readonly (readonly [string, string])[]) =>
      rowsOf('concentrated reagent', {}, settings)['cautions read']?.lookAt ?? '';
    expect(said()).toContain('Your teacher makes this solution.');
    expect(said()).toContain('never water to acid');
    expect(said(['concentrated reagents', 'students'])).toContain('Only with your teacher beside you');
  });

  it('never makes an unknown substance look harmless', () => {
    for (const formula of ['XeF4', 'no formula', '']) {
      const words = cautionWords({ formula, decimalMark: 'point' });
      expect(words).toMatch(/safety data sheet/);
      expect(words).not.toMatch(/not classified/i);
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
    expect(rowsOf('stock and dilution', open, settings)['stock volume']?.lookAt).toContain('“Molarity really made”');
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
