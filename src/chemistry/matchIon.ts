import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { assembled, type Formula } from './formula.ts';
import type { IonCount } from './ions.ts';
import { readFormula } from './readFormula.ts';
import { splitCharge } from './splitCharge.ts';

const sameAtoms = (one: Formula['atoms'], other: Formula['atoms']): boolean =>
  one.length === other.length &&
  one.every(({ element, count }) => other.some((atom) => atom.element === element && atom.count === count));

/** In water H⁺ is H3O⁺, and one name is as good as the other. */
const isHydronium = ({ charge, atoms }: Formula): boolean =>
  charge === 1 &&
  sameAtoms(atoms, [
    { element: 'H', count: 3 },
    { element: 'O', count: 1 },
  ]);

/**
 * Which of a compound's ions a text names: `Ca2+`, `Ca^2+`, `Ca²⁺` and `Ca+2` are one, since the compound decides.
 * `H3O+` is `H+`.
 *
 * @returns Fails with `ion-not-in-formula`, listing the ions there are, or with what reading a formula fails with.
 */
export function matchIon(text: string, present: readonly IonCount[]): Result<IonCount> {
  for (const { base, charge } of splitCharge(text.trim())) {
    const read = readFormula(base);
    const ion = read.ok ? assembled({ ...read.value, charge }) : undefined;
    const atoms = ion && isHydronium(ion) ? [{ element: 'H', count: 1 }] : ion?.atoms;
    const found = atoms && present.find((one) => one.charge === charge && sameAtoms(one.atoms, atoms));
    if (found) return success(found);
  }
  return failure({
    code: 'ion-not-in-formula',
    argument: 'ion',
    expected: `one of ${present.map(({ ion }) => ion).join(', ')}`,
    received: quoted(text),
    brief: present.map(({ ion }) => ion).join(' or '),
  });
}
