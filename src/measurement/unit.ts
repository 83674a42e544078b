import { unitTable } from './unitTable.generated.ts';

/** Kinds of quantity that an argument may ask for. */
export type QuantityKind = keyof typeof unitTable | 'percent';
/** Kinds that a unit may have; of the last two there is no argument. */
export type UnitKind = QuantityKind | 'molar mass' | 'molality';

export interface NamedUnit {
  readonly kind: UnitKind;
  /** As the table spells it. */
  readonly symbol: string;
  /** Power of ten to the default unit of its kind; of a molar mass to g/mol, of a molality to mol/kg. */
  readonly power: number;
}

/** Longest text that can be a unit. */
export const longestUnit = 40;

const prefixes: Readonly<Record<string, string>> = {
  kilo: 'k',
  deci: 'd',
  centi: 'c',
  milli: 'm',
  micro: 'μ',
  nano: 'n',
};
const stems: Readonly<Record<string, string>> = {
  litre: 'L',
  liter: 'L',
  gramme: 'g',
  gram: 'g',
  mole: 'mol',
  mol: 'mol',
  molar: 'M',
};
const word = /^(kilo|deci|centi|milli|micro|nano)?(litre|liter|gramme|gram|mole|mol|molar)s?$/;
const cubicWord = /^cubic(centi|deci)?met(?:re|er)s?$/;

/** Short forms that are neither symbols nor words, by the symbol that each stands for. */
const shortForms: Readonly<Record<string, string>> = {
  cc: 'cm3',
  ccm: 'cm3',
  gm: 'g',
  gms: 'g',
  mls: 'mL',
  mgs: 'mg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  mmols: 'mmol',
  ltr: 'L',
  ltrs: 'L',
};

/** The symbol that a word or a short form stands for; a word may be in capitals or begin with one. */
function symbolOfWord(text: string): string | undefined {
  const lower = text.toLowerCase();
  if (text === lower || text === 'CC') {
    const short = Object.keys(shortForms).includes(lower) ? shortForms[lower] : undefined;
    if (short !== undefined) return short;
  }
  if (text !== lower && text !== text.toUpperCase() && text.slice(1) !== lower.slice(1)) return undefined;
  const [isWord, prefix, stem = ''] = word.exec(lower) ?? [];
  if (isWord !== undefined) return `${prefix === undefined ? '' : prefixes[prefix]}${stems[stem]}`;
  const [isCubic, size = ''] = cubicWord.exec(lower) ?? [];
  return isCubic === undefined ? undefined : `${prefixes[size] ?? ''}m3`;
}

/** A percentage by mass in the spellings of labels; one by volume is another thing. */
const percentSign =
  /^(?:(?:w\/w|m\/m|wt|mass)?(?:%|percent)|(?:%|percent)(?:\(?(?:w\/w|m\/m|wt)\)?|by(?:mass|weight)))$/i;

/** Raised digits on the line, one letter for micro, one sign for minus. */
const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[−–]/g, '-')
    .replace(/\^/g, '')
    .trim()
    .replace(/\s*\.$/, '');

/** Every unit by its plain symbol, read from the table on first use. */
let known: Map<string, NamedUnit> | undefined;

function knownUnits(): Map<string, NamedUnit> {
  if (known) return known;
  known = new Map();
  for (const [kind, row] of Object.entries(unitTable)) {
    for (const pair of row.split(' ')) {
      // By index: taking a list apart costs a first answer more than all else here.
      const columns = pair.split('|');
      const symbol = columns[0] ?? '';
      const power = Number(columns[1]?.slice('1e'.length));
      known.set(columns[2] ?? symbol, { kind: kind as QuantityKind, symbol, power });
    }
  }
  known.set('%', { kind: 'percent', symbol: '%', power: 0 });
  known.set('molal', { kind: 'molality', symbol: 'mol/kg', power: 0 });
  return known;
}

/** A unit that is not made of two. */
function simpleUnit(text: string): NamedUnit | undefined {
  const joined = text.replace(/\s/g, '');
  if (percentSign.test(joined)) return knownUnits().get('%');
  const symbol =
    symbolOfWord(joined) ?? joined.replace(/^u(?=[A-Za-z])/, 'μ').replace(/^([dcmnμ]?)l$/, (_, size) => `${size}L`);
  return knownUnits().get(symbol);
}

/** What two units make, one over the other, with the power of ten between their default units and that of the result. */
const quotients: Readonly<Record<string, { readonly kind: UnitKind; readonly shift: number }>> = {
  'amount/volume': { kind: 'concentration', shift: 3 },
  'mass/volume': { kind: 'density', shift: 0 },
  'mass/amount': { kind: 'molar mass', shift: 0 },
  'amount/mass': { kind: 'molality', shift: 3 },
};

function quotient(over: NamedUnit | undefined, under: NamedUnit | undefined): NamedUnit | undefined {
  if (over === undefined || under === undefined) return undefined;
  const made = quotients[`${over.kind}/${under.kind}`];
  if (made === undefined) return undefined;
  return { kind: made.kind, symbol: `${over.symbol}/${under.symbol}`, power: over.power - under.power + made.shift };
}

/** `mol L-1`, `mol·dm-3`, `gmol-1`: the unit below the line is the longest that stands before its negative exponent. */
function withNegativeExponent(text: string): NamedUnit | undefined {
  const [, body = '', exponent = ''] = /^(.+)-([13])$/.exec(text) ?? [];
  const cube = exponent === '3' ? '3' : '';
  for (let at = 1; at < body.length; at += 1) {
    const under = simpleUnit(body.slice(at) + cube);
    const over = under && simpleUnit(body.slice(0, at).replace(/[\s·⋅∙•*.]+$/, ''));
    const found = quotient(over, under);
    if (found) return found;
  }
  return undefined;
}

/** The unit that a text names, or undefined where it names none of the trade's. */
export function unitNamed(text: string): NamedUnit | undefined {
  if (text.length > longestUnit) return undefined;
  const wanted = plain(text);
  const simple = simpleUnit(wanted);
  if (simple) return simple;
  const [, over, under] = /^(.+?)\s*(?:\/|\bper\b)\s*(.+)$/i.exec(wanted) ?? [];
  if (over !== undefined && under !== undefined) return quotient(simpleUnit(over), simpleUnit(under));
  return withNegativeExponent(wanted);
}

/** Units of a kind, for messages: `L, dL, cL, mL, µL, dm³, cm³ or m³`. */
export function unitsOfKind(kind: QuantityKind): string {
  const symbols = [...knownUnits().values()].filter((unit) => unit.kind === kind).map(({ symbol }) => symbol);
  return symbols.join(', ').replace(/, ([^,]*)$/, ' or $1');
}
