/** What cannot be used where it was typed, and what can. */
const unfit = '{received} can’t be used for {the}: ';

/**
 * Every error text for people, by code. `full` is thrown for single cells; `short` stands in its own place in a range.
 * Placeholders, filled by `errorText`: {received} is what was typed, {at} where in a text it stands, {the} the argument in
 * words with its article, {name} without it, {argument} as it is spelled; {expected}, {advice} and {brief} as the error
 * gives them, which carries those of them that its two sentences show. A function, so that a cell without an error does not
 * wait for the table.
 */
export const messages = () =>
  ({
    // measurement
    'number-expected': {
      full: '{received} can’t be read as a number for {the}. {advice}',
      short: '⚠ {name}: not a number',
    },
    'number-two-readings': {
      full: '{received} for {the} could be {expected}. {advice}',
      short: '⚠ {brief}?',
    },
    'number-out-of-range': {
      full: `${unfit}it must be {expected}. {advice}`,
      short: '⚠ {name}: power of ten?',
    },
    'figures-out-of-range': {
      full: '{received} can’t be the number of significant figures. {advice}',
      short: '⚠ figures: 1 to 30',
    },
    'accepted-zero': {
      full: 'With an accepted value of {received} there is no percent error. {advice}',
      short: '⚠ accepted is 0',
    },
    'mean-zero': {
      full: 'The mean of {received} is 0, so there is no percent difference. {advice}',
      short: '⚠ mean is 0',
    },
    'quantity-expected': {
      full: '{received} can’t be used for {the}. {advice}',
      short: '⚠ not {brief}',
    },
    'unit-other-kind': {
      full: '{received} can’t be used for {the}. {advice}',
      short: '⚠ {brief}',
    },
    'unit-unknown': {
      full: '{received}: “{brief}” is not a unit known here. {advice}',
      short: '⚠ unit: {brief}?',
    },
    'percent-two-readings': {
      full: '{received} for {the} could be {expected}. {advice}',
      short: '⚠ {brief}?',
    },
    'not-above-zero': {
      full: `${unfit}it must be {expected}. {advice}`,
      short: '⚠ {name} not above 0',
    },
    'below-zero': {
      full: `${unfit}it must be {expected}. {advice}`,
      short: '⚠ {name} below 0',
    },
    'glassware-size': {
      full: '{received} is not {expected}. {advice}',
      short: '⚠ size: {brief}',
    },
    // chemistry: formulas and ions
    'formula-expected': {
      full: `${unfit}type {expected}.`,
      short: '⚠ not a formula',
    },
    'formula-too-long': {
      full: '{received} is too long: {expected}. {advice}',
      short: '⚠ formula too long',
    },
    'formula-too-deep': {
      full: '{received}{at} is one bracket too many: {expected}. {advice}',
      short: '⚠ formula: too many brackets',
    },
    'formula-case': {
      full: '{received} needs {expected}. {advice}',
      short: '⚠ {brief}',
    },
    'formula-character': {
      full: '{received}{at} doesn’t belong in a formula. {advice}',
      short: '⚠ formula: other character',
    },
    'formula-part-missing': {
      full: 'Part of the formula is missing{at}. {advice}',
      short: '⚠ formula: part missing',
    },
    'element-unknown': {
      full: '{received}{at} is not the symbol of an element. {advice}',
      short: '⚠ element {brief}?',
    },
    'bracket-not-closed': {
      full: 'The bracket{at} is never closed. {advice}',
      short: '⚠ formula: {brief}',
    },
    'bracket-not-opened': {
      full: '{received}{at} closes no bracket. {advice}',
      short: '⚠ formula: {brief} out of place',
    },
    'bracket-empty': {
      full: 'The brackets that end{at} are empty. {advice}',
      short: '⚠ formula: empty brackets',
    },
    'separator-in-bracket': {
      full: '{received}{at} stands inside an open bracket. {advice}',
      short: '⚠ formula: bracket still open',
    },
    'coefficient-before-formula': {
      full: '{received} begins with a number. {advice}',
      short: '⚠ formula: number in front',
    },
    'coefficient-out-of-range': {
      full: '{received}{at} doesn’t say how many: write {expected}. {advice}',
      short: '⚠ formula: number after the dot',
    },
    'number-out-of-place': {
      full: 'The number{at} has nothing before it to count. {advice}',
      short: '⚠ formula: number out of place',
    },
    'subscript-zero': {
      full: '{received}{at} can’t be a number of atoms. {advice}',
      short: '⚠ formula: 0 after a symbol',
    },
    'subscript-too-large': {
      full: '{received}{at} is too many: {expected}. {advice}',
      short: '⚠ formula: number too large',
    },
    'subscript-not-whole': {
      full: 'The number{at} isn’t whole. {advice}',
      short: '⚠ formula: whole numbers',
    },
    'isotope-shape': {
      full: '{received}{at} can’t be read as an isotope. {advice}',
      short: '⚠ isotope as in [13C]',
    },
    'isotope-unlikely': {
      full: '{received}{at} can’t be an isotope. {advice}',
      short: '⚠ mass number?',
    },
    'formula-look-alike': {
      full: '{received} has {expected}. {advice}',
      short: '⚠ {brief}',
    },
    'charge-two-readings': {
      full: '{received} could be {expected}. {advice}',
      short: '⚠ {brief}',
    },
    'formula-with-charge': {
      full: '{received} is an ion, not a whole substance. {advice}',
      short: '⚠ substance without a charge',
    },
    'atomic-weight-none': {
      full: '{received} has no standard atomic weight, as none of its isotopes is stable. {advice}',
      short: '⚠ {brief}: no atomic weight',
    },
    'element-not-in-formula': {
      full: '{received} is not in the formula. Choose {expected}.',
      short: '⚠ no {brief} in it',
    },
    'ions-weak': {
      full: '{received} is a weak electrolyte: most of it stays whole in water. {advice}',
      short: '⚠ weak: mostly undissociated',
    },
    'ions-sparingly': {
      full: '{received} hardly dissolves: less than 1 g in 100 g of water. {advice}',
      short: '⚠ hardly dissolves',
    },
    'ions-unknown': {
      full: 'The ions of {received} are not known here. {advice}',
      short: '⚠ ions not known here',
    },
    'ion-not-in-formula': {
      full: '{received} is not an ion of this substance. Type {expected}, with its charge.',
      short: '⚠ ion: {brief}?',
    },
    'ion-none': {
      full: '{received} gives no ions in water: it stays whole. {advice}',
      short: '⚠ gives no ions',
    },
    'molarity-above-saturated': {
      full: '{received} is more than dissolves: {expected}. {advice}',
      short: '⚠ more than dissolves',
    },
    // chemistry: solutions
    'density-unlikely': {
      full: '{received} is not a likely density: solutions have {expected}. {advice}',
      short: '⚠ {name} in kg/m³?',
    },
    'purity-out-of-range': {
      full: `${unfit}it must be {expected}. {advice}`,
      short: '⚠ {name}: 0 to 100 %',
    },
    'final-below-stock-volume': {
      full: 'A final volume of {received} is less than the stock taken, {expected}. {advice}',
      short: '⚠ final volume too small',
    },
    'factor-not-above-one': {
      full: '{received} can’t be a dilution factor: it must be {expected}. {advice}',
      short: '⚠ factor not above 1',
    },
    'stages-out-of-range': {
      full: '{received} can’t be the number of stages: it must be {expected}. {advice}',
      short: '⚠ stages: 1 to 100',
    },
    'percent-of-line': {
      full: `${unfit}it must be {expected}. {advice}`,
      short: '⚠ {name}: 0 to 100 %',
    },
    'percent-beyond-line': {
      full: '{received} is too far from the two lines of the table. {advice}',
      short: '⚠ {name} far from the two lines',
    },
    'lines-alike': {
      full: 'Both lines have {received}. {advice}',
      short: '⚠ two lines alike',
    },
    'percent-unclear': {
      full: '{received} could be {expected}. {advice}',
      short: '⚠ % w/w or % w/v?',
    },
    'concentration-unit-unknown': {
      full: '{received} is not a unit that can be converted here. Type {expected}.',
      short: '⚠ unit of concentration?',
    },
    'conversion-needs': {
      full: '{advice} Give {expected}.',
      short: '⚠ {brief} needed',
    },
    'solute-over-whole': {
      full: '{received} would be more solute than solution. {advice}',
      short: '⚠ more solute than solution',
    },
    'target-not-below-stock': {
      full: 'A target of {received} is not below the stock, {expected}. {advice}',
      short: '⚠ target not below stock',
    },
    // workbook
    'plan-without-lines': {
      full: 'No {expected} was found in {received}. {advice}',
      short: '⚠ no lines in the Plan',
    },
    'plan-setting': {
      full: '{argument} {received}. {advice}',
      short: '⚠ setting',
    },
    'plan-line': {
      full: '{argument}: {received}. {advice}',
      short: '⚠ line of the Plan',
    },
    // lab: a quantity and what it is given
    'quantity-unknown': {
      full: '{received} is not a quantity known here. {advice}',
      short: '⚠ quantity unknown',
    },
    'given-shape': {
      full: 'The given table has {received}, but needs two: name and value. {advice}',
      short: '⚠ given: two columns',
    },
    'given-unknown': {
      full: '{received} is not used here. {advice}',
      short: '⚠ given: {brief}',
    },
    'given-twice': {
      full: '{received} is given twice. {advice}',
      short: '⚠ given twice: {brief}',
    },
    'given-missing': {
      full: '{the} is missing. {advice}',
      short: '⚠ {brief} missing',
    },
    // lab: hints, readings, numbers for teams
    'hint-level': {
      full: '{received} is not a level of help. {advice}',
      short: '⚠ level 1, 2 or 3',
    },
    'lesson-setting': {
      full: 'The setting “{argument}” can’t be {received}. Type {expected} in the Plan.',
      short: '⚠ setting',
    },
    'numbers-shelf': {
      full: `${unfit}it needs {expected}. {advice}`,
      short: '⚠ not with this shelf',
    },
    'numbers-solute': {
      full: '{received} can’t be used here: this activity needs {expected}. {advice}',
      short: '⚠ solute',
    },
    'numbers-start': {
      full: `${unfit}it needs {expected}. {advice}`,
      short: '⚠ number to start from',
    },
    'nothing-to-picture': {
      full: 'The picture needs {expected}, and there is {received}. {advice}',
      short: '⚠ nothing to draw',
    },
    'particles-too-far-apart': {
      full: 'The picture needs {expected}, but {received}. {advice}',
      short: '⚠ too far apart to draw',
    },
    // functions: cells and ranges
    'ranges-unfit': {
      full: 'These ranges don’t fit each other: {received}. {advice}',
      short: '⚠ ranges do not fit',
    },
    'one-cell-only': {
      full: 'Give {expected} for {the}, not {received}. {advice}',
      short: '⚠ {name}: one cell only',
    },
    'columns-only': {
      full: 'Give {expected} for {the}, not {received}. {advice}',
      short: '⚠ {name}: one column only',
    },
    'range-shape': {
      full: '{the} has {received}, but needs {expected}. {advice}',
      short: '⚠ {name}: other shape',
    },
    'range-missing': {
      full: '{the} is missing. Select {expected}.',
      short: '⚠ {name} missing',
    },
    'arguments-too-many': {
      full: '{argument} got {received} arguments and takes {expected}. {advice}',
      short: '⚠ too many arguments',
    },
    'cell-missing': {
      full: '{the} is blank. Type it or point to its cell: {expected}.',
      short: '⚠ {name} missing',
    },
    'cell-holds-error': {
      full: 'The cell for {the} holds {received}. {advice}',
      short: '⚠ {name}: an error',
    },
    'whole-number-expected': {
      full: `${unfit}type {expected}.`,
      short: '⚠ {name}: whole number',
    },
    'yes-or-no-expected': {
      full: `${unfit}type {expected}.`,
      short: '⚠ {name}: TRUE or FALSE',
    },
    'text-expected': {
      full: '{received} can’t be used for {the}. {advice}',
      short: '⚠ {name}: not text',
    },
    'text-too-long': {
      full: '{received} is too long for {the}. {advice}',
      short: '⚠ {name}: too long',
    },
    'ratio-two-readings': {
      full: '{received} could be a factor of {expected}. {advice}',
      short: '⚠ {brief}?',
    },
    'choice-unknown': {
      full: `${unfit}type {expected}.`,
      short: '⚠ {name}: not one of the choices',
    },
    'out-of-limits': {
      full: '{received} can’t be {the}. {advice}',
      short: '⚠ {name}: {expected}',
    },
    'target-zero': {
      full: 'A target of 0 needs {expected}. {advice}',
      short: '⚠ target 0 needs a tolerance',
    },
    'result-not-finite': {
      full: 'The result for {the} is beyond any number that a cell can hold. {advice}',
      short: '⚠ result beyond all numbers',
    },
  }) as const satisfies Record<string, { readonly full: string; readonly short: string }>;

export type Messages = ReturnType<typeof messages>;
export type ErrorCode = keyof Messages;
