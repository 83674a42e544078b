import type { CellArgument } from '../../src/functions/entry.ts';

/** A call for the title of a test. */
export const callText = (name: string, call: readonly CellArgument[]): string =>
  `${name}(${call.map((argument) => JSON.stringify(argument)).join(', ')})`;
