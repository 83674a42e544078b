import { cautionsAt } from '../../chemistry/cautionsAt.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { cautionTexts, cautionWithAdvice } from '../texts/numbers.ts';
import { keptFromStudents } from './keptFromStudents.ts';

type Counts = Readonly<Record<string, number>>;

/** Substances with water of hydration count without it; the tests are on the atoms of one formula unit, or on the formula as written. */
const cautions: readonly {
  readonly reason: keyof typeof cautionTexts;
  readonly applies: (counts: Counts, written: string) => boolean;
}[] = [
  { reason: 'hydrofluoric', applies: (n) => isExactly(n, { H: 1, F: 1 }) },
  { reason: 'perchloric', applies: (n) => isExactly(n, { H: 1, Cl: 1, O: 4 }) },
  { reason: 'sulfuric', applies: (n) => isExactly(n, { H: 2, S: 1, O: 4 }) },
  { reason: 'nitric', applies: (n) => isExactly(n, { H: 1, N: 1, O: 3 }) },
  { reason: 'formic', applies: (n) => isExactly(n, { H: 2, C: 1, O: 2 }) },
  { reason: 'boric', applies: (n) => isExactly(n, { H: 3, B: 1, O: 3 }) },
  { reason: 'oxalic', applies: (n) => isExactly(n, { H: 2, C: 2, O: 4 }) },
  // Chromium(III) salts are not meant, and the numbers of atoms alone cannot tell the two apart.
  { reason: 'chromium', applies: (_, written) => /CrO[34](?!\d)|Cr2O7|CrO2Cl2/.test(written) },
  { reason: 'lead', applies: (n) => has(n, 'Pb') },
  { reason: 'mercury', applies: (n) => has(n, 'Hg') },
  { reason: 'cobalt', applies: (n) => has(n, 'Co') },
  { reason: 'nickel', applies: (n) => has(n, 'Ni') },
  { reason: 'barium', applies: (n) => has(n, 'Ba') && !isExactly(n, { Ba: 1, S: 1, O: 4 }) },
];

const has = (counts: Counts, element: string): boolean => (counts[element] ?? 0) > 0;

const isExactly = (counts: Counts, wanted: Counts): boolean =>
  Object.keys(wanted).every((element) => counts[element] === wanted[element]) &&
  Object.keys(counts).every((element) => (counts[element] ?? 0) === 0 || wanted[element] !== undefined);

/** Why the planner does not propose a substance, in one or two sentences; empty where it has nothing against it. */
export function plannerCaution(formula: CellValue): string {
  const read = readFormula(formula);
  if (!read.ok) return '';
  const counts: Record<string, number> = Object.create(null);
  for (const { element, count } of read.value.atoms) counts[element] = count;
  const waters = read.value.hydrate?.count ?? 0;
  counts.H = (counts.H ?? 0) - 2 * waters;
  counts.O = (counts.O ?? 0) - waters;
  const written = String(formula).normalize('NFKC').replace(/\s/g, '');
  const found = cautions.find(({ applies }) => applies(counts, written));
  if (found !== undefined) return cautionWithAdvice(cautionTexts[found.reason]);
  return solidCaution(read.value);
}

/** Why students do not weigh it out, so that no proposal contradicts the caution of its own solid; empty where they may. */
function solidCaution(formula: Formula): string {
  const cautions = cautionsAt(formula, 'undiluted');
  const isSoldConcentrated = cautions.statements.some(
    ({ about, text }) => about === 'use' && text.includes('concentrated'),
  );
  if (cautions.listing === 'unlisted' || isSoldConcentrated) return '';
  if (keptFromStudents(cautions, false)) return cautionTexts.kept;
  return cautions.codes.includes('H314') ? cautionTexts.burning : '';
}
