import { unitTable } from './unitTable.generated.ts';

export type QuantityKind = keyof typeof unitTable | 'percent';

interface UnitOfKind {
  readonly kind: QuantityKind;
  /** As the table spells it. */
  readonly symbol: string;
  /** Power of ten to the default unit of its kind. */
  readonly power: number;
}

/** Names that people write out, by the symbol that stands for each. */
const names: Readonly<Record<string, string>> = {
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  millilitre: 'mL',
  millilitres: 'mL',
  milliliter: 'mL',
  milliliters: 'mL',
  cc: 'cm3',
  gram: 'g',
  grams: 'g',
  kilogram: 'kg',
  kilograms: 'kg',
  milligram: 'mg',
  milligrams: 'mg',
  mole: 'mol',
  moles: 'mol',
  millimole: 'mmol',
  millimoles: 'mmol',
  molar: 'M',
  percent: '%',
};

/** One spelling of a unit; the normal form puts raised digits on the line and has one letter for micro. */
function plainUnit(text: string): string {
  const joined = text
    .normalize('NFKC')
    .replace(/[−–]/g, '-')
    .replace(/[\^.]/g, '')
    .replace(
      /[·⋅*\s]\s*([A-Za-zμ]+)-([13])$/,
      (_, unit: string, power: string) => `/${unit}${power === '3' ? '3' : ''}`,
    )
    .replace(/\s/g, '');
  const word = joined.toLowerCase();
  const named = Object.keys(names).includes(word) ? names[word] : undefined;
  return (named ?? joined).replace('u', 'μ').replace(/(^|[/mμcd])l/, '$1L');
}

/** Every unit by its plain spelling, read from the table on first use. */
let known: Map<string, UnitOfKind> | undefined;

function knownUnits(): Map<string, UnitOfKind> {
  if (known) return known;
  known = new Map();
  for (const [kind, row] of Object.entries(unitTable)) {
    for (const pair of row.split(' ')) {
      const symbol = pair.slice(0, pair.indexOf('|'));
      known.set(plainUnit(symbol), { kind: kind as QuantityKind, symbol, power: Number(pair.split('|1e')[1]) });
    }
  }
  known.set('%', { kind: 'percent', symbol: '%', power: 0 });
  return known;
}

/** The unit that a text names, or undefined where it names none of the trade's. */
export const unitNamed = (text: string): UnitOfKind | undefined => knownUnits().get(plainUnit(text));

/** Units of a kind, for messages: `L, dL, cL, mL, µL, dm³ or cm³`. */
export function unitsOfKind(kind: QuantityKind): string {
  const symbols = [...knownUnits().values()].filter((unit) => unit.kind === kind).map(({ symbol }) => symbol);
  return symbols.join(', ').replace(/, ([^,]*)$/, ' or $1');
}
