import type { Activity } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { labelErrorStep } from './labelErrorStep.ts';
import { calculated, cautionsRead, chosen, measured, ordered, told } from './sharedSteps.ts';
import { massStep, molarMassStep, molesStep } from './solidSteps.ts';

const names = { molarity: 'molarity', volume: 'portion' };

const aim = 'Dry a portion of a solution, weigh what stays, and compare the molarity with the label.';

/** The concentration of what was made, from the salt that a dried portion leaves, and how far off it is. */
export const weighedResidue = (): Activity => ({
  id: 'weighed residue',
  title: 'A weighed residue: what did we really make?',
  aim,
  extension: 'Water is left in the residue. Does your molarity come out too high or too low, and why?',
  givens: [
    { ...commonGivens.formula, about: 'a salt that survives drying: NaCl, KCl, KBr, Na2SO4 or K2SO4' },
    { ...commonGivens.molarity, about: 'concentration on the label', start: '0.500' },
    { name: 'portion', unit: 'mL', about: 'volume that is dried', start: '25' },
  ],
  numbers: { formula: 'formula', recipe: 'dried portion', takes: { molarity: 'molarity', portion: 'portion' } },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', solid: true, molarity: 'molarity' } }),
    molarMassStep(),
    molesStep(names),
    { ...massStep(names), title: 'Mass that should stay' },
    ordered({ id: 'procedure', title: 'How to dry and weigh', procedure: 'weighed residue', period: 1 }),
    measured({
      id: 'residue weighed',
      title: 'Mass of the dry residue',
      unit: 'g',
      shown: ['The salt from ', { given: 'portion' }, ' mL, dried until two weighings agree.'],
      period: 1,
      expects: 'mass of solute',
      instrument: 'balance',
      tools: [{ tool: 'balance' }, { tool: 'pipette', volume: 'portion' }],
    }),
    calculated({
      id: 'molarity found',
      title: 'Molarity found',
      unit: 'mol/L',
      shown: ['Molarity from your residue, in ', { given: 'portion' }, ' mL.'],
      period: 1,
      quantity: 'molarity',
      takes: { formula: { given: 'formula' }, mass: { entryOf: 'residue weighed' }, volume: { given: 'portion' } },
      buildsOn: { 'molar mass': 'molar mass' },
    }),
    labelErrorStep(),
    chosen({ id: 'particles', title: 'What the particles do', question: 'portion strength', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: what may have made your result too high or too low?'],
      period: 1,
    }),
  ],
});
