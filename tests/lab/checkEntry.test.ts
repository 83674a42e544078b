import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../src/lab/checkEntry.ts';

describe('checkEntry', () => {
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
    expect(checkEntry(entry, { target: 0.25 }).status).toBe(status);
  });
  it('says where only the point or the sign differs', () => {
    expect(checkEntry('2.50', { target: 0.25 }).lookAt).toContain('point');
    expect(checkEntry('-0.250', { target: 0.25 }).lookAt).toContain('sign');
  });
  it('with a tolerance takes that share of the target, ends included', () => {
    const within = (entry: string) => checkEntry(entry, { target: 20, tolerancePercent: 5 }).status;
    expect(['19', '21', '20.5', '18.99', '21.01'].map(within)).toEqual([
      'on target',
      'on target',
      'on target',
      'not yet',
      'not yet',
    ]);
    expect(checkEntry('0.11', { target: 0.1, tolerancePercent: 10 }).status).toBe('on target');
  });
  it('takes figures into account', () => {
    expect(checkEntry('0.2', { target: 0.24, figures: 1 }).status).toBe('on target');
    expect(checkEntry('0.24', { target: 0.2436, figures: 4 })).toMatchObject({ status: 'close' });
    expect(checkEntry('0.24', { target: 0.2436, figures: 4 }).lookAt).toContain('four figures');
  });
  it('takes zero alone for a target of zero', () => {
    expect(checkEntry('0', { target: 0, tolerancePercent: 5 }).status).toBe('on target');
    expect(checkEntry('0.001', { target: 0, tolerancePercent: 5 }).status).toBe('not yet');
  });
  it('judges a negative target', () => {
    expect(checkEntry('-1.5', { target: -1.5 }).status).toBe('on target');
    expect(checkEntry('1.5', { target: -1.5 }).status).toBe('not yet');
  });
});
