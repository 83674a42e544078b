// Makes the table of the trade's units from mathjs's own definitions, so that nobody keeps conversion factors by hand.
import { all, create } from 'mathjs';

if (!all) throw new Error('mathjs has no functions.');
const math = create(all);

/** Kind → default unit, and each spelling with the expression that mathjs reads for it. */
const wanted: Readonly<Record<string, { readonly base: string; readonly units: Readonly<Record<string, string>> }>> = {
  volume: {
    base: 'mL',
    units: { L: 'L', dL: 'dL', cL: 'cL', mL: 'mL', µL: 'uL', 'dm³': 'dm^3', 'cm³': 'cm^3', 'm³': 'm^3' },
  },
  mass: { base: 'g', units: { kg: 'kg', g: 'g', mg: 'mg', µg: 'ug', ng: 'ng' } },
  amount: { base: 'mol', units: { kmol: 'kmol', mol: 'mol', mmol: 'mmol', µmol: 'umol' } },
  concentration: {
    base: 'mol/L',
    units: {
      'mol/L': 'mol/L',
      'mmol/L': 'mmol/L',
      'mol/dm³': 'mol/dm^3',
      M: 'mol/L',
      mM: 'mmol/L',
      µM: 'umol/L',
      'µmol/L': 'umol/L',
    },
  },
  density: { base: 'g/mL', units: { 'g/mL': 'g/mL', 'g/cm³': 'g/cm^3', 'kg/m³': 'kg/m^3' } },
};

/** The factor as a decimal text; all of these are whole powers of ten, which is checked. */
function factor(from: string, base: string): string {
  const value = math.number(math.unit(1, from), base);
  const power = Math.round(Math.log10(value));
  if (Math.abs(value / 10 ** power - 1) > 1e-12) throw new Error(`1 ${from} is ${value} ${base}, not a power of ten.`);
  return `1e${power}`;
}

export function unitsSource(): string {
  const kinds = Object.entries(wanted).map(([kind, { base, units }]) => {
    const rows = Object.entries(units).map(([spelling, expression]) => {
      const plain = spelling.normalize('NFKC');
      return [spelling, factor(expression, base), ...(plain === spelling ? [] : [plain])].join('|');
    });
    return `  ${kind}: '${rows.join(' ')}',`;
  });
  return [
    '// Generated from the unit definitions of mathjs by `npm run build`; edit scripts/generate/units.ts instead.',
    '',
    '/** By kind: each unit with its factor to the default unit of the kind, as decimal text, and its plain spelling. */',
    'export const unitTable = {',
    ...kinds,
    '} as const;',
    '',
  ].join('\n');
}
