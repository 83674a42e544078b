/** An entry as it is remembered once counted: with a mark before it, so that one that begins with = is never read as a formula. */
export const countedEntry = (entry: string): string => `“${entry}`;
