import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { substancesListed } from '../../chemistry/substancesListed.ts';
import { plannerCaution } from './plannerCaution.ts';
import { soluteList } from './soluteList.generated.ts';

export interface ListedSolute {
  readonly name: string;
  readonly formula: string;
  /** g of `basis` that dissolve in 100 g of water near 20 °C; undefined where no figure is known. */
  readonly solubility: number | undefined;
  /** The formula that these grams are of: for a hydrate often the salt without its water. */
  readonly basis: string;
  /** A remark on its use in schools, or empty. */
  readonly use: string;
}

/** A solute to offer. `caution` says why the planner does not propose it, and is empty for those that it does. */
export interface OfferedSolute {
  readonly name: string;
  readonly formula: string;
  readonly caution: string;
}

export const listedSolutes = (): readonly ListedSolute[] =>
  soluteList
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', formula = '', solubility = '', basis = '', use = ''] = line.split('|');
      return { name, formula, basis, use, solubility: solubility === '' ? undefined : Number(solubility) };
    });

/** g in 100 g of water below which a solute is of no use for a solution of everyday molarity. */
const soluteNeeded = 5;

/** Its hazards stand in the act, or two sources agree on them; of substances with one formula, those of the usual one. */
const isSettled = (formula: string): boolean => {
  const [usual] = substancesListed(formula)?.substances ?? [];
  return usual !== undefined && (usual.confidence === 'h' || usual.confidence === 't');
};

/** Solutes that the planner proposes for a solution from a solid, by name: students may weigh them, and we are sure of it. */
export const proposedSolutes = (): readonly OfferedSolute[] =>
  listedSolutes()
    .filter(
      ({ formula, solubility, use }) =>
        use === '' &&
        solubility !== undefined &&
        solubility >= soluteNeeded &&
        isSettled(formula) &&
        plannerCaution(formula) === '',
    )
    .map(({ name, formula }) => ({ name, formula, caution: '' }))
    .sort((one, other) => (one.name < other.name ? -1 : 1));

/** Listed substances that it never proposes, each with the reason. */
export const cautionedSolutes = (): readonly OfferedSolute[] =>
  listedSolutes()
    .map(({ name, formula }) => ({ name, formula, caution: plannerCaution(formula) }))
    .filter(({ caution }) => caution !== '');

const plainFormula = (typed: string): string =>
  typed
    .normalize('NFKC')
    .replace(/\s/g, '')
    .replace(/[•*.⋅∙]/g, '·')
    .replace(/[[{]/g, '(')
    .replace(/[\]}]/g, ')');

/**
 * The highest molarity that surely dissolves at room temperature, in mol/L; undefined where no figure is known.
 * The volume is taken as that of water and solute side by side at 1 g/mL, which is never less than the true one for these
 * salts, so the true limit is a little higher.
 */
export function solubleMolarity(formula: string): number | undefined {
  const listed = listedSolutes().find((solute) => plainFormula(solute.formula) === plainFormula(formula));
  if (listed?.solubility === undefined) return undefined;
  const basis = readFormula(listed.basis);
  const mass = basis.ok ? molarMass(basis.value) : basis;
  if (!mass.ok) return undefined;
  return (1000 * listed.solubility) / mass.value / (100 + listed.solubility);
}
