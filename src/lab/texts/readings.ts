/** What is read, as far as what can be done about it differs; `residue` and `portion` are weighed too. */
export type ReadingOf = 'balance' | 'residue' | 'portion' | 'bench' | 'flask' | 'pipette';

/** What to do about a reading that is off: `near` where people can go on with it, `further` where it needs mending first. */
interface ReadingAdvice {
  readonly ask: string;
  readonly near: string;
  readonly further: string;
}

/** What the check says about a reading, and how its tolerance is explained in the Plan. No text holds what is expected. */
export const readingTexts = {
  onTarget: 'Yes, this is as close to what your numbers give as the tools and careful work allow.',
  above: 'The reading is above what your numbers give, by more than careful work allows.',
  below: 'The reading is below what your numbers give, by more than careful work allows.',
  farAbove: 'Stop before you go on: the reading is far above what your numbers give. Do both have the same unit?',
  farBelow: 'Stop before you go on: the reading is far below what your numbers give. Do both have the same unit?',
  unit: 'Look at the unit. What does the instrument show, and what does this row ask for?',
  unreadable: 'Write the number that the instrument shows, with or without its unit.',
  decimals: 'Close. Write every figure that the balance shows.',
};

const readAgain = {
  near: 'Read again, or go on with what you have.',
  further: 'Read again before you go on.',
} as const;
const weighAgain = {
  near: 'Weigh again, or go on with what you have.',
  further: 'Weigh again before you go on.',
} as const;

/** By what is read. A solid on the balance is in no flask yet, so that it can still be put right. */
export const readingAdvice: Readonly<
  Record<ReadingOf, { readonly above: ReadingAdvice; readonly below: ReadingAdvice }>
> = {
  balance: {
    above: {
      ask: 'Was the empty boat or dish taken off?',
      near: 'If it was, take a little solid away, or go on with what you have.',
      further: 'If it was, take some solid away and read again.',
    },
    below: {
      ask: 'How much solid is still missing?',
      near: 'Add a little more solid, or go on with what you have.',
      further: 'Add more solid, a little at a time, and read again.',
    },
  },
  residue: {
    above: { ask: 'Is it dry all through, and was the empty dish taken off?', ...weighAgain },
    below: { ask: 'Did some of it jump out of the dish, or stay in the pipette?', ...weighAgain },
  },
  portion: {
    above: { ask: 'Was the empty vessel taken off, with its lid, and is it dry outside?', ...weighAgain },
    below: { ask: 'Was the pipette full to its mark, and did all of it run out?', ...weighAgain },
  },
  bench: {
    above: { ask: 'Does the water reach the mark, and how much solid went in?', ...readAgain },
    below: { ask: 'Is all of the solid in the flask, and is the water not above the mark?', ...readAgain },
  },
  flask: {
    above: { ask: 'Was your eye level with the lowest point of the curve?', ...readAgain },
    below: { ask: 'Was your eye level with the lowest point of the curve?', ...readAgain },
  },
  pipette: {
    above: { ask: 'Which mark did it start from, and was the last drop left in?', ...readAgain },
    below: { ask: 'Which mark did it start from, and did it run out to the end?', ...readAgain },
  },
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
