import type { Formula, FormulaPart } from '../../chemistry/formula.ts';

type Atoms = Formula['atoms'];

/** Adds up atoms of one kind, so that a list is short however it was put together. */
const added = (atoms: Atoms): Atoms => {
  const counts = new Map<string, number>();
  for (const { element, count } of atoms) counts.set(element, (counts.get(element) ?? 0) + count);
  return [...counts].map(([element, count]) => ({ element, count }));
};

const atomsOf = (parts: readonly FormulaPart[], times = 1): Atoms =>
  parts.flatMap((part) =>
    part.kind === 'element'
      ? [{ element: part.element, count: part.count * times }]
      : atomsOf(part.parts, part.count * times),
  );

const isWater = (parts: readonly FormulaPart[]): boolean => {
  const atoms = added(atomsOf(parts));
  const count = (symbol: string) => atoms.find(({ element }) => element === symbol)?.count ?? 0;
  return atoms.length === 2 && count('H') === 2 && count('O') === 1;
};

/** What stands before the waters of a hydrate, and the waters; water alone is no hydrate. */
function dried({ units }: Formula) {
  const salt = units.filter(({ parts }, index) => index === 0 || !isWater(parts));
  const water = units.filter(({ parts }, index) => index > 0 && isWater(parts));
  return { salt, water };
}

const atomsOfUnits = (units: Formula['units']): Atoms =>
  units.flatMap(({ coefficient, parts }) => atomsOf(parts, coefficient));

export function withoutWater(formula: Formula): readonly Atoms[] {
  const { salt, water } = dried(formula);
  return water.length > 0 ? [added(atomsOfUnits(salt))] : [];
}

export function oneWater(formula: Formula): readonly Atoms[] {
  const { salt, water } = dried(formula);
  return water.length > 0 ? [added([...atomsOfUnits(salt), ...water.flatMap(({ parts }) => atomsOf(parts))])] : [];
}

/** Every way to put other parts in place of one bracket that has a number after it. */
function bracketsReplaced(
  parts: readonly FormulaPart[],
  replace: (parts: readonly FormulaPart[], count: number) => readonly (readonly FormulaPart[])[],
): readonly (readonly FormulaPart[])[] {
  return parts.flatMap((part, index) => {
    if (part.kind === 'element') return [];
    const put = (others: readonly FormulaPart[]) => [...parts.slice(0, index), ...others, ...parts.slice(index + 1)];
    const inside = bracketsReplaced(part.parts, replace).map((inner) => put([{ ...part, parts: inner }]));
    return part.count === 1 ? inside : [...replace(part.parts, part.count).map(put), ...inside];
  });
}

const inUnits = (
  { units }: Formula,
  replace: (parts: readonly FormulaPart[], count: number) => readonly (readonly FormulaPart[])[],
): readonly Atoms[] =>
  units.flatMap((unit, index) =>
    bracketsReplaced(unit.parts, replace).map((parts) =>
      added(atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)])),
    ),
  );

/** The number after one bracket dropped, one list for each bracket. */
export const bracketNumbersDropped = (formula: Formula): readonly Atoms[] => inUnits(formula, (parts) => [parts]);

/** The number after a bracket on the first atom in it alone, or on the last alone. */
export const bracketNumberOnOneAtom = (formula: Formula): readonly Atoms[] =>
  inUnits(formula, (parts, count) => {
    const last = parts.length - 1;
    if (last < 1) return [];
    return [0, last].map((only) =>
      parts.map((part, index) => (index === only ? { ...part, count: part.count * count } : part)),
    );
  });

const onceEach = (parts: readonly FormulaPart[]): Atoms =>
  parts.flatMap((part) => (part.kind === 'element' ? [{ element: part.element, count: 1 }] : onceEach(part.parts)));

/** Each symbol as written counted once, numbers after brackets passed over; the waters of a hydrate as they should be. */
export function symbolsCountedOnce(formula: Formula): readonly Atoms[] {
  const { salt, water } = dried(formula);
  return [added([...salt.flatMap(({ parts }) => onceEach(parts)), ...atomsOfUnits(water)])];
}
