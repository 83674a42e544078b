import { describe, expect, it } from 'vitest';
import { filled } from '../../src/lab/judging/feedbackText.ts';
import { judgeNumber } from '../../src/lab/judging/judgeNumber.ts';
import { judgeQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { readEntry } from '../../src/lab/judging/readEntry.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { figureWords, remarks } from '../../src/lab/texts/feedback.ts';
import { unitNamed } from '../../src/measurement/unit.ts';

describe('a number of one figure where more are asked', () => {
  it('says too little, though it is what the target rounds to', () => {
    // 0.274 rounds to 0.3 and 0.26 does as well; 0.4 is another number.
    expect(judgeNumber('0.3', { target: 0.274 })).toEqual({
      status: 'not yet',
      lookAt: filled(remarks.oneFigure, { figures: figureWords[3] }),
    });
    expect(judgeNumber('0.3', { target: 0.274, figures: 2 }).lookAt).toBe(
      filled(remarks.oneFigure, { figures: figureWords[2] }),
    );
    expect(judgeNumber('0.3', { target: 0.274, figures: 8 }).lookAt).toBe(
      filled(remarks.oneFigure, { figures: remarks.figuresAsked }),
    );
    expect(judgeNumber('0.4', { target: 0.274 }).lookAt).toBe(remarks.notYet);
  });
  it('is right where one is asked', () => {
    expect(judgeNumber('0.3', { target: 0.274, figures: 1 }).status).toBe('on target');
  });
});

describe('the decimal mark of a class', () => {
  it('is that of an entry in another unit beside a bare target', () => {
    expect(judgeNumber('1,250 kg', { target: 1250, decimalMark: 'comma' }).status).toBe('on target');
    expect(judgeNumber('1,250 kg', { target: 1.25, decimalMark: 'comma' }).status).toBe('on target');
    expect(judgeNumber('1.250 kg', { target: 1250, decimalMark: 'point' }).status).toBe('on target');
  });
  it('is that of the givens of a team', () => {
    // 1,250 mol/L × 200 mL = 0.250 mol; read with a thousands mark it would be 250 mol.
    const checks = teamChecks({
      givenNames: ['formula', 'stock molarity', 'flask'],
      givenValues: ['KBr', '1,250', '200'],
      settings: [
        ['activity', 'stock and dilution'],
        ['decimal mark', 'comma'],
      ],
      steps: ['', 'moles of solute', ''],
      entries: ['', '0,250', ''],
    });
    expect(checks[1]?.check).toBe('on target');
  });
});

describe('a point that has moved', () => {
  const molarMass = (entry: string) => judgeQuantity('molar mass', [['formula', 'KBr']], entry);

  it.each(['1190.02', '11900.2', '11.900', '1.19002', '1.190', '0.11900'])(
    'is seen in a molar mass, whose decimals move with it: %s for 119.00 g/mol',
    (entry) => {
      expect(molarMass(entry)).toMatchObject({ status: 'not yet', slip: 'power-of-ten' });
    },
  );
  it('is not seen where the digits fit only roughly: CHCl3 is 119.37 g/mol', () => {
    expect(judgeQuantity('molar mass', [['formula', 'CHCl3']], '1.1937').slip).toBe('power-of-ten');
    expect(judgeQuantity('molar mass', [['formula', 'CHCl3']], '1.19').slip).toBe('');
  });
  it.each(['1191.5', '11.95', '1.2005', '-1190.02'])('is not seen in other digits: %s', (entry) => {
    expect(molarMass(entry).slip).not.toBe('power-of-ten');
  });
});

describe('an entry in another unit of its kind', () => {
  it('counts beside a target in a smaller unit as in a larger one', () => {
    const unit = (name: string) => ({ unit: unitNamed(name) });
    expect(judgeNumber('7.14 g', { target: 7140, ...unit('mg') }).status).toBe('on target');
    expect(judgeNumber('7.14', { target: 7140, ...unit('mg') }).status).toBe('not yet');
    expect(judgeNumber('7140 mg', { target: 7.14, ...unit('g') }).status).toBe('on target');
    expect(judgeNumber('7.14 g', { target: 7.14, ...unit('g') }).status).toBe('on target');
  });
});

describe('the mark of a number that the class does not use', () => {
  it('is asked about where the number would be right with it, and no slip is named', () => {
    const [row] = judgeTeam({
      givenNames: ['formula'],
      givenValues: ['KBr'],
      settings: [
        ['activity', 'stock and dilution'],
        ['decimal mark', 'comma'],
      ],
      steps: ['molar mass'],
      entries: ['119.002'],
    });
    expect(row).toMatchObject({ status: 'not yet', lookAt: remarks.otherMark });
    expect(row?.slips).toEqual([]);
  });
});

describe('what stands around a number', () => {
  it('is no times sign in front where it belongs to the number', () => {
    expect(readEntry('5 × 10^3', 'ratio')).toMatchObject({ kind: 'number', entry: { value: 5000 } });
    expect(readEntry('× 5', 'ratio')).toMatchObject({ kind: 'number', entry: { value: 5 } });
  });
  it('is passed over in front, with blanks before it', () => {
    expect(readEntry('  about 7.14 g ', 'mass')).toMatchObject({
      kind: 'number',
      unit: 'fits',
      entry: { value: 7.14 },
    });
    expect(readEntry(' ca. ~7.14', 'mass')).toMatchObject({ kind: 'number', entry: { value: 7.14 } });
  });
  it('may be a word behind the unit that would be a unit itself, while a symbol there belongs to the unit', () => {
    expect(readEntry('7.14 g grams', 'mass')).toMatchObject({ kind: 'number', unit: 'fits' });
    expect(readEntry('7.14 g mol', 'mass')).toMatchObject({ kind: 'number', unit: 'other kind' });
  });
  it('may be a formula in brackets that has brackets of its own', () => {
    for (const entry of ['7.14 g (Cu(NO3)2)', '7.14 g of Cu(NO3)2', '7.14 g [Al2(SO4)3].'])
      expect(readEntry(entry, 'mass')).toMatchObject({ kind: 'number', unit: 'fits', entry: { value: 7.14 } });
  });
  it('is “times” only behind a pure number', () => {
    for (const entry of ['5 times', '5 x', '5-fold']) {
      expect(readEntry(entry, 'ratio')).toMatchObject({ kind: 'number', unit: 'fits' });
      expect(readEntry(entry, 'mass')).toMatchObject({ kind: 'number', unit: 'other kind' });
    }
  });
  it('is nothing around a number that is typed as one', () => {
    expect(readEntry(7.1, 'mass')).toMatchObject({ kind: 'number', unit: 'none', entry: { value: 7.1 } });
  });
});
