import type { Procedure } from './procedure.ts';

/** From a concentrated acid: staff make the solution, students say the order. Water before acid is never waived. */
export const concentratedAcid: Procedure = {
  name: 'concentrated acid',
  actions: [
    { id: 'protect', text: 'Read the safety data sheet; goggles, gloves and coat on; fume hood running.' },
    { id: 'water', text: 'Pour a good part of the water into a heat-proof beaker.' },
    { id: 'acid', text: 'Let the acid run slowly into the beaker while you stir.' },
    { id: 'stir', text: 'Stir on until it is even throughout.' },
    { id: 'cool', text: 'Let it cool to room temperature.' },
    { id: 'transfer', text: 'Pour it into the volumetric flask and rinse the beaker in.' },
    { id: 'mark', text: 'Add water drop by drop to the mark, at eye level.' },
    { id: 'mix', text: 'Put the stopper in and turn the flask over many times.' },
    { id: 'label', text: 'Label the flask before it is put away.' },
  ],
  rules: [
    {
      before: 'protect',
      after: 'acid',
      weight: 'safety',
      ask: 'Stop: be protected before any acid is poured. What could a splash or the vapour reach?',
    },
    {
      before: 'water',
      after: 'acid',
      weight: 'safety',
      ask: 'Stop: water goes in first, then the acid, slowly. What would the heat do to a little water on top of acid?',
    },
    { before: 'acid', after: 'stir', weight: 'needed', ask: 'What is there to mix while there is only water?' },
    {
      before: 'stir',
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
      ask: 'Water added after the mixing stays on top. Is the solution the same all through?',
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
    'Ask of each letter: would you do this with acid that is hot, or with no goggles on?',
  ],
};
