import { readFormula } from '../../chemistry/readFormula.ts';
import type { Shown } from '../lesson/activity.ts';
import type { QuantityName } from '../quantities.ts';
import { atomsShown, quantityHints } from '../texts/hints.ts';

/** `1 × K + 1 × Br`, ready for atomic weights to be put in; undefined where the formula cannot be read. */
function atomsOf(formula: string | undefined): string | undefined {
  const read = readFormula(formula);
  if (!read.ok) return undefined;
  return read.value.atoms.map(({ element, count }) => `${count} × ${element}`).join(' + ');
}

/** A line of words and values; a value that there is none of leaves out the words that go with it. */
export const filledIn = (pieces: readonly Shown[], shown: (name: string) => string | undefined): string =>
  pieces
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const value = shown(piece.given);
      return value === undefined ? '' : `${piece.before ?? ''}${value}${piece.after ?? ''}`;
    })
    .join('');

/**
 * Help with a quantity at a level: 1 the idea, 2 the relation, 3 the set-up, not worked out.
 *
 * @param textOf - The text that stands for an argument of the quantity; undefined where there is none.
 */
export function quantityHint(
  quantity: QuantityName,
  { level, textOf }: { readonly level: 1 | 2 | 3; readonly textOf: (name: string) => string | undefined },
): string {
  const { idea, relation, impure, setUp } = quantityHints[quantity];
  if (level === 1) return idea;
  if (level === 2) return impure !== undefined && textOf('purity') !== undefined ? `${relation} ${impure}` : relation;
  return filledIn(setUp, (name) => (name === atomsShown ? atomsOf(textOf('formula')) : textOf(name)));
}
