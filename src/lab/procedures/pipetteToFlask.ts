import type { Procedure } from './procedure.ts';

/**
 * A portion of stock by pipette, made up to a mark. Free in order: the two rinses, and whether some water is in the flask
 * before the stock is.
 */
export const pipetteToFlask: Procedure = {
  name: 'pipette to flask',
  actions: [
    { id: 'rinse flask', text: 'Rinse the flask with water only, and empty it.' },
    { id: 'rinse pipette', text: 'Rinse the pipette with a little stock, and throw that stock away.' },
    { id: 'deliver', text: 'Fill the pipette to its mark and let it run into the flask.' },
    { id: 'water', text: 'Add water and swirl, staying under the mark.' },
    { id: 'mark', text: 'Add water drop by drop to the mark, at eye level.' },
    { id: 'stopper', text: 'Put the stopper in.' },
    { id: 'mix', text: 'Turn the flask over many times.' },
  ],
  rules: [
    {
      before: 'rinse flask',
      after: 'deliver',
      weight: 'needed',
      ask: 'What would rinsing and emptying do to the stock that you put in?',
    },
    {
      before: 'rinse flask',
      after: 'water',
      weight: 'needed',
      ask: 'What would rinsing and emptying do to the water that you added?',
    },
    {
      before: 'rinse pipette',
      after: 'deliver',
      weight: 'needed',
      ask: 'A pipette is often wet inside. What would a few drops of water do to your portion of stock?',
    },
    {
      before: 'deliver',
      after: 'mark',
      weight: 'needed',
      ask: 'If the water is at the mark already, where will the stock take the level?',
    },
    {
      before: 'water',
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
  ],
  hints: [
    'Only the stock that you measured may bring solute, and the water must end at the mark.',
    'Rinsing comes with emptying. Some things need an open flask, some a closed one. Sort the letters.',
    'Ask of each letter: what would go wrong if the stock were in the flask already?',
  ],
};
