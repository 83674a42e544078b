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
    `${answersInAll(answers)} Most agreement with “${best.statement}” (${best.agree} of ${best.marked}), least with “${least.statement}” (${least.agree} of ${least.marked}).`,
  /** Where no statement stands out from the others. */
  lineAlike: ({ answers, each: { agree, marked } }: { answers: number; each: Omit<PollShare, 'statement'> }): string =>
    `${answersInAll(answers)} ${
      agree === marked
        ? 'Everybody agreed with every statement.'
        : agree === 0
          ? 'Nobody agreed with any statement.'
          : `The same agreement with every statement (${agree} of ${marked}).`
    }`,
} as const;

const answersInAll = (answers: number): string => `${answers} ${answers === 1 ? 'answer' : 'answers'}.`;

interface PollShare {
  readonly statement: string;
  readonly agree: number;
  readonly marked: number;
}
