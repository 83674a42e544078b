/** What the check says about a lettered answer that it cannot read. */
export const choiceTexts = {
  oneLetter: (letters: readonly string[]): string =>
    `Write one letter, ${letters[0]} to ${letters[letters.length - 1]}. Your reason can follow after a comma.`,
};
