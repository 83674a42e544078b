import type { Procedure } from './procedure.ts';

/** A portion dried to constant mass; only for salts that survive it. Hot salt spatters, so protection is never waived. */
export const dryResidue: Procedure = {
  name: 'weighed residue',
  actions: [
    { id: 'protect', text: 'Goggles on, hair tied back, face away: a drying salt can spatter.' },
    { id: 'dish', text: 'Weigh the clean, dry dish.' },
    { id: 'portion', text: 'Let a pipette of solution run into the dish.' },
    { id: 'heat', text: 'Heat gently until the salt is dry.' },
    { id: 'cool', text: 'Let the dish cool to room temperature in a dry place.' },
    { id: 'weigh', text: 'Weigh the dish with the dry salt.' },
    { id: 'again', text: 'Heat, cool and weigh again until two weighings agree.' },
  ],
  rules: [
    {
      before: 'protect',
      after: 'heat',
      weight: 'safety',
      ask: 'Stop: be protected before anything is heated. Where can hot salt fly?',
    },
    {
      before: 'dish',
      after: 'portion',
      weight: 'needed',
      ask: 'How will you know later which part of the mass is the dish?',
    },
    { before: 'portion', after: 'heat', weight: 'needed', ask: 'What is there to dry in an empty dish?' },
    {
      before: 'heat',
      after: 'cool',
      weight: 'needed',
      ask: 'When does a dish need time to cool?',
    },
    {
      before: 'cool',
      after: 'weigh',
      weight: 'needed',
      ask: 'Warm air rises from a hot dish. What does that do to the reading?',
    },
    {
      before: 'weigh',
      after: 'again',
      weight: 'needed',
      ask: 'With what can a second weighing agree?',
    },
  ],
  hints: [
    'Only the salt may count: not the dish, not the water, not the warm air above a hot dish.',
    'Two masses make a difference. Which things have to be done before each of them?',
    'Ask of each letter: would the balance tell the truth if this were still to come?',
  ],
};
