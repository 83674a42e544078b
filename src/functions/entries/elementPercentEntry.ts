import { elementPercent } from '../../chemistry/elementPercent.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const elementPercentEntry = {
  name: 'ELEMENTPERCENT',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'element', kind: 'text', about: 'symbol of the element, such as N, or of an isotope, such as D' },
  ],
  call: cellByCell,
  compute: (formula: Formula, element: string) => elementPercent(formula, element),
} as const satisfies FunctionEntry;

export const elementPercentHelp = {
  group: 'Substances and amounts',
  summary: 'Mass percent of one element in a substance.',
  about: { formula: 'formula as you write it, such as Ca(NO3)2' },
  returns: '% by mass, not rounded',
  source: 'standard atomic weights, IUPAC/CIAAW 2021 with the revisions of 2024',
  notes: ['An element counts with all of its isotopes; D, T or an isotope such as [13C] counts alone.'],
  examples: [
    { call: ['KBr', 'Br'], gives: 67.1449207284229 },
    { call: ['D2O', 'D'], gives: 20.11365962545447 },
  ],
  refuses: [
    {
      call: ['KBr', 'Cl'],
      says: '“Cl” is not in the formula. Choose one of K, Br.',
    },
  ],
} as const satisfies EntryHelp;
