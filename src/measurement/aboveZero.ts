import { quoted } from '../errors/quoted.ts';
import type { ChemError } from '../errors/result.ts';

export interface NamedNumber {
  readonly value: number;
  /** Name of the argument as the sheet shows it. */
  readonly argument: string;
  /** Unit to show beside what was received; empty for a pure number. */
  readonly unit: string;
}

const shown = ({ value, unit }: NamedNumber): string => (unit === '' ? quoted(value) : `${quoted(value)} ${unit}`);

/** The first of some numbers that is not above zero, as an error `not-above-zero`; undefined where all are. */
export function notAboveZero(...numbers: readonly NamedNumber[]): ChemError | undefined {
  const found = numbers.find(({ value }) => !(value > 0 && Number.isFinite(value)));
  if (found === undefined) return undefined;
  return {
    code: 'not-above-zero',
    argument: found.argument,
    expected: found.unit === '' ? 'above 0' : `above 0 ${found.unit}`,
    received: shown(found),
    advice: 'Check its sign, and the cell it comes from.',
  };
}

/** The first of some numbers that is below zero, as an error `below-zero`; undefined where none is. */
export function belowZero(...numbers: readonly NamedNumber[]): ChemError | undefined {
  const found = numbers.find(({ value }) => !(value >= 0 && Number.isFinite(value)));
  if (found === undefined) return undefined;
  return {
    code: 'below-zero',
    argument: found.argument,
    expected: found.unit === '' ? '0 or more' : `0 ${found.unit} or more`,
    received: shown(found),
    advice: 'Check its sign, and the cell it comes from.',
  };
}
