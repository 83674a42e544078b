import type { Procedure } from './procedure.ts';

/**
 * A portion of stock by pipette, made up to a mark. Free in order: the two rinses, and whether some water is in the flask
 * before the stock is; a stock that heats its water needs the water first.
 */
export const pipetteToFlask = (): Procedure => ({
  name: 'pipette to flask',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles, pipette filler on'] },
    { id: 'rinse flask', text: ['rinse flask with water'] },
    { id: 'water', text: ['some water into the flask'] },
    { id: 'rinse pipette', text: ['rinse pipette with stock'] },
    { id: 'deliver', text: ['run one pipette of stock in'] },
    { id: 'swirl', text: ['swirl until room temperature'] },
    { id: 'mark', text: ['fill to the mark, drops last'] },
    { id: 'stopper', text: ['stopper in'] },
    { id: 'mix', text: ['turn over many times'] },
  ],
  leftovers: 'Rinsings, leftovers: waste beaker.',
  rules: [
    {
      before: 'protect',
      after: 'rinse pipette',
      weight: 'safety',
      ask: 'Stop: be protected before any stock is drawn up, and never by mouth. Where could a splash go?',
    },
    {
      before: 'water',
      after: 'deliver',
      weight: 'safety',
      when: 'water first',
      ask: 'Stop: water goes in first, then this stock, slowly. A little water on top of it gets hot and can spit. Where would the drops fly?',
    },
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
    { before: 'deliver', after: 'swirl', weight: 'needed', ask: 'What is there to mix before the stock is in?' },
    {
      before: 'water',
      after: 'mark',
      weight: 'needed',
      ask: 'If the water stands at the mark already, is there room for more?',
    },
    {
      before: 'swirl',
      after: 'mark',
      weight: 'needed',
      ask: 'Mixing can change the warmth and the volume. When can you trust the mark?',
    },
    { before: 'mark', after: 'stopper', weight: 'needed', ask: 'Can water go in while the flask is closed?' },
    {
      before: 'stopper',
      after: 'mix',
      weight: 'needed',
      ask: 'What happens to the solution if you turn an open flask over?',
    },
    {
      before: 'water',
      after: 'swirl',
      weight: 'advised',
      ask: 'A tip: swirl once water and stock are both in, or there is nothing to mix.',
    },
  ],
  reminders: { 'water first': 'Let this stock run in slowly and swirl: it heats the water.' },
  hints: [
    'Only the stock that you measured may bring solute, and the water must end at the mark.',
    'Rinsing comes with emptying. Some things need an open flask, some a closed one. Sort the letters.',
    'Ask of each letter: what would go wrong if the stock were in the flask already?',
  ],
});
