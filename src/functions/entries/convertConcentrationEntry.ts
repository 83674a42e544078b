import { type ConcentrationUnit, readConcentrationUnit } from '../../chemistry/concentrationUnit.ts';
import { conversionNeeds, convertConcentration } from '../../chemistry/convertConcentration.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { quoted } from '../../errors/quoted.ts';
import { type ChemError, failure } from '../../errors/result.ts';
import type { GramsPerMillilitre } from '../../measurement/quantity.ts';
import type { Measure } from '../../measurement/readMeasure.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const convertConcentrationEntry = {
  name: 'CONVERTCONCENTRATION',
  arguments: [
    { name: 'value', kind: 'measure' },
    { name: 'from', kind: 'text', about: 'its unit, such as g/L' },
    { name: 'to', kind: 'text', about: 'the unit wanted, such as mol/L' },
    { name: 'formula', kind: 'formula', optional: true },
    { name: 'density', kind: 'density', optional: true },
  ],
  call: cellByCell,
  compute(
    value: Measure,
    fromText: string,
    toText: string,
    formula: Formula | undefined,
    density: GramsPerMillilitre | undefined,
  ) {
    const from = readConcentrationUnit(fromText, 'from');
    if (!from.ok) return from;
    const to = readConcentrationUnit(toText, 'to');
    if (!to.ok) return to;
    const error = unitOfValue(value, from.value);
    if (error) return failure(error);
    const conversion = { value: value.number.value, from: from.value, to: to.value, density };
    if (formula === undefined || !conversionNeeds(from.value.kind, to.value.kind).formula) {
      return convertConcentration(conversion);
    }
    return withMolarMass(formula, (molarMass) => convertConcentration({ ...conversion, molarMass }));
  },
} as const satisfies FunctionEntry;

/** A value may repeat the unit in `from`, and a percent sign either of the two; any other unit is a slip to ask about. */
function unitOfValue({ number, unitTyped }: Measure, from: ConcentrationUnit): ChemError | undefined {
  if (unitTyped === '' || (/^(?:%|percent)$/i.test(unitTyped) && from.symbol.startsWith('%'))) return undefined;
  const own = readConcentrationUnit(unitTyped, 'value');
  if (own.ok && own.value.kind === from.kind && own.value.power === from.power) return undefined;
  return {
    code: 'unit-other-kind',
    argument: 'value',
    received: quoted(number.typed),
    advice: `Give a number in ${from.symbol}, or convert from its own unit.`,
    brief: `not in ${from.symbol}`,
  };
}

export const convertConcentrationHelp = {
  group: 'Converting',
  summary: 'A concentration in another unit.',
  about: {
    value: 'the number to convert; it may carry the unit of from',
    formula: 'formula of the solute; needed between amount and mass only',
    density: 'density of the solution; needed between a volume and a mass of solution only',
  },
  returns: 'the value in the unit wanted, not rounded',
  source: 'definitions of amount concentration, mass concentration, mass fraction and molality, IUPAC Gold Book',
  notes: [
    'Units: mol/L, M, mmol/L, mM, µmol/L, g/L, mg/L, mg/dL, g/dL, µg/mL, mol/dm³, g/dm³, µg/L, ng/mL, % w/v, % w/w, ppm, ppb (both by mass), mol/kg, molal; in words and with negative exponents too, such as mol dm-3.',
    'mol/kg counts kilograms of solvent. Capital M is mol/L.',
  ],
  examples: [
    { call: [0.9, '% w/v', 'g/L'], gives: 9 },
    { call: [5.950115, 'g/L', 'mol/L', 'KBr'], gives: 0.05 },
    { call: ['0.25 M', 'mol dm-3', 'mmol/L'], gives: 250 },
  ],
  refuses: [
    {
      call: ['5 g/L', 'mol/L', 'mmol/L'],
      says: '“5 g/L” can’t be used for the value. Give a number in mol/L, or convert from its own unit.',
    },
    {
      call: [5, 'g/L', 'mol/L'],
      says: 'Converting g/L to mol/L needs the molar mass. Give a formula such as KBr.',
    },
    {
      call: [5, '%', 'g/L'],
      says: '“%” could be % w/w or % w/v. Type % w/w for grams in 100 g, or % w/v for grams in 100 mL.',
    },
  ],
} as const satisfies EntryHelp;
