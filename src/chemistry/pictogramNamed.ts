/** What to know of the symbol of a pictogram: its code and what the GHS calls it. */
export interface Pictogram {
  /** GHS01 to GHS09. */
  readonly code: string;
  readonly name: string;
}

/** Symbols by the two digits of their code: UN GHS, Rev. 10, Annex 1, from memory. */
const names: Readonly<Record<string, string>> = {
  '01': 'exploding bomb',
  '02': 'flame',
  '03': 'flame over circle',
  '04': 'gas cylinder',
  '05': 'corrosion',
  '06': 'skull and crossbones',
  '07': 'exclamation mark',
  '08': 'health hazard',
  '09': 'environment',
};

/** What a pictogram shows, in words; the code itself where there is no such pictogram. */
export const pictogramNamed = (code: string): Pictogram => ({
  code,
  name: names[code.replace('GHS', '')] ?? code,
});
