import { acidOrBase } from './acidOrBase.ts';
import { cautionsAt } from './cautionsAt.ts';
import { anhydrousAtoms, type Formula } from './formula.ts';

const alkaliMetals = ['Li', 'Na', 'K', 'Rb', 'Cs'];

/** Whether it is the hydroxide of an alkali metal, with or without water of hydration. */
function isAlkaliHydroxide(formula: Formula): boolean {
  const atoms = anhydrousAtoms(formula);
  const countOf = (element: string) => atoms.find((atom) => atom.element === element)?.count ?? 0;
  return (
    atoms.length === 3 &&
    countOf('O') === 1 &&
    countOf('H') === 1 &&
    alkaliMetals.some((element) => countOf(element) === 1)
  );
}

/**
 * Whether a substance, weighed as it is, heats its water so much that a hot, corrosive solution can spatter: the hydroxides
 * of the alkali metals, and acids and bases that burn the skin (H314) undiluted. Dissolving one mole sets free about 45 kJ
 * (NaOH) and 58 kJ (KOH): enthalpies of solution from memory.
 */
export const dissolvesHot = (formula: Formula): boolean =>
  isAlkaliHydroxide(formula) ||
  // Asked in this order, since few substances burn and the lists of acids take long to read.
  (cautionsAt(formula, 'undiluted').statements.some(({ code }) => code === 'H314') &&
    acidOrBase(formula) !== 'neither');
