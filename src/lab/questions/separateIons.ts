import type { Question } from './question.ts';

/** A salt in solution is separate ions, as many of each kind as the formula says; nothing clumps and nothing is neutral. */
export const separateIons: Question = {
  name: 'separate ions',
  stem: ['The ', { given: 'formula' }, ' has all dissolved. What comes from one formula unit?'],
  right: {
    id: 'separate',
    text: ['Each ion by itself, as many of each kind as the formula says.'],
    reply: 'Yes: water comes between the ions, and a small number in the formula counts ions that are apart.',
  },
  others: [
    {
      id: 'one piece',
      text: ['One piece: the ions of a unit stay side by side.'],
      reply: 'Salt water carries a current. Could it, if each piece had no charge left over?',
    },
    {
      id: 'clump',
      text: ['Ions of the same kind stuck together in one clump.'],
      reply: 'Ions of the same kind have the same charge. Would they hold on to each other?',
    },
    {
      id: 'atoms',
      text: ['Atoms without a charge, one for each letter of the formula.'],
      reply: 'What would have to happen for an ion to lose its charge? Does water do that?',
    },
    {
      id: 'one each',
      text: ['One ion of each kind, whatever the formula says.'],
      reply: 'Add up the charges of what you chose. Does the solution as a whole have a charge?',
    },
  ],
  hints: [
    'Ask what water does to a crystal: which parts can it pull apart?',
    'All charges in a solution add up to nothing. Count ions until they do.',
    ['Write ', { given: 'formula' }, ' as its ions, each with its charge. How many of each make the charges even?'],
  ],
};
