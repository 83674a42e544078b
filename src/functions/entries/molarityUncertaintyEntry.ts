import type { Formula } from '../../chemistry/formula.ts';
import { molarityUncertainty } from '../../chemistry/molarityUncertainty.ts';
import type { Grams, Millilitres, Percent } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const molarityUncertaintyEntry = {
  name: 'MOLARITYUNCERTAINTY',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'grams', kind: 'mass' },
    { name: 'volume', kind: 'volume' },
    { name: 'balance_tolerance', kind: 'mass' },
    { name: 'flask_tolerance', kind: 'volume' },
    { name: 'purity_percent', kind: 'percent', optional: true },
    { name: 'purity_tolerance', kind: 'percentage points', optional: true },
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
  about: {
    formula: 'formula of the solid, hydrate included',
    grams: 'mass of solid weighed',
    volume: 'volume of the flask',
    balance_tolerance: '± of one reading of the balance',
    flask_tolerance: '± of the flask',
    purity_percent: 'purity of the solid by mass; 100 % if left out',
    purity_tolerance: '± of the purity in percentage points; 0 if left out',
  },
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
