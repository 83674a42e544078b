import { expect, it } from 'vitest';
import type { entries } from '../../src/functions/catalogue.ts';
import type { Values } from '../../src/functions/entry.ts';

/** Names of entries whose `compute` does not take what its arguments are read as. */
type Unfit = {
  [Place in keyof typeof entries]: (typeof entries)[Place] extends {
    readonly compute: (...values: infer Taken extends readonly unknown[]) => unknown;
  }
    ? Values<(typeof entries)[Place]['arguments']> extends Taken
      ? never
      : (typeof entries)[Place]['name']
    : 'no compute';
}[number];

it('computes from what its arguments are read as (held by the compiler)', () => {
  const unfit: [Unfit] extends [never] ? 'none' : Unfit = 'none';
  expect(unfit).toBe('none');
});
