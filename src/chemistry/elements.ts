import { elementTable } from './elementTable.generated.ts';

interface Element {
  readonly symbol: string;
  readonly name: string;
  readonly atomicNumber: number;
  /** Standard atomic weight, or undefined where there is none. */
  readonly weight: number | undefined;
  /** Mass number of the longest-lived isotope, where there is no standard atomic weight. */
  readonly longestLived: number | undefined;
}

let bySymbol: Map<string, Element> | undefined;

/** All elements by symbol, read from the table on first use. */
export function elements(): ReadonlyMap<string, Element> {
  bySymbol ??= new Map(
    elementTable
      .trim()
      .split('\n')
      .map((line, index) => {
        const [symbol, name, weight] = line.split(' ') as [string, string, string];
        const isStable = !weight.startsWith('~');
        const element: Element = {
          symbol,
          name,
          atomicNumber: index + 1,
          weight: isStable ? Number(weight) : undefined,
          longestLived: isStable ? undefined : Number(weight.slice(1)),
        };
        return [symbol, element] as const;
      }),
  );
  return bySymbol;
}

/**
 * Relative masses of isotopes that chemists weigh out by name: AME2020 (Wang et al., Chinese Phys. C 45 (2021) 030003),
 * from memory. Every other isotope counts with its mass number.
 */
const isotopeMasses: ReadonlyMap<string, number> = new Map([
  ['[2H]', 2.014101777844],
  ['[3H]', 3.01604928132],
  ['[13C]', 13.003354835336],
]);

const isotopeShape = /^\[(\d+)([A-Z][a-z]?)\]$/;

/** Symbol of the element that an atom's label stands for: `Br` for `Br`, `H` for `[2H]`. */
export const elementOf = (label: string): string => isotopeShape.exec(label)?.[2] ?? label;

/** Mass of one atom by its label, relative to 1/12 of carbon-12; undefined without a standard atomic weight. */
export function relativeMass(label: string): number | undefined {
  const isotope = isotopeShape.exec(label);
  if (!isotope) return elements().get(label)?.weight;
  return isotopeMasses.get(label) ?? Number(isotope[1]);
}
