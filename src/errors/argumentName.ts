/** Arguments whose name in words is another than their spelling with spaces. */
const spoken = new Map(
  Object.entries({
    accepted: 'accepted value',
    atomic_weight_decimals: 'number of atomic-weight decimals',
    entries: 'column of entries',
    figures: 'number of figures',
    first: 'first value',
    formula_1: 'first formula',
    formula_2: 'second formula',
    from: 'unit to convert from',
    given: 'given table',
    given_names: 'row of given names',
    given_values: 'row of given values',
    grams: 'mass',
    grams_1: 'first mass',
    grams_2: 'second mass',
    help_wanted: 'column of help wanted',
    kind: 'kind of glassware',
    level: 'level of help',
    measured: 'measured value',
    moles: 'amount',
    number_as_text: 'number',
    own_hints: 'table of own hints',
    purity_percent: 'purity',
    second: 'second value',
    settings: 'table of settings',
    signed: 'choice of sign',
    solvent_grams: 'mass of solvent',
    stages: 'number of stages',
    steps: 'column of steps',
    ties: 'rounding of ties',
    to: 'unit to convert to',
    tolerance_percent: 'tolerance',
  }),
);

/** An argument in words, as a sentence speaks of it: `target_volume` is the target volume. */
export const argumentName = (argument: string): string => spoken.get(argument) ?? argument.replace(/_/g, ' ');

/** The same with its article, unless it has one, begins with a capital or names a line. */
export const theArgument = (argument: string): string =>
  /^(?:the |each |line|[^a-z])/.test(argument) ? argument : `the ${argumentName(argument)}`;
