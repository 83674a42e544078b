/** What the row of the cautions says, beside the cautions themselves. */
export const tickTexts = {
  /** The one answer that the sheet offers: it names the substance that the cautions are for. */
  answer: (formula: string): string => (formula === '' ? 'yes' : `yes, ${formula}`),
  readFirst: (answer: string): string => `Read this, then choose “${answer}”:`,
  nameIt: (answer: string): string => `Say for which substance. Read this, then choose “${answer}”:`,
  anotherSubstance: (answer: string): string =>
    `That is another substance. Read this about the one you have now, then choose “${answer}”:`,
  notYes: (answer: string): string => `Only “${answer}” counts here. Read this, then choose it:`,
  noFormula: 'We do not know this substance. Read its safety data sheet and ask your teacher before you touch it.',
  staffOnly: 'Your teacher makes this solution. You work it out and watch.',
  withTeacher: 'Only with your teacher beside you, and only as your school’s own assessment allows.',
  solid: 'solid',
  inBottle: (share: string): string => `${share} in the bottle`,
  noSignal: 'no signal word known',
} as const;

export const tickHints: readonly [string, string, string] = [
  'Who might be hurt at the bench, and by what?',
  'Each line says what the substance can do, and then what you do about it.',
  'Tell your team in your own words what to wear and what not to do. Then tick that you have read them.',
];
