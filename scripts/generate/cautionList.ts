// Hazard classes of listed substances, undiluted and by strength, from tests/published/reagents.csv and hazard-limits.csv.
import { readCsv } from './csv.ts';

type Row = Readonly<Record<string, string>>;

/** Other ways to write a listed formula. Which limits a hydrate shares is said in the column counted_as. */
const otherSpellings: Readonly<Record<string, string>> = {
  CH3COOH: 'HC2H3O2 CH3CO2H HCH3COO HCH3CO2',
  HCOOH: 'HCO2H HCHO2',
  CH3COONa·3H2O: 'NaCH3COO·3H2O NaC2H3O2·3H2O CH3CO2Na·3H2O NaCH3CO2·3H2O',
  'CO(NH2)2': '(NH2)2CO NH2CONH2',
  C8H5O4K: 'KHC8H4O4 KC8H5O4 C6H4(COOH)COOK',
  H2C2O4·2H2O: '(COOH)2·2H2O',
  H3BO3: 'B(OH)3',
  C6H8O7: 'H3C6H5O7',
  C6H8O7·H2O: 'H3C6H5O7·H2O',
  NH3: 'NH4OH NH3·H2O',
  NaOCl: 'NaClO',
  'Ca(OCl)2': 'Ca(ClO)2',
  'Co(CH3COO)2': '(CH3COO)2Co Co(C2H3O2)2',
};

/** Substances whose limits stand under the formula without water, though the weighed salt is what they count. */
const limitsUnder: Readonly<Record<string, string>> = {
  CaCl2·2H2O: 'CaCl2',
  BaCl2·2H2O: 'BaCl2',
  CoCl2·6H2O: 'CoCl2',
  NiSO4·6H2O: 'NiSO4',
  C6H8O7·H2O: 'C6H8O7',
};

const confidences: Readonly<Record<string, string>> = {
  'harmonised (Annex VI)': 'h',
  'two sources agree': 't',
  'one source': 'o',
  'from memory': 'm',
};

function confidenceMark(text: string | undefined): string {
  const mark = confidences[text ?? ''];
  if (mark === undefined) throw new Error(`Confidence “${text}” is not known.`);
  return mark;
}

const edge = (test: string | undefined, value: string | undefined): string =>
  value === undefined || value === '' ? '' : `${test === '>' || test === '<=' ? '!' : ''}${Number(value)}`;

/** `code,from,to,counted g/mol,confidence and flags`; n no limit, * minimum class, p look at the pH, 2 or 3 category. */
function limitText(row: Row): string {
  const note = row.note ?? '';
  const flags = [
    row.kind === 'no limit' ? 'n' : '',
    note.includes('minimum class') ? '*' : '',
    /pH/.test(note) ? 'p' : '',
    row.h_code === 'H272' ? (/(\d)$/.exec(row.hazard_class ?? '')?.[1] ?? '') : '',
  ];
  return [
    row.h_code === 'H335/H336' ? 'H335' : row.h_code,
    edge(row.from_test, row.from_percent),
    edge(row.to_test, row.to_percent),
    row.counted_g_per_mol === '' ? '' : Number(row.counted_g_per_mol),
    confidenceMark(row.confidence) + flags.join(''),
  ].join(',');
}

const plainName = (name: string): string =>
  name
    .replace(/, \d+ %$/, '')
    .replace(/, glacial$/, '')
    .replace(/ solution$/, '');

/** Text of `src/chemistry/cautionList.generated.ts`. */
export function cautionListSource(paths: { readonly reagents: string; readonly limits: string }): string {
  const limits = new Map<string, Row[]>();
  for (const row of readCsv(paths.limits)) {
    if (row.formula === undefined || row.formula === '') continue;
    limits.set(row.formula, [...(limits.get(row.formula) ?? []), row]);
  }
  const reagents = new Map<string, Row>();
  for (const row of readCsv(paths.reagents)) {
    const formula = row.formula ?? '';
    const before = reagents.get(formula);
    // The pure solid stands for a substance that is also sold as a solution; of solutions, the one with the most codes.
    const weight = (one: Row) => (one.kind === 'solute' ? 100 : 0) + (one.h_statements ?? '').split(' ').length;
    if (before === undefined || weight(row) > weight(before)) reagents.set(formula, row);
  }
  const used = new Set<string>();
  const lines = [...reagents].map(([formula, row]) => {
    const under = limitsUnder[formula] ?? formula;
    used.add(formula);
    const harmonised = (row.h_annex_vi ?? '').split(' ');
    const own = confidenceMark(row.hazard_confidence);
    const codes = `${row.h_statements} ${row.euh_statements}`
      .split(' ')
      .filter((code) => code !== '')
      .map((code) => `${code}:${harmonised.includes(code) || code.startsWith('EUH') ? 'h' : own === 'h' ? 'o' : own}`);
    return [
      plainName((row.name ?? '').replace(' (pure liquid as a solute)', '')),
      [formula, ...(otherSpellings[formula]?.split(' ') ?? [])].join(' '),
      codes.join(' '),
      row.ghs_signal,
      own,
      row.school_use_flag,
      (limits.get(under) ?? []).map(limitText).join(';'),
    ].join('|');
  });
  for (const [formula, rows] of limits) {
    if (used.has(formula)) continue;
    const isFirstEntry = rows.filter(({ substance }) => substance === rows[0]?.substance);
    lines.push(
      [
        rows[0]?.substance?.replace(/ solution$/, ''),
        [formula, ...(otherSpellings[formula]?.split(' ') ?? [])].join(' '),
        '*',
        '',
        confidenceMark(rows[0]?.confidence),
        '',
        isFirstEntry.map(limitText).join(';'),
      ].join('|'),
    );
  }
  return [
    '// Generated from tests/published/reagents.csv and hazard-limits.csv by `npm run build`; edit those files instead.',
    '',
    '/**',
    ' * Name | spellings of the formula | codes of the undiluted substance with their confidence (* for those that the limits',
    ' * give at 100 %) | signal word | confidence | use in schools | limits in % by mass, each as',
    ' * code,from,to,counted g/mol,confidence and flags (! an end that is taken the other way round: above, or up to and',
    ' * with; n no limit known, * minimum class, p look at the pH, 2 or 3 category). Confidence: h harmonised in CLP Annex',
    ' * VI as consolidated 2026-07-01, t two sources agree, o one source, m from memory.',
    ' */',
    `export const cautionList = \`\n${lines.join('\n')}\n\`;`,
    '',
  ].join('\n');
}
