import type { CalculatedStep, MeasuredStep } from '../activity.ts';
import { calculated, measured, purityShown } from './sharedSteps.ts';

/** Names of the givens that a solution from a solid is worked from; `purity` is left out where it is always 100 %. */
export interface SolidNames {
  readonly molarity: string;
  readonly volume: string;
  readonly purity?: string;
}

const purityTaken = ({ purity }: SolidNames) => (purity === undefined ? {} : { purity: { given: purity } });
const purityPieces = ({ purity }: SolidNames) => (purity === undefined ? [] : [{ ...purityShown, given: purity }]);

export const molarMassStep = (): CalculatedStep =>
  calculated({
    id: 'molar mass',
    title: 'Molar mass',
    unit: 'g/mol',
    shown: ['Molar mass of ', { given: 'formula' }, '.'],
    period: 1,
    quantity: 'molar mass',
    takes: { formula: { given: 'formula' } },
    buildsOn: {},
  });

export const molesStep = ({ molarity, volume }: SolidNames): CalculatedStep =>
  calculated({
    id: 'moles of solute',
    title: 'Moles of solute',
    unit: 'mol',
    shown: ['Amount in ', { given: volume }, ' mL of ', { given: molarity }, ' mol/L solution.'],
    period: 1,
    quantity: 'moles of solute',
    takes: { molarity: { given: molarity }, volume: { given: volume } },
    buildsOn: {},
  });

export const massStep = (names: SolidNames): CalculatedStep =>
  calculated({
    id: 'mass of solute',
    title: 'Mass to weigh',
    unit: 'g',
    shown: [
      'Mass of ',
      { given: 'formula' },
      ' for ',
      { given: names.volume },
      ' mL of ',
      { given: names.molarity },
      ' mol/L solution.',
      ...purityPieces(names),
    ],
    period: 1,
    quantity: 'mass of solute',
    takes: {
      formula: { given: 'formula' },
      molarity: { given: names.molarity },
      volume: { given: names.volume },
      ...purityTaken(names),
    },
    buildsOn: { 'molar mass': 'molar mass', 'moles of solute': 'moles of solute' },
  });

export const massWeighedStep = (): MeasuredStep =>
  measured({
    id: 'mass weighed',
    title: 'Mass you weighed',
    unit: 'g',
    shown: ['What the balance shows for your solid, every figure.'],
    period: 1,
    expects: 'mass of solute',
    instrument: 'balance',
  });

/** @param title - For a lesson in which the solution is the stock of another. */
export const stockMadeStep = (names: SolidNames, title = 'Molarity of your solution'): CalculatedStep =>
  calculated({
    id: 'stock made',
    title,
    unit: 'mol/L',
    shown: ['From the mass you weighed, in ', { given: names.volume }, ' mL.', ...purityPieces(names)],
    period: 1,
    quantity: 'molarity',
    takes: {
      formula: { given: 'formula' },
      mass: { entryOf: 'mass weighed' },
      volume: { given: names.volume },
      ...purityTaken(names),
    },
    buildsOn: { 'molar mass': 'molar mass' },
  });
