// Hazard classes of listed substances, as sold and by strength, from tests/published/: substances.csv and
// hazard-limits.csv, with what those two leave out in substances-added.csv and hazard-limits-added.csv.
import type { Formula } from '../../src/chemistry/formula.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { readCsv } from './csv.ts';

type Row = Readonly<Record<string, string>>;

export interface HazardTables {
  readonly substances: string;
  readonly limits: string;
  readonly substancesAdded: string;
  readonly limitsAdded: string;
  /** What schools commonly allow stands in its column `school_use_flag`. */
  readonly reagents: string;
}

/** One substance of the tables, with everything that stands about it in any of them. */
export interface TableSubstance {
  readonly bottle: Row;
  readonly name: string;
  readonly formulas: readonly string[];
  readonly names: readonly string[];
  readonly limits: readonly Row[];
  readonly schoolUse: string;
}

const confidences: Readonly<Record<string, string>> = {
  'harmonised (Annex VI)': 'h',
  harmonised: 'h',
  'two sources agree': 't',
  'two sources': 't',
  'one source': 'o',
  'from memory': 'm',
  memory: 'm',
};

function confidenceMark(text: string | undefined): string {
  const mark = confidences[text ?? ''];
  if (mark === undefined) throw new Error(`Confidence “${text}” is not known.`);
  return mark;
}

const cell = (row: Row, name: string): string => {
  const text = row[name];
  if (text === undefined) throw new Error(`A row has no column ${name}: ${JSON.stringify(row)}`);
  return text;
};

const isOfSolutions = (row: Row): boolean => cell(row, 'form').startsWith('solution (limits');

const withoutState = (text: string): string => text.replace(/\((?:aq|s|l)\)$/, '');

/** Dots, brackets and raised or lowered digits of one kind, as `substancesListed` compares them. */
const plain = (text: string): string =>
  withoutState(text).normalize('NFKC').replace(/[[{]/g, '(').replace(/[\]}]/g, ')').replace(/[•*.]/g, '·');

const listed = (cellText: string): readonly string[] =>
  cellText
    .split(';')
    .map((text) => text.trim())
    .filter((text) => text !== '');

/** Atoms without those of water, as far as there is any; hydroxide and oxide with water count as one. */
function atomsWithoutWater(text: string): string {
  const read = readFormula(withoutState(text));
  if (!read.ok) return text;
  const counts = new Map<string, number>(
    read.value.atoms.map(({ element, count }: Formula['atoms'][number]) => [element, count]),
  );
  const waters = Math.min((counts.get('H') ?? 0) / 2, counts.get('O') ?? 0);
  counts.set('H', (counts.get('H') ?? 0) - 2 * waters);
  counts.set('O', (counts.get('O') ?? 0) - waters);
  return [...counts]
    .filter(([, count]) => count > 0)
    .map((pair) => pair.join(''))
    .sort()
    .join(' ');
}

/** An abbreviation such as KHP can be read as a formula, but of something else: then it is a name. */
const isSameButForWater = (one: string, other: string): boolean => atomsWithoutWater(one) === atomsWithoutWater(other);

/** The name without the strength of a bottle, and without which hydrates it stands for. */
const plainName = (name: string): string =>
  name
    .replace(/, (?:\d|0\.)[\d.]* .*$/, '')
    .replace(/ solution$/, '')
    .replace(/ \([^)]*(?:hydrate|anhydrous|or less)[^)]*\)$/, '')
    .replace(/ \(([a-z][^)]*)\)$/, '');

/** A second name that stands in brackets behind the first. */
const bracketedName = (name: string): readonly string[] => {
  const found = / \(([a-z][^)]*)\)$/.exec(name)?.[1];
  return found === undefined || /hydrate|anhydrous|or less/.test(found) ? [] : [found];
};

const withoutWaterWord = (name: string): string =>
  name
    .replace(/ (?:mono|di|tri|tetra|penta|hexa|hepta|octa|nona|deca|dodeca|octadeca)hydrate$/, '')
    .replace(/, anhydrous$/, '');

/**
 * Every substance of the tables.
 *
 * Throws where a row stands for all codes at once (`*`): each code needs a line of its own with its own confidence. Throws
 * too where limits have no row of the substance itself, which is how such catch-alls came about.
 */
export function tableSubstances(paths: HazardTables): readonly TableSubstance[] {
  const rows = readCsv(paths.substances);
  for (const row of rows) {
    if (/(^|[\s;])\*($|[\s;])/.test(cell(row, 'statements')) || cell(row, 'statements') === '') {
      throw new Error(`${cell(row, 'formula')}: a row that stands for all codes at once; give each a line of its own.`);
    }
  }
  const limits = new Map<string, Row[]>();
  const additions = readCsv(paths.limitsAdded);
  const keyOf = (row: Row) => [row.formula, row.h_code, row.from_percent].join(' ');
  const replaced = new Set(additions.filter(({ note = '' }) => note.startsWith('replaces')).map(keyOf));
  for (const row of [...readCsv(paths.limits).filter((row) => !replaced.has(keyOf(row))), ...additions]) {
    const formula = cell(row, 'formula');
    if (formula === '') continue;
    if (!/^(H\d{3}|EUH\d{3})/.test(cell(row, 'h_code'))) {
      throw new Error(`${formula}: a limit without a code of its own (${cell(row, 'h_code')}).`);
    }
    limits.set(formula, [...(limits.get(formula) ?? []), row]);
  }
  const added = new Map(readCsv(paths.substancesAdded).map((row) => [cell(row, 'formula'), row]));
  const bottles = rows.filter((row) => !isOfSolutions(row));
  const known = new Set(bottles.map((row) => cell(row, 'formula')));
  for (const formula of [...limits.keys(), ...added.keys()]) {
    if (!known.has(formula)) throw new Error(`${formula} has limits, but no row of the substance itself.`);
  }
  const uses = new Map(
    readCsv(paths.reagents)
      .filter((row) => cell(row, 'school_use_flag') !== '')
      .map((row) => [plain(cell(row, 'formula')), cell(row, 'school_use_flag')]),
  );
  return bottles.map((bottle) => {
    const formula = cell(bottle, 'formula');
    const addition = added.get(formula);
    const spellings = [formula, ...listed(cell(bottle, 'other_spellings')), ...listed(addition?.other_spellings ?? '')];
    const readable = spellings.filter((text) => /^[A-Z([]/.test(text) && readFormula(withoutState(text)).ok);
    // The first as people write it, since it is shown; the others as they are compared.
    const [first = '', ...others] = readable.filter((text) => isSameButForWater(text, readable[0] ?? ''));
    const isFormula = (text: string) => text === first || others.includes(text);
    const formulas = [...new Set([first, ...[first, ...others].map(plain)])];
    const name = plainName(cell(bottle, 'name'));
    const names = [
      name,
      ...bracketedName(cell(bottle, 'name')),
      ...spellings.filter((text) => !isFormula(text)),
    ].flatMap((text) => [text, withoutWaterWord(text)]);
    return {
      bottle,
      name,
      formulas,
      names: [...new Set(names.map((text) => text.toLowerCase()))],
      limits: limits.get(formula) ?? [],
      schoolUse:
        addition?.school_use || (formulas.map((text) => uses.get(plain(text))).find((use) => use !== undefined) ?? ''),
    };
  });
}

const edge = (test: string | undefined, value: string | undefined): string =>
  value === undefined || value === '' ? '' : `${test === '>' || test === '<=' ? '!' : ''}${Number(value)}`;

const isAsWeighed = (counted: string): boolean => counted.endsWith('as weighed');
const categoryOf = (row: Row): string =>
  row.h_code === 'H272' ? (/(\d)$/.exec(row.hazard_class ?? '')?.[1] ?? '') : '';

/** `code,from,to,counted g/mol,confidence and flags`. */
function limitText(row: Row): string {
  const note = row.note ?? '';
  const flags = [
    row.kind === 'no limit' ? 'n' : '',
    note.includes('minimum class') ? '*' : '',
    /\bpH\b/.test(note) ? 'p' : '',
    categoryOf(row),
  ];
  return [
    row.h_code,
    edge(row.from_test, row.from_percent),
    edge(row.to_test, row.to_percent),
    isAsWeighed(row.counted_as ?? '') ? '' : Number(row.counted_g_per_mol),
    confidenceMark(row.confidence) + flags.join(''),
  ].join(',');
}

/** How sure a code of the bottle is: as its own limit says, else as the column of sources says, else from memory. */
function bottleConfidence(code: string, { bottle, limits }: TableSubstance): string {
  const ofCode = limits.filter((row) => row.h_code === code);
  // That of the strongest: a limit by analogy may only hold below a certain one.
  const own = ofCode.find((row) => row.to_percent === '') ?? ofCode[0];
  if (own) return confidenceMark(own.confidence);
  const substance = confidenceMark(cell(bottle, 'confidence'));
  if (substance !== 'h') return substance;
  return cell(bottle, 'source').includes(`${code}: `) ? 'o' : 'm';
}

const codesIn = (statements: string): readonly string[] =>
  Array.from(statements.matchAll(/\b(?:EUH\d{3}|H\d{3}[A-Za-z]*)\b/g), ([code]) => code);

/**
 * d may go down the drain (with a number: up to that strength), n never, b into the waste beaker: diluting or
 * neutralising first, a flammable, small volumes only are for staff.
 */
function wasteMark({ bottle, limits }: Pick<TableSubstance, 'bottle' | 'limits'>): string {
  const drain = cell(bottle, 'drain');
  if (drain === '') throw new Error(`${cell(bottle, 'formula')}: where it goes is not said.`);
  if (/^never/.test(drain)) return 'n';
  const upTo = /^yes when (\d+) % or weaker/.exec(drain)?.[1];
  if (upTo !== undefined) return `d${upTo}`;
  if (!/^yes(?:, with plenty of water|) — /.test(drain)) return 'b';
  const harmsWaters = [...codesIn(cell(bottle, 'statements')), ...limits.map((row) => row.h_code ?? '')].find((code) =>
    code.startsWith('H4'),
  );
  if (harmsWaters) throw new Error(`${cell(bottle, 'formula')}: down the drain, though it has ${harmsWaters}.`);
  return 'd';
}

function lineOf(substance: TableSubstance): string {
  const { bottle, name, formulas, names, limits, schoolUse } = substance;
  const form = cell(bottle, 'form');
  const category = (code: string) =>
    limits.some((row) => row.h_code === code && categoryOf(row) === '3' && !/^70$/.test(row.from_percent ?? ''))
      ? `${code}/3`
      : code;
  const own = confidenceMark(cell(bottle, 'confidence'));
  const codes = codesIn(cell(bottle, 'statements'));
  // A code of the bottle without any limit of its own is not known to end when the substance is diluted.
  const unlimited = codes.filter((code) => !limits.some((row) => row.h_code === code));
  return [
    name,
    formulas.join(' '),
    names.filter((text) => text !== name.toLowerCase()).join(';'),
    /^solution of ([\d.]+)/.exec(form)?.[1] ?? form.charAt(0),
    codes
      .map((code) => {
        const mark = bottleConfidence(code, substance);
        return `${category(code)}${mark === own ? '' : `:${mark}`}`;
      })
      .join(' '),
    own + wasteMark(substance),
    schoolUse,
    [...limits.map(limitText), ...unlimited.map((code) => `${code},,,,${bottleConfidence(code, substance)}n`)].join(
      ';',
    ),
  ].join('|');
}

/** The newest date on which the act was read, as `2026-07-01`. */
export function actDate(substances: readonly TableSubstance[]): string {
  const dates = substances.flatMap(({ bottle }) =>
    Array.from(cell(bottle, 'source').matchAll(/act of (\d{4}-\d{2}-\d{2})/g), ([, date]) => date ?? ''),
  );
  const newest = dates.sort().at(-1);
  if (newest === undefined) throw new Error('No source says which state of the act it is.');
  return newest;
}

/** Text of `src/chemistry/cautionList.generated.ts`. */
export function cautionListSource(paths: HazardTables): string {
  const substances = tableSubstances(paths);
  return [
    '// Generated from tests/published/substances.csv and hazard-limits.csv by `npm run build`; edit those files instead.',
    '',
    '/** State of CLP Annex VI that the figures were read from. */',
    `export const hazardDataDate = '${actDate(substances)}';`,
    '',
    '/**',
    ' * Name | spellings of the formula | other names | s solid, l liquid, or the mass percent of the solution that is sold |',
    ' * codes as sold, with their confidence where it is not that of the substance | confidence, then where it goes (d down',
    ' * the drain, with a number up to that strength, b waste beaker, n never down the drain) | use in schools | limits in %',
    ' * by mass, each as code,from,to,counted g/mol (blank: as weighed),confidence and flags (! an end that is taken the',
    ' * other way round: above, or up to and with; n no limit known, * minimum class, p look at the pH, 2 or 3 category).',
    ' * Confidence: h harmonised in CLP Annex VI, t two sources agree, o one source, m from memory.',
    ' */',
    `export const cautionList = \`\n${substances.map(lineOf).join('\n')}\n\`;`,
    '',
  ].join('\n');
}
