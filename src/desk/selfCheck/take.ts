import type { TrialAct, TrialChain, TrialFact } from '../../host/calls.ts';
import { withSeparator } from '../../workbook/formula.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Trial } from './finding.ts';

type Call = TrialChain['calls'][number];

export const inSheet = (...calls: readonly Call[]): TrialChain => ({ on: 'sheet', calls });
export const inFile = (...calls: readonly Call[]): TrialChain => ({ on: 'file', calls });
export const inApp = (...calls: readonly Call[]): TrialChain => ({ on: 'app', calls });
export const settled = inApp(['flush']);

/** Takes steps in the scratch sheet. A call that comes to nothing is a refusal of each of its steps. */
export function* take(...steps: readonly (TrialAct | TrialChain)[]): Work<readonly TrialFact[]> {
  const answer = yield* ask('tryHost', { steps });
  return answer.ok ? answer.value : steps.map(() => ({ ms: 0, refused: answer.problem.message }));
}

export type Cell = string | number | boolean;

/** Writes cells from a place on; formulas with the separator that this file takes. */
export function write(
  { separator }: Pick<Trial, 'separator'>,
  { at, format, cells }: { readonly at: string; readonly format: string; readonly cells: readonly (readonly Cell[])[] },
): TrialChain {
  const written = cells.map((line) =>
    line.map((cell) =>
      typeof cell === 'string' && cell.startsWith('=') && format !== '@' ? withSeparator(cell, separator) : cell,
    ),
  );
  return inSheet(['getRange', at], ['setNumberFormat', format], ['setValues', written]);
}

export const valuesAt = (at: string): TrialChain => inSheet(['getRange', at], ['getValues']);

/** Cells as they were read; a date is its moment. */
export function cellsOf(fact: TrialFact | undefined): readonly (readonly unknown[])[] {
  const { value } = fact ?? {};
  if (!Array.isArray(value)) return [];
  return value.map((line: unknown) => (Array.isArray(line) ? (line as unknown[]) : []));
}

/** A cell that the host has not worked out yet says so with dots at its end, in whatever language. */
const isLoading = (cell: unknown): boolean => typeof cell === 'string' && /(\.\.\.|…)$/.test(cell);

const mostLooks = 12;
const msBetween = 1500;

export interface Awaited {
  readonly cells: readonly (readonly unknown[])[];
  /** How long until nothing was loading any more, to a second or two. */
  readonly seconds: number;
  readonly isDone: boolean;
  /** Whether a look found some of them loading. */
  readonly wasLoading: boolean;
  readonly refused?: string;
}

/** Looks at cells until none is loading, each time in a run of its own, as results arrive between runs. */
export function* awaitCells(at: string): Work<Awaited> {
  let ms = 0;
  for (let look = 0; ; look += 1) {
    const wait: TrialChain = { on: 'tools', calls: [['sleep', look === 0 ? 0 : msBetween]] };
    const facts = yield* take(wait, settled, valuesAt(at));
    ms += facts.reduce((sum, fact) => sum + fact.ms, 0);
    const read = facts[2];
    const cells = cellsOf(read);
    const isDone = cells.length > 0 && !cells.some((line) => line.some(isLoading));
    if (isDone || read?.refused !== undefined || look + 1 >= mostLooks) {
      const seconds = Math.round(ms / 100) / 10;
      return {
        cells,
        seconds,
        isDone,
        wasLoading: look > 0,
        ...(read?.refused === undefined ? {} : { refused: read.refused }),
      };
    }
  }
}
