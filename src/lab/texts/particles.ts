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
  box: ({ name, counts }: { readonly name: string; readonly counts: string }): string => `${name}: ${counts}.`,
  apart: 'All separate, spread out evenly.',
  whole: 'Each molecule stays whole.',
  waterLeftOut: 'Water fills the space between them and is left out.',
} as const;
