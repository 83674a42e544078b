import type { Formula } from '../../chemistry/formula.ts';
import { molarityUncertainty } from '../../chemistry/molarityUncertainty.ts';
import type { Grams, Millilitres, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const molarityUncertaintyEntry = {
  name: 'MOLARITYUNCERTAINTY',
  arguments: [
    { name: 'formula', kind: 'formula', unit: '', about: 'formula of the solid, hydrate included' },
    { name: 'grams', kind: 'mass', unit: 'g', about: 'mass of solid weighed' },
    { name: 'volume', kind: 'volume', unit: 'mL', about: 'volume of the flask' },
    { name: 'balance_tolerance', kind: 'mass', unit: 'g', about: '± of one reading of the balance' },
    { name: 'flask_tolerance', kind: 'volume', unit: 'mL', about: '± of the flask' },
    {
      name: 'purity_percent',
      kind: 'percent',
      unit: '%',
      about: 'purity of the solid by mass; 100 % if left out',
      optional: true,
    },
    {
      name: 'purity_tolerance',
      kind: 'percentage points',
      unit: 'percentage points',
      about: '± of the purity; 0 if left out',
      optional: true,
    },
  ],
  call: cellByCell,
  compute: (
    formula: Formula,
    mass: Grams,
    volume: Millilitres,
    balanceTolerance: Grams,
    flaskTolerance: Millilitres,
    purity: Percent | undefined,
    purityTolerance: Percent | undefined,
  ) =>
    withMolarMass(formula, (molarMass) =>
      molarityUncertainty({ molarMass, mass, volume, balanceTolerance, flaskTolerance, purity, purityTolerance }),
    ),
} as const satisfies FunctionEntry;

export const molarityUncertaintyHelp = {
  group: 'Measuring and comparing',
  summary: 'Standard uncertainty of a concentration made by weighing and filling up to a mark.',
  returns: 'standard uncertainty in mol/L, not rounded',
  source: 'JCGM 100:2008, 4.3.7 and 5.1.6 (clause numbers from memory)',
  notes: [
    'Tolerances are half-widths of rectangular distributions, taken as independent. The balance counts twice, for tare and load; atomic weights count as exact.',
  ],
  examples: [{ call: ['KBr', 7.14, 200, 0.01, 0.15], gives: 0.0003668295718678632 }],
  refuses: [
    {
      call: ['KBr', 7.14, 200, -0.01, 0.15],
      says: '-0.01 g can’t be used for the balance tolerance: it must be 0 g or more. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
