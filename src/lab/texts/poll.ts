/** The poll in words: what is asked, how to answer, and what is said of the answers. */
export const pollTexts = {
  statements: [
    'I knew what to do next.',
    'I can explain what is in our flask.',
    'The checks and hints helped us think.',
    'Everybody in our team had a part in it.',
  ],
  /** From most to least; the first two count as agreeing. */
  scale: ['agree fully', 'agree mostly', 'agree a little', 'do not agree'],
  from: { student: 'one student', team: 'a team' },
  /** For the day's record: counts and plain words. */
  line: ({ answers, best, least }: { answers: number; best: PollShare; least: PollShare }): string =>
    `${answersInAll(answers)} Most agreed with “${best.statement}” (${best.agree} of ${best.marked}), fewest with “${least.statement}” (${least.agree} of ${least.marked}).`,
  /** Where no statement stands out from the others. */
  lineAlike: ({ answers, each: { agree, marked } }: { answers: number; each: Omit<PollShare, 'statement'> }): string =>
    `${answersInAll(answers)} ${
      agree === marked
        ? 'Every statement was agreed with each time.'
        : agree === 0
          ? 'No statement was agreed with.'
          : `Every statement was agreed with as often (${agree} of ${marked}).`
    }`,
} as const;

const answersInAll = (answers: number): string => `${answers} ${answers === 1 ? 'answer' : 'answers'}.`;

interface PollShare {
  readonly statement: string;
  readonly agree: number;
  readonly marked: number;
}
