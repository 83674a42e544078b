import { describe, expect, it } from 'vitest';
import { judgeQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { remarks } from '../../src/lab/texts/feedback.ts';

const percentError = (measured: string, accepted: string, entry: string) =>
  judgeQuantity(
    'percent error',
    [
      ['measured', measured],
      ['accepted', accepted],
    ],
    entry,
  );
const mass = (entry: string) =>
  judgeQuantity(
    'mass of solute',
    [
      ['formula', 'KBr'],
      ['molarity', '0.300'],
      ['volume', '200'],
    ],
    entry,
  );

describe('the sign of a percent error', () => {
  it('may say that the measured value is below the accepted one: (0.240 − 0.250) ÷ 0.250 is −4 %', () => {
    expect(percentError('0.240', '0.250', '-4.00').status).toBe('on target');
    expect(percentError('0.240', '0.250', '4.00').status).toBe('on target');
  });
  it('is asked about where the measured value is above: +4 %', () => {
    expect(percentError('0.260', '0.250', '-4.00')).toMatchObject({ status: 'not yet', feedback: remarks.signOfError });
  });
  it('is asked about where the two are alike, as for any value below zero', () => {
    expect(percentError('0.250', '0.250', '-5.00')).toMatchObject({ status: 'not yet', feedback: remarks.negative });
  });
  it('is not all that is amiss with another size', () => {
    expect(percentError('0.260', '0.250', '-7.30')).toMatchObject({ status: 'not yet', feedback: remarks.negative });
  });
});

describe('a value below zero', () => {
  it('is asked about as such, also where it is right but for the sign', () => {
    for (const entry of ['-7.14', '-3.31'])
      expect(mass(entry)).toMatchObject({ status: 'not yet', feedback: remarks.negative });
  });
});

describe('a quantity or a given that cannot be used', () => {
  it('is unreadable, names no slip, and says in short what is wrong', () => {
    const unknown = judgeQuantity('weight of everything', [], '5');
    expect(unknown).toMatchObject({ status: 'unreadable', slip: '', error: { code: 'quantity-unknown' } });
    expect(unknown.feedback).toMatch(/^⚠ /);
    const missing = judgeQuantity('mass of solute', [['formula', 'KBr']], '5');
    expect(missing).toMatchObject({ status: 'unreadable', slip: '', error: { code: 'given-missing' } });
  });
});
