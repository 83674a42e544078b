import { expect, it } from 'vitest';
import { takesComma } from '../../src/workbook/takesComma.ts';

it.each([
  ['en_US', true],
  ['en_GB', true],
  ['en', true],
  // Decimal comma in the language data of some years and a point in others: it is tried.
  ['en_ZA', false],
  ['de_DE', false],
  ['fr', false],
])('%s leaves no doubt about the comma: %s', (locale, sure) => {
  expect(takesComma(locale)).toBe(sure);
});
