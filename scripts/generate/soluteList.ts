// Solutes with their solubility, from tests/published/reagents.csv.
import { readFileSync } from 'node:fs';

const columns = /(?:"((?:[^"]|"")*)"|([^,]*))(?:,|$)/g;
const cellsOf = (line: string): string[] =>
  Array.from(line.matchAll(columns), ([, quoted, plain]) => quoted ?? plain ?? '');

/** Text of `src/lab/soluteList.generated.ts`. */
export function soluteListSource(csvPath: string): string {
  const [heading = '', ...rows] = readFileSync(csvPath, 'utf8').split(/\r?\n/);
  const names = cellsOf(heading);
  const solutes = rows.map((row) => {
    const cells = cellsOf(row);
    return (name: string): string => {
      const at = names.indexOf(name);
      if (at < 0) throw new Error(`reagents.csv has no column ${name}`);
      return cells[at] ?? '';
    };
  });
  const lines = solutes
    .filter((cell) => cell('kind') === 'solute')
    .map((cell) => {
      const basis = /^as anhydrous (\S+)$/.exec(cell('solubility_solute_basis'))?.[1] ?? cell('formula');
      const solubility = /^[\d.]+$/.test(cell('solubility_g_per_100g_water_20C'))
        ? cell('solubility_g_per_100g_water_20C')
        : '';
      return [cell('name'), cell('formula'), solubility, basis, cell('school_use_flag')].join('|');
    });
  return [
    '// Generated from tests/published/reagents.csv by `npm run build`; edit that file instead.',
    '',
    '/** Name | formula | g in 100 g of water near 20 °C, blank where unknown | formula that these grams are of | use in schools. */',
    'export const soluteList = `',
    ...lines,
    '`;',
    '',
  ].join('\n');
}
