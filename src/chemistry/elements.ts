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

function elementOn(line: string): Element {
  const [symbol, atomicNumber, name, weight] = line.split(' ') as [string, string, string, string];
  const isStable = !weight.startsWith('~');
  return {
    symbol,
    name,
    atomicNumber: Number(atomicNumber),
    weight: isStable ? Number(weight) : undefined,
    longestLived: isStable ? undefined : Number(weight.slice(1)),
  };
}

/** Elements that were asked for: a formula has a few of the 118. */
const read = new Map<string, Element>();

/** The element of a symbol; undefined where there is none. */
export function elementBySymbol(symbol: string): Element | undefined {
  const known = read.get(symbol);
  if (known) return known;
  const at = elementTable.indexOf(`\n${symbol} `);
  if (at < 0) return undefined;
  const element = elementOn(elementTable.slice(at + 1, elementTable.indexOf('\n', at + 1)));
  // What was typed may go on like the line, as `H 1` does.
  if (element.symbol !== symbol) return undefined;
  read.set(symbol, element);
  return element;
}

/** All elements in the order of atomic numbers. */
export const allElements = (): readonly Element[] => elementTable.trim().split('\n').map(elementOn);

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
  if (!isotope) return elementBySymbol(label)?.weight;
  return isotopeMasses.get(label) ?? Number(isotope[1]);
}
