import type { Activity } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { calculated, cautionsRead, chosen, measured, ordered, told } from './sharedSteps.ts';
import { massStep, molarMassStep, molesStep } from './solidSteps.ts';

const names = { molarity: 'molarity', volume: 'flask' };
const aim = 'Make a solution at a real or simulated bench, read its molarity there, and say how far off it is.';

/** The concentration of what was made, as a bench shows it, simulated or real, and how far it is from the plan. */
export const benchReading = (): Activity => ({
  id: 'bench reading',
  title: 'A reading at the bench: what did we really make?',
  aim,
  extension: 'Your reading is off by a little. Which single slip at the bench would explain just that?',
  givens: [
    commonGivens.formula,
    { ...commonGivens.molarity, about: 'concentration that is planned' },
    commonGivens.flask,
  ],
  numbers: { formula: 'formula', recipe: 'solid in a flask', takes: { molarity: 'molarity', flask: 'flask' } },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', solid: true, molarity: 'molarity' } }),
    molarMassStep(),
    molesStep(names),
    massStep(names),
    ordered({
      id: 'procedure',
      title: 'How to make it',
      procedure: 'solid to flask',
      handles: { formula: 'formula', solid: true },
      period: 1,
    }),
    measured({
      id: 'molarity read',
      title: 'Molarity read at the bench',
      unit: 'mol/L',
      shown: ['What the bench shows for the solution in your ', { given: 'flask' }, ' mL flask, every figure of it.'],
      period: 1,
      expects: { given: 'molarity' },
      instrument: 'bench',
      tools: [{ tool: 'flask', volume: 'flask' }],
    }),
    calculated({
      id: 'percent error',
      title: 'Percent error',
      unit: '%',
      shown: ['How far your reading is from the ', { given: 'molarity' }, ' mol/L of the plan.'],
      period: 1,
      quantity: 'percent error',
      takes: { measured: { entryOf: 'molarity read' }, accepted: { given: 'molarity' } },
      buildsOn: {},
    }),
    chosen({ id: 'particles', title: 'What the particles do', question: 'portion strength', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: what may have made your reading too high or too low?'],
      period: 1,
    }),
  ],
});
