import type { Given } from '../activity.ts';

/** Givens that several activities share, in the words of the Plan. */
export const commonGivens = {
  formula: { name: 'formula', unit: '', about: 'solute as its bottle says, with water of hydration' },
  molarity: { name: 'molarity', unit: 'mol/L', about: 'concentration that is made' },
  stock: { name: 'stock molarity', unit: 'mol/L', about: 'concentration of the stock' },
  flask: { name: 'flask', unit: 'mL', about: 'volume of the flask that is filled' },
  target: { name: 'target molarity', unit: 'mol/L', about: 'concentration after the dilution' },
  volume: { name: 'target volume', unit: 'mL', about: 'volume after the dilution' },
  ion: { name: 'ion', unit: '', about: 'ion that is asked about' },
  purity: { name: 'purity', unit: '%', about: 'mass percent of solute in the solid' },
} as const satisfies Readonly<Record<string, Given>>;
