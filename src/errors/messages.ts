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
} as const satisfies Record<string, { readonly full: string; readonly short: string }>;

export type ErrorCode = keyof typeof messages;
