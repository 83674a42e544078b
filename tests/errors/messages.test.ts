import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { argumentName, theArgument } from '../../src/errors/argumentName.ts';
import { errorText } from '../../src/errors/errorText.ts';
import { type ErrorCode, messages as table } from '../../src/errors/messages.ts';
import { quoted } from '../../src/errors/quoted.ts';
import type { ChemError } from '../../src/errors/result.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { cases } from '../depth.ts';
import { mistakes } from './mistakes.ts';
import { wellSaid } from './wellSaid.ts';

const messages = table();
/** Every error that was put into words here, by the functions, the lab and the Plan. */
const worded = vi.hoisted(() => [] as ChemError[]);
vi.mock('../../src/errors/errorText.ts', async (original) => {
  const real = await original<typeof import('../../src/errors/errorText.ts')>();
  const noting = (words: typeof real.errorText) => (error: ChemError) => {
    worded.push(error);
    return words(error);
  };
  return { errorText: noting(real.errorText), shortErrorText: noting(real.shortErrorText) };
});
/** What an error of a code carries, and no one would ever read. */
const unread = (error: { readonly code: ErrorCode }): string[] => {
  const { full, short } = messages[error.code];
  return ['expected', 'received', 'advice', 'brief'].filter(
    (text) => text in error && !`${full} ${short}`.includes(`{${text}}`),
  );
};
const source = new URL('../../src/', import.meta.url);
/** About 200 characters, and what a person typed, of which up to 60 are shown. */
const longest = 200 + 60;
/** The names of placeholders in a template, as a pattern of the sentences that it makes. */
const patternOf = (template: string): RegExp =>
  new RegExp(
    `^${template
      .split(/\{\w+\}/)
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('[\\s\\S]*')}$`,
    'i',
  );

describe('messages', () => {
  it('are sentences with places to fill, and a sign and few words in a range', () => {
    for (const [code, { full, short }] of Object.entries(messages)) {
      expect([code, full]).toEqual([code, expect.stringMatching(/\{received\}|\{the\}|\{advice\}|\{at\}/)]);
      expect([code, short]).toEqual([code, expect.stringMatching(/^⚠ \S/)]);
      expect(short.length).toBeLessThanOrEqual(45);
      expect(full.replace(/\{(argument|the|name|at|expected|received|advice|brief)\}/g, '')).not.toMatch(/[{}]/);
      expect(`${full} ${short}`.toLowerCase()).not.toMatch(/\binvalid\b|\bplease\b|\bexpected\b(?!\})|, received/);
    }
  });
  it('are all used, each from some source file', () => {
    const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter(
      (name) => name.endsWith('.ts') && !name.endsWith('messages.ts'),
    );
    const text = files.map((name) => readFileSync(new URL(name, source), 'utf8')).join('\n');
    expect(Object.keys(messages).filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });

  it('are all provoked below, through what people type', () => {
    expect(new Set(mistakes.map(({ code }) => code))).toEqual(new Set(Object.keys(messages)));
  });
  it.each(mistakes)(
    'say what is wrong, with what was typed, and what to do: $code, $typed',
    ({ code, typed, text }) => {
      expect(text).toMatch(wellSaid);
      expect(text).toMatch(patternOf(messages[code].full));
      expect(text.toLowerCase()).toContain(typed.toLowerCase());
      expect(text.length).toBeLessThanOrEqual(longest);
      expect(text).not.toMatch(/\{\w+\}|\s\s|undefined|\[object|\b[a-z]+_[a-z]+\b|[.:,]\.| ,/);
      expect(text.toLowerCase()).not.toMatch(/\binvalid\b|\bplease\b|^expected\b|, received\b/);
    },
  );
  it('show all that their errors carry', () => {
    expect(new Set(worded.map(({ code }) => code))).toEqual(new Set(Object.keys(messages)));
    expect(worded.map((error) => [error.code, ...unread(error)]).filter(([, ...texts]) => texts.length > 0)).toEqual(
      [],
    );
    const planted = { code: 'bracket-empty', argument: 'formula', received: '“()”', advice: 'Fill them.' } as const;
    expect(unread(planted)).toEqual(['received']);
  });
  it('take about 200 characters, and more only to list all quantities or what a shelf lacks', () => {
    const longer = mistakes.filter(({ text }) => text.length > 200).map(({ code }) => code);
    expect(new Set(longer)).toEqual(new Set(['numbers-shelf', 'quantity-unknown']));
  });
  it.each(catalogue.flatMap(({ name, refuses }) => refuses.map(({ says }) => [name, says] as const)))(
    'are shown in the reference of %s as they are: %s',
    (_, says) => {
      expect(says).toMatch(wellSaid);
      expect(says.length).toBeLessThanOrEqual(200);
    },
  );

  it('keep what was typed as it was: quotes, spaces, braces, dollars and letters of any script', () => {
    const typed = fc.string({
      unit: fc.constantFrom(...'aé数٣🧂"\'“”{argument}$&\\ <b>'.split(/(?:)/u)),
      minLength: 1,
      maxLength: 50,
    });
    fc.assert(
      fc.property(typed, (text) => {
        fc.pre(text.trim() !== '' && Array.from(text).length <= 50);
        const read = readNumber(text, 'measured');
        if (!read.ok) expect(errorText(read.error)).toContain(`“${text}”`);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('an argument in words', () => {
  it.each([
    ['target_volume', 'the target volume'],
    ['purity_percent', 'the purity'],
    ['from', 'the unit to convert from'],
    ['stock molarity', 'the stock molarity'],
    ['the setting “balance”', 'the setting “balance”'],
    ['line 5 of the Plan', 'line 5 of the Plan'],
    ['MOLARMASS', 'MOLARMASS'],
    ['constructor', 'the constructor'],
  ])('speaks of %s as %s', (argument, spoken) => {
    expect(theArgument(argument)).toBe(spoken);
  });
  it('has no underscore left in any argument of any function', () => {
    for (const { arguments: taken } of catalogue) {
      for (const { name } of taken) expect(argumentName(name)).toMatch(/^[a-z][a-z0-9 -]*$/);
    }
  });
});

describe('quoted', () => {
  it.each([
    ['text', '“text”'],
    ['  text ', '“  text ”'],
    [5, '5'],
    [0.1, '0.1'],
    [true, 'TRUE'],
    [false, 'FALSE'],
    ['', 'a blank cell'],
    ['  ', 'a blank cell'],
    [undefined, 'a blank cell'],
    [null, 'a blank cell'],
    [new Date(Date.UTC(2026, 0, 31)), 'the date 2026-01-31'],
    [new Date(Number.NaN), 'a date'],
    [{}, 'something that is neither text nor a number'],
  ])('shows %s as %s', (cell, shown) => {
    expect(quoted(cell)).toBe(shown);
  });
  it('leaves out the middle of very long text, and never half a character', () => {
    const long = '🧂'.repeat(500);
    expect(quoted(long)).toBe(`“${'🧂'.repeat(40)} … ${'🧂'.repeat(15)}”`);
    expect(quoted('x'.repeat(60))).toBe(`“${'x'.repeat(60)}”`);
    expect(quoted('x'.repeat(61)).length).toBeLessThan(62);
  });
});
