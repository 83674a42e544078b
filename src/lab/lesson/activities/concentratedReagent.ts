import type { Activity } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { type DilutionNames, stockVolumeStep, waterVolumeStep } from './dilutionSteps.ts';
import { calculated, cautionsRead, chosen, ordered, told } from './sharedSteps.ts';
import { molarMassStep } from './solidSteps.ts';

const names: DilutionNames = {
  stock: { entryOf: 'reagent molarity' },
  target: 'target molarity',
  volume: 'target volume',
  period: 1,
};

const aim =
  'Work out how a concentrated acid or base is diluted, and in which order that is safe. Staff make the solution.';

/**
 * From a concentrated acid or base: students calculate and watch, staff make the solution, so that no text here sends a
 * student to the bottle, and none calls what is in it an acid. A new plan starts from hydrochloric acid of 37.2 % and
 * 1.18 g/mL, as a supplier’s table of concentrated reagents has it.
 */
export const concentratedReagent = (): Activity => ({
  id: 'concentrated reagent',
  title: 'A solution from a concentrated acid or base',
  aim,
  extension: 'The bottle stood open for a week. What may have gone out or come in, and how would you notice?',
  givens: [
    { ...commonGivens.formula, about: 'acid or base in the bottle', start: 'HCl' },
    { name: 'mass percent', unit: '%', about: 'mass percent on the label of the bottle', start: '37.2' },
    { name: 'density', unit: 'g/mL', about: 'density on the label of the bottle', start: '1.18' },
    { ...commonGivens.target, start: '0.500' },
    { ...commonGivens.volume, start: '250' },
  ],
  numbers: {
    formula: 'formula',
    recipe: 'reagent diluted',
    takes: { massPercent: 'mass percent', density: 'density', target: 'target molarity', volume: 'target volume' },
  },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', massPercent: 'mass percent', molarity: 'target molarity' } }),
    molarMassStep(),
    calculated({
      id: 'reagent molarity',
      title: 'Molarity in the bottle',
      unit: 'mol/L',
      shown: [
        'Molarity of ',
        { given: 'mass percent' },
        ' % ',
        { given: 'formula' },
        ' with a density of ',
        { given: 'density' },
        ' g/mL.',
      ],
      period: 1,
      quantity: 'reagent molarity',
      takes: {
        formula: { given: 'formula' },
        'mass percent': { given: 'mass percent' },
        density: { given: 'density' },
      },
      buildsOn: { 'molar mass': 'molar mass' },
    }),
    {
      ...stockVolumeStep(names),
      title: 'From the bottle',
      shown: [
        'Volume from the bottle for ',
        { given: 'target volume' },
        ' mL of ',
        { given: 'target molarity' },
        ' mol/L.',
      ],
      buildsOn: {},
      asks: { 'water-for-stock': 'Which of the two liquids holds the solute?' },
    },
    waterVolumeStep(names),
    ordered({ id: 'procedure', title: 'How to dilute it safely', procedure: 'concentrated to flask', period: 1 }),
    chosen({ id: 'particles', title: 'What the particles do', question: 'dilute acid', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: why does the water go in first?'],
      period: 1,
    }),
  ],
});
