import { success } from '../../errors/result.ts';
import { type GlasswareKind, glasswareTolerance } from '../../measurement/glasswareTolerance.ts';
import type { Millilitres } from '../../measurement/quantity.ts';
import { cellByCell } from '../cellByCell.ts';
import type { EntryHelp, FunctionEntry } from '../entry.ts';

export const glasswareToleranceEntry = {
  name: 'GLASSWARETOLERANCE',
  arguments: [
    {
      name: 'kind',
      kind: 'text',
      about: 'volumetric flask, volumetric pipette, graduated pipette, burette, graduated cylinder or beaker',
      oneOf: ['volumetric flask', 'volumetric pipette', 'graduated pipette', 'burette', 'graduated cylinder', 'beaker'],
      otherNames: {
        'measuring flask': 'volumetric flask',
        'graduated flask': 'volumetric flask',
        'standard flask': 'volumetric flask',
        'one-mark flask': 'volumetric flask',
        'bulb pipette': 'volumetric pipette',
        'transfer pipette': 'volumetric pipette',
        'one-mark pipette': 'volumetric pipette',
        'bulb pipet': 'volumetric pipette',
        'transfer pipet': 'volumetric pipette',
        'volumetric pipet': 'volumetric pipette',
        'measuring pipette': 'graduated pipette',
        'measuring pipet': 'graduated pipette',
        'graduated pipet': 'graduated pipette',
        buret: 'burette',
        'measuring cylinder': 'graduated cylinder',
      },
    },
    { name: 'volume', kind: 'volume' },
    {
      name: 'glass_class',
      kind: 'text',
      optional: true,
      oneOf: ['A', 'B'],
    },
    {
      name: 'standard',
      kind: 'text',
      optional: true,
      oneOf: ['ISO', 'ASTM'],
    },
  ],
  call: cellByCell,
  compute(
    kind: GlasswareKind,
    volume: Millilitres,
    glassClass: 'A' | 'B' | undefined,
    standard: 'ISO' | 'ASTM' | undefined,
  ) {
    const figure = glasswareTolerance({ kind, volume, glassClass, standard });
    return figure.ok ? success(figure.value.tolerance) : figure;
  },
} as const satisfies FunctionEntry;

export const glasswareToleranceHelp = {
  group: 'Measuring and comparing',
  summary:
    'Tolerance of a piece of glassware; ISO graduated pipettes and cylinders, ASTM burettes and some ASTM sizes are from memory.',
  about: { volume: 'nominal size', glass_class: 'A or B; A if left out', standard: 'ISO or ASTM; ISO if left out' },
  returns: '± mL, the half-width within which the true volume lies',
  source: 'ISO 1042, 648, 835, 385, 4788; ASTM E288, E969, E1293, E287, E1272',
  notes: [
    'Confirmed in a published table: ISO volumetric flasks, volumetric pipettes and burettes, and the ASTM figures not named below.',
    'From memory: ISO graduated pipettes and graduated cylinders; ASTM burettes, volumetric flasks of 5, 10, 200 and 500 mL, volumetric pipettes of 15 and 20 mL, graduated pipettes but for class A of 2, 5 and 10 mL, graduated cylinders of 1000 and 2000 mL.',
    'Beakers: 5 % of the size, common practice, no source; class and standard do not matter. A size that is not in the table is refused, and its neighbours are offered.',
    'Other names are known too: measuring cylinder, bulb pipette, transfer pipette, measuring flask, buret, pipet.',
  ],
  examples: [
    { call: ['volumetric flask', 250], gives: 0.15 },
    { call: ['volumetric pipette', '25 mL', 'B'], gives: 0.06 },
    { call: ['graduated cylinder', 100, 'A', 'ASTM'], gives: 0.5 },
    { call: ['bulb pipette', 25], gives: 0.03 },
  ],
  refuses: [
    {
      call: ['volumetric flask', 300],
      says: '300 mL is not a size of volumetric flask in ISO 1042. Take 250 mL (± 0.15 mL) or 500 mL (± 0.25 mL).',
    },
  ],
} as const satisfies EntryHelp;
