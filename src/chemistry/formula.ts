/** A part of a formula as written: one symbol, or a bracket, with the number after it. */
export type FormulaPart =
  | { readonly kind: 'element'; readonly element: string; readonly count: number }
  | { readonly kind: 'group'; readonly parts: readonly FormulaPart[]; readonly count: number };

/** What stands between two separators, with the coefficient before it (1 where there is none). */
export interface FormulaUnit {
  readonly coefficient: number;
  readonly parts: readonly FormulaPart[];
}

/** A formula as read. Elements are symbols; an isotope is labelled with its mass number, such as `[13C]` or `[2H]`. */
export interface Formula {
  /** As typed, without spaces around it. */
  readonly text: string;
  readonly units: readonly FormulaUnit[];
  /** All atoms of one formula unit, water of hydration included, in the order of first appearance. */
  readonly atoms: readonly { readonly element: string; readonly count: number }[];
  /** Water of hydration, where there is any. */
  readonly hydrate: { readonly count: number } | undefined;
  /** 0 for a substance; -2 for SO4^2-. */
  readonly charge: number;
}

const partsAtoms = (parts: readonly FormulaPart[], times: number, counts: Map<string, number>): void => {
  for (const part of parts) {
    if (part.kind === 'group') partsAtoms(part.parts, times * part.count, counts);
    else counts.set(part.element, (counts.get(part.element) ?? 0) + times * part.count);
  }
};

/** Atoms of some units, in the order of first appearance. */
export function atomsOfUnits(units: readonly FormulaUnit[]): Formula['atoms'] {
  const counts = new Map<string, number>();
  for (const { coefficient, parts } of units) partsAtoms(parts, coefficient, counts);
  return [...counts].map(([element, count]) => ({ element, count }));
}

export const isWater = ({ parts }: FormulaUnit): boolean => {
  const atoms = atomsOfUnits([{ coefficient: 1, parts }]);
  const count = (symbol: string) => atoms.find(({ element }) => element === symbol)?.count;
  return atoms.length === 2 && count('H') === 2 && count('O') === 1;
};

/** The formula with its atoms and its water counted. */
export function assembled({ text, units, charge }: Pick<Formula, 'text' | 'units' | 'charge'>): Formula {
  const water = units.slice(1).filter(isWater);
  const waters = water.reduce((sum, { coefficient }) => sum + coefficient, 0);
  return { text, units, charge, atoms: atomsOfUnits(units), hydrate: waters > 0 ? { count: waters } : undefined };
}

/** Atoms without the water of hydration. */
export const anhydrousAtoms = ({ units }: Formula): Formula['atoms'] =>
  atomsOfUnits(units.filter((unit, index) => index === 0 || !isWater(unit)));
