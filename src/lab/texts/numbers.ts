/** Why the planner does not propose a substance, and what it says about the numbers that teams get. */
export const cautionTexts = {
  hydrofluoric: 'Hydrofluoric acid goes through the skin and can kill. It has no place in a class.',
  perchloric: 'Perchloric acid can explode when it dries out or meets anything that burns.',
  sulfuric:
    'Concentrated sulfuric acid burns skin at once and boils and spits when water is added. Let staff make a dilute stock.',
  nitric:
    'Concentrated nitric acid burns the skin, makes fires burn more strongly and gives off a poisonous gas. Let staff make a dilute stock.',
  formic: 'Concentrated formic acid burns the skin, and its vapour can catch fire. Let staff make a dilute stock.',
  chromium: 'Chromium(VI) can cause cancer, and harms fertility and life in water.',
  lead: 'Lead salts harm the unborn child and build up in the body.',
  mercury: 'Mercury salts are poisonous in small amounts and build up in the body.',
  cobalt: 'Cobalt salts can cause cancer and allergies.',
  nickel: 'Nickel salts can cause cancer and allergies.',
  barium: 'Barium salts that dissolve are poisonous if swallowed.',
  boric: 'Boric acid can harm fertility and the unborn child.',
  oxalic: 'Oxalic acid is poisonous and harms the eyes.',
  kept: 'As it is in the bottle, it is for staff only. Let staff make a dilute stock, and choose an activity that starts from it.',
  burning: 'As a solid it burns skin and eyes badly. Let staff weigh it out, or start from a dilute stock.',
} as const;

export const cautionWithAdvice = (reason: string): string =>
  `${reason} Choose another solute, or read the safety data sheet and your school’s own rules first.`;

const sizes = (list: readonly number[]): string => (list.length === 0 ? 'none' : `${list.join(', ')} mL`);
/** Two figures, rounded down, since it is a limit. */
const limitText = (value: number): string => {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 1);
  return String(Number((Math.floor(value / unit) * unit).toPrecision(2)));
};

/** What was typed, where its value would give away an answer of the lesson. */
const typedValue = 'the value typed';

/**
 * What a demand of the shelf needs (`expected`), what was typed, and what would free it, for “{received} can’t be used for
 * …: it needs {expected}. {advice}” The mass to weigh and the portion to take are answers of the lesson, so their values
 * are never shown.
 */
export const demandTexts = {
  stockAboveTarget: ({ stock, target }: { readonly stock: number; readonly target: number }) => ({
    expected: `less than the stock, ${stock} mol/L`,
    received: `${target} mol/L`,
    advice: 'Dilution only lowers a molarity: use a stronger stock or a weaker target.',
  }),
  flask: ({ size, shelf }: { readonly size: number; readonly shelf: readonly number[] }) => ({
    expected: `a flask on the shelf (${sizes(shelf)})`,
    received: `${size} mL`,
    advice: `Choose one of those sizes, or add a ${size} mL flask to the shelf.`,
  }),
  portion: ({ pipettes }: { readonly pipettes: readonly number[] }) => ({
    expected: `a portion that a pipette on the shelf (${sizes(pipettes)}) gives in one or two fillings`,
    received: typedValue,
    advice: 'Change the target a little, or add a pipette.',
  }),
  portionWithinStock: ({ flask }: { readonly flask: number }) => ({
    expected: 'a flask of stock that holds at least twice the portion',
    received: `${flask} mL`,
    advice: 'Make more stock in a bigger flask, or dilute to a smaller volume.',
  }),
  portionWithinFlask: ({ flask, portion }: { readonly flask: number; readonly portion: number }) => ({
    expected: `a portion of at most half the ${flask} mL flask`,
    received: `${portion} mL`,
    advice: 'Take a smaller portion, or a bigger flask.',
  }),
  massFine: ({ least, readability }: { readonly least: number; readonly readability: number }) => ({
    expected: `a mass of at least ${Number(least.toPrecision(3))} g, 100 times the balance’s readability`,
    received: typedValue,
    advice: `Use a stronger solution, a bigger flask or a balance that reads finer than ${readability} g.`,
  }),
  massRange: ({ most }: { readonly most: number }) => ({
    expected: `a mass within the range of the balance, up to ${most} g`,
    received: typedValue,
    advice: 'Use a weaker solution, a smaller flask, or a balance with a wider range.',
  }),
  withinTable: (found: { readonly molarity: number; readonly formula: string }) => ({
    expected: `a molarity whose density lies between two lines of the table for ${found.formula}`,
    received: `${found.molarity} mol/L`,
    advice: 'Use a weaker solution, or type two lines of another table.',
  }),
  densityDiffers: ({ molarity }: { readonly molarity: number }) => ({
    expected: 'a solution at least 1 % denser or lighter than water',
    received: `${molarity} mol/L`,
    advice: 'Use a stronger solution: below that, pipette error outweighs the solute.',
  }),
  portionFine: ({ portion, readability }: { readonly portion: number; readonly readability: number }) => ({
    expected: 'a portion that weighs at least 1000 times the readability of the balance',
    received: `${portion} mL`,
    advice: `Use a larger portion, or a balance that reads finer than ${readability} g.`,
  }),
  portionRange: ({ portion, most }: { readonly portion: number; readonly most: number }) => ({
    expected: `a portion that, with its vessel, is within the range of the balance, up to ${most} g`,
    received: `${portion} mL`,
    advice: 'Use a smaller portion, or a balance with a wider range.',
  }),
  dissolves: (found: { readonly formula: string; readonly molarity: number; readonly limit: number }) => ({
    expected: `at most about ${limitText(found.limit)} mol/L, what dissolves of ${found.formula} at room temperature`,
    received: `${found.molarity} mol/L`,
    advice: 'Use a weaker solution, or another solute.',
  }),
} as const;

/** What had to be given up, and what to know about the numbers. */
export const numbersRemarks = {
  looksRight: (found: {
    readonly step: string;
    readonly slip: string;
    readonly teams: string;
    readonly frees: 'sizes' | 'portion';
  }): string =>
    `In “${found.step}”, ${found.slip} would look right (${found.teams}). ${found.frees === 'portion' ? 'Another portion' : 'Other sizes of flask or pipette'} would avoid that.`,
  lookAlike: (found: { readonly step: string; readonly slips: string; readonly teams: string }): string =>
    `In “${found.step}”, two mistakes give the same number (${found.teams}): ${found.slips}.`,
  teams: (count: number, all: number): string =>
    count === all ? 'all teams' : count === 1 ? '1 team' : `${count} teams`,
  twoFillings: 'Some portions take two fillings of a pipette, because one filling gives too few different numbers.',
  mixedFactors:
    'Some dilution factors are whole numbers and some are not, because your glassware gives too few of one kind.',
  otherDigits: 'Some flask sizes have more digits than others, because your glassware has too few of one kind.',
  otherRatios:
    'Some teams dilute much more or much less than these numbers, because your glassware gives too few closer sets.',
  lessDiluted: 'Some teams dilute less than these numbers, because there would be too few sets otherwise.',
  beyondTyped:
    'Some teams get a larger flask or a stronger solution than you typed, because your glassware and balance can make nothing smaller or weaker.',
  otherBottle: ({ typed, stock }: { readonly typed: string; readonly stock: string }): string =>
    `All teams share one stock of ${stock} mol/L, because ${typed} mol/L gives no target that can be made and written with as many figures.`,
  twoBottles: (stocks: readonly string[]): string =>
    `The teams share two stocks, ${stocks.join(' and ')} mol/L, because one gives too few different numbers.`,
  noRecipe: 'All teams have the same numbers, because this activity has no recipe to make others from.',
  portionInTwo: 'The portion takes two fillings of a pipette, because none of your pipettes gives it in one.',
  otherPortion: ({ asked, portion }: { readonly asked: number; readonly portion: number }): string =>
    `All teams take ${portion} mL, because your pipettes do not give ${asked} mL.`,
  shared: ({
    teams,
    different,
    frees,
  }: {
    readonly teams: number;
    readonly different: number;
    readonly frees: 'sizes' | 'sizes for bottles' | 'portions' | 'figures';
  }): string => {
    const counted = `${different} different sets of numbers for ${teams} teams, so some share theirs, as few as possible in one class.`;
    return {
      sizes: `Your glassware gives ${counted} Add a flask or a pipette to get more.`,
      'sizes for bottles': `From shared stocks, your glassware gives ${counted} Add a pipette, or a flask up to the size you typed, to get more.`,
      portions: `From shared stocks, your glassware gives ${counted} Their own readings will still differ. A pipette a little smaller than the portion would give more.`,
      figures: `There are ${counted} Type the numbers with one more figure to get more.`,
    }[frees];
  },
  solubilityUnknown: (formula: string): string =>
    `We have no solubility for ${formula}: make sure that it dissolves at room temperature.`,
  noIons: (formula: string): string =>
    `${formula} gives no ions that can be counted here, so the rows about one ion are left out.`,
  caution: (formula: string, reason: string): string => `${formula}: ${reason}`,
} as const;

/** Words for a start value that cannot be used. */
export const startTexts = {
  missing: (about: string) => ({
    expected: `a value, the ${about}`,
    received: 'a blank cell',
    advice: 'Every team’s numbers start from it.',
  }),
  notPositive: (received: string) => ({
    expected: 'a number above 0',
    received,
    advice: 'Every team’s numbers start from it.',
  }),
  activity: (received: string, known: readonly string[]) => ({
    expected: `an activity such as ${known.slice(0, 2).join(' or ')}`,
    received,
    advice: 'Choose one from the list.',
  }),
  noPipette: (size: number | undefined, what: 'target' | 'portion') => ({
    expected: 'a pipette for a portion near these numbers',
    received: 'this shelf',
    advice:
      size === undefined
        ? `Add a flask or a pipette to the shelf, or change the ${what}.`
        : `Add a ${size} mL pipette to the shelf, or change the ${what}.`,
  }),
  dryingSalt: (received: string, salts: readonly string[]) => ({
    expected: `a salt that can be dried by heating (${salts.join(', ')})`,
    received,
    advice: 'Choose one of these; others change or spatter.',
  }),
  densityTable: (received: string, formulas: readonly string[]) => ({
    expected: `a solute in the table of densities, without water of hydration (${formulas.join(', ')})`,
    received,
    advice: 'Choose one of these; write a hydrate without its water.',
  }),
  linesTogether: {
    expected: 'both lines of the table complete, or both empty',
    received: 'a pair of lines with a gap',
    advice: 'Fill in the gap, or clear both: then our own table at 20 °C is used.',
  },
  hydrate: (received: string, hydrates: readonly string[]) => ({
    expected: `a formula with water of hydration (such as ${hydrates.join(', ')})`,
    received,
    advice: 'Write the water after a dot, or choose the activity with a plain solid.',
  }),
  concentratedReagent: (received: string, reagents: readonly string[]) => ({
    expected: `an acid or base that is sold concentrated (${reagents.join(', ')})`,
    received,
    advice: 'Choose one, or an activity that starts from a solid.',
  }),
  nothingNear: {
    expected: 'a number near which the shelf can make something',
    received: typedValue,
    advice: 'Change it a little, or type it with one more figure.',
  },
  noFlask: {
    expected: 'a flask near this size',
    received: 'this shelf',
    advice: 'Add a flask to the shelf, or change the size.',
  },
} as const;
