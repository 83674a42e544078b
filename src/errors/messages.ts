/**
 * Every error text for people, by code. `full` is thrown for single cells; `short` stands in its own place in a range.
 * Placeholders: {argument}, {expected}, {received}, {advice}, {brief}.
 */
export const messages = {
  // measurement
  'number-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: number expected',
  },
  'number-two-readings': {
    full: 'Expected one reading of {argument}, received {received}. {advice}',
    short: '⚠ {brief}?',
  },
  'number-out-of-range': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: power of ten',
  },
  'figures-out-of-range': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ figures: 1 to 30',
  },
  'accepted-zero': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ accepted is 0',
  },
  'mean-zero': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ mean is 0',
  },
  'quantity-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {brief} expected',
  },
  'unit-other-kind': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {brief}',
  },
  'unit-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ unit: {brief}?',
  },
  'percent-two-readings': {
    full: 'Expected one reading of {argument}, received {received}. {advice}',
    short: '⚠ {brief}?',
  },
  'not-above-zero': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} not above 0',
  },
  'below-zero': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} below 0',
  },
  'glassware-size': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ size: {brief}',
  },
  // chemistry: formulas and ions
  'formula-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ formula expected',
  },
  'formula-too-long': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ formula too long',
  },
  'formula-too-deep': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: too many brackets',
  },
  'formula-case': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ {brief}',
  },
  'formula-character': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: other character',
  },
  'formula-part-missing': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: part missing',
  },
  'element-unknown': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ element {brief}?',
  },
  'bracket-not-closed': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: {brief}',
  },
  'bracket-not-opened': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: {brief} out of place',
  },
  'bracket-empty': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: empty brackets',
  },
  'separator-in-bracket': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: bracket still open',
  },
  'coefficient-before-formula': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: number in front',
  },
  'coefficient-out-of-range': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: number after the dot',
  },
  'number-out-of-place': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: number out of place',
  },
  'subscript-zero': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: 0 after a symbol',
  },
  'subscript-too-large': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: number too large',
  },
  'subscript-not-whole': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ formula: whole numbers',
  },
  'isotope-shape': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ isotope as in [13C]',
  },
  'isotope-unlikely': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ mass number?',
  },
  'formula-look-alike': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ {brief}',
  },
  'charge-two-readings': {
    full: 'Expected one reading of {argument}, received {received}. {advice}',
    short: '⚠ {brief}',
  },
  'formula-with-charge': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ substance without a charge',
  },
  'atomic-weight-none': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ {brief}: no atomic weight',
  },
  'element-not-in-formula': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ no {brief} in it',
  },
  'ions-weak': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ weak: mostly undissociated',
  },
  'ions-sparingly': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ hardly dissolves',
  },
  'ions-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ ions not known here',
  },
  'ion-not-in-formula': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ ion: {brief}?',
  },
  'ion-none': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ gives no ions',
  },
  'molarity-above-saturated': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ more than dissolves',
  },
  // chemistry: solutions
  'density-unlikely': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} in kg/m³?',
  },
  'purity-out-of-range': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: 0 to 100 %',
  },
  'final-below-stock-volume': {
    full: 'Expected {argument} to be {expected}, received {received}. {advice}',
    short: '⚠ final volume too small',
  },
  'factor-not-above-one': {
    full: 'Expected {argument} to be {expected}, received {received}. {advice}',
    short: '⚠ factor not above 1',
  },
  'stages-out-of-range': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ stages: 1 to 100',
  },
  'percent-of-line': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: 0 to 100 %',
  },
  'percent-beyond-line': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} far off the two lines',
  },
  'lines-alike': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ two lines alike',
  },
  'percent-unclear': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ % w/w or % w/v?',
  },
  'concentration-unit-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: unit',
  },
  'conversion-needs': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {brief} needed',
  },
  'solute-over-whole': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ more solute than solution',
  },
  'target-not-below-stock': {
    full: 'Expected {argument} to be {expected}, received {received}. {advice}',
    short: '⚠ target not below stock',
  },
  // workbook
  'plan-without-lines': {
    full: 'Expected {expected} in {argument}, received {received}. {advice}',
    short: '⚠ no lines in the Plan',
  },
  'plan-setting': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ setting',
  },
  'plan-line': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ line of the Plan',
  },
  // lab: a quantity and what it is given
  'quantity-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ quantity unknown',
  },
  'given-shape': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ given: two columns',
  },
  'given-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ given: {brief}',
  },
  'given-twice': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ given twice: {brief}',
  },
  'given-missing': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {brief} missing',
  },
  // lab: hints, readings, numbers for teams
  'hint-level': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ level 1, 2 or 3',
  },
  'lesson-setting': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ setting',
  },
  'numbers-shelf': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ not with this shelf',
  },
  'numbers-solute': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ solute',
  },
  'numbers-start': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ number to start from',
  },
  'nothing-to-picture': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ nothing to draw',
  },
  'particles-too-far-apart': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ too far apart to draw',
  },
  // functions: cells and ranges
  'ranges-unfit': {
    full: 'Expected {expected}, received {received}. {advice}',
    short: '⚠ ranges do not fit',
  },
  'one-cell-only': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: one cell only',
  },
  'columns-only': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: one column only',
  },
  'range-shape': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: other shape',
  },
  'range-missing': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} missing',
  },
  'arguments-too-many': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ too many arguments',
  },
  'cell-missing': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument} missing',
  },
  'cell-holds-error': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: an error',
  },
  'whole-number-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: whole number',
  },
  'yes-or-no-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: TRUE or FALSE',
  },
  'text-expected': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: text expected',
  },
  'text-too-long': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: too long',
  },
  'ratio-two-readings': {
    full: 'Expected one reading of {argument}, received {received}. {advice}',
    short: '⚠ {brief}?',
  },
  'choice-unknown': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: not one of the choices',
  },
  'out-of-limits': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ {argument}: {expected}',
  },
  'target-zero': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ target 0 needs a tolerance',
  },
  'result-not-finite': {
    full: 'Expected {expected} for {argument}, received {received}. {advice}',
    short: '⚠ result beyond all numbers',
  },
} as const satisfies Record<string, { readonly full: string; readonly short: string }>;

export type ErrorCode = keyof typeof messages;
