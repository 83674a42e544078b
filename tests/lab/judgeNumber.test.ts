import { describe, expect, it } from 'vitest';
import { filled } from '../../src/lab/judging/feedbackText.ts';
import { judgeNumber } from '../../src/lab/judging/judgeNumber.ts';
import { figureWords, remarks } from '../../src/lab/texts/feedback.ts';
import { unitNamed } from '../../src/measurement/unit.ts';

describe('judgeNumber', () => {
  it.each([
    ['0.250', 'on target'],
    ['0.2505', 'on target'],
    ['0.2495', 'on target'],
    ['0.2525', 'close'],
    ['0.2526', 'not yet'],
    ['0.25', 'on target'],
    ['0.24', 'not yet'],
    ['250 mmol/L', 'on target'],
    ['', 'blank'],
    ['soon', 'unreadable'],
    [false, 'unreadable'],
    ['2.50', 'not yet'],
  ])('without a tolerance judges by honest rounding: %j against 0.250 is %s', (entry, status) => {
    expect(judgeNumber(entry, { target: 0.25 }).status).toBe(status);
  });
  it('says where only the point or the sign differs', () => {
    expect(judgeNumber('2.50', { target: 0.25 }).lookAt).toContain('point');
    expect(judgeNumber('-0.250', { target: 0.25 }).lookAt).toContain('sign');
  });
  it('with a tolerance takes that share of the target, ends included', () => {
    const within = (entry: string) => judgeNumber(entry, { target: 20, tolerancePercent: 5 }).status;
    expect(['19', '21', '20.5', '18.99', '21.01'].map(within)).toEqual([
      'on target',
      'on target',
      'on target',
      'not yet',
      'not yet',
    ]);
    expect(judgeNumber('0.11', { target: 0.1, tolerancePercent: 10 }).status).toBe('on target');
  });
  it('takes figures into account', () => {
    expect(judgeNumber('0.2', { target: 0.24, figures: 1 }).status).toBe('on target');
    expect(judgeNumber('0.24', { target: 0.2436, figures: 4 })).toMatchObject({ status: 'close' });
    expect(judgeNumber('0.24', { target: 0.2436, figures: 4 }).lookAt).toContain('four figures');
  });
  it('takes zero alone for a target of zero', () => {
    expect(judgeNumber('0', { target: 0, tolerancePercent: 5 }).status).toBe('on target');
    expect(judgeNumber('0.001', { target: 0, tolerancePercent: 5 }).status).toBe('not yet');
  });
  it('judges a negative target', () => {
    expect(judgeNumber('-1.5', { target: -1.5 }).status).toBe('on target');
    expect(judgeNumber('1.5', { target: -1.5 }).status).toBe('not yet');
  });
  it.each([
    ['7.14', 'on target'],
    ['7.14 g', 'on target'],
    ['7140 mg', 'on target'],
    ['0.00714 kg KBr', 'on target'],
    ['7140', 'not yet'],
    ['7.14 mL', 'not yet'],
    ['7.14 apples', 'not yet'],
  ])('beside a target in g judges %s as %s', (entry, status) => {
    const unit = unitNamed('g');
    expect(judgeNumber(entry, { target: 7.140138, unit }).status).toBe(status);
    if (/mL|apples/.test(entry)) expect(judgeNumber(entry, { target: 7.140138, unit }).lookAt).toContain('asks for g.');
  });
  it('counts a bare entry in the unit of the target', () => {
    const judged = (entry: string) => judgeNumber(entry, { target: 0.25, unit: unitNamed('L') }).status;
    expect(['0.250', '250 mL', '0.250 L', '250'].map(judged)).toEqual([
      'on target',
      'on target',
      'on target',
      'not yet',
    ]);
  });
  it('takes an entry in another unit of its kind digit by digit, with the mark of the class', () => {
    const unit = unitNamed('mg');
    expect(judgeNumber('7140', { target: 7140, unit }).status).toBe('on target');
    expect(judgeNumber('7.14 g', { target: 7140, unit }).status).toBe('on target');
    // 7.1 g says as much of 7142 mg as its two figures can.
    expect(judgeNumber('7.1 g', { target: 7142, unit }).lookAt).toBe(
      filled(remarks.closeFewFigures, { figures: figureWords[3] }),
    );
    const comma = { target: 7.14, unit: unitNamed('g'), decimalMark: 'comma' } as const;
    expect(judgeNumber('7,140 g', comma).status).toBe('on target');
  });
  it('says that a point has moved only of the right digits with the right sign', () => {
    const told = (entry: string) => judgeNumber(entry, { target: 0.25 }).lookAt;
    expect(told('2.50')).toBe(remarks.shifted);
    expect(told('1.25')).toBe(remarks.notYet);
    expect(told('-2.50')).toBe(remarks.notYet);
    expect(told('-0.250')).toBe(remarks.signOnly);
    expect(judgeNumber('', { target: 0.25 })).toEqual({ status: 'blank', lookAt: '' });
  });
  it('passes over a times sign, and is close in the unit where it is close', () => {
    expect(judgeNumber('× 4.50', { target: 4.5 }).status).toBe('on target');
    expect(judgeNumber('252.5 mmol/L', { target: 0.25 }).status).toBe('close');
  });
  it('asks about a word behind the number that is no unit, and says why it reads no two numbers', () => {
    expect(judgeNumber('7.14 apples', { target: 7.14 })).toEqual({
      status: 'not yet',
      lookAt: 'Look at the word after the number. Is it a unit that fits here?',
    });
    expect(judgeNumber('7.14 or 7.15', { target: 7.14 })).toEqual({
      status: 'unreadable',
      lookAt: 'There is more than one number here. Which one is your answer? Type that one alone.',
    });
  });
  it.each(['7.14 g KBr', 'about 7.14', '7.14 g (we think)', '7140 mg'])(
    'takes %s beside a bare target of 7.14',
    (entry) => {
      expect(judgeNumber(entry, { target: 7.14 }).status).toBe('on target');
    },
  );
});
