import { anhydrousAtoms, type Formula } from './formula.ts';

const alkaliMetals = ['Li', 'Na', 'K', 'Rb', 'Cs'];

/**
 * Whether a solid heats its water so much that a hot, caustic solution can spatter: the hydroxides of the alkali metals.
 * Dissolving one mole sets free about 45 kJ (NaOH) and 58 kJ (KOH): enthalpies of solution from memory.
 */
export function dissolvesHot(formula: Formula): boolean {
  const atoms = anhydrousAtoms(formula);
  const countOf = (element: string) => atoms.find((atom) => atom.element === element)?.count ?? 0;
  return (
    atoms.length === 3 &&
    countOf('O') === 1 &&
    countOf('H') === 1 &&
    alkaliMetals.some((element) => countOf(element) === 1)
  );
}
