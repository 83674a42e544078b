import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seed } from '../depth.ts';

const sources = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.ts$/.test(path))
  .map((path) => `tests/${path.replaceAll('\\', '/')}`);

/** Without what stands in quotes or in a comment: words about the clock ask for no time. */
const code = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '')
    .replace(/'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"/g, "''");

interface Rule {
  readonly about: string;
  readonly pattern: RegExp;
  /** Files that may, and why. */
  readonly but: Readonly<Record<string, string>>;
  /** What the rule must catch. */
  readonly planted: string;
}
const rules: readonly Rule[] = [
  {
    about: 'chance',
    pattern: /\bMath\.random\b|\brandomUUID\b|\brandomInt\b/,
    but: {},
    planted: 'pick(Math.random())',
  },
  {
    about: 'the time of day',
    pattern: /\bDate\.now\b|\bperformance\.now\b|\bhrtime\b/,
    but: {},
    planted: 'const from = performance.now();',
  },
  {
    about: 'a wait of fixed length',
    pattern: /\bwaitForTimeout\b|\bsetTimeout\b|\bsetInterval\b|\bsleep\b|timers\/promises/,
    but: { 'tests/sidebar/fakeHost.ts': 'answers after a while, as the host does; the tests wait for what it answers' },
    planted: 'await page.waitForTimeout(200);',
  },
  {
    about: 'a seed of its own for a property',
    pattern: /\bseed: \d[\d_]*[ ,}][^;]*\bnumRuns\b|\bnumRuns\b[^;{}]*,\s*seed\b|\bconfigureGlobal\b/,
    but: { 'tests/setup.ts': 'the one place that sets it' },
    planted: 'fc.assert(law, { numRuns: 1000, seed: 7 });',
  },
  {
    about: 'a number of cases that is the same in npm test and npm run deep',
    pattern: /\bnumRuns: \d/,
    but: {},
    planted: 'fc.assert(law, { numRuns: 1000 });',
  },
  {
    about: 'a page in the fonts of the machine',
    pattern: /\bnewPage\b|\bnewContext\b|\blaunchBrowser\(/,
    but: { 'tests/browser/browserPages.ts': 'opens every page, and brings the font' },
    planted: 'const page = await browser.newPage();',
  },
];

describe('no test asks for', () => {
  it.each(rules)('$about', ({ pattern, but, planted }) => {
    const asking = sources.filter((path) => !(path in but) && pattern.test(code(readFileSync(path, 'utf8'))));
    expect(asking).toEqual([]);
    expect(code(planted)).toMatch(pattern);
  });
  it('is looked for in all of them', () => {
    expect(sources.length).toBeGreaterThan(100);
    expect(sources).toContain('tests/tidy/waitsAndChance.test.ts');
  });
});

describe('properties', () => {
  it('draw from the seed of the run', () => {
    expect(fc.readConfigureGlobal().seed).toBe(seed);
  });
});
