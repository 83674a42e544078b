/** Every text about the key and the table on paper, for the teacher and for teams without a device. */
export const keyTexts = {
  needs: (row: string) => `Based on “${row}”, which has no answer here.`,
  about: (value: string) => `about ${value}`,
  reading: 'The team’s own reading counts; this is the planned value.',
  weighing: 'What the balance showed; the mass is worked from it.',
  fromReading: 'For a reading as planned; otherwise it follows from the team’s own reading.',
  oneOrder: 'One order that works; others may too.',
  /** The actions of an order, one after the other, as a person says them. */
  inWords: (actions: readonly string[]): string => actions.join(', then '),
  told: 'Their own words: read them and talk about them. Never scored.',
} as const;
