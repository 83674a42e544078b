/** Words, or a number that the question takes, with words that stand only where it is filled in. */
type Piece = string | { readonly takes: string; readonly before?: string; readonly after?: string };

/** How many answers are right, in the record of the day. */
export const exitCount = ({ answered, right }: { readonly answered: number; readonly right: number }): string =>
  `exit question right: ${right} of ${answered}`;

/** The line of an exit question, by what it asks for: short, since its row is low. */
export const exitShown = {
  'stock volume': [
    'Volume of ',
    { takes: 'stock molarity' },
    ' mol/L solution for ',
    { takes: 'target volume' },
    ' mL of ',
    { takes: 'target molarity' },
    ' mol/L.',
  ],
  'diluted molarity': [
    'Molarity of ',
    { takes: 'stock volume' },
    ' mL of ',
    { takes: 'stock molarity' },
    ' mol/L stock, made up to ',
    { takes: 'final volume' },
    ' mL.',
  ],
  'mass of solute': [
    'Mass of ',
    { takes: 'formula' },
    { takes: 'purity', before: ' (', after: ' % pure)' },
    ' for ',
    { takes: 'volume' },
    ' mL of ',
    { takes: 'molarity' },
    ' mol/L.',
  ],
} as const satisfies Readonly<Record<string, readonly Piece[]>>;
