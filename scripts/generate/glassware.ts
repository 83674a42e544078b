// Permitted errors of glassware, from tests/published/glassware-tolerances.csv.
import { readCsv } from './csv.ts';

const standards: Readonly<Record<string, string>> = {
  'ISO 1042': 'ISO volumetric flask',
  'ASTM E288': 'ASTM volumetric flask',
  'ISO 648': 'ISO volumetric pipette',
  'ASTM E969': 'ASTM volumetric pipette',
  'ISO 835': 'ISO graduated pipette',
  'ASTM E1293': 'ASTM graduated pipette',
  'ISO 385': 'ISO burette',
  'ASTM E287': 'ASTM burette',
  'ISO 4788': 'ISO graduated cylinder',
  'ASTM E1272': 'ASTM graduated cylinder',
};

const sourceMark = (basis: string): string =>
  basis.includes('memory') ? ':m' : basis.startsWith('common practice') ? ':c' : '';

/** Text of `src/measurement/glassware.generated.ts`. */
export function glasswareSource(csvPath: string): string {
  const lists = new Map<string, Map<number, { tolerance: number; mark: string }>>();
  for (const row of readCsv(csvPath)) {
    const isBeaker = row.apparatus === 'beaker';
    const list = isBeaker ? 'beaker' : standards[row.standard ?? ''];
    if (list === undefined) continue;
    const name = isBeaker ? list : `${list} ${row.class === 'B' ? 'B' : 'A'}`;
    const sizes = lists.get(name) ?? new Map<number, { tolerance: number; mark: string }>();
    lists.set(name, sizes);
    const size = Number(row.nominal_mL);
    const found = { tolerance: Number(row.tolerance_mL), mark: sourceMark(row.basis ?? '') };
    if (!(size > 0 && found.tolerance > 0)) throw new Error(`${row.apparatus} ${row.nominal_mL}: no figure`);
    // Burettes of one size come with two scales; the wider tolerance is never too narrow.
    const before = sizes.get(size);
    if (before === undefined || before.tolerance < found.tolerance) sizes.set(size, found);
  }
  const lines = [...lists]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, sizes]) => {
      const sorted = [...sizes].sort(([one], [other]) => one - other);
      return `  '${name}': '${sorted.map(([size, { tolerance, mark }]) => `${size}:${tolerance}${mark}`).join(' ')}',`;
    });
  return [
    '// Generated from tests/published/glassware-tolerances.csv by `npm run build`; edit that file instead.',
    '',
    '/** Size in mL : ± mL, then m where the figure is from memory, c where it is common practice without a source. */',
    'export const glassware: Readonly<Record<string, string>> = {',
    ...lines,
    '};',
    '',
  ].join('\n');
}
