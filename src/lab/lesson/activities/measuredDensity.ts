import type { Activity } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { labelErrorStep } from './labelErrorStep.ts';
import { calculated, cautionsRead, chosen, measured, ordered, told } from './sharedSteps.ts';
import { molarMassStep } from './solidSteps.ts';

const aim = 'Weigh a portion of a solution, find its molarity from its density, and compare it with the label.';

const about = (what: string, line: string) =>
  `${what} of the ${line} line in a table of densities; left empty, our table at 20 °C fills it in`;

const lines = {
  'lighter percent': { given: 'lighter percent' },
  'lighter density': { given: 'lighter density' },
  'heavier percent': { given: 'heavier percent' },
  'heavier density': { given: 'heavier density' },
} as const;

/**
 * Densities differ by few percent where molarities differ by many, so only a tenth of the usual allowance for technique
 * counts: 0.2 % of the mass for 2 % (common practice, no source, for a portion delivered with care).
 */
const techniqueShare = 0.1;

/** The concentration of what was made, from the mass of a pipetted portion and a table of densities. */
export const measuredDensity = (): Activity => ({
  id: 'measured density',
  title: 'A measured density: what did we really make?',
  aim,
  extension: 'Your solution was warmer than the table says. Does the molarity come out too high or too low, and why?',
  givens: [
    {
      ...commonGivens.formula,
      about: 'solute in the table of densities, written without water of hydration',
      start: 'C12H22O11',
    },
    { ...commonGivens.molarity, about: 'concentration on the label', start: '0.500' },
    { name: 'portion', unit: 'mL', about: 'volume that is pipetted and weighed', start: '25' },
    { name: 'lighter percent', unit: '%', about: about('mass percent', 'lighter'), fromTable: true },
    { name: 'lighter density', unit: 'g/mL', about: about('density', 'lighter'), fromTable: true },
    { name: 'heavier percent', unit: '%', about: about('mass percent', 'heavier'), fromTable: true },
    { name: 'heavier density', unit: 'g/mL', about: about('density', 'heavier'), fromTable: true },
  ],
  numbers: {
    formula: 'formula',
    recipe: 'portion for density',
    takes: {
      molarity: 'molarity',
      portion: 'portion',
      lighterPercent: 'lighter percent',
      lighterDensity: 'lighter density',
      heavierPercent: 'heavier percent',
      heavierDensity: 'heavier density',
    },
  },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', molarity: 'molarity' } }),
    molarMassStep(),
    ordered({ id: 'procedure', title: 'How to weigh a portion', procedure: 'weighed portion', period: 1 }),
    measured({
      id: 'portion weighed',
      title: 'Mass of the portion',
      unit: 'g',
      shown: ['What ', { given: 'portion' }, ' mL of your solution weigh, every figure that the balance shows.'],
      period: 1,
      expects: {
        expected: 'mass of portion',
        takes: {
          formula: { given: 'formula' },
          molarity: { given: 'molarity' },
          volume: { given: 'portion' },
          ...lines,
        },
      },
      instrument: 'balance',
      tools: [{ tool: 'balance' }, { tool: 'pipette', volume: 'portion' }],
      techniqueShare,
      hints: 'portion',
    }),
    calculated({
      id: 'density',
      title: 'Density',
      unit: 'g/mL',
      shown: ['Mass of one mL, from your ', { given: 'portion' }, ' mL. Give it to as many decimals as the table has.'],
      period: 1,
      quantity: 'density',
      takes: { mass: { entryOf: 'portion weighed' }, volume: { given: 'portion' } },
      buildsOn: {},
    }),
    calculated({
      id: 'mass percent',
      title: 'Mass percent',
      unit: '%',
      shown: [
        'In the table mass percent ',
        { given: 'lighter percent' },
        ' has ',
        { given: 'lighter density' },
        ' g/mL, and ',
        { given: 'heavier percent' },
        ' has ',
        { given: 'heavier density' },
        ' g/mL. Which one goes with your density, on a straight line?',
      ],
      period: 1,
      quantity: 'mass percent',
      takes: { density: { entryOf: 'density' }, ...lines },
      buildsOn: {},
    }),
    calculated({
      id: 'molarity found',
      title: 'Molarity found',
      unit: 'mol/L',
      shown: ['Molarity of ', { given: 'formula' }, ' from your mass percent and your density.'],
      period: 1,
      quantity: 'reagent molarity',
      takes: {
        formula: { given: 'formula' },
        'mass percent': { entryOf: 'mass percent' },
        density: { entryOf: 'density' },
      },
      buildsOn: { 'molar mass': 'molar mass' },
    }),
    labelErrorStep(),
    chosen({ id: 'particles', title: 'What the particles do', question: 'portion strength', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: what may have made your density too high or too low?'],
      period: 1,
    }),
  ],
});
