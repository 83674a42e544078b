// Random and mutated texts for the readers of formulas and quantities, the same for the same seed.

/** A generator of numbers from 0 to below 1 (mulberry32), so that a failure can be repeated. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const seeds = [
  'KBr',
  'CuSO4·5H2O',
  'Ca(OH)2',
  '[Co(NH3)6]Cl3',
  'CaSO4·½H2O',
  'SO4^2-',
  'NH4+',
  'Ca²⁺',
  '[13C]H4',
  'D2O',
  'K4[Fe(CN)6]·3H2O',
  '{[(CH3)2]}',
  'C8H5O4K',
  'H₂SO₄',
  '0.5',
  '0,5',
  '1,234',
  '1.234,5',
  '1 234 567',
  '2.05 × 10^8',
  '1.5e-3',
  '−3',
  '200 mL',
  '18.60 L',
  '0.3 M',
  '5 mmol/L',
  '400 µL',
  '1.05 g/cm³',
  '98 %',
  '2.5 kg',
  '10^-3',
  '1e400',
  '1e-400',
  '0.98',
];
const hostile = [
  'constructor',
  '__proto__',
  'toString',
  'hasOwnProperty',
  '<script>alert(1)</script>',
  '=1+1',
  '{argument}',
  '(((((((((',
  ')))))',
  '[[[[',
  '999999999999999999999',
  '٣٫٥',
  '１２',
  '½',
  '∞',
  'NaN',
  'Infinity',
  '-Infinity',
  '0x10',
  '1_000',
  '\u0000',
  '\u202e',
  '🧂',
  'é',
  '\ud800',
  '$&',
  '%',
  '^',
  '·',
  '.',
  ',',
  '-',
  '+',
  ' ',
  '\n',
  '\t',
  "'",
  '"',
  '\\',
  'e',
  'E',
  '×',
  '*',
];
const alphabet = [...'HCNOFNaKClBrSPFeCuZnAgIMgCaAlabcdexyz0123456789()[]{}·.,*^+-−⁺⁻⁰¹²³₀₁₂₃½%/ µLmgkol'.split('')];

/** One text, made from nothing or by mutating a known one. */
export function fuzzText(random: () => number): string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const kind = random();
  if (kind < 0.15) {
    return Array.from({ length: Math.floor(random() * 40) }, () => pick(alphabet)).join('');
  }
  if (kind < 0.2) {
    return Array.from({ length: Math.floor(random() * 12) }, () =>
      String.fromCharCode(Math.floor(random() * 65536)),
    ).join('');
  }
  if (kind < 0.22) return pick(['(', '[', 'H', '9', '·', 'e', '1,', '1 ']).repeat(Math.floor(random() * 5000));
  let text = pick(random() < 0.8 ? seeds : hostile);
  for (let step = Math.floor(random() * 5); step > 0; step -= 1) {
    const at = Math.floor(random() * (text.length + 1));
    const change = random();
    if (change < 0.3) text = text.slice(0, at) + pick(alphabet) + text.slice(at);
    else if (change < 0.5) text = text.slice(0, at) + text.slice(at + 1);
    else if (change < 0.65) text = text.slice(0, at) + pick(hostile) + text.slice(at);
    else if (change < 0.8) text = text.slice(0, at) + pick(seeds) + text.slice(at);
    else if (change < 0.9) text = text.toLowerCase();
    else text = text.slice(at) + text.slice(0, at);
  }
  return text;
}
