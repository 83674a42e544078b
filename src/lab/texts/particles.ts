const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;

/** What the picture of particles says in words: for whoever does not see it, and for print. */
export const particleTexts = {
  listed,
  /** Names of the boxes. */
  sample: {
    before: 'a sample of the stock',
    after: 'the same volume after the water went in',
    only: 'a sample of the solution',
  },
  flask: {
    before: 'a small portion of the stock',
    after: 'the same portion after the water went in',
    only: 'the solution',
  },
  box: ({ name, counts }: { readonly name: string; readonly counts: readonly string[] }): string =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${listed(counts)}.`,
  apart: 'All separate, spread out evenly.',
  whole: 'Each molecule stays whole.',
  waterLeftOut: 'Water fills the space between them and is left out.',
} as const;
