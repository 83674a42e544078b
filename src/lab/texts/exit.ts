/** What the check says of exit questions: one for each seat of a team, with numbers of its own. */
export const exitTexts = {
  title: (seat: number | string): string => `Exit question, seat ${seat}`,
  kept: 'Kept. Your teacher shows the checks later.',
};
