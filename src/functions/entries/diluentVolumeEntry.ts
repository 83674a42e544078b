import { diluentVolume } from '../../chemistry/diluentVolume.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const diluentVolumeEntry = {
  name: 'DILUENTVOLUME',
  arguments: [
    { name: 'stock_molarity', kind: 'concentration' },
    { name: 'target_molarity', kind: 'concentration' },
    { name: 'target_volume', kind: 'volume' },
  ],
  call: cellByCell,
  compute: (stock: MolesPerLitre, target: MolesPerLitre, finalVolume: Millilitres) =>
    diluentVolume({ stock, target, finalVolume }),
} as const satisfies FunctionEntry;

export const diluentVolumeHelp = {
  group: 'Diluting',
  summary: 'Volume of solvent to add for a dilution, volumes taken as additive.',
  about: {
    stock_molarity: 'concentration of the stock',
    target_molarity: 'concentration wanted',
    target_volume: 'final volume wanted',
  },
  returns: 'mL of solvent, not rounded',
  source: 'definition of amount concentration, IUPAC Gold Book: the amount of solute stays the same',
  notes: ['Volumes are taken as additive. At the bench fill up to the mark instead.'],
  examples: [{ call: [2, 0.5, 100], gives: 75 }],
  refuses: [
    {
      call: [0.5, 2, 100],
      says: 'A target of 2 mol/L is not below the stock, 0.5 mol/L. Use a stronger stock, or swap the two cells.',
    },
  ],
} as const satisfies EntryHelp;
