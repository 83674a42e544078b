import { reagentMolarity } from '../../chemistry/reagentMolarity.ts';
import { gramsPerMillilitre, gramsPerMole, percent } from '../../measurement/quantity.ts';
import { quantity } from './quantity.ts';
import type { QuantityEntry } from './quantityEntry.ts';

export const reagentMolarityQuantity: QuantityEntry = quantity({
  name: 'reagent molarity',
  takes: [
    { name: 'formula', kind: 'formula', unit: '' },
    { name: 'mass percent', kind: 'percent', unit: '%' },
    { name: 'density', kind: 'density', unit: 'g/mL' },
  ],
  entryKind: 'concentration',
  unit: 'mol/L',
  figures: 3,
  wideClose: true,
  buildsOn: [{ name: 'molar mass' }],
  chemistry: (n) =>
    reagentMolarity({
      molarMass: gramsPerMole(n['molar mass']),
      massPercent: percent(n['mass percent']),
      density: gramsPerMillilitre(n.density),
    }),
  relation: (n) => (10 * n['mass percent'] * n.density) / n['molar mass'],
  slips: [
    { id: 'ratio-inverted', value: (n) => 10 * n['mass percent'] * n.density * n['molar mass'] },
    { id: 'density-divided', value: (n) => (10 * n['mass percent']) / n.density / n['molar mass'] },
    { id: 'percent-not-divided', value: (n) => (1000 * n['mass percent'] * n.density) / n['molar mass'] },
    { id: 'percent-left-out', value: (n) => (1000 * n.density) / n['molar mass'] },
    { id: 'density-ignored', value: (n) => (10 * n['mass percent']) / n['molar mass'] },
    { id: 'per-mL-not-L', value: (n) => (n['mass percent'] / 100) * (n.density / n['molar mass']) },
    { id: 'grams-per-litre', value: (n) => 10 * n['mass percent'] * n.density },
    { id: 'moles-in-100-g', value: (n) => n['mass percent'] / n['molar mass'] },
    {
      id: 'molality-reported',
      // Without any water there is no molality.
      value: (n) =>
        n['mass percent'] < 100 ? (1000 * n['mass percent']) / (100 - n['mass percent']) / n['molar mass'] : [],
    },
  ],
});
