/** Every text about the key and the table on paper, for the teacher and for teams without a device. */
export const keyTexts = {
  needs: (row: string) => `Works from “${row}”, which has no answer here.`,
  about: (value: string) => `about ${value}`,
  reading: 'What the instrument shows decides; this is what the plan gives.',
  fromReading: 'If the reading is as planned; otherwise it follows from the team’s own reading.',
  oneOrder: 'One order that is right; others may be.',
  /** The actions of an order, one after the other, as a person says them. */
  inWords: (actions: readonly string[]): string => actions.join(', then '),
  told: 'In their own words: read it and talk about it. It is never scored.',
} as const;
