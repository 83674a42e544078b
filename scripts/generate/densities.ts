// Densities of aqueous solutions at 20 °C, from tests/published/density.csv.
import { readCsv } from './csv.ts';

const percentOf = (point: string): number => Number(point.split(':')[0]);
const byPercent = (one: string, other: string): number => percentOf(one) - percentOf(other);

/** Text of `src/chemistry/densities.generated.ts`. */
export function densitiesSource(csvPath: string): string {
  const rows = readCsv(csvPath);
  const water = rows.find(({ substance, temperature_C }) => substance === 'water' && temperature_C === '20');
  if (water === undefined) throw new Error('density.csv has no water at 20 °C');
  const lists = new Map<string, string[]>();
  for (const { substance, formula = '', mass_percent, density_g_per_mL, temperature_C, basis = '' } of rows) {
    if (substance === 'water' || temperature_C !== '20') continue;
    const list = lists.get(formula) ?? (Number(mass_percent) === 0 ? [] : [`0:${Number(water.density_g_per_mL)}`]);
    list.push(`${Number(mass_percent)}:${Number(density_g_per_mL)}${basis.includes('memory') ? ':m' : ''}`);
    lists.set(formula, list);
  }
  return [
    '// Generated from tests/published/density.csv by `npm run build`; edit that file instead.',
    '',
    '/** Formula, then % by mass : g/mL at 20 °C, m where the figure is from memory; 0 % is water. */',
    `export const densities = \`\n${Array.from(lists, ([formula, list]) => `${formula} ${list.sort(byPercent).join(' ')}`).join('\n')}\n\`;`,
    '',
  ].join('\n');
}
