import { dilutedMolarity } from '../../chemistry/dilutedMolarity.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const dilutionMolarityEntry = {
  name: 'DILUTIONMOLARITY',
  arguments: [
    { name: 'stock_molarity', kind: 'concentration' },
    { name: 'stock_volume', kind: 'volume' },
    { name: 'final_volume', kind: 'volume' },
  ],
  call: cellByCell,
  compute: (stock: MolesPerLitre, stockVolume: Millilitres, finalVolume: Millilitres) =>
    dilutedMolarity({ stock, stockVolume, finalVolume }),
} as const satisfies FunctionEntry;

export const dilutionMolarityHelp = {
  group: 'Diluting',
  summary: 'Concentration after a dilution.',
  about: {
    stock_molarity: 'concentration of the stock',
    stock_volume: 'volume of stock taken',
    final_volume: 'volume after filling up',
  },
  returns: 'mol/L after the dilution, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book: the amount of solute stays the same',
  notes: [],
  examples: [{ call: [2, '25.00 mL', 100], gives: 0.5 }],
  refuses: [
    {
      call: [2, 100, 25],
      says: 'A final volume of 25 mL is less than the stock taken, 100 mL. Filling up only adds volume: swap the two cells, or check their units.',
    },
  ],
} as const satisfies EntryHelp;
