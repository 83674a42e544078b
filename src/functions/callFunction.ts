import { entries } from './entries.ts';
import type { CellArgument, CellResult, FunctionEntry } from './entry.ts';

/**
 * Runs a public function as a cell does: a value for one cell, or a rectangle that spills.
 * Throws an Error whose message says what was expected, what was received and what to do.
 */
export function callFunction(name: string, cells: readonly CellArgument[]): CellResult {
  const known: readonly FunctionEntry[] = entries;
  const entry = known.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`No function is called ${name}.`);
  return entry.call(cells);
}
