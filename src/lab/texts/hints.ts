import type { Shown } from '../lesson/activity.ts';
import type { QuantityName } from '../quantities.ts';

/**
 * Help at three levels, for readers of 13 to 16: the idea, the relation, and the set-up with the team's own numbers, which
 * is never worked out. The set-up names arguments, and each is shown as the team was given it.
 */
export interface HintTexts {
  readonly idea: string;
  readonly relation: string;
  /** Follows the relation where the solid has a purity. */
  readonly impure?: string;
  readonly setUp: readonly Shown[];
}

/** Symbols of a formula, each with how many of it: a set-up can show them where a number would be worked out. */
export const atomsShown = 'atoms';
/** The number of an ion is for the team to count, so the set-up shows the ion and the formula. */

const litres: readonly Shown[] = ['(', { given: 'volume' }, ' mL ÷ 1000)'];

export const quantityHints: Readonly<Record<QuantityName, HintTexts>> = {
  'molar mass': {
    idea: 'A molar mass is the mass of one mole of the whole formula, so each atom in it counts.',
    relation:
      'Add up atomic weight × number of atoms. A number after a bracket counts for all in it; one after a dot, for the whole part.',
    setUp: ['Replace each symbol with its atomic weight: ', { given: atomsShown }, ' = ?'],
  },
  'moles of solute': {
    idea: 'Molarity says how many moles are in one litre. How many litres do you have?',
    relation: 'moles = molarity × volume in litres',
    setUp: [{ given: 'molarity' }, ' mol/L × ', ...litres, ' = ?'],
  },
  'mass of solute': {
    idea: 'First find how many moles you need, then what they weigh.',
    relation: 'mass = moles × molar mass, where moles = molarity × volume in litres.',
    impure: 'Your solid is not pure, so you need more of it.',
    setUp: [
      { given: 'molarity' },
      ' mol/L × ',
      ...litres,
      ' × molar mass of ',
      { given: 'formula' },
      { given: 'purity', before: ' ÷ (', after: ' ÷ 100)' },
      ' = ?',
    ],
  },
  molarity: {
    idea: 'Molarity says how crowded the solute is: how many moles are in each litre of solution?',
    relation: 'molarity = moles ÷ volume in litres, where moles = mass ÷ molar mass.',
    impure: 'Only the pure part of your solid counts.',
    setUp: [
      { given: 'mass' },
      ' g',
      { given: 'purity', before: ' × (', after: ' ÷ 100)' },
      ' ÷ molar mass of ',
      { given: 'formula' },
      ' ÷ ',
      ...litres,
      ' = ?',
    ],
  },
  'stock volume': {
    idea: 'All the solute in the diluted solution comes from the stock. Water brings none.',
    relation: 'stock molarity × stock volume = target molarity × target volume',
    setUp: [
      { given: 'target molarity' },
      ' mol/L × ',
      { given: 'target volume' },
      ' mL ÷ ',
      { given: 'stock molarity' },
      ' mol/L = ?',
    ],
  },
  'water volume': {
    idea: 'Stock and water share the flask. What room is left for the water?',
    relation: 'water volume = target volume − stock volume (about, since volumes need not add up exactly)',
    setUp: [
      { given: 'target volume' },
      ' mL − (',
      { given: 'target molarity' },
      ' × ',
      { given: 'target volume' },
      ' ÷ ',
      { given: 'stock molarity' },
      ') mL = ?',
    ],
  },
  'dilution factor': {
    idea: 'How many times as big does the volume get? The stock is part of the total.',
    relation: 'dilution factor = final volume ÷ stock volume = stock molarity ÷ target molarity',
    setUp: [{ given: 'stock molarity' }, ' ÷ ', { given: 'target molarity' }, ' = ?'],
  },
  'diluted molarity': {
    idea: 'The moles you took are now spread through a bigger volume.',
    relation: 'molarity after = stock molarity × stock volume ÷ final volume',
    setUp: [
      { given: 'stock molarity' },
      ' mol/L × ',
      { given: 'stock volume' },
      ' mL ÷ ',
      { given: 'final volume' },
      ' mL = ?',
    ],
  },
  'ion molarity': {
    idea: 'One formula unit splits into ions in water. How many of this ion does it give?',
    relation: 'ion molarity = molarity of the salt × number of that ion in one formula unit',
    setUp: [{ given: 'molarity' }, ' mol/L × number of ', { given: 'ion' }, ' in one ', { given: 'formula' }, ' = ?'],
  },
  'percent error': {
    idea: 'How far off is the result, as a share of the accepted value?',
    relation: 'percent error = difference between the two ÷ accepted value × 100',
    setUp: [
      'difference between ',
      { given: 'measured' },
      ' and ',
      { given: 'accepted' },
      ', ÷ ',
      { given: 'accepted' },
      ' × 100 = ?',
    ],
  },
  density: {
    idea: 'Density says what one mL of the solution weighs. What does your whole portion weigh?',
    relation: 'density = mass of the portion ÷ its volume in mL',
    setUp: [{ given: 'mass' }, ' g ÷ ', { given: 'volume' }, ' mL = ?'],
  },
  'mass percent': {
    idea: 'Your density lies between two lines of the table, or near them. How far is it from the lighter to the heavier line?',
    relation:
      'mass percent = lighter percent + fraction × difference in percent. The fraction is (your density − lighter density) ÷ difference in density.',
    setUp: [
      { given: 'lighter percent' },
      ' + (',
      { given: 'density' },
      ' − ',
      { given: 'lighter density' },
      ') ÷ (',
      { given: 'heavier density' },
      ' − ',
      { given: 'lighter density' },
      ') × (',
      { given: 'heavier percent' },
      ' − ',
      { given: 'lighter percent' },
      ') = ?',
    ],
  },
  'reagent molarity': {
    idea: 'Picture one litre from the bottle. What does it weigh, and how much of that is the solute?',
    relation: 'molarity = mass of one litre × (mass percent ÷ 100) ÷ molar mass',
    setUp: [
      '1000 mL × ',
      { given: 'density' },
      ' g/mL × (',
      { given: 'mass percent' },
      ' ÷ 100) ÷ molar mass of ',
      { given: 'formula' },
      ' = ?',
    ],
  },
};

/** Help with a reading, by the instrument that it is taken from; {row} is the title of the row it is planned in. */
export const readingHints: Readonly<
  Record<'balance' | 'flask' | 'pipette' | 'bench' | 'portion', readonly [string, string, string]>
> = {
  balance: [
    'The balance shows what is really there. It need not match your plan to the last digit.',
    'Mass of the solid = reading with the solid − reading of the empty boat. Some balances do this with one key.',
    'Your plan is in “{row}”. Get close to it, then write down every digit that the balance shows.',
  ],
  flask: [
    'The flask holds its volume when the bottom of the meniscus, the curved surface, is on the mark.',
    'Keep your eye level with the mark. From above or below, the meniscus seems to be somewhere else.',
    'Your plan is in “{row}”. Read the scale at eye level and write down every digit.',
  ],
  pipette: [
    'A pipette delivers its volume from the mark to the tip, with the last drop left in.',
    'Fill it past the mark and wipe the tip. Lower the meniscus to the mark at eye level, then let it drain.',
    'Your plan is in “{row}”. Which mark did you start from, and where did you stop?',
  ],
  portion: [
    'The balance shows what is really there. A few drops more or less show at once.',
    'Mass of the portion = reading with the solution − reading of the same dry vessel with its lid.',
    'What would the same volume of water weigh? If your portion is far from that, check it. Write down every digit.',
  ],
  bench: [
    'The reading shows what is in the flask now. The plan says what should be.',
    'Read it twice. Write down every digit, and the unit.',
    'Your plan is the {row} you were given. If the reading is far off, what went into the flask?',
  ],
};

/** Help with a row that is told in a team's own words. */
export const toldHints: readonly [string, string, string] = [
  'Think of a friend who missed the lab. What would you show first?',
  'Say what you found, then how it fits. Use words like molarity.',
  'Begin with: “We know that …, because …”.',
];

/** Beside a help cell that holds anything but a level. */
export const levelAsked = 'Choose 0, 1, 2 or 3.';

/** Stands in a set-up where a row that it uses is still empty. */
export const rowShown = (title: string): string => `(your “${title}”)`;
