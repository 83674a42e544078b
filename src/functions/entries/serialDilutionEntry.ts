import { serialDilution } from '../../chemistry/serialDilution.ts';
import { success } from '../../errors/result.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { oneTable } from '../oneTable.ts';

export const serialDilutionEntry = {
  name: 'SERIALDILUTION',
  arguments: [
    { name: 'stock_molarity', kind: 'concentration' },
    { name: 'factor', kind: 'factor' },
    { name: 'stages', kind: 'whole number' },
    { name: 'final_volume', kind: 'volume', optional: true },
  ],
  columns: ['stage', 'mol/L', 'mL taken', 'mL of solvent'],
  call: oneTable,
  compute(stock: MolesPerLitre, factor: number, stages: number, finalVolume: Millilitres | undefined) {
    const series = serialDilution({ stock, factor, stages, finalVolume });
    if (!series.ok) return series;
    return success<Filled[][]>(
      series.value.map(({ stage, molarity, taken, solvent }) =>
        taken === undefined || solvent === undefined ? [stage, molarity] : [stage, molarity, taken, solvent],
      ),
    );
  },
} as const satisfies FunctionEntry;

export const serialDilutionHelp = {
  group: 'Diluting',
  summary: 'Concentrations of a serial dilution, with the volumes of each stage.',
  about: {
    stock_molarity: 'concentration of the stock',
    factor: 'how many times each stage is diluted, more than 1',
    stages: 'number of dilutions, one after the other',
    final_volume: 'final volume of each stage; adds the two columns of volumes',
  },
  returns: 'a table with a heading row, one row for each stage; the volumes are there if final_volume is given',
  source: 'definition of amount concentration, IUPAC Gold Book: the amount of solute stays the same',
  notes: ['Takes single cells. Volumes are taken as additive.'],
  examples: [
    {
      call: [0.5, 10, 2, 50],
      gives: [
        ['stage', 'mol/L', 'mL taken', 'mL of solvent'],
        [1, 0.05, 5, 45],
        [2, 0.005, 5, 45],
      ],
    },
    {
      call: [0.8, 2, 3],
      gives: [
        ['stage', 'mol/L'],
        [1, 0.4],
        [2, 0.2],
        [3, 0.1],
      ],
    },
  ],
  refuses: [
    {
      call: [0.5, '1:10', 3],
      says: '“1:10” could be a factor of 10 or 11. Type 10 for 10 parts in all, or 11 if that many are added.',
    },
    {
      call: [0.5, 0.1, 3],
      says: '0.1 can’t be a dilution factor: it must be above 1. Type how many times the volume grows at each stage, such as 10.',
    },
  ],
} as const satisfies EntryHelp;
