import type { Question } from './question.ts';

/** A salt in solution is separate ions, as many of each kind as the formula says; nothing clumps and nothing is neutral. */
export const separateIons = (): Question => ({
  name: 'separate ions',
  stem: ['The ', { given: 'formula' }, ' has all dissolved. What comes from one formula unit?'],
  right: {
    id: 'separate',
    text: ['each ion apart, as many as written'],
    reply: 'Yes: water comes between the ions, and a small number in the formula counts ions that are apart.',
  },
  others: [
    {
      id: 'one piece',
      text: ['one piece: its ions stay together'],
      reply: 'Salt water carries a current. Could it, if each piece had no charge left over?',
    },
    {
      id: 'clump',
      text: ['ions of one kind stuck together'],
      reply: 'Ions of the same kind have the same charge. Would they hold on to each other?',
    },
    {
      id: 'atoms',
      text: ['atoms without charge, one per letter'],
      reply: 'What would have to happen for an ion to lose its charge? Does water do that?',
    },
    {
      id: 'one each',
      text: ['always one ion of each kind'],
      reply: 'Add up the charges of what you chose. Does the solution as a whole have a charge?',
    },
  ],
  hints: [
    'Ask what water does to a crystal: which parts can it pull apart?',
    'All charges in a solution add up to nothing. Count ions until they do.',
    ['Write ', { given: 'formula' }, ' as its ions, each with its charge. How many of each make the charges even?'],
  ],
});
