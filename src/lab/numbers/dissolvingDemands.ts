import { demandTexts } from '../texts/numbers.ts';
import type { Substance, Unmet } from './recipe.ts';

/** What dissolving at room temperature asks of a molarity. */
export function dissolvingDemands(
  molarity: number,
  { formula, solubleMolarity: limit }: Substance,
): readonly Unmet<'molarity'>[] {
  if (limit === undefined || !(molarity > limit)) return [];
  return [{ demand: 'dissolves', about: 'molarity', ...demandTexts.dissolves({ formula, molarity, limit }) }];
}
