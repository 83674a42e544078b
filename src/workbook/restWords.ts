/** In a class sheet at rest, which checks nothing: in the place of the heading of the checks, and before their words. */
export const restWords = { checks: 'Checks are off', before: 'then: ' } as const;
