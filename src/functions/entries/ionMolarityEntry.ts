import type { Formula } from '../../chemistry/formula.ts';
import { ionMolarity } from '../../chemistry/ionMolarity.ts';
import type { MolesPerLitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const ionMolarityEntry = {
  name: 'IONMOLARITY',
  arguments: [
    { name: 'formula', kind: 'formula' },
    { name: 'molarity', kind: 'concentration' },
    { name: 'ion', kind: 'text', about: 'the ion asked for, such as Mg2+ or Cl-' },
  ],
  call: cellByCell,
  compute: (formula: Formula, molarity: MolesPerLitre, ion: string) => ionMolarity({ formula, molarity, ion }),
} as const satisfies FunctionEntry;

export const ionMolarityHelp = {
  group: 'Making a solution',
  summary: 'Concentration of one ion in a solution of a salt, acid or base that dissociates completely.',
  about: { formula: 'formula of what is dissolved', molarity: 'concentration of the whole' },
  returns: 'mol/L of that ion, not rounded',
  source: 'list of strong electrolytes and of the usual ions, as for IONS',
  notes: [
    'The ion is looked for among those that the compound has, so Ca2+, Ca^2+, Ca²⁺ and Ca+2 are one, and H3O+ is H+.',
    'Calcium and barium hydroxide are taken only as far as they dissolve; a higher molarity is refused.',
  ],
  examples: [
    { call: ['MgCl2', 0.15, 'Cl-'], gives: 0.3 },
    { call: ['Al2(SO4)3', '20 mmol/L', 'Al+3'], gives: 0.04 },
    { call: ['HCl', 0.1, 'H3O+'], gives: 0.1 },
    { call: ['Ca(OH)2', 0.02, 'OH-'], gives: 0.04 },
  ],
  refuses: [
    {
      call: ['MgCl2', 0.15, 'Mg+'],
      says: '“Mg+” is not an ion of this substance. Type one of Mg²⁺, Cl⁻, with its charge.',
    },
  ],
} as const satisfies EntryHelp;
