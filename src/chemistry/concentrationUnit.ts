import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { longestUnit, unitNamed } from '../measurement/unit.ts';

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

/** What no symbol of mass, amount or volume says: shares. % w/v is g in 100 mL; ppm and ppb are by mass. */
const shares: readonly (ConcentrationUnit & { readonly spelling: RegExp })[] = [
  {
    symbol: '% w/v',
    kind: 'mass in volume',
    power: 1,
    spelling: /^(?:(?:%|percent)\(?[wm]\/v\)?|[wm]\/v(?:%|percent)|g\/100ml|g\/100cm3)$/,
  },
  { symbol: 'ppm', kind: 'mass in mass', power: -6, spelling: /^ppm(?:\(?(?:w\/w|m\/m|bymass)\)?)?$/ },
  { symbol: 'ppb', kind: 'mass in mass', power: -9, spelling: /^ppb(?:\(?(?:w\/w|m\/m|bymass)\)?)?$/ },
];
const percentByMass: ConcentrationUnit = { symbol: '% w/w', kind: 'mass in mass', power: -2 };

/** What a unit made of two symbols counts, with the power of ten from the default unit of `unitNamed` to that of the kind. */
const composed: Readonly<Record<string, { readonly kind: ConcentrationKind; readonly shift: number }>> = {
  concentration: { kind: 'amount in volume', shift: 0 },
  density: { kind: 'mass in volume', shift: 3 },
  molality: { kind: 'amount in solvent', shift: 0 },
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
  'mol/dm³',
  'g/dm³',
  'µg/L',
  'ng/mL',
  '% w/v',
  '% w/w',
  'ppm',
  'ppb',
  'mol/kg',
  'molal',
];

/** Reads a unit of concentration. Fails with `concentration-unit-unknown`, or `percent-unclear` for a bare percent sign. */
export function readConcentrationUnit(cell: CellValue, argument: string): Result<ConcentrationUnit> {
  const text = typeof cell === 'string' ? cell.trim() : '';
  const unit = unitNamed(text);
  // A bare percent sign says no kind; w/w, m/m, wt and “by mass” do.
  const isBarePercent = unit?.kind === 'percent' && !/[wm]/i.test(text);
  if (unit?.kind === 'percent' && !isBarePercent) return success(percentByMass);
  const made = unit && composed[unit.kind];
  if (unit && made) return success({ symbol: unit.symbol, kind: made.kind, power: unit.power + made.shift });
  if (text.length <= longestUnit) {
    const plain = text.normalize('NFKC').replace(/\s/g, '').toLowerCase();
    const share = shares.find(({ spelling }) => spelling.test(plain));
    if (share) return success({ symbol: share.symbol, kind: share.kind, power: share.power });
  }
  if (isBarePercent) {
    return failure({
      code: 'percent-unclear',
      argument,
      expected: '% w/w or % w/v',
      received: quoted(cell),
      advice: 'Type % w/w for grams in 100 g, or % w/v for grams in 100 mL.',
    });
  }
  return failure({
    code: 'concentration-unit-unknown',
    argument,
    expected: `one of ${concentrationUnits.join(', ')}`,
    received: quoted(cell),
  });
}
