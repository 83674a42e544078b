/** What the check says about a reading, and how its tolerance is explained in the Plan. No text holds what is expected. */
export const readingTexts = {
  onTarget: 'Yes, this is as close to what your numbers promise as the tools and careful work allow.',
  above:
    'The reading is above what your numbers promise, by more than careful work allows. Was the empty boat or dish taken off? Read again, or go on with what you have.',
  below:
    'The reading is below what your numbers promise, by more than careful work allows. Did some of it stay behind on the way? Read again, or go on with what you have.',
  farAbove: 'Stop before you go on: the reading is far above what your numbers promise. Do both have the same unit?',
  farBelow: 'Stop before you go on: the reading is far below what your numbers promise. Do both have the same unit?',
  unit: 'Look at the unit. What does the instrument show, and what does this row ask for?',
  unreadable: 'Write the number that the instrument shows, with or without its unit.',
  decimals: 'Close. Write every figure the balance shows.',
};

export const toleranceTexts = {
  balance: (toleranceG: string): string => `the balance (±${toleranceG} g, read empty and loaded)`,
  flask: (part: { readonly size: string; readonly tolerance: string; readonly note: string }): string =>
    `the ${part.size} mL flask (±${part.tolerance} mL${part.note})`,
  pipette: (part: { readonly size: string; readonly tolerance: string; readonly note: string }): string =>
    `the ${part.size} mL pipette (±${part.tolerance} mL${part.note})`,
  fromMemory: ', a figure not confirmed',
  readAt: (size: string): string => `, the figure of the ${size} mL size`,
  /** In lines that fit beside the settings. */
  whole: (parts: { readonly tools: string; readonly percent: string }): string =>
    `Twice the standard uncertainty of ${parts.tools},\nas rectangular distributions by JCGM 100, plus ${parts.percent} % of what is expected for technique.`,
  /** Worked for round readings of no team, so that nothing is given away. */
  examples: (unit: string, parts: readonly { readonly reading: string; readonly limit: string }[]): string =>
    `So ${parts.map(({ reading, limit }) => `${reading} ${unit} may be off by ${limit} ${unit}`).join(', and ')}.`,
};
