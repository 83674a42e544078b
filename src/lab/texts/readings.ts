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
  onTarget: 'Yes, this is within what your tools and careful work allow.',
  above: 'This reading is too high for your numbers.',
  below: 'This reading is too low for your numbers.',
  farAbove: 'Stop here: this reading is far too high for your numbers. Do both have the same unit?',
  farBelow: 'Stop here: this reading is far too low for your numbers. Do both have the same unit?',
  unit: 'Check the unit. What does the instrument show, and what does this row ask for?',
  unreadable: 'Type the number that the instrument shows, with or without its unit.',
  decimals: 'Close. Write down every digit that the balance shows.',
};

const readAgain = {
  near: 'Read again, or carry on.',
  further: 'Read again before you go on.',
} as const;
const weighAgain = {
  near: 'Weigh again, or carry on.',
  further: 'Weigh again before you go on.',
} as const;

/** By what is read. A solid on the balance is in no flask yet, so that it can still be put right. */
export const readingAdvice: Readonly<
  Record<ReadingOf, { readonly above: ReadingAdvice; readonly below: ReadingAdvice }>
> = {
  balance: {
    above: {
      ask: 'Was the mass of the empty boat or dish subtracted?',
      near: 'If it was, take a little solid out, or carry on.',
      further: 'If it was, take some solid out and read again.',
    },
    below: {
      ask: 'How much solid is still missing?',
      near: 'Add a little more solid, or carry on.',
      further: 'Add more solid, a little at a time, and read again.',
    },
  },
  residue: {
    above: { ask: 'Is it completely dry, and was the empty dish subtracted?', ...weighAgain },
    below: { ask: 'Did some of it spit out of the dish, or stay in the pipette?', ...weighAgain },
  },
  portion: {
    above: { ask: 'Was the empty vessel with its lid subtracted, and is it dry outside?', ...weighAgain },
    below: { ask: 'Was the pipette filled to its mark, and did it drain to the end?', ...weighAgain },
  },
  bench: {
    above: { ask: 'Does the water reach the mark, and how much solid went in?', ...readAgain },
    below: { ask: 'Is all of the solid in the flask, and is the water at the mark, not above?', ...readAgain },
  },
  flask: {
    above: { ask: 'Was your eye level with the bottom of the meniscus?', ...readAgain },
    below: { ask: 'Was your eye level with the bottom of the meniscus?', ...readAgain },
  },
  pipette: {
    above: { ask: 'Which mark did it start from, and was the last drop left in?', ...readAgain },
    below: { ask: 'Which mark did it start from, and did it drain to the end?', ...readAgain },
  },
};

export const toleranceTexts = {
  balance: (toleranceG: string): string => `the balance (±${toleranceG} g, read empty and loaded)`,
  flask: (part: { readonly size: string; readonly tolerance: string; readonly note: string }): string =>
    `the ${part.size} mL flask (±${part.tolerance} mL${part.note})`,
  pipette: (part: { readonly size: string; readonly tolerance: string; readonly note: string }): string =>
    `the ${part.size} mL pipette (±${part.tolerance} mL${part.note})`,
  fromMemory: ', from memory',
  readAt: (size: string): string => `, as for ${size} mL`,
  /** In lines that fit beside the settings. */
  whole: (parts: { readonly tools: string; readonly percent: string }): string =>
    `From ${parts.tools}:\ntwice their standard uncertainty (JCGM 100), plus ${parts.percent} % for technique.`,
  /** Worked for round readings of no team, so that nothing is given away. */
  examples: (unit: string, parts: readonly { readonly reading: string; readonly limit: string }[]): string =>
    `So ${parts.map(({ reading, limit }) => `${reading} ${unit} may be off by ${limit} ${unit}`).join(', and ')}.`,
};
