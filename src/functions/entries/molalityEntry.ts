import type { Formula } from '../../chemistry/formula.ts';
import { molality } from '../../chemistry/molality.ts';
import type { Grams } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';
import { withMolarMass } from '../withMolarMass.ts';

export const molalityEntry = {
  name: 'MOLALITY',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'grams', kind: 'mass' },
    { name: 'solvent_grams', kind: 'mass' },
  ],
  call: cellByCell,
  compute: (formula: Formula, mass: Grams, solventMass: Grams) =>
    withMolarMass(formula, (molarMass) => molality({ molarMass, mass, solventMass })),
} as const satisfies FunctionEntry;

export const molalityHelp = {
  group: 'Converting',
  summary: 'Molality of a solution from the masses of solute and solvent.',
  about: { formula: 'formula of the solute', grams: 'mass of solute', solvent_grams: 'mass of solvent' },
  returns: 'mol/kg of solvent, not rounded',
  source: 'definition of molality, IUPAC Gold Book',
  notes: ['For a hydrate, give the mass of water added; the water in the crystals is not counted as solvent.'],
  examples: [{ call: ['KBr', 11.90023, '250 g'], gives: 0.4 }],
  refuses: [
    {
      call: ['KBr', 11.9, 0],
      says: '0 g can’t be used for the mass of solvent: it must be above 0 g. Check its sign, and the cell it comes from.',
    },
  ],
} as const satisfies EntryHelp;
