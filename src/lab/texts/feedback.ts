import type { QuantityName } from '../quantities.ts';

/** What a value matches, and one question that leads back to the work. */
export interface SlipText {
  /** Completes “Your value matches …”. */
  readonly fits: string;
  readonly ask: string;
}

/** What a slip can have words of its own for. */
export type Wording = QuantityName | 'flask before';

/** Words for a slip in a molar mass, where another quantity is worked from it. */
const workedWith = (text: SlipText) => ({ 'mass of solute': text, molarity: text }) as const;

/**
 * All feedback on entries, in one place, for readers of 13 to 16. It speaks of the value and never of the person, asks
 * rather than tells, and holds no digit at all, so that it cannot give an answer away. `in` rewords a slip for one
 * quantity, or for a dilution of the flask before. Words in braces are filled in: {unit}, {row}.
 */
export const slipTexts = {
  'volume-in-mL': {
    fits: 'a result with the volume left in mL',
    ask: 'Which unit of volume goes with mol/L?',
  },
  'litres-reported': {
    fits: 'the right volume in litres',
    ask: 'Which unit does this row ask for?',
  },
  'volume-ignored': {
    fits: 'a result without the volume',
    ask: 'Would a small flask and a big flask need the same amount?',
  },
  'moles-reported': {
    fits: 'the amount in moles',
    ask: 'You have the moles. What will the balance show for them?',
  },
  'molar-mass-ignored': {
    fits: 'the grams in each litre',
    ask: 'Molarity counts moles. How do you get from grams to moles?',
  },
  'ratio-inverted': {
    fits: 'a result with one step the other way round',
    ask: 'Should this step multiply or divide?',
    in: {
      'mass of solute': {
        fits: 'the moles divided by the molar mass',
        ask: 'One mole weighs many grams. Are the grams more or fewer than the moles?',
      },
      molarity: {
        fits: 'the grams times the molar mass',
        ask: 'If one mole weighs more, do the same grams hold more moles or fewer?',
      },
      'stock volume': {
        fits: 'the two molarities divided the other way round',
        ask: 'Can you take out more stock than the flask holds?',
      },
      'dilution factor': {
        fits: 'the molarity at the end divided by that of the stock',
        ask: 'The volume gets bigger. How many times as big is it at the end?',
      },
      'diluted molarity': {
        fits: 'the two volumes divided the other way round',
        ask: 'Can adding water make a solution stronger?',
      },
      'ion molarity': {
        fits: 'the molarity shared out among the ions',
        ask: 'Is it shared out, or does each ion count?',
      },
      'reagent molarity': {
        fits: 'the grams times the molar mass',
        ask: 'How do you get from the grams in a litre to the moles?',
      },
      density: {
        fits: 'the volume of one gram',
        ask: 'Density is the grams in each mL. Which of the two do you divide by?',
      },
      'mass percent': {
        fits: 'the density differences divided the other way round',
        ask: 'Which difference is from line to line, and which only up to your density?',
      },
    },
  },
  'volumes-multiplied': {
    fits: 'a result divided by the volume',
    ask: 'Does a bigger flask of the same solution need more solute or less?',
    in: {
      molarity: {
        fits: 'a result multiplied by the volume',
        ask: 'The same solute in a bigger flask: is it more crowded or less?',
      },
      density: {
        fits: 'the mass times the volume',
        ask: 'What does one mL of it weigh?',
      },
    },
  },
  'water-of-hydration-left-out': {
    fits: 'the molar mass without the water of hydration',
    ask: 'What comes after the dot in the formula?',
    in: workedWith({
      fits: 'a result with the molar mass of the salt without its water',
      ask: 'What comes after the dot in the formula?',
    }),
  },
  'one-water-only': {
    fits: 'the molar mass with only one water',
    ask: 'How many waters does the formula show after the dot?',
    in: workedWith({
      fits: 'a result with only one water in the molar mass',
      ask: 'How many waters does the formula show after the dot?',
    }),
  },
  'group-subscript-ignored': {
    fits: 'a molar mass without the number after a bracket',
    ask: 'Which atoms does the number after the bracket count for?',
    in: workedWith({
      fits: 'a result without the number after a bracket in the molar mass',
      ask: 'Which atoms does the number after the bracket count for?',
    }),
  },
  'bracket-number-on-one-atom': {
    fits: 'a molar mass where the number after a bracket counts for one atom only',
    ask: 'Which atoms are inside the bracket?',
    in: workedWith({
      fits: 'a result where the number after a bracket counts for one atom only',
      ask: 'Which atoms are inside the bracket?',
    }),
  },
  'subscripts-ignored': {
    fits: 'a molar mass with each element counted only once',
    ask: 'What do the small numbers in the formula tell you?',
    in: workedWith({
      fits: 'a result with each element counted only once',
      ask: 'What do the small numbers in the formula tell you?',
    }),
  },
  'one-subscript-missed': {
    fits: 'a molar mass with one small number left out',
    ask: 'What do the small numbers in the formula tell you?',
    in: workedWith({
      fits: 'a result with one small number left out',
      ask: 'What do the small numbers in the formula tell you?',
    }),
  },
  'water-number-on-one-atom': {
    fits: 'a molar mass where the number of waters counts for hydrogen only',
    ask: 'Which atoms are in one water, and how many waters are there?',
    in: workedWith({
      fits: 'a result where the number of waters counts for hydrogen only',
      ask: 'Which atoms are in one water, and how many waters are there?',
    }),
  },
  'dot-as-times': {
    fits: 'the masses of salt and water multiplied',
    ask: 'Does the dot in the formula join two parts or multiply them?',
  },
  'atomic-numbers-used': {
    fits: 'the sum of the atomic numbers',
    ask: 'Which number on the periodic table tells you the mass?',
    in: workedWith({
      fits: 'a result from atomic numbers',
      ask: 'Which number on the periodic table tells you the mass?',
    }),
  },
  'purity-ignored': {
    fits: 'a result for a pure solid',
    ask: 'What share of your solid is the salt itself?',
  },
  'purity-inverted': {
    fits: 'a result with the purity used the other way round',
    ask: 'If only part of the solid is the salt, do you need more of it or less?',
    in: {
      molarity: {
        fits: 'a result with the purity used the other way round',
        ask: 'If only part of the solid is the salt, does it give more moles or fewer?',
      },
    },
  },
  'amount-as-molarity': {
    fits: 'the moles in the flask',
    ask: 'What volume are those moles in?',
  },
  'volume-over-amount': {
    fits: 'the litres for each mole',
    ask: 'Molarity is the moles in each litre. Which of the two do you divide by?',
  },
  'upside-down': {
    fits: 'the volume divided by the molarity',
    ask: 'If the solution is stronger, does the same volume hold more moles or fewer?',
    in: {
      'mass of solute': {
        fits: 'the molar mass divided by the moles',
        ask: 'If you need more moles, do you weigh out more grams or fewer?',
      },
    },
  },
  'molar-mass-reported': {
    fits: 'the mass of one mole',
    ask: 'How many moles does your solution need?',
  },
  'water-for-stock': {
    fits: 'the volume of water',
    ask: 'Does this row ask for the stronger solution or for the water?',
  },
  'stock-for-water': {
    fits: 'the volume of stock',
    ask: 'Once the stock is in, how much room is left?',
  },
  'final-volume-for-water': {
    fits: 'the whole volume at the end',
    ask: 'How much of that volume is stock?',
  },
  'volumes-added': {
    fits: 'the two volumes added up',
    ask: 'Can the total be more than the flask holds?',
  },
  'parts-miscounted': {
    fits: 'a result with the parts counted differently',
    ask: 'One part of stock in how many parts in total?',
  },
  'volume-left-out': {
    fits: 'the ratio of the two molarities',
    ask: 'How big is the flask you fill?',
  },
  'amount-for-volume': {
    fits: 'the molarity times the volume, which is an amount',
    ask: 'What unit do you get from mol/L times a volume?',
  },
  'factor-less-one': {
    fits: 'the parts of water for each part of stock',
    ask: 'Does the total include the stock?',
  },
  'total-counted-twice': {
    fits: 'the ratio with one part too many',
    ask: 'Is the stock already part of the total?',
  },
  'total-over-water': {
    fits: 'the total divided by the water',
    ask: 'Which one is diluted, the stock or the water?',
  },
  'difference-for-ratio': {
    fits: 'the difference of the two molarities',
    ask: 'Does a dilution factor say how much less, or how many times?',
  },
  'solvent-added-to-final': {
    fits: 'a result where the final volume counts as added water',
    ask: 'Is the final volume the water you add, or everything in the flask?',
  },
  'water-as-final': {
    fits: 'a result divided by the volume of water',
    ask: 'Which volume is the solute in now?',
  },
  'molarity-unchanged': {
    fits: 'the molarity of the stock',
    ask: 'What stays the same when you add water, and what changes?',
    in: {
      'flask before': {
        fits: 'the molarity in the flask before',
        ask: 'What stays the same when you add water, and what changes?',
      },
    },
  },
  'factors-added': {
    fits: 'the stock divided by the sum of the factors',
    ask: 'Each flask dilutes the one before. Do the factors add up or multiply?',
  },
  'other-given-used': {
    fits: 'the result from another of your numbers',
    ask: 'Which of your numbers belong in this row?',
  },
  'ion-count-ignored': {
    fits: 'the molarity of the whole salt',
    ask: 'How many of this ion does one formula unit give?',
  },
  'all-ions-counted': {
    fits: 'the molarity of all the ions together',
    ask: 'Which ion does this row ask about?',
  },
  "other-ion's-count": {
    fits: 'a result with the number of the other ion',
    ask: 'Which ion is asked for, and how many of it are there?',
  },
  'charge-for-count': {
    fits: 'a result with the charge used as the number of ions',
    ask: 'Does an ion’s charge tell you how many there are?',
  },
  'divided-by-measured': {
    fits: 'the difference divided by the measured value',
    ask: 'Which value do you compare with?',
  },
  'mean-as-base': {
    fits: 'the difference divided by the mean of the two',
    ask: 'Is one of the two values the accepted one?',
  },
  'ratio-reported': {
    fits: 'the measured value as a percentage of the accepted one',
    ask: 'Does this row ask how big it is, or how far off?',
  },
  'difference-reported': {
    fits: 'the plain difference between the two values',
    ask: 'Of which value is the difference a percentage?',
  },
  'fraction-reported': {
    fits: 'a fraction where a percentage is asked for',
    ask: 'How do you turn a fraction into a percentage?',
  },
  'sign-reversed': {
    fits: 'the two volumes subtracted the other way round',
    ask: 'Which of the two is bigger?',
  },
  'density-divided': {
    fits: 'a result divided by the density',
    ask: 'If the liquid is heavier than water, does a litre of it hold more grams or fewer?',
  },
  'percent-not-divided': {
    fits: 'a result with the percentage used as it stands',
    ask: 'How do you write a percentage as a fraction?',
  },
  'percent-left-out': {
    fits: 'a result for a liquid that is all solute',
    ask: 'What share of the liquid is the solute?',
  },
  'density-ignored': {
    fits: 'a result for a liquid as dense as water',
    ask: 'What is the mass of one litre of this liquid?',
  },
  'per-mL-not-L': {
    fits: 'the moles in one mL',
    ask: 'Molarity is moles in how much solution?',
  },
  'grams-per-litre': {
    fits: 'the grams of solute in one litre',
    ask: 'How do you get from grams to moles?',
  },
  'moles-in-100-g': {
    fits: 'the moles in a hundred grams of the liquid',
    ask: 'What is the mass of one litre of it?',
  },
  'molality-reported': {
    fits: 'the moles for each kilogram of water',
    ask: 'Is molarity worked with the water alone, or with the whole solution?',
  },
  'volume-in-litres': {
    fits: 'the mass of one litre',
    ask: 'Which unit of volume does this row ask for?',
  },
  'table-line-taken': {
    fits: 'the percentage in one line of the table',
    ask: 'Is your density exactly the one in that line?',
  },
  'middle-of-lines': {
    fits: 'the value half-way between the two lines',
    ask: 'Is your density half-way between theirs?',
  },
  'share-mirrored': {
    fits: 'a result counted back from the heavier line',
    ask: 'Which line is your density closer to? Is your percentage closer to it too?',
  },
  'step-unscaled': {
    fits: 'the percentage of the lighter line plus a bare fraction',
    ask: 'What is that fraction of the way worth in percent?',
  },
  'line-not-added': {
    fits: 'only the part to add to the lighter line',
    ask: 'What percentage does the lighter line start from?',
  },
  'share-reported': {
    fits: 'only the fraction of the way between the lines',
    ask: 'What is that fraction worth in percent, and which line do you add it to?',
  },
  'planned-for-made': {
    fits: 'the planned molarity',
    ask: 'What mass did the balance show?',
    in: {
      'diluted molarity': {
        fits: 'the planned molarity',
        ask: 'What molarity does your stock really have?',
      },
      'dilution factor': {
        fits: 'a result with the planned molarity of the stock',
        ask: 'What molarity does your stock really have?',
      },
      'stock volume': {
        fits: 'a result with the planned molarity of the stock',
        ask: 'What molarity does your stock really have?',
      },
      'water volume': {
        fits: 'a result with the planned molarity of the stock',
        ask: 'What molarity does your stock really have?',
      },
      'reagent molarity': {
        fits: 'the molarity on the label',
        ask: 'What molarity do your mass percent and density give?',
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
    fits: 'the ratio of the two flask sizes',
    ask: 'Does all of the stock go into the second flask?',
  },
  'power-of-ten': {
    fits: 'the right answer except for the decimal point',
    ask: 'What size of number makes sense here? Check the units.',
  },
} as const satisfies Record<string, SlipText & { readonly in?: Partial<Record<Wording, SlipText>> }>;

export type SlipId = keyof typeof slipTexts;

/** Everything else that is said about an entry. */
export const remarks = {
  onTarget: 'Yes, this fits your numbers.',
  closeRounding: 'Close. Keep extra digits as you work, and round only at the end.',
  closeCutOff: 'Close. Look at the next digit: does it round up or down?',
  closeTable: 'Close. Tables of atomic weights differ. Which one does your class use?',
  closeFewFigures: 'Close. Give the value to {figures}.',
  wrongFigures: 'The value is right. Give it to {figures}.',
  follows: 'Right method. First check “{row}”.',
  oneFigure: 'Not yet. One figure is not enough here. Give the value to {figures}.',
  notYet: 'Not yet. Check each number that goes in, and its unit. Does the size make sense?',
  notYetBrief: 'Not yet. Check each number that goes in, and its unit.',
  signOfError: 'Check the sign. Is the measured value above or below the accepted one?',
  negative: 'Not yet. Can this value be below zero?',
  unitWanted: 'Check the unit. This row asks for {unit}. Does yours measure the same thing?',
  unitBrief: 'Check the unit. This row asks for {unit}.',
  unitNone: 'Check the unit. This row asks for a plain number. Which units cancel out?',
  unitEvidently: 'The number looks fine. Does its unit fit? This row asks for {unit}.',
  unitUnknown: 'Look at the word after the number. Is it a unit that fits here?',
  otherMark: 'Look at the mark in your number. Is it for the decimals or for the thousands?',
  signOnly: 'Not yet. Check the sign.',
  shifted: 'Not yet. Right digits, but the decimal point is misplaced. Check the units.',
  figuresAsked: 'the figures asked',
  tooLong: 'This is too long to read. Type only what this row asks for.',
  blank: '',
  needsRow: 'Fill in “{row}” first. This row uses it.',
  lookFirst: 'Check “{row}” first. This row uses it.',
  waitForRow: 'Wait before you do this. Check “{row}” first.',
  waitForTick: 'Wait before you do this. Check “{row}” first: read the cautions, then answer there.',
  farFromTarget: 'Not yet. Check it once more.',
  severalFit: 'Things to check: {ask}',
  oneFits: 'Your value matches {fits}. {ask}',
} as const;

/** What to type where no number can be read. */
export const unreadableTexts = {
  'not a number': 'Type one number here, with or without its unit.',
  'two ways': 'This can be read in two ways. Leave out the mark between the thousands.',
  'other kind': 'Type a number here. This cell holds something else.',
  calculation: 'Work it out and type one number.',
  'more than a number': 'Type the number alone, with or without its unit.',
  'two numbers': 'There is more than one number here. Which one is your answer? Type that one alone.',
  ratio: 'A ratio can mean two things. What does each of its numbers count? Type one number.',
  'too long': 'This is too long to read. Type one number, with or without its unit.',
} as const;

/** Beside a row whose given, or the setting it needs, cannot be used: its name comes first, for the teacher to find it. */
export const badGiven = (name: string): string =>
  name === 'formula' || name === 'ion'
    ? `⚠ ${name}: the one for your team is missing or can’t be read. Tell your teacher.`
    : `⚠ ${name}: your team’s number is missing or can’t be read. Tell your teacher.`;
export const badSetting = (name: string): string => `⚠ ${name}: this setting can’t be read. Tell your teacher.`;
/** Either of these in few words, where the row is low. */
export const badBriefly = (name: string): string => `⚠ ${name} can’t be read. Tell your teacher.`;
export const badStep = (id: string): string => `⚠ ${id}: this row is not known here. Tell your teacher.`;

/** A row that is still open once the class is closed at the bell: it asks nothing, and what was typed stays. */
export const closedRow = {
  check: 'next time',
  lookAt: 'You go on here next time. What you typed is kept.',
} as const;

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
export const checkHeadings = { check: 'Check', lookAt: 'Feedback', hint: 'Hint' } as const;
