/**
 * What to write where two people may have changed the same words: `base` is what stood there when the page read it,
 * `there` what stands there now, `typed` what the page sends. Words that either of them wrote are never lost; where both
 * changed, both stay, the sheet's first.
 */
export function mergedWords({
  base,
  there,
  typed,
}: {
  readonly base: string;
  readonly there: string;
  readonly typed: string;
}): string {
  if (there === base || there === typed) return typed;
  if (typed === base || there.includes(typed)) return there;
  return typed.includes(there) ? typed : `${there}\n${typed}`;
}
