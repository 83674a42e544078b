const several = (letters: readonly string[]): string => letters.join(', ');

/** What is said about an order of letters. */
export const orderTexts = {
  /** Above the actions. */
  asked: 'Put in order:',
  /** Where the letters in the sheet are those of an older layout. */
  buildAgain: 'These letters are from an older table. Ask your teacher to build it again.',
  works: 'Yes, this order works.',
  lettersOnly: (known: readonly string[]): string =>
    `Write the letters ${known[0]} to ${known[known.length - 1]}, each once, in the order you would do them.`,
  wordsTyped: (known: readonly string[]): string => `Letters only, such as c a b. ${orderTexts.lettersOnly(known)}`,
  lettersAmiss: (found: {
    readonly known: readonly string[];
    readonly strange: readonly string[];
    readonly missing: readonly string[];
    readonly twice: readonly string[];
  }): string =>
    [
      orderTexts.lettersOnly(found.known),
      found.strange.length > 0 ? `Not in the list: ${several(found.strange)}.` : '',
      found.missing.length > 0 ? `Still missing: ${several(found.missing)}.` : '',
      found.twice.length > 0 ? `More than once: ${several(found.twice)}.` : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  brokenPair: ({ sooner, later, ask }: { readonly sooner: string; readonly later: string; readonly ask: string }) =>
    `Look at ${sooner} and ${later}. ${ask}`,
};
