import { quoted } from '../errors/quoted.ts';
import { type ErrorOf, failure, type Result, success } from '../errors/result.ts';
import {
  isSparinglySoluble,
  molecularSolutes,
  saturatedHydroxides,
  strongAcids,
  weakElectrolytes,
} from './electrolytes.ts';
import { anhydrousAtoms, type Formula } from './formula.ts';
import { type ListedIon, listedAnions, listedCations } from './listedIons.ts';

/** One kind of particle that a formula unit gives in water. */
export interface IonCount {
  /** As usually written, with its charge raised: `Mg²⁺`, `SO₄²⁻`; a molecular solute as it was typed. */
  readonly ion: string;
  /** Number of them from one formula unit. */
  readonly count: number;
  /** 0 for a molecular solute. */
  readonly charge: number;
  /** Atoms of one. */
  readonly atoms: Formula['atoms'];
  /** Anything to know about this ion. */
  readonly note?: string;
  /** mol/L of the substance in its saturated solution, where it dissolves only a little. */
  readonly saturated?: number;
}

type Counts = ReadonlyMap<string, number>;

const countsOf = (atoms: Formula['atoms']): Map<string, number> =>
  new Map(atoms.map(({ element, count }) => [element === '[2H]' ? 'H' : element, count]));

const key = (counts: Counts): string =>
  [...counts]
    .map(([element, count]) => `${element}${count}`)
    .sort()
    .join();

const loneSymbol = /^[A-Z][a-z]?$/;

/**
 * Atoms of a listed formula, in the order in which they are written. Our lists hold symbols, whole numbers and brackets
 * that are not nested, so they are read in a few steps: the whole reader would take longer over them than a check does.
 */
export function atomsOfListed(body: string): Formula['atoms'] {
  if (loneSymbol.test(body)) return [{ element: body, count: 1 }];
  const counts = new Map<string, number>();
  const flat = body.replace(/\(([^()]*)\)(\d*)/g, (_, inside: string, times: string) =>
    inside.repeat(Number(times || 1)),
  );
  const left = flat.replace(/([A-Z][a-z]?)(\d*)/g, (_, element: string, count: string) => {
    counts.set(element, (counts.get(element) ?? 0) + Number(count || 1));
    return '';
  });
  if (left !== '') throw new Error(`The list of ions has ${body}, which is no plain formula.`);
  return [...counts].map(([element, count]) => ({ element, count }));
}

/** Whether a substance of these atoms stands in a list; only what has all of their symbols in it is read. */
function isAmong(list: readonly string[], counts: Counts): boolean {
  const symbols = [...counts.keys()];
  const wanted = key(counts);
  return list.some(
    (body) => symbols.every((symbol) => body.includes(symbol)) && key(countsOf(atomsOfListed(body))) === wanted,
  );
}

/** Whether a substance stands in the lists of strong acids, weak electrolytes or molecular solutes. */
export function isListedSolute(formula: Formula): boolean {
  const counts = countsOf(anhydrousAtoms(formula));
  return [strongAcids, weakElectrolytes, molecularSolutes].some((list) => isAmong(list, counts));
}

interface KnownIon extends ListedIon {
  readonly atoms: Formula['atoms'];
}
let knownCations: readonly KnownIon[] | undefined;
const cationsByAtoms = () =>
  (knownCations ??= listedCations().map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) })));

/** Anions whose elements are all among some; the others are not read. Oxide and peroxide give no ions in water. */
const anionsAmong = (counts: Counts): readonly KnownIon[] =>
  listedAnions()
    .filter(({ body }) => body !== 'O' && body !== 'O2')
    .filter(({ body }) => body.match(/[A-Z][a-z]?/g)?.every((symbol) => counts.has(symbol)))
    .map((ion) => ({ ...ion, atoms: atomsOfListed(ion.body) }));

const raised = (charge: number): string => {
  const digits = Math.abs(charge) === 1 ? '' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Math.abs(charge));
  return digits + (charge < 0 ? '⁻' : '⁺');
};
const lowered = (body: string): string => body.replace(/\d/g, (digit) => '₀₁₂₃₄₅₆₇₈₉'.charAt(Number(digit)));

/** An ion as it is usually written. */
const ionText = ({ body, charge }: ListedIon): string =>
  `${body.includes('(CN)') || body.includes('(OH)') ? `[${lowered(body)}]` : lowered(body)}${raised(charge)}`;

/** What is left of some atoms when an ion is taken out so many times; below zero where there is too little. */
function without(counts: Counts, atoms: Formula['atoms'], times: number): Map<string, number> {
  const left = new Map(counts);
  for (const { element, count } of atoms) {
    const rest = (left.get(element) ?? 0) - count * times;
    if (rest === 0) left.delete(element);
    else left.set(element, rest);
  }
  return left;
}

/** Most ions of one kind that are looked for in a formula unit. */
const countMax = 50;

/**
 * How many of an anion a formula unit can hold, most first. An element that no cation has must be used up whole, which
 * leaves one number; without such an element every number is possible.
 */
function possibleCounts(counts: Counts, atoms: Formula['atoms']): readonly number[] {
  const most = Math.min(...atoms.map(({ element, count }) => Math.floor((counts.get(element) ?? 0) / count)));
  if (most < 1) return [];
  const own = atoms.find(({ element }) => !cationElements().has(element));
  if (own === undefined) return Array.from({ length: Math.min(most, countMax) }, (_, place) => most - place);
  const needed = (counts.get(own.element) ?? 0) / own.count;
  return needed === most ? [needed] : [];
}

let elementsOfCations: ReadonlySet<string> | undefined;
const cationElements = (): ReadonlySet<string> =>
  (elementsOfCations ??= new Set(
    cationsByAtoms()
      .flatMap(({ atoms }) => atoms.map(({ element }) => element))
      .filter((element) => element !== 'O'),
  ));

interface Share {
  readonly ion: KnownIon;
  readonly count: number;
}

/** Cations that use up exactly these atoms and carry exactly this charge; every metal with one of its usual charges. */
function cationsFor(counts: Counts, charge: number, mayHoldAmmonium: boolean): readonly Share[] | undefined {
  const [next] = [...counts.keys()].filter((element) => element !== 'N' && element !== 'H');
  if (next === undefined) {
    if (counts.size === 0) return charge === 0 ? [] : undefined;
    const nitrogen = counts.get('N');
    const symbol = nitrogen === undefined ? 'H' : 'NH4';
    const ion = cationsByAtoms().find(({ body }) => body === symbol);
    if (!ion || (symbol === 'NH4' && !mayHoldAmmonium)) return undefined;
    const count = nitrogen ?? counts.get('H') ?? 0;
    const left = without(counts, ion.atoms, count);
    return left.size === 0 && count === charge ? [{ ion, count }] : undefined;
  }
  const count = counts.get(next) ?? 0;
  for (const ion of cationsByAtoms().filter(({ body }) => body === next)) {
    const left = without(counts, ion.atoms, count);
    const rest = cationsFor(left, charge - count * ion.charge, mayHoldAmmonium);
    if (rest) return [{ ion, count }, ...rest];
  }
  return undefined;
}

/** A salt, acid or base of the usual ions: its cations and its one kind of anion. */
function takenApart(formula: Formula): { readonly cations: readonly Share[]; readonly anion: Share } | undefined {
  const counts = countsOf(anhydrousAtoms(formula));
  const mayHoldAmmonium = /N\s*H\s*[4₄]|H4N/.test(formula.text);
  for (const ion of anionsAmong(counts)) {
    for (const count of possibleCounts(counts, ion.atoms)) {
      const left = without(counts, ion.atoms, count);
      const cations = cationsFor(left, -ion.charge * count, mayHoldAmmonium);
      const hasHydrogen = cations?.some(({ ion: { body } }) => body === 'H') === true;
      // An acid salt is never hydrogen ions beside a metal: those hydrogens belong to the anion. A strong acid is taken
      // apart to its last hydrogen; the second step is noted.
      const isHalfDone = hasHydrogen && (cations.length > 1 || ion.body.startsWith('H'));
      if (cations && !isHalfDone) return { cations, anion: { ion, count } };
    }
  }
  return undefined;
}

type Refused = 'formula-with-charge' | 'ions-weak' | 'ions-sparingly' | 'ions-unknown';
const refusal = (error: Pick<ErrorOf<Refused>, 'code' | 'received' | 'advice'>): Result<never> =>
  failure({ ...error, argument: 'formula' });

/**
 * Particles that one formula unit gives in water, taken as completely dissociated; water of hydration is never one.
 *
 * @returns Ions with their number, or a molecular solute once. Fails with `formula-with-charge`, `ions-weak`,
 * `ions-sparingly` (below 1 g in 100 g of water; but calcium and barium hydroxide are taken as far as they dissolve) or
 * `ions-unknown`.
 * Source: list of reagents and of usual ions, see `electrolytes.ts` and `listedIons.ts`.
 */
export function ions(formula: Formula): Result<readonly IonCount[]> {
  const shown = quoted(formula.text);
  if (formula.charge !== 0) {
    return refusal({
      code: 'formula-with-charge',
      received: shown,
      advice: 'Type the substance that is dissolved, without a charge.',
    });
  }
  const atoms = anhydrousAtoms(formula);
  const counts = countsOf(atoms);
  const weakRefusal = () =>
    refusal({
      code: 'ions-weak',
      received: shown,
      advice: 'Look up its acid or base constant: a formula alone can’t say how many ions there are.',
    });
  if (isAmong(weakElectrolytes, counts)) return weakRefusal();
  const salt = takenApart(formula);
  // Urea and a salt of ammonium can have the same atoms; only what is written tells them apart.
  const isAcid = salt?.cations.every(({ ion: { body } }) => body === 'H') === true;
  if (isAmong(molecularSolutes, counts) && (!salt || isAcid)) {
    const [ion = ''] = formula.text.split(/[·•*.∙⋅‧・]/);
    return success([{ ion: ion.trim(), count: 1, charge: 0, atoms }]);
  }
  if (!salt) {
    return refusal({
      code: 'ions-unknown',
      received: shown,
      advice: 'Look up how it dissolves, and count its ions by hand.',
    });
  }
  const { cations, anion } = salt;
  if (isAcid && !isAmong(strongAcids, counts)) return weakRefusal();
  const [only] = cations;
  const isHydroxide = cations.length === 1 && anion.ion.body === 'OH';
  const saturated = isHydroxide && only ? saturatedHydroxides[only.ion.body] : undefined;
  const isLow =
    saturated === undefined &&
    cations.some(({ ion: { body, charge } }) =>
      isSparinglySoluble({ cation: body, cationCharge: charge, anion: anion.ion.body }),
    );
  if (isLow) {
    return refusal({
      code: 'ions-sparingly',
      received: shown,
      advice: 'Choose a salt that dissolves.',
    });
  }
  const isSulfuric = isAcid && anion.ion.body === 'SO4';
  return success(
    [...cations, anion].map(({ ion, count }) => ({
      ion: ionText(ion),
      count,
      charge: ion.charge,
      atoms: ion.atoms,
      ...(isSulfuric ? { note: 'the second step is partial: some HSO₄⁻ stays whole' } : {}),
      ...(saturated === undefined
        ? {}
        : { note: `as far as it dissolves, up to about ${saturated} mol/L at room temperature`, saturated }),
    })),
  );
}
