import type { Activity } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { type DilutionNames, factorStep, ionStep, stockVolumeStep, waterVolumeStep } from './dilutionSteps.ts';
import { cautionsRead, chosen, ordered, told } from './sharedSteps.ts';

const names: DilutionNames = {
  stock: { given: 'stock molarity' },
  target: 'target molarity',
  volume: 'target volume',
  period: 1,
};

const aim = 'Make a weaker solution from a stock, and say what is in the flask.';

/** A dilution of a stock that stands ready. */
export const dilutionAlone = (): Activity => ({
  id: 'dilution',
  title: 'A dilution',
  aim,
  extension: 'Is there a way to the same solution in two smaller dilutions, and when would that be better?',
  givens: [commonGivens.formula, commonGivens.stock, commonGivens.target, commonGivens.volume, commonGivens.ion],
  numbers: {
    formula: 'formula',
    ion: 'ion',
    recipe: 'ready stock diluted',
    takes: { stock: 'stock molarity', target: 'target molarity', volume: 'target volume' },
  },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', molarity: 'stock molarity' } }),
    factorStep(names),
    stockVolumeStep(names),
    waterVolumeStep(names),
    ordered({
      id: 'procedure',
      title: 'How to dilute',
      procedure: 'pipette to flask',
      handles: { formula: 'formula', molarity: 'stock molarity' },
      period: 1,
    }),
    ionStep({ molarity: 'target molarity', period: 1 }),
    chosen({ id: 'particles', title: 'What the particles do', question: 'dilution particles', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: what changed in the dilution, and what did not?'],
      period: 1,
    }),
  ],
});
