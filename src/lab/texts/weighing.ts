/** What is said of a reading of the balance. Each fits in two lines of its row. */
export const weighingTexts = {
  noted: 'Noted.',
  unreadable: 'Type the number that the balance shows, in g.',
  lighter: 'Less than nothing, or than empty? Read both again.',
  copied: 'Is this what the balance showed? Then write “shown” behind it.',
} as const;

/** Of the mass worked from two readings; this row is as high as any. */
export const differenceTexts = {
  fromPlan: 'This is the mass of your plan. What do your two readings give?',
  emptyLeftIn: 'This matches the loaded vessel. What stood on the balance beside your substance?',
  added: 'This matches both readings together. Which of them holds the other?',
  other: 'Not yet. Which of the two readings above is larger, and by how much?',
} as const;

/** Help with any row that keeps what was seen, in two lines each. */
export const evidenceHints: readonly [string, string, string] = [
  'What is there counts, not what was planned.',
  'Let someone who was not here see it from this row.',
  'Write it down at once, with every figure and its unit.',
];

/** Beside a link that is none. */
export const notALink = 'A link begins with https:// or http://. Your words stay.';
