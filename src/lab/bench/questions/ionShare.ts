import type { Question } from './question.ts';

/** Dilution does not touch the ratio of the ions: water brings none of them and takes none away. */
export const ionShare = (): Question => ({
  name: 'ion share',
  stem: [
    'More water goes into the ',
    { given: 'formula' },
    ' solution. Count each kind of ion in one mL, before and after. How do the kinds compare?',
  ],
  right: {
    id: 'same ratio',
    text: ['fewer of each, in the same ratio'],
    reply: 'Yes: the formula sets the ratio. Water spreads all kinds out alike.',
  },
  others: [
    {
      id: 'equal',
      text: ['their numbers come closer together'],
      reply: 'To come closer, one kind would have to thin out faster. What would hold the others back?',
    },
    {
      id: 'only one',
      text: ['only the positive ones get fewer'],
      reply: 'What would the charges in that mL add up to?',
    },
    {
      id: 'depends',
      text: ['that depends on how much water'],
      reply: 'Does water bring ions of the salt, or take some of one kind away?',
    },
  ],
  hints: [
    'Follow one formula unit and all of its ions while the water goes in.',
    'Each kind is spread through the same, larger volume. By which factor does each get less crowded?',
    ['Draw ten units of ', { given: 'formula' }, ' as ions in a small box, then the same ions in a larger one.'],
  ],
});
