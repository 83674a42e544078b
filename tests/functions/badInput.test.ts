import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { argumentName } from '../../src/errors/argumentName.ts';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { CellArgument } from '../../src/functions/entry.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { callText } from './callText.ts';

const messageOf = (name: string, call: readonly CellArgument[]): string => {
  try {
    return `no error, but ${JSON.stringify(callFunction(name, call))}`;
  } catch (error) {
    return (error as Error).message;
  }
};
const rowsOf = (count: number, cell: string | number) => Array.from({ length: count }, () => [cell]);

interface Refusal {
  readonly name: string;
  readonly call: readonly CellArgument[];
  readonly says: string;
  /** What stands in its place where the first argument that is not fit comes in a range. */
  readonly inRange?: { readonly call: readonly CellArgument[]; readonly says: string };
}
const refusals: readonly Refusal[] = [
  {
    name: 'MOLARMASS',
    call: ['nacl'],
    says: '“nacl” needs a capital letter where each symbol begins. Did you mean NaCl?',
    inRange: { call: [[['nacl'], ['KBr']]], says: '⚠ NaCl?' },
  },
  {
    name: 'MOLARMASS',
    call: ['Ca(OH2'],
    says: 'The bracket at character 3 of “Ca(OH2” is never closed. Add “)”, as in Ca(OH)2.',
    inRange: { call: [[['Ca(OH2'], ['KBr']]], says: '⚠ formula: “)” missing' },
  },
  {
    name: 'SOLUTEMASS',
    call: ['KBr', 0.3, '2.5 kg'],
    says: '“2.5 kg”, a mass, can’t be used for the volume. Give a volume such as 200 mL.',
    inRange: { call: ['KBr', 0.3, [['2.5 kg'], [1]]], says: '⚠ volume, not kg' },
  },
  {
    name: 'PERCENTERROR',
    call: ['1,234', 1.25],
    says: '“1,234” for the measured value could be 1234 or 1.234. Type the one you mean.',
    inRange: { call: [[['1,234'], [1]], 1.25], says: '⚠ 1234 or 1.234?' },
  },
  {
    name: 'DILUTIONVOLUME',
    call: [0.5, 2, 100],
    says: 'A target of 2 mol/L is not below the stock, 0.5 mol/L. Use a stronger stock, or swap the two cells.',
    inRange: { call: [[[0.5], [3]], 2, 100], says: '⚠ target not below stock' },
  },
  {
    name: 'MOLES',
    call: [rowsOf(8, 'KBr'), rowsOf(4, 1)],
    says: 'These ranges don’t fit each other: 8 rows for the formula and 4 rows for the mass. Make both cover the same rows, or give one cell.',
  },
];

describe('bad input', () => {
  it.each(refusals.map((one) => ({ ...one, text: callText(one.name, one.call).slice(0, 60) })))(
    '$text is answered with what is wrong and what to do',
    ({ name, call, says, inRange }) => {
      expect(messageOf(name, call)).toBe(says);
      if (inRange) expect((callFunction(name, inRange.call) as unknown[][])[0]).toEqual([inRange.says]);
    },
  );

  it('names the argument that is missing, for every required one of every function', () => {
    for (const { name, arguments: taken, examples } of catalogue) {
      taken.forEach(({ name: argument, optional, kind }, place) => {
        if (optional || kind === 'entry' || kind === 'column' || kind === 'row') return;
        const call = examples[0].call.map((cell, at) => (at === place ? undefined : cell));
        const message = messageOf(name, call);
        expect(message.toLowerCase()).toContain(argumentName(argument));
        expect(message).toMatch(wellSaid);
      });
    }
  });

  /** A date made in the world of a script, as the host's are: no instance of this world's Date. */
  const foreignDate = runInNewContext('new Date(2026, 0, 31)') as Date;
  it('refuses dates and Booleans where a number or a formula belongs, and never reads 1 or a serial number', () => {
    expect(foreignDate).not.toBeInstanceOf(Date);
    const fussy = new Set(['yes or no', 'entry', 'row', 'column', 'table']);
    for (const { name, arguments: taken, examples } of catalogue) {
      taken.forEach(({ name: argument, kind }, place) => {
        if (fussy.has(kind)) return;
        for (const cell of [foreignDate, new Date(0), true, false]) {
          const call = taken.map((_, at) => (at === place ? cell : examples[0].call[at]));
          const message = messageOf(name, call);
          expect(message, `${name} ${argument}`).toMatch(wellSaid);
          expect(message.toLowerCase()).toContain(argumentName(argument));
        }
      });
    }
  });
  it('calls a date or a Boolean in an entry unreadable', () => {
    expect(callFunction('CHECKENTRY', [foreignDate, 1])).toEqual([['unreadable', expect.any(String)]]);
    expect(callFunction('CHECKENTRY', [true, 1])).toEqual([['unreadable', expect.any(String)]]);
  });
  it('passes on that another cell has failed', () => {
    expect(messageOf('MOLES', ['KBr', '#N/A'])).toBe(
      'The cell for the mass holds the error “#N/A”. Mend that one first.',
    );
    expect(messageOf('MOLARMASS', ['#DIV/0!'])).toBe(
      'The cell for the formula holds the error “#DIV/0!”. Mend that one first.',
    );
  });
  it('refuses more arguments than it takes, so that none is passed over in silence', () => {
    expect(messageOf('MOLARMASS', ['KBr', 'KI'])).toBe('MOLARMASS got 2 arguments and takes one. Give only formula.');
    expect(callFunction('MOLARMASS', ['KBr', ''])).toBeCloseTo(119.0023, 10);
  });
  it('refuses a result that no number can hold', () => {
    expect(messageOf('MOLES', ['KBr', '1e308 kg'])).toMatch(wellSaid);
    expect(messageOf('PERCENTERROR', ['1e308', '1e-308'])).toMatch(wellSaid);
  });
});

describe('percentage cells', () => {
  it.each([
    { name: 'SOLUTEMASS', call: ['KBr', 0.3, 200, 0.98], argument: 'the purity' },
    { name: 'MOLARITY', call: ['KBr', 7.14, 200, 1], argument: 'the purity' },
    { name: 'SOLUTIONVOLUME', call: ['KBr', 7.14, 0.3, 0.5], argument: 'the purity' },
    { name: 'REAGENTMOLARITY', call: ['HCl', 0.37, 1.18], argument: 'the mass percent' },
  ])('$name shows both readings of a bare number of 1 or less', ({ name, call, argument }) => {
    const message = messageOf(name, call);
    const typed = String(call.find((cell) => typeof cell === 'number' && cell <= 1 && cell !== 0.3));
    expect(message).toContain(argument);
    expect(message).toContain(`${typed} %`);
    expect(message).toContain(`${Number(typed) * 100} %`);
  });
  it('reads text with its sign as it stands', () => {
    const whole = callFunction('SOLUTEMASS', ['KBr', 0.3, 200]) as number;
    expect(callFunction('SOLUTEMASS', ['KBr', 0.3, 200, '0.5 %'])).toBeCloseTo(whole * 200, 6);
    expect(callFunction('SOLUTEMASS', ['KBr', 0.3, 200, '50%'])).toBeCloseTo(whole * 2, 10);
    expect(callFunction('SOLUTEMASS', ['KBr', 0.3, 200, 50])).toBeCloseTo(whole * 2, 10);
    expect(callFunction('REAGENTMOLARITY', ['HCl', '0.9 %', 1])).toBeCloseTo(9 / 36.458, 3);
  });
  it('refuses more than 100 %', () => {
    expect(messageOf('SOLUTEMASS', ['KBr', 0.3, 200, 101])).toMatch(/^101 % can’t be used for the purity: /);
    expect(messageOf('REAGENTMOLARITY', ['HCl', 137, 1.18])).toMatch(/^137 % can’t be used for the mass percent: /);
  });
});

describe('decimal commas', () => {
  it.each([
    { name: 'PERCENTERROR', call: ['0,291', '0,3'], gives: 3 },
    { name: 'DILUTIONVOLUME', call: ['2,0 M', '0,5', '1.000,0 mL'], gives: 250 },
    { name: 'DILUTIONVOLUME', call: ['2', '0,500', '1,000,000 µL'], gives: 250 },
    { name: 'SIGFIGS', call: ['86,002'], gives: 5 },
    { name: 'SIGFIGS', call: ['0,0750'], gives: 3 },
    { name: 'MOLES', call: ['KBr', '23,80046 g'], gives: 0.2 },
  ])('$name reads $call', ({ name, call, gives }) => {
    expect(callFunction(name, call)).toBeCloseTo(gives, 10);
  });
  it.each([
    { name: 'MOLES', call: ['KBr', '1,234 g'], both: ['1234', '1.234'] },
    { name: 'DILUTIONVOLUME', call: [2, 0.5, '1,000'], both: ['1000', '1.000'] },
  ])('$name shows both readings of $call', ({ name, call, both }) => {
    for (const reading of both) expect(messageOf(name, call)).toContain(reading);
  });
});
