import type { Activity, CalculatedStep } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { calculated, cautionsRead, chosen, ordered, told } from './sharedSteps.ts';

/** One flask of the row: the same portion of the flask before, made up to the same mark. */
const flaskStep = ({
  id,
  title,
  from,
}: {
  readonly id: string;
  readonly title: string;
  readonly from?: string;
}): CalculatedStep =>
  calculated({
    id,
    title,
    unit: 'mol/L',
    shown:
      from === undefined
        ? [
            { given: 'portion' },
            ' mL of ',
            { given: 'stock molarity' },
            ' mol/L stock, made up to ',
            { given: 'flask' },
            ' mL.',
          ]
        : [{ given: 'portion' }, ' mL from the flask before, made up to ', { given: 'flask' }, ' mL.'],
    period: 1,
    quantity: 'diluted molarity',
    takes: {
      'stock molarity': from === undefined ? { given: 'stock molarity' } : { entryOf: from },
      'stock volume': { given: 'portion' },
      'final volume': { given: 'flask' },
    },
    buildsOn: {},
  });

const aim = 'Dilute again and again, and follow what happens to the molarity.';

/** A stock diluted three times over, each flask from the one before. */
export const serialDilution = (): Activity => ({
  id: 'serial dilution',
  title: 'A serial dilution',
  aim,
  extension: 'After how many more flasks would fewer than one particle be left in each mL?',
  givens: [
    commonGivens.formula,
    commonGivens.stock,
    { name: 'portion', unit: 'mL', about: 'volume that is taken each time', start: '10' },
    { ...commonGivens.flask, about: 'volume that it is made up to each time', start: '100' },
  ],
  numbers: {
    formula: 'formula',
    recipe: 'serial flasks',
    takes: { stock: 'stock molarity', portion: 'portion', flask: 'flask' },
  },
  steps: [
    cautionsRead({ aim, substance: { formula: 'formula', molarity: 'stock molarity' } }),
    flaskStep({ id: 'first flask', title: 'Molarity in the first flask' }),
    flaskStep({ id: 'second flask', title: 'Molarity in the second flask', from: 'first flask' }),
    flaskStep({ id: 'third flask', title: 'Molarity in the third flask', from: 'second flask' }),
    ordered({
      id: 'procedure',
      title: 'How to dilute twice',
      procedure: 'serial dilution',
      handles: { formula: 'formula', molarity: 'stock molarity' },
      period: 1,
    }),
    chosen({ id: 'particles', title: 'What the particles do', question: 'last flask', period: 1 }),
    told({
      id: 'in your words',
      title: 'In your own words',
      shown: ['One sentence or a link: why not take a tiny portion once?'],
      period: 1,
    }),
  ],
});
