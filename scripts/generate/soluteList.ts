// Solutes with their solubility, from tests/published/reagents.csv.
import { readCsv } from './csv.ts';

/** Text of `src/lab/lesson/soluteList.generated.ts`. */
export function soluteListSource(csvPath: string): string {
  const solutes = readCsv(csvPath).map((row) => (name: string): string => {
    const cell = row[name];
    if (cell === undefined) throw new Error(`reagents.csv has no column ${name}`);
    return cell;
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
