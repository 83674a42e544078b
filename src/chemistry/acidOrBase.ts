import { atomsKey } from './atomsKey.ts';
import { strongAcids, weakElectrolytes } from './electrolytes.ts';
import { anhydrousAtoms, type Formula } from './formula.ts';
import { ions } from './ions.ts';
import { readFormula } from './readFormula.ts';

export type AcidOrBase = 'acid' | 'base' | 'neither';

/** Weak bases among the weak electrolytes; all others there are acids, but for iron(III) fluoride. */
const weakBases = ['NH3', 'CH3NH2', 'C2H5NH2', '(CH3)2NH', 'C5H5N', 'N2H4'];
const neitherOfThem = ['FeF3'];

let byAtoms: ReadonlyMap<string, AcidOrBase> | undefined;

function listed(): ReadonlyMap<string, AcidOrBase> {
  const entries = (formulas: readonly string[], kind: AcidOrBase) =>
    formulas.flatMap((text): (readonly [string, AcidOrBase])[] => {
      const read = readFormula(text);
      return read.ok ? [[atomsKey(read.value), kind]] : [];
    });
  // A later entry wins, so that the few exceptions stand at the end.
  byAtoms ??= new Map([
    ...entries([...strongAcids, ...weakElectrolytes], 'acid'),
    ...entries(weakBases, 'base'),
    ...entries(neitherOfThem, 'neither'),
  ]);
  return byAtoms;
}

/** Written as a carboxylic acid, where the lists above do not have it. */
const carboxyl = /COOH|CO2H|HOOC/;
/** A metal, or ammonium, and hydroxide. */
const hydroxide = /^(?:[A-Z][a-z]?|NH4|\(NH4\))\(?OH\)?\d*$/;

/**
 * Whether a substance is an acid or a base of the schoolbook kind: it gives hydrogen ions, or it is a hydroxide or an
 * amine. Salts whose solutions are only a little sour or soapy, such as sodium carbonate, are neither.
 */
export function acidOrBase(formula: Formula): AcidOrBase {
  const known = listed().get(atomsKey({ atoms: anhydrousAtoms(formula) }));
  if (known !== undefined) return known;
  const written = formula.text.normalize('NFKC').replace(/\s|[·•*.⋅∙‧・].*$/gu, '');
  if (carboxyl.test(written)) return 'acid';
  if (hydroxide.test(written)) return 'base';
  const found = ions(formula);
  if (found.ok) {
    const cations = found.value.filter(({ charge }) => charge > 0);
    if (cations.length > 0 && cations.every(({ ion }) => ion === 'H⁺')) return 'acid';
    return found.value.some(({ ion }) => ion === 'OH⁻') ? 'base' : 'neither';
  }
  // The only weak ones that the lists do not have are acids: hydrogen and the anion of an acid.
  return found.error.code === 'ions-weak' ? 'acid' : 'neither';
}
