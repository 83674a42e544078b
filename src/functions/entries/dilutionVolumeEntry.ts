import { stockVolume } from '../../chemistry/stockVolume.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const dilutionVolumeEntry = {
  name: 'DILUTIONVOLUME',
  arguments: [
    { name: 'stock_molarity', kind: 'concentration' },
    { name: 'target_molarity', kind: 'concentration' },
    { name: 'target_volume', kind: 'volume' },
  ],
  call: cellByCell,
  compute: (stock: MolesPerLitre, target: MolesPerLitre, finalVolume: Millilitres) =>
    stockVolume({ stock, target, finalVolume }),
} as const satisfies FunctionEntry;

export const dilutionVolumeHelp = {
  group: 'Diluting',
  summary: 'Volume of stock to measure out for a dilution.',
  about: {
    stock_molarity: 'concentration of the stock',
    target_molarity: 'concentration wanted',
    target_volume: 'final volume wanted',
  },
  returns: 'mL of stock, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book: the amount of solute stays the same',
  notes: [],
  examples: [
    { call: [2, 0.5, 100], gives: 25 },
    { call: ['6 M', '1500 mM', '0.25 L'], gives: 62.5 },
  ],
  refuses: [
    {
      call: [0.5, 2, 100],
      says: 'A target of 2 mol/L is not below the stock, 0.5 mol/L. Use a stronger stock, or swap the two cells.',
    },
  ],
} as const satisfies EntryHelp;
