import type { Question } from './question.ts';

/** A true solution stays even: particles in motion do not sort themselves by weight. */
export const overNight: Question = {
  name: 'over night',
  stem: [
    'A clear, well mixed ',
    { given: 'formula' },
    ' solution stands overnight with its stopper in. Where is it stronger in the morning?',
  ],
  right: {
    id: 'even',
    text: ['It is as strong at the top as at the bottom.'],
    reply: 'Yes: particles never stop moving about, and nothing sorts them once they are spread out.',
  },
  others: [
    {
      id: 'bottom',
      text: ['At the bottom, since the solute is heavier.'],
      reply: 'Sand settles. Is a single particle among water like a grain of sand?',
    },
    {
      id: 'top',
      text: ['At the top, since the water sinks.'],
      reply: 'What would have to hold the water and the solute apart for one of them to sink?',
    },
    {
      id: 'solid',
      text: ['Nowhere: the solid is back at the bottom by then.'],
      reply: 'No water left the flask. What would push the particles out of it?',
    },
  ],
  hints: [
    'Think of what particles do when nobody is looking.',
    'Mixing happens by itself. Does unmixing?',
    ['Follow one particle of ', { given: 'formula' }, ' through the night. Does it rest?'],
  ],
};
