/** What the row of the cautions says, beside the cautions themselves. */
export const tickTexts = {
  /** The one answer that the sheet offers. */
  answer: 'yes',
  readFirst: 'Read this, then choose yes:',
  notYes: 'Only yes counts here. Read this, then choose yes:',
  noFormula: 'We do not know this substance. Read its safety data sheet and ask your teacher before you touch it.',
  staffOnly: 'Your teacher makes this solution. You work it out and watch.',
  withTeacher: 'Only with your teacher beside you, and only as your school’s own assessment allows.',
  solid: 'solid',
  inBottle: (share: string): string => `${share} in the bottle`,
  noSignal: 'no signal word known',
  waitForTick: (row: string): string => `Wait at the bench. Read the cautions and tick “${row}” first.`,
} as const;

export const tickHints: readonly [string, string, string] = [
  'Who might be hurt at the bench, and by what?',
  'Each line says what the substance can do, and then what you do about it.',
  'Tell your team in your own words what to wear and what not to do. Then choose yes.',
];
