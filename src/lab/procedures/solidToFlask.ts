import type { Procedure } from './procedure.ts';

/**
 * A weighed solid to a flask filled to its mark. Accepted beside the usual order: the solid tipped straight into the flask
 * and dissolved there; cooling in the flask, before the mark; rinsing before or after most of the water is in.
 */
export const solidToFlask: Procedure = {
  name: 'solid to flask',
  actions: [
    { id: 'weigh', text: 'Weigh the solid and write down what the balance shows.' },
    { id: 'dissolve', text: 'Dissolve the solid in water, about half of the final volume.' },
    { id: 'cool', text: 'Let it come to room temperature.' },
    { id: 'transfer', text: 'Move it through a funnel into the volumetric flask.' },
    { id: 'rinse', text: 'Rinse what held it, and the funnel, into the flask.' },
    { id: 'near', text: 'Add water to just under the mark.' },
    { id: 'mark', text: 'Add water drop by drop to the mark, at eye level.' },
    { id: 'stopper', text: 'Put the stopper in.' },
    { id: 'mix', text: 'Turn the flask over many times.' },
  ],
  rules: [
    { before: 'weigh', after: 'dissolve', weight: 'needed', ask: 'Can you still weigh a solid that is in the water?' },
    { before: 'weigh', after: 'transfer', weight: 'needed', ask: 'How will you know what mass went into the flask?' },
    {
      before: 'dissolve',
      after: 'cool',
      weight: 'needed',
      ask: 'Dissolving can warm or chill the water. So when is it worth waiting for room temperature?',
    },
    {
      before: 'dissolve',
      after: 'near',
      weight: 'needed',
      ask: 'How easily does a solid dissolve when the flask is almost full? And can the volume still change?',
    },
    {
      before: 'cool',
      after: 'mark',
      weight: 'needed',
      ask: 'The mark is right at room temperature. What happens to the level of a warm solution later?',
    },
    {
      before: 'transfer',
      after: 'rinse',
      weight: 'needed',
      ask: 'What is there to rinse while everything is still where it was?',
    },
    {
      before: 'transfer',
      after: 'near',
      weight: 'needed',
      ask: 'If the flask is almost full of water, is there room for the rest?',
    },
    {
      before: 'rinse',
      after: 'mark',
      weight: 'needed',
      ask: 'Where would the rinsing water take the level, once it stands at the mark?',
    },
    {
      before: 'near',
      after: 'mark',
      weight: 'needed',
      ask: 'You cannot take water out again. How do you come up to the mark without passing it?',
    },
    { before: 'mark', after: 'stopper', weight: 'needed', ask: 'Can water go in while the flask is closed?' },
    {
      before: 'stopper',
      after: 'mix',
      weight: 'needed',
      ask: 'What happens to the solution if you turn an open flask over?',
    },
    {
      before: 'cool',
      after: 'transfer',
      weight: 'advised',
      ask: 'A tip: hot liquid can strain the flask, so check that it is cool to the touch as you pour.',
      unless: { before: 'transfer', after: 'dissolve' },
    },
    {
      before: 'rinse',
      after: 'near',
      weight: 'advised',
      ask: 'A tip: leave room for the rinsing water, or the level may pass the mark.',
    },
  ],
  hints: [
    'The flask is right only if all the solute is in it, at room temperature, with the water at the mark.',
    'Some things need an empty flask, some an open one, some a closed one. Sort the letters into those three.',
    'Ask of each letter: what would go wrong if the water were at the mark already?',
  ],
};
