import type { Formula } from '../../chemistry/formula.ts';
import { reagentMolarity } from '../../chemistry/reagentMolarity.ts';
import type { GramsPerMillilitre, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const reagentMolarityEntry = {
  name: 'REAGENTMOLARITY',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'mass_percent', kind: 'percent' },
    { name: 'density', kind: 'density' },
  ],
  call: cellByCell,
  compute: (formula: Formula, massPercent: Percent, density: GramsPerMillilitre) =>
    withMolarMass(formula, (molarMass) => reagentMolarity({ molarMass, massPercent, density })),
} as const satisfies FunctionEntry;

export const reagentMolarityHelp = {
  group: 'Making a solution',
  summary: 'Concentration of a bottled reagent from its mass percent and density.',
  about: {
    formula: 'formula of the solute in the bottle',
    mass_percent: 'mass percent on the label; 37 means 37 %',
    density: 'density of the reagent',
  },
  returns: 'mol/L, not rounded',
  source: 'definition of amount concentration and mass fraction, IUPAC Gold Book',
  notes: [
    'A cell formatted as a percentage hands over a fraction, so a bare mass percent of 1 or less is refused; "0.9 %" is read as it stands.',
    'Concentrated reagents: read the safety data sheet, follow local rules, and leave the work to those trained for it.',
  ],
  examples: [{ call: ['HCl', '37 %', 1.18], gives: 11.97542377530308 }],
  refuses: [
    {
      call: ['HCl', '37.2 %', 1190],
      says: '1190 g/mL is not a likely density: solutions have 0.5 to 5 g/mL. Is it in kg/m³? Then type it with its unit, as in "1190 kg/m³".',
    },
    {
      call: ['HCl', 0.37, 1.18],
      says: '0.37 for the mass percent could be 0.37 % or 37 %. Type it as text with its sign, such as "98 %".',
    },
  ],
} as const satisfies EntryHelp;
