import type { Activity, Variant } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { type DilutionNames, factorStep, ionStep, stockVolumeStep, waterVolumeStep } from './dilutionSteps.ts';
import { calculated, cautionsRead, chosen, ordered, told } from './sharedSteps.ts';
import { massStep, massWeighedStep, molarMassStep, molesStep, type SolidNames, stockMadeStep } from './solidSteps.ts';

const solid: SolidNames = { molarity: 'stock molarity', volume: 'flask', purity: 'purity' };
const dilutionOf = (fromRealStock: boolean): DilutionNames => ({
  stock: fromRealStock ? { entryOf: 'stock made' } : { given: 'stock molarity' },
  target: 'target molarity',
  volume: 'target volume',
  period: 2,
});

const aim = 'Make a solution of a given molarity, dilute it, and say what is in the flask.';

/** The everyday lab: a stock solution from a solid in the first period, a dilution of it in the second. */
export function stockAndDilution({ fromRealStock }: Variant): Activity {
  const dilution = dilutionOf(fromRealStock);
  return {
    id: 'stock and dilution',
    title: 'A stock solution and its dilution',
    aim,
    extension: 'If two stocks are mixed in one flask, how would you find the molarity of the mixture?',
    givens: [
      commonGivens.formula,
      commonGivens.stock,
      { ...commonGivens.flask, about: 'volume of stock that is made' },
      commonGivens.target,
      commonGivens.volume,
      commonGivens.ion,
      { ...commonGivens.purity, optional: true },
    ],
    numbers: {
      formula: 'formula',
      ion: 'ion',
      recipe: 'solid, then a dilution',
      takes: {
        stock: 'stock molarity',
        flask: 'flask',
        purity: 'purity',
        target: 'target molarity',
        volume: 'target volume',
      },
    },
    steps: [
      cautionsRead({ aim, substance: { formula: 'formula', solid: true, molarity: 'stock molarity' } }),
      molarMassStep(),
      molesStep(solid),
      massStep(solid),
      ordered({
        id: 'stock procedure',
        title: 'How to make the stock',
        procedure: 'solid to flask',
        handles: { formula: 'formula', solid: true },
        period: 1,
      }),
      massWeighedStep(),
      stockMadeStep(solid, 'Molarity of your stock'),
      factorStep(dilution),
      stockVolumeStep(dilution),
      waterVolumeStep(dilution),
      ordered({
        id: 'dilution procedure',
        title: 'How to dilute',
        procedure: 'pipette to flask',
        handles: { formula: 'formula', molarity: 'stock molarity' },
        period: 2,
      }),
      calculated({
        id: 'diluted molarity',
        title: 'Molarity after dilution',
        unit: 'mol/L',
        shown: ['From the stock you really made and the stock you take, in ', { given: 'target volume' }, ' mL.'],
        period: 2,
        quantity: 'diluted molarity',
        takes: {
          'stock molarity': { entryOf: 'stock made' },
          'stock volume': { entryOf: 'stock volume' },
          'final volume': { given: 'target volume' },
        },
        buildsOn: {},
      }),
      ionStep({ molarity: 'target molarity', really: 'diluted molarity', period: 2 }),
      chosen({ id: 'particles', title: 'What the particles do', question: 'dilution particles', period: 2 }),
      told({
        id: 'in your words',
        title: 'In your own words',
        shown: ['One sentence or a link: what changed in the dilution, and what did not?'],
        period: 2,
      }),
    ],
  };
}
