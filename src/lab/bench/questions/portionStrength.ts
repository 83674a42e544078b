import type { Question } from './question.ts';

/** A portion has the molarity of the whole; only its amount is smaller. */
export const portionStrength = (): Question => ({
  name: 'portion strength',
  stem: ['Half of your ', { given: 'formula' }, ' solution goes into a clean, dry beaker. What is in it?'],
  right: {
    id: 'same molarity',
    text: ['same molarity, half the amount'],
    reply: 'Yes: each mL holds what it held before. There are just fewer mL.',
  },
  others: [
    {
      id: 'half molarity',
      text: ['half molarity, half the amount'],
      reply: 'Think of soup at home: is a spoonful of it weaker than the pot it came from?',
    },
    {
      id: 'double molarity',
      text: ['twice the molarity, less space'],
      reply: 'The particles moved together with their water. Did anything bring them closer to each other?',
    },
    {
      id: 'same amount',
      text: ['same molarity, same amount'],
      reply: 'What stayed in the flask? Can all of the solute be in the beaker?',
    },
    {
      id: 'beaker decides',
      text: ['that depends on the beaker'],
      reply: 'Does an empty, dry beaker add anything or take anything away?',
    },
  ],
  hints: [
    'Keep two things apart: how much there is, and how crowded it is.',
    'amount = molarity × volume. Which of the three changes when you pour?',
    ['Think of one mL of your ', { given: 'molarity' }, ' mol/L solution. Is that mL changed by being poured?'],
  ],
});
