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
      'Add up atomic weight × number of atoms. A number after a bracket counts for all that is in it; after a dot, for the whole part.',
    setUp: ['Put the atomic weight in place of each symbol: ', { given: atomsShown }, ' = ?'],
  },
  'moles of solute': {
    idea: 'Molarity says how many moles are in one litre. How many litres do you have?',
    relation: 'moles = molarity × volume in litres',
    setUp: [{ given: 'molarity' }, ' mol/L × ', ...litres, ' = ?'],
  },
  'mass of solute': {
    idea: 'First find how many moles you need, then what that many moles weigh.',
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
    idea: 'The moles that you took are spread through a bigger volume now.',
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
    idea: 'One formula unit comes apart in water. How many of this ion does it give?',
    relation: 'ion molarity = molarity of the salt × number of that ion in one formula unit',
    setUp: [{ given: 'molarity' }, ' mol/L × number of ', { given: 'ion' }, ' in one ', { given: 'formula' }, ' = ?'],
  },
  'percent error': {
    idea: 'How far off is the result, as a share of the accepted value?',
    relation: 'percent error = gap between the two ÷ accepted value × 100',
    setUp: [
      'gap between ',
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
    idea: 'Your density lies between two lines of the table, or close to them. How far along the way is it?',
    relation:
      'mass percent = lighter percent + share × gap of the percents, where share = gap up to your density ÷ gap of the densities.',
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
    'The balance tells what is really there. It need not agree with your plan to the last digit.',
    'Mass of the solid = reading with the solid − reading of the empty boat. Some balances do this with one key.',
    'Your plan stands in “{row}”. Come close to it, then write every figure that the balance shows.',
  ],
  flask: [
    'The flask holds its volume when the lowest point of the curve touches the mark.',
    'Look with your eye level with the mark. From above or from below it seems to be in another place.',
    'Your plan stands in “{row}”. Read the scale at eye level and write every figure of it.',
  ],
  pipette: [
    'A pipette gives its volume from its mark to its tip, with the last drop left in.',
    'Fill it past the mark and wipe the tip. Let it down to the mark at eye level, then let it run out.',
    'Your plan stands in “{row}”. Which mark did you start from, and where did you stop?',
  ],
  portion: [
    'The balance tells what is really there. A few drops more or less can be seen at once.',
    'Mass of the portion = reading with the solution − reading of the same dry vessel with its lid.',
    'What would the same volume of water weigh? A portion that is far from that needs another look. Write every figure.',
  ],
  bench: [
    'A reading tells what is in the flask now. The plan tells what should be.',
    'Write every figure that is shown, and its unit. Read it twice.',
    'Your plan is the {row} you were given. If the reading is far off, go back over what went into the flask.',
  ],
};

/** Help with a row that is told in a team's own words. */
export const toldHints: readonly [string, string, string] = [
  'Think of a friend who missed the lab. What would you show first?',
  'Say first what you saw or worked out, then how it fits. Use words such as molarity.',
  'Begin with: “We know that …, because …”.',
];

/** Beside a help cell that holds anything but a level. */
export const levelAsked = 'Choose 0, 1, 2 or 3.';

/** Stands in a set-up where a row that it uses is still empty. */
export const rowShown = (title: string): string => `(your “${title}”)`;
