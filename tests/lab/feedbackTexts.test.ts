import { describe, expect, it } from 'vitest';
import { quantities } from '../../src/lab/quantities.ts';
import { decimalWords, figureWords, remarks, slipTexts, unreadableTexts } from '../../src/lab/texts/feedback.ts';
import { fleschKincaidGrade, syllables, wordsOf } from './readingGrade.ts';

interface Wordings {
  readonly fits: string;
  readonly ask: string;
  readonly in?: Readonly<Record<string, { readonly fits: string; readonly ask: string }>>;
}
const wordings = Object.values<Wordings>(slipTexts).flatMap((text) => [text, ...Object.values(text.in ?? {})]);
const slipMessages = wordings.map(({ fits, ask }) => remarks.oneFits.replace('{fits}', fits).replace('{ask}', ask));
const everything = [
  ...slipMessages,
  ...Object.values(remarks),
  ...Object.values(unreadableTexts),
  ...figureWords,
  ...decimalWords,
];

describe('syllables', () => {
  it.each([
    ['molarity', 4],
    ['millilitres', 4],
    ['solution', 3],
    ['volume', 2],
    ['litres', 2],
    ['divide', 2],
    ['check', 1],
    ['uses', 2],
    ['change', 1],
    ['molar', 2],
    ['value', 2],
    ['worked', 1],
    ['counted', 2],
    ['again', 2],
    ['number', 2],
    ['mole', 1],
    ['moles', 1],
    ['ratio', 3],
    ['ion', 2],
    ['amount', 2],
    ['purity', 3],
    ['bottle', 2],
    ['people', 2],
    ['density', 3],
  ])('counts %s as %i', (word, count) => {
    expect(syllables(word)).toBe(count);
  });
});

describe('fleschKincaidGrade', () => {
  it('gives 7.0 for twenty words, four sentences and 35 syllables counted by hand (formula of Kincaid et al. 1975)', () => {
    const text =
      'Check the volume. Molarity uses litres of solution. Your volume is in millilitres. Change it to litres, then divide again.';
    expect(wordsOf(text)).toHaveLength(20);
    expect(fleschKincaidGrade(text)).toBeCloseTo(7.0, 1);
  });
});

describe('feedback texts', () => {
  it('read at grade 8 or below, taken together', () => {
    const pooled = everything.join(' ').replace(/\{\w+\}/g, 'row');
    expect(wordsOf(pooled).length).toBeGreaterThan(100);
    expect(fleschKincaidGrade(pooled)).toBeLessThanOrEqual(8);
  });
  it.each(everything)('hold no digit: %s', (text) => {
    expect(text).not.toMatch(/\d/);
  });
  it.each(everything.filter((text) => text.length > 0))('speak of the work and blame nobody: %s', (text) => {
    expect(text).not.toMatch(
      /\byou (?:did|forgot|used|made|should|always|never)\b|\bwrong\b|mistake|careless|invalid|please|sorry/i,
    );
  });
  it.each(slipMessages)('say what the value matches and ask: %s', (text) => {
    expect(text).toMatch(/^Your value matches .+\. .*\?/);
    expect(text.length).toBeLessThan(170);
  });
  it.each(
    (['notYet', 'farFromTarget', 'follows', 'needsRow', 'lookFirst', 'waitForRow', 'waitForTick'] as const).map(
      (name) => [name, remarks[name]] as const,
    ),
  )('begin with words of their own where they name no slip, so that they can be told: %s', (_, text) => {
    expect(text.split('{')[0]?.length).toBeGreaterThan(5);
  });
  it('of a row that waits all begin alike, whichever row it waits for', () => {
    const start = remarks.waitForRow.split('{')[0] ?? '';
    expect(remarks.waitForTick.startsWith(start)).toBe(true);
  });
  it('are all used by some quantity', () => {
    const used = new Set<string>(Object.values(quantities).flatMap(({ slips }) => slips.map(({ id }) => id)));
    const ofActivities = ['planned-for-made', 'mass-reported', 'flasks-compared', 'other-given-used', 'factors-added'];
    const others = [...ofActivities, 'power-of-ten'];
    expect(Object.keys(slipTexts).filter((id) => !used.has(id) && !others.includes(id))).toEqual([]);
  });
});
