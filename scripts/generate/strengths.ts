// Densities of solutions and labels of concentrated reagents, from tests/published/.
import { readCsv } from './csv.ts';

/** Text of `src/chemistry/strengths.generated.ts`. */
export function strengthsSource({ density, reagents }: { density: string; reagents: string }): string {
  const points = new Map<string, string[]>();
  for (const row of readCsv(density)) {
    const formula = row.formula ?? '';
    if (row.temperature_C !== '20' || row.substance === 'water') continue;
    points.set(formula, [...(points.get(formula) ?? []), `${row.mass_percent}:${row.density_g_per_mL}`]);
  }
  const percentOf = (point: string) => Number(point.split(':')[0]);
  const densities = [...points].map(
    ([formula, list]) => `${formula} ${list.sort((one, other) => percentOf(one) - percentOf(other)).join(' ')}`,
  );
  const bottles = new Map<string, string>();
  const rows = readCsv(reagents);
  // What schools buy as a solid is made from the solid, even where a strong solution of it is sold too.
  const solids = rows
    .filter((row) => row.kind === 'solute' && /^[\d.]+$/.test(row.solubility_g_per_100g_water_20C ?? ''))
    .map(({ formula }) => formula);
  for (const row of rows) {
    const formula = row.formula ?? '';
    const isWhole = /^[\d.]+$/.test(row.mass_percent ?? '') && /^[\d.]+$/.test(row.density_g_per_mL ?? '');
    if (row.kind !== 'concentrated reagent' || !isWhole || bottles.has(formula) || solids.includes(formula)) continue;
    bottles.set(formula, `${formula} ${row.mass_percent} ${row.density_g_per_mL}`);
  }
  return [
    '// Generated from tests/published/density.csv and reagents.csv by `npm run build`; edit those files instead.',
    '',
    '/** Formula without its water, then mass percent : g/mL at 20 °C, weakest first. */',
    'export const densityList = `',
    ...densities,
    '`;',
    '',
    '/** Formula, mass percent and g/mL as a supplier’s table of concentrated reagents has them. */',
    'export const bottleList = `',
    ...bottles.values(),
    '`;',
    '',
  ].join('\n');
}
