import type { Question } from './question.ts';

/** Dilute and weak are different things. Holds for acids that come apart completely as well as for those that do not. */
export const diluteAcid: Question = {
  name: 'dilute acid',
  stem: [
    'The ',
    { given: 'formula' },
    ' from the bottle now has ',
    { given: 'target molarity' },
    ' mol/L. What did the water do?',
  ],
  right: {
    id: 'spread out',
    text: ['It spread the acid out. It is the same acid, and fewer particles of it are in each mL.'],
    reply: 'Yes: dilute says how crowded. Strong and weak say how far an acid comes apart.',
  },
  others: [
    {
      id: 'used up',
      text: ['It used up most of the acid.'],
      reply: 'If the acid were used up, what would have taken its place?',
    },
    {
      id: 'neutral',
      text: ['It made the acid neutral, so no care is needed.'],
      reply: 'Would you leave the goggles off? What is still in the flask?',
    },
    {
      id: 'another acid',
      text: ['It turned it into another, weaker kind of acid.'],
      reply: 'Does the word weak tell you how much water there is, or what the acid itself does?',
    },
  ],
  hints: [
    'Keep two words apart: dilute and weak.',
    'Dilution changes how many particles are in each mL. Does it change what they are?',
    ['Each litre in the flask now holds ', { given: 'target molarity' }, ' mol. Where did they come from?'],
  ],
};
