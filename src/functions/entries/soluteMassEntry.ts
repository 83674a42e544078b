import type { Formula } from '../../chemistry/formula.ts';
import { soluteMass } from '../../chemistry/soluteMass.ts';
import type { Millilitres, MolesPerLitre, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const soluteMassEntry = {
  name: 'SOLUTEMASS',
  arguments: [
    {
      name: 'formula',
      kind: 'formula',
    },
    { name: 'molarity', kind: 'concentration' },
    { name: 'volume', kind: 'volume' },
    { name: 'purity_percent', kind: 'percent', optional: true },
  ],
  call: cellByCell,
  compute: (formula: Formula, molarity: MolesPerLitre, volume: Millilitres, purity: Percent | undefined) =>
    withMolarMass(formula, (molarMass) => soluteMass({ molarMass, molarity, volume, purity })),
} as const satisfies FunctionEntry;

export const soluteMassHelp = {
  group: 'Making a solution',
  summary: 'Mass of solid to weigh out for a solution.',
  about: {
    formula: 'formula of the solid as it stands in the bottle, hydrate included',
    molarity: 'concentration wanted',
    volume: 'volume of solution wanted',
    purity_percent: 'purity of the solid by mass; 100 % if left out',
  },
  returns: 'g to weigh, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book',
  notes: ['A cell formatted as a percentage hands over a fraction, so a bare purity of 1 or less is refused.'],
  examples: [
    { call: ['KBr', 0.3, 200], gives: 7.140138 },
    { call: ['KBr', '0.3 M', '0.2 L', '98 %'], gives: 7.285855102040816 },
  ],
  refuses: [
    {
      call: ['KBr', 0.3, 200, 0.98],
      says: '0.98 for the purity could be 0.98 % or 98 %. Type it as text with its sign, such as "98 %".',
    },
    {
      call: ['KBr', 0.3, '2.5 kg'],
      says: '“2.5 kg”, a mass, can’t be used for the volume. Give a volume such as 200 mL.',
    },
  ],
} as const satisfies EntryHelp;
