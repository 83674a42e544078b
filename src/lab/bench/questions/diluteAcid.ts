import type { Question } from './question.ts';

/**
 * Dilute and weak are different things. Holds for acids and bases, those that come apart completely and those that do not,
 * and for a reagent that is neither; the name is older than the bases.
 */
export const diluteAcid = (): Question => ({
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
    text: ['spread it out: fewer in each mL'],
    reply: {
      acid: 'Yes: dilute says how crowded. Strong and weak say how far an acid comes apart.',
      base: 'Yes: dilute says how crowded. Strong and weak say how much of a base turns into hydroxide ions.',
      neither: 'Yes: dilute says how crowded the particles are. The water did not change what they are.',
    },
  },
  others: [
    {
      id: 'used up',
      text: ['used up most of it'],
      reply: 'If it were used up, what would have taken its place?',
    },
    {
      id: 'neutral',
      text: ['made it harmless: no more care'],
      reply: 'Would you leave the goggles off? What is still in the flask?',
    },
    {
      id: 'another acid',
      text: ['made a weaker substance of it'],
      reply: {
        acid: 'Does the word weak tell you how much water there is, or what the acid itself does?',
        base: 'Does the word weak tell you how much water there is, or what the base itself does?',
        neither: 'Are the particles other ones now, or are they only further apart?',
      },
    },
  ],
  hints: [
    'Keep two words apart: dilute and weak.',
    'Dilution changes how many particles are in each mL. Does it change what they are?',
    ['Each litre in the flask now holds ', { given: 'target molarity' }, ' mol. Where did they come from?'],
  ],
});
