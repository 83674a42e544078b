import { readConcentrationUnit } from '../../chemistry/concentrationUnit.ts';
import { conversionNeeds, convertConcentration } from '../../chemistry/convertConcentration.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { GramsPerMillilitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const convertConcentrationEntry = {
  name: 'CONVERTCONCENTRATION',
  arguments: [
    { name: 'value', kind: 'number', unit: '', about: 'the number to convert' },
    { name: 'from', kind: 'text', unit: '', about: 'its unit, such as g/L' },
    { name: 'to', kind: 'text', unit: '', about: 'the unit wanted, such as mol/L' },
    {
      name: 'formula',
      kind: 'formula',
      unit: '',
      about: 'formula of the solute; needed between amount and mass only',
      optional: true,
    },
    {
      name: 'density',
      kind: 'density',
      unit: 'g/mL',
      about: 'density of the solution; needed between a volume and a mass of solution only',
      optional: true,
    },
  ],
  call: cellByCell,
  compute(
    value: number,
    fromText: string,
    toText: string,
    formula: Formula | undefined,
    density: GramsPerMillilitre | undefined,
  ) {
    const from = readConcentrationUnit(fromText, 'from');
    if (!from.ok) return from;
    const to = readConcentrationUnit(toText, 'to');
    if (!to.ok) return to;
    const conversion = { value, from: from.value, to: to.value, density };
    if (formula === undefined || !conversionNeeds(from.value.kind, to.value.kind).formula) {
      return convertConcentration(conversion);
    }
    return withMolarMass(formula, (molarMass) => convertConcentration({ ...conversion, molarMass }));
  },
} as const satisfies FunctionEntry;

export const convertConcentrationHelp = {
  group: 'Converting',
  summary: 'A concentration in another unit.',
  returns: 'the value in the unit wanted, not rounded',
  source: 'definitions of amount concentration, mass concentration, mass fraction and molality, IUPAC Gold Book',
  notes: [
    'Units: mol/L, M, mmol/L, mM, µmol/L, g/L, mg/L, mg/dL, g/dL, µg/mL, % w/v, % w/w, ppm, ppb (both by mass), mol/kg.',
    'mol/kg counts kilograms of solvent. Capital M is mol/L.',
  ],
  examples: [
    { call: [0.9, '% w/v', 'g/L'], gives: 9 },
    { call: [5.950115, 'g/L', 'mol/L', 'KBr'], gives: 0.05 },
  ],
  refuses: [
    {
      call: [5, 'g/L', 'mol/L'],
      says: 'Expected a formula such as KBr for formula, received nothing. From g/L to mol/L the molar mass is needed: type it.',
    },
    {
      call: [5, '%', 'g/L'],
      says: 'Expected one kind of percentage for from, received “%”, which could be % w/w or % w/v. Type % w/w for grams in 100 g, or % w/v for grams in 100 mL.',
    },
  ],
} as const satisfies EntryHelp;
