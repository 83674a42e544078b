/**
 * Every error text for people, by code. `full` is thrown for single cells; `short` stands in its own place in a range.
 * Placeholders: {argument}, {expected}, {received}, {advice}, {brief}.
 */
export const messages = {
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
