import type { ErrorCode } from '../errors/messages.ts';
import type { CellValue } from '../measurement/cellValue.ts';

/** What the host hands over for one argument: a cell, or a range as rows of cells. */
export type CellArgument = CellValue | readonly (readonly CellValue[])[];
/** What goes back: one cell, or a rectangle of cells that spills. */
export type CellResult = CellValue | CellValue[][];

export interface ArgumentEntry {
  /** As the contract has it, in snake_case. */
  readonly name: string;
  /** Unit of a bare number; empty for text. */
  readonly unit: string;
  readonly about: string;
  /** Type shown in the generated JSDoc. */
  readonly type: 'number' | 'string' | 'boolean' | 'range';
  readonly optional?: true;
}

export interface FunctionExample {
  readonly call: readonly CellArgument[];
  /** Left out where the result is a table that the reference shows in full. */
  readonly gives?: CellResult;
}

/** One public function. The host declaration, its JSDoc, the help in the formula line, the reference and tests come from it. */
export interface FunctionEntry {
  readonly name: string;
  readonly group:
    | 'Substances and amounts'
    | 'Making a solution'
    | 'Diluting'
    | 'Converting'
    | 'Measuring and comparing'
    | 'Checking';
  readonly summary: string;
  readonly arguments: readonly ArgumentEntry[];
  readonly returns: string;
  readonly errors: readonly ErrorCode[];
  readonly source: string;
  /** Anything its user must know besides, in one or two sentences. */
  readonly note?: string;
  readonly examples: readonly FunctionExample[];
  /** Reads cells, computes, gives cells back; throws an Error with the full text for bad single-cell input. */
  readonly call: (cells: readonly CellArgument[]) => CellResult;
}
