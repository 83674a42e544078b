// Permitted errors of one-mark flasks and pipettes, from tests/published/glassware-tolerances.csv.
import { readFileSync } from 'node:fs';

const columns = /(?:"((?:[^"]|"")*)"|([^,]*))(?:,|$)/g;
const cellsOf = (line: string): string[] =>
  Array.from(line.matchAll(columns), ([, quoted, plain]) => quoted ?? plain ?? '');

const standards = { 'ISO 1042': 'ISO', 'ISO 648': 'ISO', 'ASTM E288': 'ASTM', 'ASTM E969': 'ASTM' } as const;
const vessels = { 'volumetric flask': 'flask', 'transfer pipette': 'pipette' } as const;
const classes = { A: 'A', 'A/AS': 'A', B: 'B' } as const;

const known = <Names extends Record<string, string>>(names: Names, text: string | undefined): string | undefined =>
  text !== undefined && Object.hasOwn(names, text) ? names[text] : undefined;

/** Text of `src/measurement/volumetricTolerances.generated.ts`. */
export function volumetricTolerancesSource(csvPath: string): string {
  const lists: Record<string, { size: number; line: string }[]> = {};
  for (const row of readFileSync(csvPath, 'utf8').split(/\r?\n/).slice(1)) {
    const [apparatus, size, glassClass, tolerance, , standard, basis = ''] = cellsOf(row);
    const names = [known(standards, standard), known(vessels, apparatus), known(classes, glassClass)];
    if (names.includes(undefined)) continue;
    const list = names.join(' ');
    lists[list] ??= [];
    lists[list].push({
      size: Number(size),
      line: `${Number(size)}:${Number(tolerance)}${basis.includes('from memory') ? ':m' : ''}`,
    });
  }
  const lines = Object.entries(lists)
    .sort(([one], [other]) => one.localeCompare(other))
    .map(([name, list]) => {
      const sorted = list.sort((one, other) => one.size - other.size).map(({ line }) => line);
      return `  '${name}': '${sorted.join(' ')}',`;
    });
  return [
    '// Generated from tests/published/glassware-tolerances.csv by `npm run build`; edit that file instead.',
    '',
    '/** Size in mL, ± mL, and m where the figure is from memory and was not confirmed. */',
    'export const volumetricTolerances = {',
    ...lines,
    '} as const;',
    '',
  ].join('\n');
}
