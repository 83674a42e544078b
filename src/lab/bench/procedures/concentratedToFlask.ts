import type { Procedure } from './procedure.ts';

/**
 * From a concentrated acid or base: staff make the solution, students say the order. Water before the reagent is never
 * waived.
 */
export const concentratedToFlask = (): Procedure => ({
  name: 'concentrated to flask',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles, gloves, fume hood on'] },
    { id: 'water', text: ['water in a heat-proof beaker'] },
    { id: 'reagent', text: ['run ', { given: 'formula' }, ' in slowly, stirring'] },
    { id: 'cool', text: ['cool to room temperature'] },
    { id: 'transfer', text: ['pour and rinse into the flask'] },
    { id: 'mark', text: ['fill to the mark, drops last'] },
    { id: 'mix', text: ['close, turn over many times'] },
    { id: 'label', text: ['label the flask'] },
  ],
  leftovers: 'Leftovers: waste beaker.',
  rules: [
    {
      before: 'protect',
      after: 'reagent',
      weight: 'safety',
      ask: 'Stop: be protected before the bottle is opened. What could a splash or the vapour reach?',
    },
    {
      before: 'water',
      after: 'reagent',
      weight: 'safety',
      ask: 'Stop: water goes in first, then what is in the bottle, slowly. What would the heat do to a little water on top?',
    },
    {
      before: 'reagent',
      after: 'cool',
      weight: 'needed',
      ask: 'Mixing sets heat free. So when is the waiting of use?',
    },
    {
      before: 'cool',
      after: 'transfer',
      weight: 'needed',
      ask: 'What can heat do to a flask that is made to hold one exact volume?',
    },
    { before: 'transfer', after: 'mark', weight: 'needed', ask: 'What is in the flask when you reach the mark?' },
    {
      before: 'mark',
      after: 'mix',
      weight: 'needed',
      ask: 'Water that comes in last stays on top for a long time. Is the solution the same all through?',
    },
    { before: 'transfer', after: 'label', weight: 'needed', ask: 'What would the label say while the flask is empty?' },
    {
      before: 'mix',
      after: 'label',
      weight: 'advised',
      ask: 'A tip: write the label as soon as you know what is inside, and check it again at the end.',
    },
  ],
  hints: [
    'Heat is what makes this one different. Where can it go, and whom can it hurt?',
    'Think of three places: outside the hood, the beaker, the flask. Which letters belong to which?',
    'Ask of each letter: would you do this with a liquid that is hot, or with no goggles on?',
  ],
});
