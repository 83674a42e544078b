import type { Question } from './question.ts';

/** The same reading stands for fewer particles of solute where the solid is not pure. */
export const impureSolidQuestion: Question = {
  name: 'impure solid',
  stem: [
    'Your solid is ',
    { given: 'purity' },
    ' % ',
    { given: 'formula' },
    '. Compare it with a pure one of the same mass, each in its own flask of the same size.',
  ],
  right: {
    id: 'fewer',
    text: ['Its flask holds fewer particles of the solute.'],
    reply: 'Yes: part of what the balance showed is something else. That is why you weigh out more.',
  },
  others: [
    {
      id: 'same',
      text: ['Both flasks hold just as many, since the balance showed the same.'],
      reply: 'Can the balance tell the solute from what is mixed into it?',
    },
    {
      id: 'more',
      text: ['Its flask holds more particles of the solute.'],
      reply: 'If part of the mass is something else, what is left for the solute?',
    },
    {
      id: 'smaller',
      text: ['It holds as many, but the particles are less pure ones.'],
      reply: 'Look at one particle. Is it the particle that is impure, or the heap it came from?',
    },
  ],
  hints: [
    'A balance weighs all that lies on it.',
    'mass of solute = mass of solid × purity ÷ 100',
    ['Of every 100 g of your solid, ', { given: 'purity' }, ' g are solute. What are the rest?'],
  ],
};
