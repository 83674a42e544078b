import type { Question } from './question.ts';

/** Water of hydration joins the rest; the mark, not the water added, fixes the volume. */
export const crystalWater = (): Question => ({
  name: 'crystal water',
  // True of every formula, since a team may have one without water.
  stem: [
    'Water after a dot, if ',
    { given: 'formula' },
    ' has some, is part of the crystals. Where is it in the full flask?',
  ],
  right: {
    id: 'joins the rest',
    text: ['part of the water in the flask'],
    reply:
      'Yes: it counted on the balance, and in the flask it is water like the rest. The mark takes care of the volume.',
  },
  others: [
    {
      id: 'stays bound',
      text: ['still bound, in tiny crystals'],
      reply: 'The solution is clear. What has happened to the crystals that held the water?',
    },
    {
      id: 'extra volume',
      text: ['extra, above what the flask says'],
      reply: 'Up to where did you fill, and was that water in the flask already?',
    },
    {
      id: 'more moles',
      text: ['it became more moles of salt'],
      reply: 'One formula unit comes with its waters. How many units of the salt itself is that?',
    },
    {
      id: 'gone on balance',
      text: ['nowhere: it never counts'],
      reply: 'If the water weighed nothing, would the molar mass need the part after the dot?',
    },
  ],
  hints: [
    'Follow the water: from the bottle to the balance, and from there to the flask.',
    'The mark fixes the volume of everything together, whichever way the water came in.',
    ['Your flask holds ', { given: 'flask' }, ' mL in all. Whose water fills it up to there?'],
  ],
});
