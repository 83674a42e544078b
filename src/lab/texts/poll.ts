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
    `${answers} ${answers === 1 ? 'answer' : 'answers'}. Most agreed with “${best.statement}” (${best.agree} of ${best.marked}), fewest with “${least.statement}” (${least.agree} of ${least.marked}).`,
} as const;

interface PollShare {
  readonly statement: string;
  readonly agree: number;
  readonly marked: number;
}
