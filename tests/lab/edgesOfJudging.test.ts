import { describe, expect, it } from 'vitest';
import { fillQuantity } from '../../src/lab/judging/fillQuantity.ts';
import { judgeReading, type Reading } from '../../src/lab/judging/judgeReading.ts';
import { readingNotes } from '../../src/lab/judging/readingNotes.ts';
import { readingTolerance } from '../../src/lab/judging/readingTolerance.ts';
import { fitsSlip, slipsFound } from '../../src/lab/judging/slipsFound.ts';
import { closeness, isOneFigureOf, isTruncated, toleranceOf } from '../../src/lab/judging/tolerance.ts';
import { hasFiguresAsked, isShort, type TypedEntry } from '../../src/lab/judging/typedEntry.ts';
import type { Activity, MeasuredStep } from '../../src/lab/lesson/activity.ts';
import { type QuantityName, quantities } from '../../src/lab/quantities.ts';
import { readingAdvice, readingTexts } from '../../src/lab/texts/readings.ts';
import { grams } from '../../src/measurement/quantity.ts';
import { flaskReading as flask } from './flaskReading.ts';

const limit = (() => {
  const found = readingTolerance(flask, flask.settings);
  if (!found.ok) throw new Error(found.error.code);
  return found.value.limit;
})();

describe('a reading at an edge', () => {
  it.each([
    // Inside at the very limit on either side, and outside by a billionth of it.
    [200 + limit, 'on target'],
    [200 - limit, 'on target'],
    [200 + limit * (1 + 1e-6), 'not yet'],
    [200 - limit * (1 + 1e-6), 'not yet'],
  ])('%s mL of 200 is %s', (entry, status) => {
    expect(judgeReading(entry, flask).status).toBe(status);
  });
  const { above, below } = readingAdvice.flask;
  it.each([
    // A tenth of the plan away is still near; three times the plan, or a third of it, is not yet far.
    [220, [readingTexts.above, above.ask, above.near].join(' ')],
    [220.1, [readingTexts.above, above.ask, above.further].join(' ')],
    [180, [readingTexts.below, below.ask, below.near].join(' ')],
    [179.9, [readingTexts.below, below.ask, below.further].join(' ')],
    [600, [readingTexts.above, above.ask, above.further].join(' ')],
    [600.1, readingTexts.farAbove],
    [200 / 3, [readingTexts.below, below.ask, below.further].join(' ')],
    [66.6, readingTexts.farBelow],
  ])('%s mL of 200 is told what fits its distance', (entry, words) => {
    expect(judgeReading(entry, flask).lookAt).toBe(words);
  });
  it('asks for every figure of the display only of a text in grams that a balance showed', () => {
    const weighed: Reading = {
      ...flask,
      expected: 8,
      unit: 'g',
      of: 'balance',
      tools: [{ tool: 'balance', mass: grams(8) }],
    };
    expect(judgeReading('8.0', weighed)).toEqual({ status: 'close', lookAt: readingTexts.decimals });
    expect(judgeReading('8.00', weighed)).toEqual({ status: 'on target', lookAt: readingTexts.onTarget });
    expect(judgeReading(8, weighed).status).toBe('on target');
    expect(judgeReading('200', flask).status).toBe('on target');
    expect(judgeReading('8.0', { ...weighed, tools: flask.tools }).status).toBe('on target');
  });
});

const entry = (value: number, figures: number, lastPlace: number): TypedEntry => ({
  value,
  figuresMin: figures,
  figuresMax: figures,
  lastPlace,
  isText: true,
});
const exactly = (value: number) => ({ low: value, middle: value, high: value });

describe('a tolerance at an edge', () => {
  const three = toleranceOf(exactly(7.14), { asked: { figures: 3 }, wideClose: false });
  const wide = toleranceOf(exactly(7.14), { asked: { figures: 3 }, wideClose: true });
  it('counts two units of the last figure as close, and within 1 % only where several rounded steps lead there', () => {
    expect(closeness(entry(7.16, 3, -2), three)).toBe('rounding');
    expect(closeness(entry(7.12, 3, -2), three)).toBe('rounding');
    expect(closeness(entry(7.17, 3, -2), three)).toBe(false);
    expect(closeness(entry(7.17, 3, -2), wide)).toBe('rounding');
    expect(closeness(entry(7.21, 3, -2), wide)).toBe('rounding');
    expect(closeness(entry(7.22, 3, -2), wide)).toBe(false);
  });
  it('tells too few figures from rounding, and knows nothing close to 0', () => {
    expect(closeness(entry(7.1, 2, -1), three)).toBe('few figures');
    expect(closeness(entry(0, 2, -1), toleranceOf(exactly(0), { asked: { decimals: 2 }, wideClose: true }))).toBe(
      false,
    );
  });
  it('knows one figure of the target, where more are asked', () => {
    expect(isOneFigureOf(entry(7, 1, 0), three)).toBe(true);
    expect(isOneFigureOf(entry(8, 1, 0), three)).toBe(false);
    expect(isOneFigureOf(entry(7.1, 2, -1), three)).toBe(false);
    const one = toleranceOf(exactly(7.14), { asked: { figures: 1 }, wideClose: false });
    expect(isOneFigureOf(entry(7, 1, 0), one)).toBe(false);
    const decimals = (asked: number) => toleranceOf(exactly(7.14), { asked: { decimals: asked }, wideClose: false });
    expect(isOneFigureOf(entry(7, 1, 0), decimals(1))).toBe(true);
    expect(isOneFigureOf(entry(7, 1, 0), decimals(0))).toBe(false);
  });
  it('knows a figure that was cut off where it should have been rounded up', () => {
    const cut = toleranceOf(exactly(7.149), { asked: { figures: 3 }, wideClose: false });
    expect(isTruncated(entry(7.14, 3, -2), cut)).toBe(true);
    expect(isTruncated(entry(7.15, 3, -2), cut)).toBe(false);
    expect(isTruncated(entry(7.13, 3, -2), cut)).toBe(false);
    expect(isTruncated(entry(7.14, 3, -2), three)).toBe(false);
    expect(isTruncated(entry(7.1, 2, -1), cut)).toBe(false);
  });
  it('is never finer than the coarsest value that a result rests on', () => {
    const coarse = toleranceOf(exactly(7.14), {
      asked: { figures: 3 },
      wideClose: false,
      coarsest: exactly(714),
    });
    expect([three.placeLow, three.placeHigh]).toEqual([0.01, 0.01]);
    expect([coarse.placeLow, coarse.placeHigh]).toEqual([1, 1]);
  });
});

describe('what the Plan says of a reading', () => {
  const measured = (given: Partial<MeasuredStep>): Activity =>
    ({
      steps: [{ kind: 'measured', id: 'x', title: 'X', unit: 'mL', instrument: 'flask', ...given }],
    }) as unknown as Activity;
  const linesOf = (given: Partial<MeasuredStep>, givens: Readonly<Record<string, string>> = { flask: '250' }) => {
    const notes = readingNotes(measured(given), { settings: {}, givens });
    if (!notes.ok) throw new Error(notes.error.code);
    return notes.value[0]?.lines.join(' ') ?? '';
  };
  it('takes the size that the team was given, and else that of the reading itself', () => {
    expect(linesOf({ tools: [{ tool: 'flask', volume: 'flask' }] })).toMatch(/^From the 250 mL flask/);
    expect(linesOf({ tools: [{ tool: 'flask', volume: 'flask' }] }, { flask: ' ' })).toMatch(/^From the 100 mL flask/);
    expect(linesOf({ tools: [{ tool: 'flask', volume: 'flask' }] }, { flask: 'big' })).toMatch(
      /^From the 100 mL flask/,
    );
    // The last of the two round readings is one of 100 mL.
    expect(linesOf({})).toMatch(/^From the 100 mL flask/);
    expect(linesOf({ unit: 'mol/L' })).toMatch(/^From the 100 mL flask .* So 1 mol\/L may be off/);
  });
  it('loads the balance with the reading itself, and with ten grams where no mass is read', () => {
    expect(linesOf({ unit: 'g', instrument: 'balance' })).toContain('10 g may be off by 0.22 g');
    // 2 · √2 · 0.01 g ÷ √3 in 10 g is 0.16 % of 1 mol/L, beside 2 % for technique.
    expect(linesOf({ unit: 'mol/L', instrument: 'bench', tools: [{ tool: 'balance' }] })).toContain(
      'So 1 mol/L may be off by 0.022 mol/L.',
    );
  });
  it('reads and writes numbers as the class does', () => {
    const settings = { 'decimal mark': 'comma', 'allowance for technique': '2,55 %' };
    const notes = readingNotes(measured({ tools: [{ tool: 'flask', volume: 'flask' }] }), {
      settings,
      givens: { flask: '0,250 L' },
    });
    if (!notes.ok) throw new Error(notes.error.code);
    // Class B of ISO 1042: 2 × 0.3 ÷ √3 ÷ 250 is 0.14 %.
    expect(notes.value[0]?.lines.join(' ')).toMatch(
      /^From the 250 mL flask \(±0,3 mL\): .*plus 2,55 % .* So 10 mL may be off by 0,27 mL, and 100 mL/,
    );
  });
  it('fails where a setting cannot be read, and says which', () => {
    const notes = readingNotes(measured({}), { settings: { 'glassware class': 'C' }, givens: {} });
    expect(notes).toMatchObject({ ok: false, error: { code: 'lesson-setting', argument: 'glassware class' } });
  });
});

describe('figures that were typed, beside those asked', () => {
  it.each([
    // 119.0 where two decimals are asked has one too few, 119.00 has them, and 119 of the balance none that count.
    [entry(119, 4, -1), { decimals: 2 }, { short: true, has: false }],
    [entry(119, 5, -2), { decimals: 2 }, { short: false, has: true }],
    [entry(119, 6, -3), { decimals: 2 }, { short: false, has: false }],
    [entry(7.1, 2, -1), { figures: 3 }, { short: true, has: false }],
    [entry(7.14, 3, -2), { figures: 3 }, { short: false, has: true }],
    [entry(7.142, 4, -3), { figures: 3 }, { short: false, has: false }],
    // One figure alone says too little to be a shorter form of anything.
    [entry(7, 1, 0), { figures: 3 }, { short: false, has: false }],
    [{ ...entry(200, 1, 2), figuresMax: 3 }, { figures: 3 }, { short: false, has: true }],
    [{ ...entry(200, 1, 2), figuresMax: 3 }, { figures: 4 }, { short: true, has: false }],
  ] as const)('%j, asked %j: %j', (typed, asked, { short, has }) => {
    expect([isShort(typed, asked), hasFiguresAsked(typed, asked)]).toEqual([short, has]);
  });
});

describe('a misplaced point', () => {
  const found = (name: QuantityName, cells: Readonly<Record<string, string>>, typed: TypedEntry) => {
    const step = fillQuantity(quantities[name], cells);
    if (!step.ok) throw new Error(step.error.code);
    return slipsFound(step.value, typed, []);
  };
  const kbr = { formula: 'KBr', molarity: '0.300', volume: '200' };
  it('is named where the digits are right and the place is not, on either side', () => {
    expect(found('mass of solute', kbr, entry(71.4, 3, -1))).toEqual(['power-of-ten']);
    expect(found('mass of solute', kbr, entry(0.714, 3, -3))).toEqual(['power-of-ten']);
    expect(found('mass of solute', kbr, entry(71.5, 3, -1))).toEqual([]);
  });
  it('is none where the place is right, the sign is wrong or the entry is 0', () => {
    expect(found('mass of solute', kbr, entry(7, 1, 0))).toEqual([]);
    expect(found('mass of solute', kbr, entry(-71.4, 3, -1))).toEqual([]);
    expect(found('mass of solute', kbr, entry(0, 1, 0))).toEqual([]);
  });
  it('moves decimals that are asked with it', () => {
    expect(found('molar mass', { formula: 'KBr' }, entry(11.9, 3, -1))).toEqual(['power-of-ten']);
    expect(found('molar mass', { formula: 'KBr' }, entry(11.96, 4, -2))).toEqual([]);
  });
  it('is none of a result that is 0', () => {
    expect(found('percent error', { measured: '0.3', accepted: '0.3' }, entry(5, 1, 0))).toEqual([]);
  });
});

describe('a slip at the edge of the target', () => {
  const tolerance = toleranceOf(exactly(10), { asked: { figures: 3 }, wideClose: false });
  const fits = (slip: number, typed: TypedEntry) => fitsSlip(exactly(slip), { entry: typed, tolerance });
  it('says nothing where it gives what is accepted anyway', () => {
    expect(fits(10.04, entry(10, 3, -1))).toBe(false);
    expect(fits(12, entry(12, 3, -1))).toBe(true);
    expect(fits(8, entry(8, 3, -2))).toBe(true);
  });
  it('is told to half a unit of the last figure, as if zeros followed what was typed', () => {
    expect(fits(12.04, entry(12, 2, 0))).toBe(true);
    expect(fits(12.06, entry(12, 2, 0))).toBe(false);
    // Finer than the figures of everyday work, the figures that were typed count.
    expect(fits(12.004, entry(12, 4, -2))).toBe(true);
    expect(fits(12.006, entry(12, 4, -2))).toBe(false);
  });
  it('compares with three figures at most where the target needs more', () => {
    const four = toleranceOf(exactly(10), { asked: { figures: 4 }, wideClose: false });
    expect(fitsSlip(exactly(12.04), { entry: entry(12, 2, 0), tolerance: four })).toBe(true);
  });
  it('takes a 0 only for what is just 0', () => {
    expect(fits(0, entry(0, 1, 0))).toBe(true);
    expect(fits(1e-9, entry(0, 1, 0))).toBe(false);
  });
});
