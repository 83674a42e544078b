/** What is said about a lettered answer. */
export const choiceTexts = {
  oneLetter: (letters: readonly string[]): string =>
    `Write one letter, ${letters[0]} to ${letters[letters.length - 1]}. Your reason can follow after a comma.`,
};
