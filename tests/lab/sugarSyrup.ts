import { commonGivens } from '../../src/lab/lesson/activities/commonGivens.ts';
import { calculated, cautionsRead, told } from '../../src/lab/lesson/activities/sharedSteps.ts';
import {
  massStep,
  massWeighedStep,
  molarMassStep,
  molesStep,
  stockMadeStep,
} from '../../src/lab/lesson/activities/solidSteps.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';

const aim = 'Make a sugar syrup of a chosen molarity, and say how far off the plan it is.';
const names = { molarity: 'molarity', volume: 'flask' };

export const sugarSyrup = (): Activity => ({
  id: 'sugar syrup',
  title: 'A sugar syrup',
  aim,
  extension: 'How would you make a syrup half as strong from this one?',
  givens: [
    { ...commonGivens.formula, start: 'C12H22O11' },
    { ...commonGivens.molarity, start: '0.350' },
    commonGivens.flask,
  ],
  numbers: { formula: 'formula', recipe: 'solid in a flask', takes: { molarity: 'molarity', flask: 'flask' } },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', solid: true, molarity: 'molarity' } }),
    molarMassStep(),
    molesStep(names),
    massStep(names),
    massWeighedStep(),
    stockMadeStep(names),
    calculated({
      id: 'percent error',
      title: 'Percent error',
      unit: '%',
      shown: ['How far your syrup is from the ', { given: 'molarity' }, ' mol/L of the plan.'],
      period: 1,
      quantity: 'percent error',
      takes: { measured: { entryOf: 'stock made' }, accepted: { given: 'molarity' } },
      buildsOn: {},
    }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence: what is in each mL of your syrup?'],
      period: 1,
    }),
  ],
});
