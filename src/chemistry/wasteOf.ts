import type { Formula } from './formula.ts';
import type { ListedHazards } from './listedHazards.ts';

/** Where leftovers and rinsings go; `metal` is the one that they are collected for. */
export interface Waste {
  readonly goesTo: 'drain' | 'waste beaker';
  readonly metal: string;
}

/** Metals that are kept from drains in every compound and at every strength (common practice; sewer limits for most). */
const collected: Readonly<Record<string, string>> = {
  Ag: 'silver',
  As: 'arsenic',
  Ba: 'barium',
  Be: 'beryllium',
  Cd: 'cadmium',
  Co: 'cobalt',
  Cr: 'chromium',
  Cu: 'copper',
  Hg: 'mercury',
  Mn: 'manganese',
  Mo: 'molybdenum',
  Ni: 'nickel',
  Pb: 'lead',
  Sb: 'antimony',
  Se: 'selenium',
  Sn: 'tin',
  Tl: 'thallium',
  U: 'uranium',
  V: 'vanadium',
  W: 'tungsten',
  Zn: 'zinc',
};

/** Codes that a solution may have and still go down a drain with plenty of water: it irritates, or feeds a fire as a solid. */
const mild = /^(H272.*|H302|H315|H319|H335)$/;

/**
 * Where what is left of a substance goes.
 *
 * @param substance - What the list says; undefined where it does not have it, or not in this form.
 * @param codes - Codes that hold at this strength, and those that may hold because no limit is known.
 * @param massPercent - As it is sold where undefined.
 */
export function wasteOf(
  { atoms }: Pick<Formula, 'atoms'>,
  {
    substance,
    codes,
    massPercent,
  }: {
    readonly substance: ListedHazards | undefined;
    readonly codes: readonly string[];
    readonly massPercent: number | undefined;
  },
): Waste {
  const metal = atoms.map(({ element }) => collected[element] ?? '').find((name) => name !== '') ?? '';
  const drain = substance?.drain ?? 'no';
  const isAllowed =
    drain === 'yes' || (typeof drain === 'object' && (massPercent ?? substance?.soldPercent ?? 100) <= drain.upTo);
  const goesTo = isAllowed && metal === '' && codes.every((code) => mild.test(code)) ? 'drain' : 'waste beaker';
  return { goesTo, metal };
}
