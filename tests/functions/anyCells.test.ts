import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { CellArgument } from '../../src/functions/entry.ts';
import { cases } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';

const likely = fc.constantFrom(
  'KBr',
  'CuSO4·5H2O',
  'Ca(OH)2',
  'nacl',
  'Ca2+',
  'Cl-',
  '0.300',
  '200 mL',
  '2.5 kg',
  '98 %',
  '1,234',
  '0,5',
  '−3',
  '1e400',
  '=1+1',
  '#N/A',
  '',
  ' ',
  'mass of solute',
  'stock volume',
  'formula',
  'molarity',
  'volume',
  'mol/L',
  'g/L',
  'even',
  'TRUE',
  '__proto__',
  'constructor',
  '((((',
  '½',
  '🧂',
);
const cell = fc.oneof(
  { weight: 6, arbitrary: likely },
  fc.string({ maxLength: 12 }),
  fc.double(),
  fc.integer({ min: -3, max: 400 }),
  fc.boolean(),
  fc.date({ noInvalidDate: false }),
  fc.constantFrom(undefined, null),
);
const range = fc
  .record({ rows: fc.integer({ min: 1, max: 4 }), columns: fc.integer({ min: 1, max: 3 }) })
  .chain(({ rows, columns }) =>
    fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  );
const argument = fc.oneof({ weight: 3, arbitrary: cell }, range) as fc.Arbitrary<CellArgument>;

function isRectangle(cells: unknown): boolean {
  const fits = (value: unknown) =>
    typeof value === 'string' || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value));
  if (!Array.isArray(cells)) return fits(cells);
  const [first] = cells;
  return (
    Array.isArray(first) &&
    first.length > 0 &&
    cells.every((row) => Array.isArray(row) && row.length === first.length && row.every(fits))
  );
}

const isDeliberate = (error: unknown): boolean =>
  error instanceof Error && error.name === 'Error' && wellSaid.test(error.message);

describe.each(catalogue.map((entry) => ({ entry, name: entry.name })))('$name', ({ entry }) => {
  it('answers any cells with a rectangle or with an error that says what is wrong and what to do, and with nothing else', () => {
    fc.assert(
      fc.property(fc.array(argument, { maxLength: entry.arguments.length }), (call) => {
        let found: unknown;
        try {
          found = callFunction(entry.name, call);
        } catch (error) {
          if (!isDeliberate(error)) throw error;
          return;
        }
        expect(isRectangle(found), JSON.stringify(found)).toBe(true);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('leaves what it was given as it was', () => {
    const [{ call }] = entry.examples;
    const before = JSON.stringify(call);
    callFunction(entry.name, call);
    expect(JSON.stringify(call)).toBe(before);
  });
});
