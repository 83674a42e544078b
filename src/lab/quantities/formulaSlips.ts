import type { FormulaSlip } from './quantityEntry.ts';
import {
  bracketNumberOnOneAtom,
  bracketNumbersDropped,
  oneSubscriptMissed,
  oneWater,
  symbolsCountedOnce,
  waterNumberOnOneAtom,
  withoutWater,
} from './wrongAtoms.ts';

/** Slips in a molar mass; every quantity that is worked from one shares them. */
export const formulaSlips: readonly FormulaSlip[] = [
  { id: 'water-of-hydration-left-out', molarMasses: (formula) => withoutWater(formula).map((atoms) => ({ atoms })) },
  { id: 'one-water-only', molarMasses: (formula) => oneWater(formula).map((atoms) => ({ atoms })) },
  {
    id: 'water-number-on-one-atom',
    molarMasses: (formula) => waterNumberOnOneAtom(formula).map((atoms) => ({ atoms })),
  },
  {
    id: 'group-subscript-ignored',
    molarMasses: (formula) => bracketNumbersDropped(formula).map((atoms) => ({ atoms })),
  },
  {
    id: 'bracket-number-on-one-atom',
    molarMasses: (formula) => bracketNumberOnOneAtom(formula).map((atoms) => ({ atoms })),
  },
  { id: 'subscripts-ignored', molarMasses: (formula) => symbolsCountedOnce(formula).map((atoms) => ({ atoms })) },
  { id: 'one-subscript-missed', molarMasses: (formula) => oneSubscriptMissed(formula).map((atoms) => ({ atoms })) },
  { id: 'atomic-numbers-used', molarMasses: ({ atoms }) => [{ atoms, byAtomicNumber: true }] },
];
