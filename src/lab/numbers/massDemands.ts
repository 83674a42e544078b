import { demandTexts } from '../texts/numbers.ts';
import type { Bench, Unmet } from './recipe.ts';

/** Smallest share of a weighing that the balance may be unsure of: one part in a hundred. */
const readabilitiesNeeded = 100;

/** What the balance asks of the solid in so many mL of a molarity. */
export function massDemands(
  { molarity, volume }: { readonly molarity: number; readonly volume: number },
  { shelf, substance: { molarMass, purityPercent } }: Pick<Bench, 'shelf' | 'substance'>,
): readonly Unmet<'molarity'>[] {
  const mass = (molarity * volume * molarMass) / 1000 / (purityPercent / 100);
  const least = readabilitiesNeeded * shelf.balanceReadabilityG;
  const unmet: Unmet<'molarity'>[] = [];
  if (mass < least) {
    const found = { least, readability: shelf.balanceReadabilityG };
    unmet.push({ demand: 'mass fine enough', about: 'molarity', ...demandTexts.massFine(found) });
  }
  if (mass > shelf.balanceMaxG) {
    const found = { most: shelf.balanceMaxG };
    unmet.push({ demand: 'mass within range', about: 'molarity', ...demandTexts.massRange(found) });
  }
  return unmet;
}
