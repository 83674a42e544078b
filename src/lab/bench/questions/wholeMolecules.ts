import type { Question } from './question.ts';

/** A molecular solute dissolves as whole molecules; the sight of nothing is no proof of nothing. */
export const wholeMolecules = (): Question => ({
  name: 'whole molecules',
  stem: ['The ', { given: 'formula' }, ' has all dissolved, and the solution looks like water. What is in it?'],
  right: {
    id: 'whole',
    text: ['whole molecules, apart from each other'],
    reply: 'Yes: water pulls the molecules away from each other and leaves each of them whole.',
  },
  others: [
    {
      id: 'atoms',
      text: ['its atoms, each by itself'],
      reply: 'Dry the solution and the solid is back. Could loose atoms find their places again?',
    },
    {
      id: 'ions',
      text: ['positive and negative ions'],
      reply: 'Would this solution carry a current the way salt water does?',
    },
    {
      id: 'melted',
      text: ['the solid, melted to a liquid'],
      reply: 'Melting needs warmth and only one substance. What did the water do here?',
    },
    {
      id: 'gone',
      text: ['only water: the solid is gone'],
      reply: 'Put the flask on a balance before and after. Would the reading drop?',
    },
  ],
  hints: [
    'Not to be seen is not the same as not there.',
    'Water can part molecules from each other. Parting the atoms of one takes a reaction.',
    ['Picture one molecule of ', { given: 'formula' }, ' at the edge of the solid. What does the water pull on?'],
  ],
});
