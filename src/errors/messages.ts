// Sentences that most codes share.
const forArgument = 'Expected {expected} for {argument}, received {received}. {advice}';
const withoutArgument = 'Expected {expected}, received {received}. {advice}';
const oneReading = 'Expected one reading of {argument}, received {received}. {advice}';
const argumentToBe = 'Expected {argument} to be {expected}, received {received}. {advice}';

/**
 * Every error text for people, by code. `full` is thrown for single cells; `short` stands in its own place in a range.
 * Placeholders: {argument}, {expected}, {received}, {advice}, {brief}.
 */
export const messages = {
  // measurement
  'number-expected': {
    full: forArgument,
    short: '⚠ {argument}: number expected',
  },
  'number-two-readings': {
    full: oneReading,
    short: '⚠ {brief}?',
  },
  'number-out-of-range': {
    full: forArgument,
    short: '⚠ {argument}: power of ten',
  },
  'figures-out-of-range': {
    full: forArgument,
    short: '⚠ figures: 1 to 30',
  },
  'accepted-zero': {
    full: forArgument,
    short: '⚠ accepted is 0',
  },
  'mean-zero': {
    full: forArgument,
    short: '⚠ mean is 0',
  },
  'quantity-expected': {
    full: forArgument,
    short: '⚠ {brief} expected',
  },
  'unit-other-kind': {
    full: forArgument,
    short: '⚠ {brief}',
  },
  'unit-unknown': {
    full: forArgument,
    short: '⚠ unit: {brief}?',
  },
  'percent-two-readings': {
    full: oneReading,
    short: '⚠ {brief}?',
  },
  'not-above-zero': {
    full: forArgument,
    short: '⚠ {argument} not above 0',
  },
  'below-zero': {
    full: forArgument,
    short: '⚠ {argument} below 0',
  },
  'glassware-size': {
    full: forArgument,
    short: '⚠ size: {brief}',
  },
  // chemistry: formulas and ions
  'formula-expected': {
    full: forArgument,
    short: '⚠ formula expected',
  },
  'formula-too-long': {
    full: forArgument,
    short: '⚠ formula too long',
  },
  'formula-too-deep': {
    full: withoutArgument,
    short: '⚠ formula: too many brackets',
  },
  'formula-case': {
    full: withoutArgument,
    short: '⚠ {brief}',
  },
  'formula-character': {
    full: withoutArgument,
    short: '⚠ formula: other character',
  },
  'formula-part-missing': {
    full: withoutArgument,
    short: '⚠ formula: part missing',
  },
  'element-unknown': {
    full: withoutArgument,
    short: '⚠ element {brief}?',
  },
  'bracket-not-closed': {
    full: withoutArgument,
    short: '⚠ formula: {brief}',
  },
  'bracket-not-opened': {
    full: withoutArgument,
    short: '⚠ formula: {brief} out of place',
  },
  'bracket-empty': {
    full: withoutArgument,
    short: '⚠ formula: empty brackets',
  },
  'separator-in-bracket': {
    full: withoutArgument,
    short: '⚠ formula: bracket still open',
  },
  'coefficient-before-formula': {
    full: withoutArgument,
    short: '⚠ formula: number in front',
  },
  'coefficient-out-of-range': {
    full: withoutArgument,
    short: '⚠ formula: number after the dot',
  },
  'number-out-of-place': {
    full: withoutArgument,
    short: '⚠ formula: number out of place',
  },
  'subscript-zero': {
    full: withoutArgument,
    short: '⚠ formula: 0 after a symbol',
  },
  'subscript-too-large': {
    full: withoutArgument,
    short: '⚠ formula: number too large',
  },
  'subscript-not-whole': {
    full: withoutArgument,
    short: '⚠ formula: whole numbers',
  },
  'isotope-shape': {
    full: withoutArgument,
    short: '⚠ isotope as in [13C]',
  },
  'isotope-unlikely': {
    full: withoutArgument,
    short: '⚠ mass number?',
  },
  'formula-look-alike': {
    full: withoutArgument,
    short: '⚠ {brief}',
  },
  'charge-two-readings': {
    full: oneReading,
    short: '⚠ {brief}',
  },
  'formula-with-charge': {
    full: forArgument,
    short: '⚠ substance without a charge',
  },
  'atomic-weight-none': {
    full: withoutArgument,
    short: '⚠ {brief}: no atomic weight',
  },
  'element-not-in-formula': {
    full: forArgument,
    short: '⚠ no {brief} in it',
  },
  'ions-weak': {
    full: forArgument,
    short: '⚠ weak: mostly undissociated',
  },
  'ions-sparingly': {
    full: forArgument,
    short: '⚠ hardly dissolves',
  },
  'ions-unknown': {
    full: forArgument,
    short: '⚠ ions not known here',
  },
  'ion-not-in-formula': {
    full: forArgument,
    short: '⚠ ion: {brief}?',
  },
  'ion-none': {
    full: forArgument,
    short: '⚠ gives no ions',
  },
  'molarity-above-saturated': {
    full: forArgument,
    short: '⚠ more than dissolves',
  },
  // chemistry: solutions
  'density-unlikely': {
    full: forArgument,
    short: '⚠ {argument} in kg/m³?',
  },
  'purity-out-of-range': {
    full: forArgument,
    short: '⚠ {argument}: 0 to 100 %',
  },
  'final-below-stock-volume': {
    full: argumentToBe,
    short: '⚠ final volume too small',
  },
  'factor-not-above-one': {
    full: argumentToBe,
    short: '⚠ factor not above 1',
  },
  'stages-out-of-range': {
    full: forArgument,
    short: '⚠ stages: 1 to 100',
  },
  'percent-of-line': {
    full: forArgument,
    short: '⚠ {argument}: 0 to 100 %',
  },
  'percent-beyond-line': {
    full: forArgument,
    short: '⚠ {argument} far off the two lines',
  },
  'lines-alike': {
    full: forArgument,
    short: '⚠ two lines alike',
  },
  'percent-unclear': {
    full: forArgument,
    short: '⚠ % w/w or % w/v?',
  },
  'concentration-unit-unknown': {
    full: forArgument,
    short: '⚠ {argument}: unit',
  },
  'conversion-needs': {
    full: forArgument,
    short: '⚠ {brief} needed',
  },
  'solute-over-whole': {
    full: forArgument,
    short: '⚠ more solute than solution',
  },
  'target-not-below-stock': {
    full: argumentToBe,
    short: '⚠ target not below stock',
  },
  // workbook
  'plan-without-lines': {
    full: 'Expected {expected} in {argument}, received {received}. {advice}',
    short: '⚠ no lines in the Plan',
  },
  'plan-setting': {
    full: forArgument,
    short: '⚠ setting',
  },
  'plan-line': {
    full: forArgument,
    short: '⚠ line of the Plan',
  },
  // lab: a quantity and what it is given
  'quantity-unknown': {
    full: forArgument,
    short: '⚠ quantity unknown',
  },
  'given-shape': {
    full: forArgument,
    short: '⚠ given: two columns',
  },
  'given-unknown': {
    full: forArgument,
    short: '⚠ given: {brief}',
  },
  'given-twice': {
    full: forArgument,
    short: '⚠ given twice: {brief}',
  },
  'given-missing': {
    full: forArgument,
    short: '⚠ {brief} missing',
  },
  // lab: hints, readings, numbers for teams
  'hint-level': {
    full: forArgument,
    short: '⚠ level 1, 2 or 3',
  },
  'lesson-setting': {
    full: forArgument,
    short: '⚠ setting',
  },
  'numbers-shelf': {
    full: forArgument,
    short: '⚠ not with this shelf',
  },
  'numbers-solute': {
    full: forArgument,
    short: '⚠ solute',
  },
  'numbers-start': {
    full: forArgument,
    short: '⚠ number to start from',
  },
  'nothing-to-picture': {
    full: forArgument,
    short: '⚠ nothing to draw',
  },
  'particles-too-far-apart': {
    full: forArgument,
    short: '⚠ too far apart to draw',
  },
  // functions: cells and ranges
  'ranges-unfit': {
    full: withoutArgument,
    short: '⚠ ranges do not fit',
  },
  'one-cell-only': {
    full: forArgument,
    short: '⚠ {argument}: one cell only',
  },
  'columns-only': {
    full: forArgument,
    short: '⚠ {argument}: one column only',
  },
  'range-shape': {
    full: forArgument,
    short: '⚠ {argument}: other shape',
  },
  'range-missing': {
    full: forArgument,
    short: '⚠ {argument} missing',
  },
  'arguments-too-many': {
    full: forArgument,
    short: '⚠ too many arguments',
  },
  'cell-missing': {
    full: forArgument,
    short: '⚠ {argument} missing',
  },
  'cell-holds-error': {
    full: forArgument,
    short: '⚠ {argument}: an error',
  },
  'whole-number-expected': {
    full: forArgument,
    short: '⚠ {argument}: whole number',
  },
  'yes-or-no-expected': {
    full: forArgument,
    short: '⚠ {argument}: TRUE or FALSE',
  },
  'text-expected': {
    full: forArgument,
    short: '⚠ {argument}: text expected',
  },
  'text-too-long': {
    full: forArgument,
    short: '⚠ {argument}: too long',
  },
  'ratio-two-readings': {
    full: oneReading,
    short: '⚠ {brief}?',
  },
  'choice-unknown': {
    full: forArgument,
    short: '⚠ {argument}: not one of the choices',
  },
  'out-of-limits': {
    full: forArgument,
    short: '⚠ {argument}: {expected}',
  },
  'target-zero': {
    full: forArgument,
    short: '⚠ target 0 needs a tolerance',
  },
  'result-not-finite': {
    full: forArgument,
    short: '⚠ result beyond all numbers',
  },
} as const satisfies Record<string, { readonly full: string; readonly short: string }>;

export type ErrorCode = keyof typeof messages;
