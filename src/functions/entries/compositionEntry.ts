import { composition } from '../../chemistry/composition.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { success } from '../../errors/result.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { oneTable } from '../oneTable.ts';

export const compositionEntry = {
  name: 'COMPOSITION',
  arguments: [{ name: 'formula', kind: 'formula' }],
  columns: ['element', 'atoms', 'g/mol', 'mass percent'],
  call: oneTable,
  compute(formula: Formula) {
    const parts = composition(formula);
    if (!parts.ok) return parts;
    return success<Filled[][]>(parts.value.map(({ element, atoms, mass, percent }) => [element, atoms, mass, percent]));
  },
} as const satisfies FunctionEntry;

export const compositionHelp = {
  group: 'Substances and amounts',
  summary: 'Elements of a substance with their number, mass and mass percent.',
  about: { formula: 'formula as you write it, such as Ca(NO3)2' },
  returns: 'a table with a heading row; the mass is atoms × atomic weight, the percentages add up to 100',
  source: 'standard atomic weights, IUPAC/CIAAW 2021 with the revisions of 2024',
  notes: ['Takes one cell.'],
  examples: [
    {
      call: ['KBr'],
      gives: [
        ['element', 'atoms', 'g/mol', 'mass percent'],
        ['K', 1, 39.0983, 32.85507927157711],
        ['Br', 1, 79.904, 67.1449207284229],
      ],
    },
  ],
  refuses: [
    {
      call: [[['KBr'], ['KI']]],
      says: 'Give one cell for the formula, not 2 rows. COMPOSITION fills a whole table, so call it once for each value.',
    },
  ],
} as const satisfies EntryHelp;
