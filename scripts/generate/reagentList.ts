// Concentrated acids and bases as they are sold, from tests/published/reagents.csv.
import { readCsv } from './csv.ts';

/** Text of `src/lab/lesson/reagentList.generated.ts`. Oxidisers that are neither acid nor base are left out. */
export function reagentListSource(csvPath: string): string {
  const lines = readCsv(csvPath)
    .filter(
      ({ kind, ions_per_formula_unit: ions = '' }) => kind === 'concentrated reagent' && /H\+|OH-|acid|base/.test(ions),
    )
    .map(({ name = '', formula, school_use_flag: use, ions_per_formula_unit: ions = '' }) =>
      // The name without the strength that the bottle happens to have.
      [formula, use, name.split(',')[0], /H\+|acid/.test(ions) ? 'acid' : 'base'].join('|'),
    );
  return [
    '// Generated from tests/published/reagents.csv by `npm run build`; edit that file instead.',
    '',
    '/** Formula | use in schools | name | acid or base. */',
    'export const reagentList = `',
    ...lines.filter((line, at) => lines.indexOf(line) === at),
    '`;',
    '',
  ].join('\n');
}
