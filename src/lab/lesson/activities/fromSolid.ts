import type { Activity, Given } from '../activity.ts';
import { commonGivens } from './commonGivens.ts';
import { ionStep } from './dilutionSteps.ts';
import { cautionsRead, chosen, ordered, told } from './sharedSteps.ts';
import { massStep, massWeighedStep, molarMassStep, molesStep, stockMadeStep } from './solidSteps.ts';

/** What sets one kind of solid apart from the next. */
interface SolidLesson {
  readonly id: string;
  readonly title: string;
  readonly aim: string;
  readonly extension: string;
  readonly formula: Given;
  readonly ion: Given;
  /** Given where the solid is not pure. */
  readonly purity?: Given;
  /** The formula has water of hydration. */
  readonly hydrate?: true;
  readonly question: string;
}

const fromSolid = ({ id, title, aim, extension, formula, ion, purity, hydrate, question }: SolidLesson): Activity => {
  const names = { molarity: 'molarity', volume: 'flask', ...(purity ? { purity: 'purity' } : {}) };
  const { molarity, flask } = commonGivens;
  return {
    id,
    title,
    aim,
    extension,
    givens: [formula, molarity, flask, ion, ...(purity ? [purity] : [])],
    numbers: {
      formula: 'formula',
      ion: 'ion',
      ...(hydrate ? { hydrate } : {}),
      recipe: 'solid in a flask',
      takes: { molarity: 'molarity', flask: 'flask', ...(purity ? { purity: 'purity' } : {}) },
    },
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
      massWeighedStep(),
      stockMadeStep(names),
      ionStep({ molarity: 'molarity', really: 'stock made', period: 1 }),
      chosen({ id: 'particles', title: 'What the particles do', question, period: 1 }),
      told({
        id: 'in your words',
        title: 'In your own words',
        shown: ['One sentence or a link: how do you know that your flask holds what its label says?'],
        period: 1,
      }),
    ],
  };
};

export const plainSolid = (): Activity =>
  fromSolid({
    id: 'solution from a solid',
    title: 'A solution from a solid',
    aim: 'Make a solution of a chosen molarity from a solid that is pure and dry.',
    extension: 'The flask was filled past its mark. Can the solution be saved, and how?',
    formula: { ...commonGivens.formula, about: 'solute as its bottle says' },
    ion: { ...commonGivens.ion, start: 'Br-' },
    question: 'portion strength',
  });

export const hydrateSolid = (): Activity =>
  fromSolid({
    id: 'solution from a hydrate',
    title: 'A solution from a hydrate',
    aim: 'Make a solution of a chosen molarity from crystals that hold water.',
    extension: 'The crystals lost some of their water in the jar. Is your solution stronger or weaker than planned?',
    formula: {
      ...commonGivens.formula,
      about: 'solute with its water of hydration, as in CuSO4·5H2O',
      start: 'CuSO4·5H2O',
    },
    ion: { ...commonGivens.ion, start: 'Cu^2+' },
    hydrate: true,
    question: 'crystal water',
  });

export const impureSolid = (): Activity =>
  fromSolid({
    id: 'solution from an impure solid',
    title: 'A solution from a solid that is not pure',
    aim: 'Make a solution of a chosen molarity from a solid of known purity.',
    extension: 'What would you need to know about the rest of the solid before you use the solution?',
    formula: { ...commonGivens.formula, start: 'Na2CO3' },
    ion: { ...commonGivens.ion, start: 'Na+' },
    purity: { ...commonGivens.purity, start: '94.5' },
    question: 'impure solid',
  });
