import { dilutedVolume } from '../../chemistry/dilutedVolume.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const dilutedVolumeEntry = {
  name: 'DILUTEDVOLUME',
  arguments: [
    { name: 'stock_molarity', kind: 'concentration' },
    { name: 'stock_volume', kind: 'volume' },
    { name: 'target_molarity', kind: 'concentration' },
  ],
  call: cellByCell,
  compute: (stock: MolesPerLitre, stockVolume: Millilitres, target: MolesPerLitre) =>
    dilutedVolume({ stock, stockVolume, target }),
} as const satisfies FunctionEntry;

export const dilutedVolumeHelp = {
  group: 'Diluting',
  summary: 'Final volume to dilute a portion of stock to.',
  about: {
    stock_molarity: 'concentration of the stock',
    stock_volume: 'volume of stock taken',
    target_molarity: 'concentration wanted',
  },
  returns: 'mL final volume, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book: the amount of solute stays the same',
  notes: [],
  examples: [{ call: [2, 25, 0.5], gives: 100 }],
  refuses: [
    {
      call: [0.5, 25, 2],
      says: 'A target of 2 mol/L is not below the stock, 0.5 mol/L. Use a stronger stock, or swap the two cells.',
    },
  ],
} as const satisfies EntryHelp;
