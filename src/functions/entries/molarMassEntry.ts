import type { Formula } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const molarMassEntry = {
  name: 'MOLARMASS',
  arguments: [{ name: 'formula', kind: 'formula' }],
  call: cellByCell,
  compute: (formula: Formula) => molarMass(formula),
} as const satisfies FunctionEntry;

export const molarMassHelp = {
  group: 'Substances and amounts',
  summary: 'Molar mass of a substance from its formula.',
  about: { formula: 'formula as you write it, such as CuSO4·5H2O' },
  returns: 'g/mol, not rounded',
  source: 'standard atomic weights, IUPAC/CIAAW 2021 with the revisions of 2024',
  notes: [
    'Elements whose standard atomic weight is an interval are taken at its conventional value.',
    'Brackets of three kinds, hydrates after ·, •, *, ×, a point, a comma or an x between spaces, subscript digits, charges at the end, and isotopes such as [13C], D and T are read.',
  ],
  examples: [
    { call: ['KBr'], gives: 119.0023 },
    { call: ['CuSO4·5H2O'], gives: 249.677 },
    { call: ['CaSO4 x 1/2 H2O'], gives: 145.1415 },
    { call: [[['Ca(OH)2'], [''], ['D2O']]], gives: [[74.092], [''], [20.027203555688]] },
  ],
  refuses: [
    {
      call: ['Ca2+'],
      says: '“Ca2+” could be Ca^2+ or Ca2^+. Write the charge after ^, as in Ca^2+.',
    },
    {
      call: ['Tc2O7'],
      says: '“Tc” (technetium) has no standard atomic weight, as none of its isotopes is stable. Name the isotope you mean; the longest-lived is [97Tc].',
    },
    {
      call: ['2NaBr'],
      says: '“2NaBr” begins with a number. Leave it out: in an equation it counts formula units, but here one unit is meant.',
    },
    {
      call: ['nacl'],
      says: '“nacl” needs a capital letter where each symbol begins. Did you mean NaCl?',
    },
    {
      call: ['H20'],
      says: '“H20” has the digit 0 where a formula has the letter O. Did you mean H2O? If not, type the number as a subscript such as ₂₀.',
    },
    {
      call: ['Ca(OH2'],
      says: 'The bracket at character 3 of “Ca(OH2” is never closed. Add “)”, as in Ca(OH)2.',
    },
  ],
} as const satisfies EntryHelp;
