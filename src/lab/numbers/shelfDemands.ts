import { demandTexts } from '../texts/numbers.ts';
import { isSame } from './isSame.ts';
import type { Bench, Unmet } from './recipe.ts';

/** A flask of that size stands on the shelf. */
export function flaskDemands<Name extends string>(
  about: Name,
  size: number,
  { shelf }: Pick<Bench, 'shelf'>,
): readonly Unmet<Name>[] {
  if (shelf.flasksMl.some((one) => isSame(one, size))) return [];
  return [{ demand: `${about} on shelf`, about, ...demandTexts.flask({ size, shelf: shelf.flasksMl }) }];
}

/** One filling or two of the pipettes on the shelf deliver the portion. */
export function portionDemands<Name extends string>(
  about: Name,
  portion: number,
  { shelf, deliverable }: Pick<Bench, 'shelf' | 'deliverable'>,
): readonly Unmet<Name>[] {
  if (deliverable.some(({ volume }) => isSame(volume, portion))) return [];
  return [{ demand: 'portion deliverable', about, ...demandTexts.portion({ pipettes: shelf.pipettesMl }) }];
}

/** Diluting lowers a molarity. */
export function weakerDemands({
  stock,
  target,
}: {
  readonly stock: number;
  readonly target: number;
}): readonly Unmet<'target'>[] {
  if (target < stock && !isSame(target, stock)) return [];
  return [{ demand: 'stock above target', about: 'target', ...demandTexts.stockAboveTarget({ stock, target }) }];
}
