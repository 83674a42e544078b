import type { Formula } from '../../chemistry/formula.ts';
import { ions } from '../../chemistry/ions.ts';
import { success } from '../../errors/result.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { oneTable } from '../oneTable.ts';

export const ionsEntry = {
  name: 'IONS',
  arguments: [{ name: 'formula', kind: 'formula' }],
  columns: ['ion', 'number per formula unit', 'note'],
  call: oneTable,
  compute(formula: Formula) {
    const found = ions(formula);
    if (!found.ok) return found;
    const isNoted = found.value.some(({ note }) => note !== undefined);
    return success<Filled[][]>(
      found.value.map(({ ion, count, note = '' }) => (isNoted ? [ion, count, note] : [ion, count])),
    );
  },
} as const satisfies FunctionEntry;

export const ionsHelp = {
  group: 'Substances and amounts',
  summary: 'Ions that one formula unit gives in water.',
  about: { formula: 'formula of the substance that is dissolved' },
  returns: 'a table with a heading row, and a column of notes if there is something to note',
  source: 'list of strong electrolytes and of the usual ions; solubilities at 20 °C, CRC Handbook and from memory',
  notes: [
    'Strong electrolytes and salts of the usual ions, taken as completely dissociated. Water of hydration is never an ion; a molecular solute gives itself, once.',
    'A weak or sparingly soluble electrolyte (below 1 g in 100 g of water) is refused, except calcium and barium hydroxide, which are taken as far as they dissolve.',
  ],
  examples: [
    {
      call: ['MgCl2·6H2O'],
      gives: [
        ['ion', 'number per formula unit'],
        ['Mg²⁺', 1],
        ['Cl⁻', 2],
      ],
    },
    {
      call: ['H2SO4'],
      gives: [
        ['ion', 'number per formula unit', 'note'],
        ['H⁺', 2, 'the second step is partial: some HSO₄⁻ stays whole'],
        ['SO₄²⁻', 1, 'the second step is partial: some HSO₄⁻ stays whole'],
      ],
    },
  ],
  refuses: [
    {
      call: ['AgCl'],
      says: '“AgCl” hardly dissolves: less than 1 g in 100 g of water. Choose a salt that dissolves.',
    },
  ],
} as const satisfies EntryHelp;
