import { describe, expect, it } from 'vitest';
import { filled } from '../../src/lab/judging/feedbackText.ts';
import { isFact, isSound } from '../../src/lab/judging/judgedRow.ts';
import { readingOf } from '../../src/lab/judging/judgeMeasured.ts';
import { judgeQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { judgeReading } from '../../src/lab/judging/judgeReading.ts';
import { longestAnswer } from '../../src/lab/judging/judgeStep.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { MeasuredStep } from '../../src/lab/lesson/activity.ts';
import { badGiven, badStep, figureWords, remarks, unreadableTexts } from '../../src/lab/texts/feedback.ts';
import { readingTexts } from '../../src/lab/texts/readings.ts';
import { flaskReading } from './flaskReading.ts';
import { rowsOf } from './rowsOf.ts';

/** 0.300 mol/L × 0.2000 L = 0.0600 mol of potassium bromide, 119.00 g/mol, 7.14 g. */
const kbr = { formula: 'KBr', molarity: '0.300', flask: '200', ion: 'Br-' };
const solid = (entries: Readonly<Record<string, string>>, givens: Readonly<Record<string, string>> = {}) =>
  rowsOf('solution from a solid', { 'cautions read': 'yes, KBr', ...entries }, { givens: { ...kbr, ...givens } });

describe('what other rows go on from', () => {
  it.each([
    ['on target', true],
    ['close', true],
    ['follows', false],
    ['not yet', false],
    ['blank', false],
    ['unreadable', false],
  ] as const)('a row that is %s: %s', (status, sound) => {
    expect(isSound({ status })).toBe(sound);
  });
  it('is whatever was measured, and no row that nobody knows', () => {
    const row = solid({ 'mass weighed': '9.99' })['mass weighed'];
    if (row === undefined) throw new Error('There is no such row.');
    expect([row.status, isFact(row)]).toEqual(['not yet', true]);
    expect(isFact({ ...row, value: undefined })).toBe(false);
    expect(isFact({ ...row, step: undefined })).toBe(false);
  });
});

describe('what is read', () => {
  const step = activityById('solution from a solid')?.steps.find((one) => one.id === 'mass weighed') as MeasuredStep;
  const read = (more: Partial<MeasuredStep>) => readingOf({ ...step, ...more });
  it('is dry residue where the balance stands beside a pipette, and else what the instrument shows', () => {
    const pipette = { tool: 'pipette', volume: 'portion' } as const;
    expect(read({ instrument: 'balance', tools: [{ tool: 'balance' }] })).toBe('balance');
    expect(read({ instrument: 'balance', tools: [{ tool: 'balance' }, pipette] })).toBe('residue');
    expect(read({ instrument: 'flask', tools: [pipette] })).toBe('flask');
    expect(read({ instrument: 'balance', tools: [pipette], hints: 'portion' })).toBe('portion');
  });
  it('says why no number is taken where that is plain, and else what to type', () => {
    const told = (entry: string) => judgeReading(entry, flaskReading).lookAt;
    expect(told('200 or 201')).toBe(unreadableTexts['two numbers']);
    expect(told('2'.repeat(201))).toBe(unreadableTexts['too long']);
    expect(told('full')).toBe(readingTexts.unreadable);
    expect(told('100 + 100')).toBe(readingTexts.unreadable);
  });
  it('cannot be judged, nor what is worked out, where a number of the team’s cannot be read', () => {
    const rows = solid({ 'mass weighed': '7.14', 'moles of solute': '0.0600' }, { flask: 'the big one' });
    const unusable = { status: 'unreadable', isUnusable: true, lookAt: badGiven('flask') };
    expect(rows['mass weighed']).toMatchObject(unusable);
    expect(rows['moles of solute']).toMatchObject(unusable);
  });
});

describe('a row that nobody knows', () => {
  it('says so with the beginning of its name, and an empty one says nothing', () => {
    const steps = ['x'.repeat(60), '', 'molar mass'];
    const [strange, empty] = judgeTeam({
      givenNames: [],
      givenValues: [],
      settings: [],
      steps,
      entries: ['1', '1', ''],
    });
    expect(strange).toMatchObject({ status: 'unreadable', isUnusable: true, lookAt: badStep('x'.repeat(40)) });
    expect(empty).toMatchObject({ status: '', lookAt: '' });
  });
});

describe('an answer in words', () => {
  const everyday = activityById('stock and dilution')?.steps ?? [];
  const inWords = everyday.filter(({ kind }) => ['ordered', 'chosen', 'ticked'].includes(kind));
  it.each(inWords.map(({ id }) => id))(
    'longer than can be looked through is not read in %s, and blanks are blank',
    (id) => {
      const row = (entry: string) =>
        rowsOf('stock and dilution', { 'cautions read': 'yes, KBr', [id]: entry }, { givens: { formula: 'KBr' } })[id];
      expect(row(`a${' b'.repeat(longestAnswer)}`)).toMatchObject({ status: 'unreadable', lookAt: remarks.tooLong });
      expect(row(' '.repeat(longestAnswer + 1))?.status).toBe('blank');
    },
  );
});

describe('a number worked out', () => {
  it('leaves nothing to go on with while it is blank, or while it rests on a row that needs another look', () => {
    expect(solid({})['moles of solute']?.unrounded).toEqual([]);
    expect(solid({ 'moles of solute': '0.0600' })['moles of solute']?.unrounded[0]).toBeCloseTo(0.06, 12);
    const stock = rowsOf('solution from a solid', { 'mass weighed': 'heavy', 'stock made': '0.300' }, { givens: kbr });
    expect(stock['stock made']).toMatchObject({
      status: 'not yet',
      lookAt: filled(remarks.needsRow, { row: 'Mass you weighed' }),
      unrounded: [],
    });
  });
  it('is asked about its unit where the number alone would be right', () => {
    const mass = (entry: string) =>
      judgeQuantity(
        'mass of solute',
        [
          ['formula', 'KBr'],
          ['molarity', '0.300'],
          ['volume', '200 mL'],
        ],
        entry,
      );
    const unit = filled(remarks.unitEvidently, { unit: 'g' });
    expect(mass('7.14 kg')).toMatchObject({ status: 'not yet', feedback: unit });
    expect(mass('5.55 kg').feedback).not.toBe(unit);
    expect(mass('7.14').status).toBe('on target');
    expect(mass('0').feedback).not.toBe(remarks.negative);
    expect(mass('-5.55')).toMatchObject({ status: 'not yet', feedback: remarks.negative });
  });
  it('is asked about its mark where the other reading follows from a row that may be gone on with', () => {
    // 0.06005 mol rounds to 0.0600 at the last figure asked, and 0.06005 × 119.00 g/mol = 7.146 g.
    const mass = (moles: string, typed: string) =>
      solid({ 'moles of solute': moles, 'mass of solute': typed })['mass of solute'];
    expect(mass('0.06005', '7,146')).toMatchObject({ status: 'not yet', lookAt: remarks.otherMark });
    expect(mass('0.06005', '7,300')?.lookAt).not.toBe(remarks.otherMark);
    // What is only close, here 0.0601 mol, takes no mass along with it.
    expect(mass('0.0601', '7,152')?.lookAt).not.toBe(remarks.otherMark);
  });
  it('is right with a note where the class asks for the figures, and only there', () => {
    const judged = (entry: string, figures: string) =>
      rowsOf(
        'solution from a solid',
        { 'moles of solute': entry },
        { givens: kbr, settings: [['judge figures', figures]] },
      )['moles of solute'];
    const note = filled(remarks.wrongFigures, { figures: figureWords[3] });
    expect(judged('0.06000', 'yes')).toMatchObject({ status: 'close', lookAt: note });
    expect(judged('0.0600', 'yes')).toMatchObject({ status: 'on target', lookAt: remarks.onTarget });
    expect(judged('0.06000', 'no')).toMatchObject({ status: 'on target', lookAt: remarks.onTarget });
  });
});

it('names a quantity that is not there, with all that are', () => {
  const { error } = judgeQuantity('weight', [], '1');
  expect(error).toMatchObject({ code: 'quantity-unknown', argument: 'quantity' });
  expect(error?.advice).toMatch(/^Use one of molar mass, .*, percent error/);
});
