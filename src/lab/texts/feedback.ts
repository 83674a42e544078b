import type { QuantityName } from '../quantities.ts';

/** What a value matches, and one question that leads back to the work. */
export interface SlipText {
  /** Completes “Your value matches …”. */
  readonly fits: string;
  readonly ask: string;
}

/** Words for a slip in a molar mass, where another quantity is worked from it. */
const workedWith = (text: SlipText) => ({ 'mass of solute': text, molarity: text }) as const;

/**
 * All feedback on entries, in one place, for readers of 13 to 16. It speaks of the value and never of the person, asks
 * rather than tells, and holds no digit at all, so that it cannot give an answer away. `in` rewords a slip for one
 * quantity. Words in braces are filled in: {unit}, {row}.
 */
export const slipTexts = {
  'volume-in-mL': {
    fits: 'work with the volume left in mL',
    ask: 'Which unit of volume goes with mol/L?',
  },
  'litres-reported': {
    fits: 'the right volume in litres',
    ask: 'Which unit does this row ask for?',
  },
  'volume-ignored': {
    fits: 'work that leaves out the volume',
    ask: 'Would a small flask and a big flask need the same amount?',
  },
  'moles-reported': {
    fits: 'the amount in moles',
    ask: 'You have the moles. What does the balance read?',
  },
  'molar-mass-ignored': {
    fits: 'grams in each litre',
    ask: 'Molarity counts moles. How do you get from grams to moles?',
  },
  'ratio-inverted': {
    fits: 'work with one step turned upside down',
    ask: 'Should this step multiply or divide?',
    in: {
      'mass of solute': {
        fits: 'moles divided by the molar mass',
        ask: 'One mole has a mass of many grams. So should the grams be more or less than the moles?',
      },
      molarity: {
        fits: 'grams times the molar mass',
        ask: 'If one mole weighs more, do the same grams hold more moles or fewer?',
      },
      'stock volume': {
        fits: 'the two molarities the other way up',
        ask: 'Can you take out more stock than the flask holds?',
      },
      'dilution factor': {
        fits: 'the part of the stock that is left',
        ask: 'Your ratio is the other way up. How many times as big is the volume at the end?',
      },
      'diluted molarity': {
        fits: 'the two volumes the other way up',
        ask: 'Can adding water make a solution stronger?',
      },
      'ion molarity': {
        fits: 'the molarity shared out among the ions',
        ask: 'Is it shared out, or does each ion count?',
      },
      'reagent molarity': {
        fits: 'grams times the molar mass',
        ask: 'How do you turn grams in a litre into moles?',
      },
      density: {
        fits: 'the volume of one gram',
        ask: 'Grams for each mL: which of the two goes below the line?',
      },
      'mass percent': {
        fits: 'a share of the way that is turned upside down',
        ask: 'Which gap of the densities is the whole way, and which is your part?',
      },
    },
  },
  'volumes-multiplied': {
    fits: 'work that divides by the volume',
    ask: 'Does a bigger flask of it need more of the solute or less?',
    in: {
      molarity: {
        fits: 'work that multiplies by the volume',
        ask: 'The same solute in a bigger flask: is it more crowded or less?',
      },
      density: {
        fits: 'the mass times the volume',
        ask: 'What would just one mL of it weigh?',
      },
    },
  },
  'water-of-hydration-left-out': {
    fits: 'the molar mass of the salt with no water in it',
    ask: 'What stands after the dot in the formula?',
    in: workedWith({
      fits: 'work with the molar mass of the salt without its water',
      ask: 'What stands after the dot in the formula?',
    }),
  },
  'one-water-only': {
    fits: 'the molar mass with just one water',
    ask: 'How many waters does the formula show after the dot?',
    in: workedWith({
      fits: 'work with the molar mass of the salt with just one water',
      ask: 'How many waters does the formula show after the dot?',
    }),
  },
  'group-subscript-ignored': {
    fits: 'a molar mass without the number after a bracket',
    ask: 'What does the small number after the bracket act on?',
    in: workedWith({
      fits: 'work with a molar mass that leaves out the number after a bracket',
      ask: 'What does the small number after the bracket act on?',
    }),
  },
  'bracket-number-on-one-atom': {
    fits: 'a molar mass where the number after a bracket acts on one atom only',
    ask: 'Which atoms stand inside the bracket?',
    in: workedWith({
      fits: 'work with a molar mass where a bracket’s number acts on one atom only',
      ask: 'Which atoms stand inside the bracket?',
    }),
  },
  'subscripts-ignored': {
    fits: 'a molar mass with each atom counted just once',
    ask: 'What do the small numbers in the formula tell you?',
    in: workedWith({
      fits: 'work with a molar mass that counts each atom just once',
      ask: 'What do the small numbers in the formula tell you?',
    }),
  },
  'atomic-numbers-used': {
    fits: 'the sum of atomic numbers',
    ask: 'Which number on the periodic table tells you the mass?',
    in: workedWith({
      fits: 'work with a sum of atomic numbers',
      ask: 'Which number on the periodic table tells you the mass?',
    }),
  },
  'weights-rounded-early': {
    fits: 'a molar mass from weights with few decimal places',
    ask: 'To how many places were the atomic weights taken?',
  },
  'purity-ignored': {
    fits: 'work with a solid that is all pure',
    ask: 'How much of your solid is the salt itself?',
  },
  'purity-inverted': {
    fits: 'work with the purity turned upside down',
    ask: 'If only part of the solid is the salt, do you need more of it or less?',
    in: {
      molarity: {
        fits: 'work with the purity turned upside down',
        ask: 'If only part of the solid is the salt, does it give more moles or fewer?',
      },
    },
  },
  'amount-as-molarity': {
    fits: 'the moles in the flask',
    ask: 'What volume are those moles in?',
  },
  'volume-over-amount': {
    fits: 'litres for each mole',
    ask: 'Moles per litre: which of the two goes below the line?',
  },
  'water-for-stock': {
    fits: 'the volume of water',
    ask: 'Which bottle do you draw from with the pipette?',
  },
  'stock-for-water': {
    fits: 'the volume of stock',
    ask: 'Once the stock is in, how much room is left?',
  },
  'final-volume-for-water': {
    fits: 'the whole volume at the end',
    ask: 'What is in the flask before the water goes in?',
  },
  'volumes-added': {
    fits: 'the two volumes added up',
    ask: 'Can the total be more than the flask holds?',
  },
  'parts-miscounted': {
    fits: 'a ratio with the parts counted in another way',
    ask: 'One part of stock in how many parts of the whole?',
  },
  'volume-left-out': {
    fits: 'the ratio of the two molarities',
    ask: 'How big is the flask that you fill?',
  },
  'amount-for-volume': {
    fits: 'molarity times volume, which is an amount',
    ask: 'What unit do you get from mol/L times a volume?',
  },
  'factor-less-one': {
    fits: 'parts of water for each part of stock',
    ask: 'Did the part of stock get counted in the total?',
  },
  'total-counted-twice': {
    fits: 'the ratio with one part too many',
    ask: 'Is the stock already part of the total?',
  },
  'total-over-water': {
    fits: 'the total divided by the water',
    ask: 'Which part is being diluted?',
  },
  'difference-for-ratio': {
    fits: 'the difference of the two molarities',
    ask: 'Does the factor say how much less, or how many times?',
  },
  'solvent-added-to-final': {
    fits: 'work where the final volume counts as added water',
    ask: 'Is the final volume the water you add, or all that is in the flask?',
  },
  'water-as-final': {
    fits: 'work that divides by the volume of water',
    ask: 'Which volume is the solute in now?',
  },
  'molarity-unchanged': {
    fits: 'the molarity of the stock',
    ask: 'What stays the same when you add water, and what changes?',
  },
  'ion-count-ignored': {
    fits: 'the molarity of the whole salt',
    ask: 'How many of this ion does one formula unit give?',
  },
  'all-ions-counted': {
    fits: 'the molarity of all the ions at once',
    ask: 'Which ion does this row ask about?',
  },
  "other-ion's-count": {
    fits: 'the number of the other ion',
    ask: 'Which ion is asked for, and how many of it are there?',
  },
  'divided-by-measured': {
    fits: 'the gap divided by the measured value',
    ask: 'Which of the two values do you judge against?',
  },
  'mean-as-base': {
    fits: 'the gap divided by the mean of the two',
    ask: 'Is one of the two values the accepted one?',
  },
  'ratio-reported': {
    fits: 'the measured value as a percent of the accepted one',
    ask: 'Does the row ask what share it is, or how far off?',
  },
  'difference-reported': {
    fits: 'the plain gap between the two values',
    ask: 'Percent of what?',
  },
  'fraction-reported': {
    fits: 'a fraction',
    ask: 'How do you turn a fraction into a percent?',
  },
  'sign-reversed': {
    fits: 'the two values taken away the other way round',
    ask: 'Which one comes first?',
  },
  'density-divided': {
    fits: 'work that divides by the density',
    ask: 'If the liquid is heavier than water, does a litre of it hold more grams or fewer?',
  },
  'percent-not-divided': {
    fits: 'a percent used as a plain number',
    ask: 'A percent means out of how many?',
  },
  'percent-left-out': {
    fits: 'a liquid that is all solute',
    ask: 'What share of the liquid is the solute?',
  },
  'density-ignored': {
    fits: 'a litre with the mass of a litre of water',
    ask: 'What is the mass of one litre of this liquid?',
  },
  'per-mL-not-L': {
    fits: 'the moles in one mL',
    ask: 'Molarity is moles in how much solution?',
  },
  'volume-in-litres': {
    fits: 'the mass of one litre',
    ask: 'Which unit of volume does this row ask for?',
  },
  'table-line-taken': {
    fits: 'a line of the table as it stands',
    ask: 'Is your density just that of the line, or some way along?',
  },
  'middle-of-lines': {
    fits: 'the middle of the two lines',
    ask: 'Is your density in the middle too?',
  },
  'share-mirrored': {
    fits: 'a way that is counted from the other line',
    ask: 'Is your density closer to the lighter line or to the heavier?',
  },
  'step-unscaled': {
    fits: 'the percent of the lighter line plus the share of the way',
    ask: 'How many percent is that share worth?',
  },
  'line-not-added': {
    fits: 'the part of the way from the lighter line',
    ask: 'At what percent does the way begin?',
  },
  'share-reported': {
    fits: 'only the share of the way between the lines',
    ask: 'How many percent is that share worth, and from where does it count?',
  },
  'planned-for-made': {
    fits: 'the molarity of the plan',
    ask: 'Which mass did the balance really show?',
    in: {
      'reagent molarity': {
        fits: 'the molarity on the label',
        ask: 'Which molarity do your mass percent and your density give?',
      },
    },
  },
  'mass-reported': {
    fits: 'the mass in grams',
    ask: 'This row asks for moles. Which step comes before the mass?',
    in: {
      density: {
        fits: 'the mass of the whole portion',
        ask: 'How many mL share that mass?',
      },
    },
  },
  'flasks-compared': {
    fits: 'the sizes of the two flasks compared',
    ask: 'Does all of the stock go into the second flask?',
  },
  'power-of-ten': {
    fits: 'the right digits with the point moved',
    ask: 'What size of number makes sense here? Look at the units.',
  },
} as const satisfies Record<string, SlipText & { readonly in?: Partial<Record<QuantityName, SlipText>> }>;

export type SlipId = keyof typeof slipTexts;

/** Everything else that is said about an entry. */
export const remarks = {
  onTarget: 'Yes, this fits your numbers.',
  closeRounding: 'Close. Keep spare digits as you work and round at the end.',
  closeCutOff: 'Close. Look at the next digit of your result: round up or down?',
  closePlanned: 'Close. Is it worked from the mass that the balance really showed?',
  closeFewFigures: 'Close. Give the value to {figures}.',
  wrongFigures: 'The value is right. Give it to {figures}.',
  follows: 'This step fits the value in “{row}”. Look at that row first.',
  oneFigure: 'Not yet. One figure says too little here. Give the value to {figures}.',
  notYet: 'Not yet. Look at each number that goes in and at its unit. Does the size make sense?',
  signOfError: 'Look at the sign. Is the measured value above or below the accepted one?',
  negative: 'Not yet. Can this value be below zero?',
  unitWanted: 'Look at the unit. This row asks for {unit}. Does yours measure the same thing?',
  unitNone: 'Look at the unit. This row asks for a plain number. What cancels out?',
  unitEvidently: 'The number looks fine. Does the unit with it fit? This row asks for {unit}.',
  signOnly: 'Not yet. Look at the sign.',
  shifted: 'Not yet. The digits fit, but the point has moved. Look at the units.',
  figuresAsked: 'the figures asked',
  blank: '',
  needsRow: 'Fill in “{row}” first. This row is worked from it.',
  lookFirst: 'Look at “{row}” first. This row is worked from it.',
  waitForRow: 'Wait at the bench. Look at “{row}” first.',
  farFromTarget: 'Not yet. Look at it once more.',
  severalFit: 'Your value fits more than one way of working: {fits}. {ask}',
  oneFits: 'Your value matches {fits}. {ask}',
} as const;

/** What to type where no number can be read. */
export const unreadableTexts = {
  'not a number': 'Type one number here, with or without its unit.',
  'two ways': 'This can be read in two ways. Type it with no mark between the thousands.',
  'other kind': 'Type a number here. This cell holds something else.',
  calculation: 'Work it out and type one number.',
  'more than a number': 'Type the number alone, with or without its unit.',
} as const;

/** Beside a row whose given, or the setting it needs, cannot be used: its name comes first, for the teacher to find it. */
export const badGiven = (name: string): string =>
  name === 'formula' || name === 'ion'
    ? `⚠ ${name}. The one for your team is missing or cannot be read. Tell your teacher.`
    : `⚠ ${name}. The number for your team is missing or cannot be read. Tell your teacher.`;
export const badSetting = (name: string): string => `⚠ ${name}. This setting cannot be read. Tell your teacher.`;
export const badStep = (id: string): string => `⚠ ${id}. This row is not known here. Tell your teacher.`;

/** Number words, since a digit might stand in the answer. */
export const figureWords = [
  'no figures',
  'one figure',
  'two figures',
  'three figures',
  'four figures',
  'five figures',
  'six figures',
] as const;
export const decimalWords = [
  'a whole number',
  'one decimal',
  'two decimals',
  'three decimals',
  'four decimals',
  'five decimals',
  'six decimals',
] as const;

/** Headings of the three columns that a team's check fills. */
export const checkHeadings = { check: 'Check', lookAt: 'What to look at', hint: 'Hint' } as const;
