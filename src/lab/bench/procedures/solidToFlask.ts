import type { Procedure } from './procedure.ts';

/**
 * A weighed solid to a flask filled to its mark. Accepted beside the usual order: the solid brought straight into the flask
 * and dissolved there, unless it heats its water; cooling in the flask, before the mark; rinsing before or after most of
 * the water is in.
 */
export const solidToFlask = (): Procedure => ({
  name: 'solid to flask',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles and coat on'] },
    { id: 'weigh', text: ['weigh the solid'] },
    { id: 'dissolve', text: ['dissolve in half the water'] },
    { id: 'cool', text: ['wait for room temperature'] },
    { id: 'transfer', text: ['into the flask by funnel'] },
    { id: 'rinse', text: ['rinse beaker and funnel in'] },
    { id: 'near', text: ['water nearly to the mark'] },
    { id: 'mark', text: ['drops to the mark, eye level'] },
    { id: 'stopper', text: ['stopper in'] },
    { id: 'mix', text: ['turn over many times'] },
  ],
  leftovers: 'Leftovers: waste beaker.',
  rules: [
    {
      before: 'protect',
      after: 'weigh',
      weight: 'safety',
      ask: 'Stop: be protected before the solid is out of its jar. What could dust or a splash reach?',
    },
    {
      before: 'dissolve',
      after: 'transfer',
      weight: 'safety',
      when: 'dissolves hot',
      ask: 'Stop: this substance heats its water and can spit. Never straight in the flask: stir it slowly into water in a heat-proof beaker. Where could hot drops fly?',
    },
    {
      before: 'cool',
      after: 'transfer',
      weight: 'needed',
      when: 'dissolves hot',
      ask: 'This substance heats its water. What can heat do to a flask that is made to hold one exact volume?',
    },
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
  reminders: {
    'dissolves hot': 'This substance heats its water: stir it in slowly, a little at a time, in a heat-proof beaker.',
  },
  hints: [
    'The flask is right only if all the solute is in it, at room temperature, with the water at the mark.',
    'Some things need an empty flask, some an open one, some a closed one. Sort the letters into those three.',
    'Ask of each letter: what would go wrong if the water were at the mark already?',
  ],
});
