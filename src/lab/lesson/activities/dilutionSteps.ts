import type { CalculatedStep } from '../activity.ts';
import { calculated } from './sharedSteps.ts';

/** Where the numbers of a dilution come from, and when it is done. */
export interface DilutionNames {
  readonly stock: { readonly given: string } | { readonly entryOf: string };
  readonly target: string;
  readonly volume: string;
  readonly period: 1 | 2;
}

const stockShown = ({ stock }: DilutionNames) =>
  'given' in stock ? [{ given: stock.given }, ' mol/L stock'] : ['the stock whose molarity you found'];

const dilutionTaken = ({ stock, target, volume }: DilutionNames) => ({
  'stock molarity': stock,
  'target molarity': { given: target },
  'target volume': { given: volume },
});

export const factorStep = (names: DilutionNames): CalculatedStep =>
  calculated({
    id: 'dilution factor',
    title: 'Dilution factor',
    unit: '',
    shown: [
      'How many times larger the volume gets, from ',
      ...stockShown(names),
      ' to ',
      { given: names.target },
      ' mol/L.',
    ],
    period: names.period,
    quantity: 'dilution factor',
    takes: { 'stock molarity': names.stock, 'target molarity': { given: names.target } },
    buildsOn: {},
  });

export const stockVolumeStep = (names: DilutionNames): CalculatedStep =>
  calculated({
    id: 'stock volume',
    title: 'Stock volume needed',
    unit: 'mL',
    shown: [
      'Volume of ',
      ...stockShown(names),
      ' for ',
      { given: names.volume },
      ' mL of ',
      { given: names.target },
      ' mol/L.',
    ],
    period: names.period,
    quantity: 'stock volume',
    takes: dilutionTaken(names),
    buildsOn: { 'dilution factor': 'dilution factor' },
  });

export const waterVolumeStep = (names: DilutionNames): CalculatedStep =>
  calculated({
    id: 'water volume',
    title: 'Water to add (about)',
    unit: 'mL',
    shown: ['About how much of the ', { given: names.volume }, ' mL is water.'],
    period: names.period,
    quantity: 'water volume',
    takes: dilutionTaken(names),
    buildsOn: { 'stock volume': 'stock volume' },
    // Nothing here may say that the stock is in before the water: where it heats the water, that is the wrong way round.
    asks: {
      'stock-for-water': 'Stock and water share the flask. How much of it is left for water?',
      'final-volume-for-water': 'What shares the flask with the water?',
    },
  });

/**
 * Molarity of one ion in a solution whose molarity is given.
 *
 * @param really - Row that holds the molarity which the team's own solution really has: worked from that it is right too.
 */
export const ionStep = ({
  molarity,
  really,
  period,
}: {
  readonly molarity: string;
  readonly really?: string;
  readonly period: 1 | 2;
}): CalculatedStep =>
  calculated({
    id: 'ion molarity',
    title: 'Molarity of one ion',
    unit: 'mol/L',
    shown: ['Molarity of ', { given: 'ion' }, ' in ', { given: molarity }, ' mol/L ', { given: 'formula' }, '.'],
    period,
    quantity: 'ion molarity',
    takes: { formula: { given: 'formula' }, molarity: { given: molarity }, ion: { given: 'ion' } },
    buildsOn: really === undefined ? {} : { molarity: really },
  });
