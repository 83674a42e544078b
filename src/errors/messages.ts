/**
 * Every error text for people, by code. `full` is thrown for single cells; `short` stands in its own place in a range.
 * Placeholders: {argument}, {expected}, {received}, {advice}, {brief}.
 */
export const messages = {
  'target-not-below-stock': {
    full: 'Expected {argument} to be {expected}, received {received}. {advice}',
    short: '⚠ target not below stock',
  },
} as const satisfies Record<string, { readonly full: string; readonly short: string }>;

export type ErrorCode = keyof typeof messages;
