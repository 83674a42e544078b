import { densityList } from './strengths.generated.ts';

/** One line of a table of densities at 20 °C: mass percent and g/mL. */
export interface DensityLine {
  readonly massPercent: number;
  readonly density: number;
}

/** Density of water at 20 °C in g/mL, rounded (Kell 1975). */
export const waterAt20: DensityLine = { massPercent: 0, density: 0.9982 };

const lineOf = (formula: string): string | undefined =>
  densityList.split('\n').find((candidate) => candidate.startsWith(`${formula} `));

/**
 * Densities of the solutions of a substance, written without water of hydration, with water in front and weakest first;
 * undefined where the table has none.
 *
 * Source: the tables named in tests/published/density.csv.
 */
export function densityLines(formula: string): readonly DensityLine[] | undefined {
  const listed = lineOf(formula)
    ?.split(' ')
    .slice(1)
    .map((pair): DensityLine => {
      const [massPercent = '', density = ''] = pair.split(':');
      return { massPercent: Number(massPercent), density: Number(density) };
    });
  return listed && [waterAt20, ...listed.filter(({ massPercent }) => massPercent > 0)];
}

/** Formulas of the table, as it writes them. */
export const densityFormulas = (): readonly string[] =>
  densityList
    .trim()
    .split('\n')
    .map((line) => line.split(' ')[0] ?? '');
