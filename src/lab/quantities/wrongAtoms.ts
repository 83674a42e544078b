import {
  anhydrousAtoms,
  atomsOfUnits,
  type Formula,
  type FormulaPart,
  type FormulaUnit,
  isWater,
} from '../../chemistry/formula.ts';
import type { WrongMolarMass } from './quantityEntry.ts';

type Atoms = Formula['atoms'];
type Parts = readonly FormulaPart[];

const water: FormulaUnit = {
  coefficient: 1,
  parts: [
    { kind: 'element', element: 'H', count: 2 },
    { kind: 'element', element: 'O', count: 1 },
  ],
};

const isOfSalt = (unit: FormulaUnit, index: number): boolean => index === 0 || !isWater(unit);

export const withoutWater = (formula: Formula): readonly Atoms[] => (formula.hydrate ? [anhydrousAtoms(formula)] : []);

export const oneWater = (formula: Formula): readonly Atoms[] =>
  formula.hydrate ? [atomsOfUnits([...formula.units.filter(isOfSalt), water])] : [];

/** Every way to put other parts in place of one bracket that has a number after it. */
function bracketsReplaced(parts: Parts, replace: (inside: Parts, count: number) => readonly Parts[]): readonly Parts[] {
  return parts.flatMap((part, index) => {
    if (part.kind === 'element') return [];
    const put = (others: Parts) => [...parts.slice(0, index), ...others, ...parts.slice(index + 1)];
    const deeper = bracketsReplaced(part.parts, replace).map((inside) => put([{ ...part, parts: inside }]));
    return part.count === 1 ? deeper : [...replace(part.parts, part.count).map(put), ...deeper];
  });
}

const inUnits = ({ units }: Formula, replace: (inside: Parts, count: number) => readonly Parts[]): readonly Atoms[] =>
  units.flatMap((unit, index) =>
    bracketsReplaced(unit.parts, replace).map((parts) =>
      atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)]),
    ),
  );

/** The number after one bracket dropped, one list for each bracket. */
export const bracketNumbersDropped = (formula: Formula): readonly Atoms[] => inUnits(formula, (inside) => [inside]);

/** The number after a bracket on the first atom in it alone, or on the last alone. */
export const bracketNumberOnOneAtom = (formula: Formula): readonly Atoms[] =>
  inUnits(formula, (inside, count) => {
    const last = inside.length - 1;
    if (last < 1) return [];
    return [0, last].map((only) =>
      inside.map((part, index) => (index === only ? { ...part, count: part.count * count } : part)),
    );
  });

const onceEach = (parts: Parts): Parts =>
  parts.flatMap((part) => (part.kind === 'element' ? [{ ...part, count: 1 }] : onceEach(part.parts)));

/** Each symbol as written counted once, numbers after brackets passed over; the waters of a hydrate as they should be. */
export const symbolsCountedOnce = ({ units }: Formula): readonly Atoms[] => [
  atomsOfUnits(
    units.map((unit, index) => (isOfSalt(unit, index) ? { coefficient: 1, parts: onceEach(unit.parts) } : unit)),
  ),
];

/** One number directly behind a symbol taken as 1, every other as it should be, one list for each such number. */
export const oneSubscriptMissed = ({ units }: Formula): readonly Atoms[] =>
  units.flatMap((unit, index) =>
    numbersMissed(unit.parts).map((parts) =>
      atomsOfUnits([...units.slice(0, index), { ...unit, parts }, ...units.slice(index + 1)]),
    ),
  );

function numbersMissed(parts: Parts): readonly Parts[] {
  return parts.flatMap((part, index) => {
    const put = (other: FormulaPart) => [...parts.slice(0, index), other, ...parts.slice(index + 1)];
    if (part.kind === 'group') return numbersMissed(part.parts).map((inside) => put({ ...part, parts: inside }));
    return part.count === 1 ? [] : [put({ ...part, count: 1 })];
  });
}

/** The number of waters on the hydrogen alone, as in five H2 and one O. */
export const waterNumberOnOneAtom = ({ units, hydrate }: Formula): readonly Atoms[] => {
  if (!hydrate || hydrate.count === 1) return [];
  const [hydrogen, oxygen] = water.parts;
  if (!hydrogen || !oxygen) return [];
  return [
    atomsOfUnits([
      ...units.filter(isOfSalt),
      { coefficient: hydrate.count, parts: [hydrogen] },
      { coefficient: 1, parts: [oxygen] },
    ]),
  ];
};

/** The molar mass of the salt multiplied by that of its water, the dot read as a times sign. */
export const saltTimesWater = ({ units, hydrate }: Formula): readonly WrongMolarMass[] =>
  hydrate
    ? [
        {
          atoms: atomsOfUnits(units.filter(isOfSalt)),
          times: atomsOfUnits(units.filter((unit, index) => !isOfSalt(unit, index))),
        },
      ]
    : [];
