import type { Question } from './question.ts';

/** Along a serial dilution particles get fewer in each mL, by the same factor each time. */
export const lastFlask = (): Question => ({
  name: 'last flask',
  stem: [
    'Take one mL from the first flask and one from the third. How many ',
    { given: 'formula' },
    ' particles has the third?',
  ],
  right: {
    id: 'fewer in each mL',
    text: ['fewer, of the same kind'],
    reply: 'Yes: each flask spreads its portion out again, and the particles stay what they are.',
  },
  others: [
    {
      id: 'same number',
      text: ['just as many, in equal portions'],
      reply: 'The portions had the same volume. Were they equally crowded?',
    },
    {
      id: 'smaller',
      text: ['just as many, but smaller ones'],
      reply: 'Can water cut a particle, or only move in between?',
    },
    {
      id: 'same steps',
      text: ['fewer, by the same number'],
      reply: 'Does each flask take the same number away, or the same share?',
    },
    {
      id: 'more',
      text: ['more, as it was diluted again'],
      reply: 'What joined the portion each time: solute or water?',
    },
  ],
  hints: [
    'Follow one portion: what comes along with it, and what joins it?',
    'Each flask keeps the same share of the molarity before: portion ÷ flask.',
    [
      'Each time ',
      { given: 'portion' },
      ' mL become ',
      { given: 'flask' },
      ' mL. What does that do to how crowded they are?',
    ],
  ],
});
