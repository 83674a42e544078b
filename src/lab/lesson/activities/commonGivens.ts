import type { Given } from '../activity.ts';

/** Givens that several activities share, in the words of the Plan. */
export const commonGivens = {
  formula: { name: 'formula', unit: '', about: 'solute as its bottle says, with water of hydration', start: 'KBr' },
  molarity: { name: 'molarity', unit: 'mol/L', about: 'concentration that is made', start: '0.250' },
  stock: { name: 'stock molarity', unit: 'mol/L', about: 'concentration of the stock', start: '0.300' },
  flask: { name: 'flask', unit: 'mL', about: 'volume of the flask that is filled', start: '200' },
  target: { name: 'target molarity', unit: 'mol/L', about: 'concentration after the dilution', start: '0.0450' },
  volume: { name: 'target volume', unit: 'mL', about: 'volume after the dilution', start: '100' },
  ion: { name: 'ion', unit: '', about: 'ion that is asked about', start: 'Br-' },
  purity: { name: 'purity', unit: '%', about: 'mass percent of solute in the solid' },
} as const satisfies Readonly<Record<string, Given>>;
