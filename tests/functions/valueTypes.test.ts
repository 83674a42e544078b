import { expect, it } from 'vitest';
import type { entries } from '../../src/functions/entries.ts';
import type { ArgumentEntry, Values } from '../../src/functions/entry.ts';

interface Computing {
  readonly name: string;
  readonly arguments: readonly ArgumentEntry[];
  readonly compute: (...values: never[]) => unknown;
}
/** The name of an entry whose `compute` does not take what its arguments are read as; never for one that does. */
type Unfit<Entry extends Computing> = Entry extends Computing
  ? Values<Entry['arguments']> extends Parameters<Entry['compute']>
    ? never
    : Entry['name']
  : never;

it('computes from what its arguments are read as (held by the compiler)', () => {
  // Assigning fails to compile as soon as one entry is unfit, and says which.
  const unfit: Unfit<(typeof entries)[number]>[] = [] satisfies never[];
  const none: never[] = unfit;
  expect(none).toEqual([]);
});
