import type { Question } from './question.ts';

/** The same reading stands for fewer particles of solute where the solid is not pure. */
export const impureSolidQuestion = (): Question => ({
  name: 'impure solid',
  stem: [
    'Your solid is ',
    { given: 'purity' },
    ' % ',
    { given: 'formula' },
    '. Another flask got the same mass, but pure. What does yours hold?',
  ],
  right: {
    id: 'fewer',
    text: ['fewer particles of the solute'],
    reply: 'Yes: part of what the balance showed is something else. That is why you weigh out more.',
  },
  others: [
    {
      id: 'same',
      text: ['as many particles, by the balance'],
      reply: 'Can the balance tell the solute from what is mixed into it?',
    },
    {
      id: 'more',
      text: ['more particles of the solute'],
      reply: 'If part of the mass is something else, what is left for the solute?',
    },
    {
      id: 'smaller',
      text: ['as many, but less pure particles'],
      reply: 'Look at one particle. Is it the particle that is impure, or the heap it came from?',
    },
  ],
  hints: [
    'A balance weighs all that lies on it.',
    'mass of solute = mass of solid × purity ÷ 100',
    ['Of every 100 g of your solid, ', { given: 'purity' }, ' g are solute. What is the rest?'],
  ],
});
