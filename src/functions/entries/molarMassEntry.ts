import type { Formula } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const molarMassEntry = {
  name: 'MOLARMASS',
  arguments: [{ name: 'formula', kind: 'formula', unit: '', about: 'formula as you write it, such as CuSO4·5H2O' }],
  call: cellByCell,
  compute: (formula: Formula) => molarMass(formula),
} as const satisfies FunctionEntry;

export const molarMassHelp = {
  group: 'Substances and amounts',
  summary: 'Molar mass of a substance from its formula.',
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
      says: 'Expected one reading of formula, received “Ca2+”, which could be Ca^2+ or Ca2^+. Write the charge after ^, as in Ca^2+.',
    },
    {
      call: ['Tc2O7'],
      says: 'Expected elements with a standard atomic weight, received Tc (technetium), which has no stable isotope and so no usual mixture in nature. Name the isotope you mean; the longest-lived is [97Tc].',
    },
    {
      call: ['2NaBr'],
      says: 'Expected a formula without a number before it, received “2NaBr”. A number in front counts formula units in an equation, not atoms in one unit: leave it out.',
    },
    {
      call: ['nacl'],
      says: 'Expected a formula with capital letters where symbols begin, received “nacl”. Did you mean NaCl?',
    },
    {
      call: ['H20'],
      says: 'Expected a formula with the letter O, received “H20”, with the digit 0 there. Did you mean H2O? If not, type the number as a subscript such as ₂₀.',
    },
    {
      call: ['Ca(OH2'],
      says: 'Expected “)” to close the bracket at character 3 of “Ca(OH2”, received the end of the text. Add the bracket, as in Ca(OH)2.',
    },
  ],
} as const satisfies EntryHelp;
