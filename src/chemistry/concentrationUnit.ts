import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';

/**
 * What a unit of concentration counts: amount in a volume of solution, mass in a volume of solution, mass in a mass of
 * solution, or amount in a mass of solvent.
 */
export type ConcentrationKind = 'amount in volume' | 'mass in volume' | 'mass in mass' | 'amount in solvent';

export interface ConcentrationUnit {
  readonly symbol: string;
  readonly kind: ConcentrationKind;
  /** How much of the kind's own unit (mol/L, g/L, g/g, mol/kg) it is: `10 ** power`. */
  readonly power: number;
}

/** Each unit with its power of ten; the definitions are the symbols themselves, % w/v is g in 100 mL. */
const units: Readonly<Record<ConcentrationKind, Readonly<Record<string, number>>>> = {
  'amount in volume': { 'mol/L': 0, M: 0, 'mmol/L': -3, mM: -3, 'µmol/L': -6, µM: -6 },
  'mass in volume': { 'g/L': 0, 'mg/L': -3, 'mg/dL': -2, 'g/dL': 1, 'µg/mL': -3, 'mg/mL': 0, '% w/v': 1 },
  'mass in mass': { '% w/w': -2, ppm: -6, ppb: -9 },
  'amount in solvent': { 'mol/kg': 0 },
};

/** The units that the reference and messages list. */
export const concentrationUnits: readonly string[] = [
  'mol/L',
  'M',
  'mmol/L',
  'mM',
  'µmol/L',
  'g/L',
  'mg/L',
  'mg/dL',
  'g/dL',
  'µg/mL',
  '% w/v',
  '% w/w',
  'ppm',
  'ppb',
  'mol/kg',
];

/** One spelling of a unit; the normal form has turned each sign for micro into the Greek letter. */
const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[\s()]/g, '')
    .replace('μ', 'u')
    .replace(/l/g, 'L')
    .replace(/(w\/[wv]|m\/[mv])%/, '%$1')
    .replace('%m/m', '%w/w')
    .replace('%m/v', '%w/v');

/** Reads a unit of concentration. Fails with `concentration-unit-unknown`, or `percent-unclear` for a bare percent sign. */
export function readConcentrationUnit(cell: CellValue, argument: string): Result<ConcentrationUnit> {
  const wanted = plain(String(cell));
  for (const kind of Object.keys(units) as ConcentrationKind[]) {
    for (const [symbol, power] of Object.entries(units[kind])) {
      if (plain(symbol) === wanted) return success({ symbol, kind, power });
    }
  }
  if (wanted === '%') {
    return failure({
      code: 'percent-unclear',
      argument,
      expected: 'one kind of percentage',
      received: `${quoted(cell)}, which could be % w/w or % w/v`,
      advice: 'Type % w/w for grams in 100 g, or % w/v for grams in 100 mL.',
    });
  }
  return failure({
    code: 'concentration-unit-unknown',
    argument,
    expected: `one of ${concentrationUnits.join(', ')}`,
    received: quoted(cell),
    advice: 'Type one of those units.',
  });
}
