const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;

/** What the picture of particles says in words: for whoever does not see it, and for print. */
export const particleTexts = {
  listed,
  /** What the boxes stand for: equal volumes, and the whole of a portion. */
  sample: {
    before: 'Before, a sample of the stock',
    after: 'After, the same volume of the diluted solution',
    only: 'A sample of the solution',
  },
  flask: {
    before: 'Before, all of a small portion of stock',
    after: 'After, the same portion with its water',
    only: 'All of the solution',
  },
  /** The same from the second dilution of a row on, where it starts from a flask of the row. */
  row: {
    sample: {
      before: (step: number): string => `Before, a sample of flask ${step - 1}`,
      after: (step: number): string => `After, the same volume of flask ${step}`,
    },
    flask: {
      before: (step: number): string => `Before, all of a small portion of flask ${step - 1}`,
      after: (step: number): string => `After, the same portion with its water, in flask ${step}`,
    },
  },
  box: ({ name, counts }: { readonly name: string; readonly counts: string }): string => `${name}: ${counts}.`,
  noPicture: {
    expected: 'a solution whose molarity is known',
    received: 'none in this activity',
    advice: 'Choose an activity that makes or takes a solution of a given molarity.',
  },
  apart: 'All separate, spread out evenly.',
  whole: 'Each molecule stays whole.',
  waterLeftOut: 'Water fills the space between them and is left out.',
} as const;
