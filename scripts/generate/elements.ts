// Makes the table of elements from tests/published/atomic-weights.csv.
import { readCsv } from './csv.ts';

export function elementsSource(csvPath: string): string {
  const rows = readCsv(csvPath).map((row) => {
    const weight =
      row.has_standard_atomic_weight === 'yes'
        ? row.calculation_value
        : `~${(row.longest_lived_mass_number ?? '').replace(/[[\]]/g, '')}`;
    return `${row.symbol} ${row.Z} ${row.name} ${weight}`;
  });
  return [
    '// Generated from tests/published/atomic-weights.csv by `npm run build`; edit that file instead.',
    '',
    '/**',
    ' * In the order of atomic numbers: symbol, atomic number, name, standard atomic weight as printed; ~ and the mass',
    ' * number of the longest-lived isotope where there is no standard atomic weight. Edition: IUPAC/CIAAW 2021 (Prohaska',
    ' * et al., Pure Appl. Chem. 94 (2022) 573) with the revisions of 2024; conventional values where the standard one is',
    ' * an interval.',
    ' */',
    `export const elementTable = \`\n${rows.join('\n')}\n\`;`,
    '',
  ].join('\n');
}
