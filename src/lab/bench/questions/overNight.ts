import type { Question } from './question.ts';

/** A true solution stays even: particles in motion do not sort themselves by weight. */
export const overNight = (): Question => ({
  name: 'over night',
  stem: [
    'A clear, well mixed ',
    { given: 'formula' },
    ' solution stands overnight with its stopper in. Where is it strongest in the morning?',
  ],
  right: {
    id: 'even',
    text: ['nowhere: it is the same all through'],
    reply: 'Yes: particles never stop moving about, and nothing sorts them once they are spread out.',
  },
  others: [
    {
      id: 'bottom',
      text: ['at the bottom: the solute is heavier'],
      reply: 'Sand settles. Is a single particle among water like a grain of sand?',
    },
    {
      id: 'top',
      text: ['at the top: the water sinks'],
      reply: 'What would have to hold the water and the solute apart for one of them to sink?',
    },
    {
      id: 'solid',
      text: ['nowhere: the solid has settled out'],
      reply: 'No water left the flask. What would push the particles out of it?',
    },
  ],
  hints: [
    'Think of what particles do when nobody is looking.',
    'Left alone, things mix by themselves, though it takes long. Do they ever unmix?',
    ['Follow one particle of ', { given: 'formula' }, ' through the night. Does it rest?'],
  ],
});
